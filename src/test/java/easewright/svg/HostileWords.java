package easewright.svg;

/** Hostile by what they say of what they draw: style, names, marks. */
final class HostileWords extends HostileList {
    HostileWords() {
        style();
        names();
        marks();
    }

    private void style() {
        opened(
                "style-import-data",
                "<style>@import url(data:text/css,path%7Bdisplay:none%7D);@import '" + CANARY + "';</style>");
        opened("style-unclosed", "<style>/* path{display:none}</style>");
        opened(
                "style-escapes",
                "<style>.x{di\\73 play:none}</style><path style='--a:url(" + CANARY + ")' d='M1 1H2'/>");
        bounded("style-rules-20k", () -> "<style>" + each(20_000, i -> "#n" + i + "{display:none}") + "</style>");
        bounded("style-media-nest", () -> "<style>" + "@media screen{".repeat(100_000) + "</style>");
        bounded(
                "style-declarations-1m",
                () -> "<path style=\"" + "display:inline;".repeat(1_000_000) + "\" d='M1 1H2'/>");
        bounded("style-selectors-1m", () -> "<style>" + "a,".repeat(1_000_000) + "b{display:none}</style>");
        bounded("style-brackets", () -> "<style>" + "[".repeat(1_000_000) + "{display:none}</style>");
        bounded(
                "style-ancestors",
                () -> "<style>" + each(2000, i -> "* * * * * * * * * * g{display:inline}") + "</style>"
                        + ("<g>".repeat(200) + "</g>".repeat(200)).repeat(50));
        bounded(
                "style-class-words",
                () -> "<style>" + each(1500, i -> ".q" + i + "{display:none}") + "</style>"
                        + each(40, i -> "<g class=\"" + "w ".repeat(100_000) + "\"/>"));
        bounded(
                "style-siblings",
                () -> "<style>" + each(500, i -> "g+g+g+g+g+g+g+g{display:inline}") + "</style>"
                        + "<g/>".repeat(20_000));
        bounded(
                "texts-in-depth",
                () -> "<style>" + each(1000, i -> "* text{font-size:9px}") + "</style>"
                        + ("<g>".repeat(200) + "<text x='1'>a</text>".repeat(100) + "</g>".repeat(200)).repeat(20));
    }

    private void names() {
        opened(
                "label-markup",
                "<g inkscape:label='&lt;script&gt;alert(1)&lt;/script&gt;' xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape'>"
                        + "<path d='M1 1H2'><title>&lt;img src=x onerror=alert(1)&gt;</title></path></g>");
        opened("label-terminal", "<path id='x' aria-label='a&#x9b;31m&#x202e;b&#x2066;' d='M1 1H2'/>");
        opened("id-of-spaces", "<path id=' ' d='M1 1H2'/><path id='a b' d='M3 3H4'/><path id='a#0' d='M5 5H6'/>");
        bounded("ids-same-100k", () -> "<path id='a' d='M1 1h1'/>".repeat(100_000));
        bounded(
                "ids-taken",
                () -> each(50_000, i -> "<path id='a-" + i + "' d='M1 1h1'/>")
                        + "<path id='a' d='M1 1h1'/>".repeat(50_000));
        bounded("ids-twice-each", () -> each(50_000, i -> ("<path id='b" + i + "' d='M1 1h1'/>").repeat(2)));
        bounded("title-20mb", () -> "<title>" + "t".repeat(20_000_000) + "</title>");
        bounded("texts-100k", () -> each(100_000, i -> "<text x='" + i % 90 + "' y='9'>10 cm</text>"));
        bounded(
                "test-squares-3k",
                () -> each(3000, i -> "<rect x='" + i + "' width='5' height='5'/><text x='" + i + "'>5 cm</text>"));
    }

    private static String block(String inside) {
        return "<metadata><marks xmlns=\"urn:easewright:marks:1\">" + inside + "</marks></metadata>";
    }

    private void marks() {
        opened(
                "marks-markup",
                block("<piece ref='good' name='&lt;b onmouseover=alert(1)&gt;'/><body name='&#x202e;evil'/>"));
        opened(
                "marks-of-paths",
                block("<piece ref='../../etc/passwd'/><piece ref='good good'/><piece ref='good#99999'/>"));
        bounded(
                "marks-prefixes",
                () -> "<metadata><m:marks " + each(900, i -> "xmlns:p" + i + "=\"urn:x" + i + "\" ")
                        + "xmlns:m=\"urn:easewright:marks:1\">" + "<m:odd/>".repeat(20_000) + "</m:marks></metadata>");
        bounded("marks-deep", () -> block("<odd>".repeat(240) + "x".repeat(5_000_000) + "</odd>".repeat(240)));
        bounded("marks-unknown-200k", () -> block("<odd/>".repeat(200_000)));
        bounded("marks-pieces-50k", () -> block(each(50_000, i -> "<piece ref='good' name='n" + i + "'/>")));
        bounded(
                "marks-edges-20k",
                () -> block("<piece ref='good'>"
                        + each(20_000, i -> "<edge name='e" + i + "' role='seam' from='10 10' to='90 10'/>")
                        + "</piece>"));
        bounded(
                "marks-changes-100k",
                () -> block("<change method='seam'><set name='a' value='b'/></change>".repeat(100_000)));
        bounded("marks-blocks-20k", () -> block("").repeat(20_000));
        bounded(
                "marks-original-long",
                () -> block("<piece ref='good'><original d='M0 0" + "l1 0".repeat(1_500_000) + "'/></piece>"));
        bounded("marks-ref-long", () -> block("<piece ref='" + "good ".repeat(400_000) + "'/>"));
    }
}
