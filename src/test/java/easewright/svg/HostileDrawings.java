package easewright.svg;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.zip.GZIPOutputStream;

/**
 * Hostile drawings that are made rather than kept, each of another class than the files in
 * {@code src/test/resources/hostile}. All but those to be refused also draw the square {@code good}.
 *
 * <p>{@code java … easewright.svg.HostileDrawings FOLDER} writes them all there, for {@link HostileRun}.
 */
final class HostileDrawings {
    /** What must become of it. */
    enum Fate {
        /** Refused with a reason. */
        REFUSED,
        /** Opened, with the good square measured right. */
        OPENED,
        /** Either of both, in bounded time and memory. */
        BOUNDED
    }

    /**
     * One drawing.
     *
     * @param heavy whether it weighs by its mass, and is left to {@link HostileRun}
     */
    record Hostile(String name, Fate fate, boolean heavy, Supplier<byte[]> bytes) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static final String XLINK = " xmlns:xlink=\"http://www.w3.org/1999/xlink\"";
    private static final String ROOT = "<svg xmlns=\"http://www.w3.org/2000/svg\"" + XLINK
            + " width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">";
    private static final String GOOD = "<path id=\"good\" d=\"M10 10H90V90H10Z\"/>";
    private static final String CANARY = "http://127.0.0.1:18999/";

    private final List<Hostile> all = new ArrayList<>();

    private HostileDrawings() {
        xml();
        encodings();
        packing();
        style();
        geometry();
        copies();
        names();
        marks();
        lines();
        pictures();
    }

    static List<Hostile> all() {
        return List.copyOf(new HostileDrawings().all);
    }

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        for (Hostile one : all()) {
            Files.write(folder.resolve(one.name() + ".svg"), one.bytes().get());
        }
    }

    private void add(Fate fate, String name, Supplier<String> text) {
        all.add(new Hostile(name, fate, false, () -> text.get().getBytes(StandardCharsets.UTF_8)));
    }

    private void refused(String name, String text) {
        add(Fate.REFUSED, name, () -> text);
    }

    private void opened(String name, String body) {
        add(Fate.OPENED, name, () -> ROOT + body + GOOD + "</svg>");
    }

    private void bounded(String name, Supplier<String> body) {
        all.add(new Hostile(
                name,
                Fate.BOUNDED,
                true,
                () -> (ROOT + body.get() + GOOD + "</svg>").getBytes(StandardCharsets.UTF_8)));
    }

    private void raw(Fate fate, String name, Supplier<byte[]> bytes) {
        all.add(new Hostile(name, fate, false, bytes));
    }

    private static String each(int count, IntFunction<String> text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < count; i++) {
            out.append(text.apply(i));
        }
        return out.toString();
    }

    private void xml() {
        opened("xinclude", "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"file:///etc/passwd\"/>");
        refused(
                "unparsed-entity",
                "<!DOCTYPE svg [<!NOTATION n SYSTEM \"n\"><!ENTITY e SYSTEM \"" + CANARY + "\" NDATA n>]>" + ROOT
                        + "</svg>");
        refused("public-entity", "<!DOCTYPE svg [<!ENTITY e PUBLIC \"p\" \"" + CANARY + "\">]>" + ROOT + "&e;</svg>");
        refused(
                "recursive-entity",
                "<!DOCTYPE svg [<!ENTITY a \"&b;\"><!ENTITY b \"&a;\">]>" + ROOT + "<text>&a;</text></svg>");
        refused("undefined-entity", "<!DOCTYPE svg [<!ENTITY a \"x\">]>" + ROOT + "<text>&b;</text></svg>");
        add(
                Fate.OPENED,
                "entity-of-shapes",
                () -> "<!DOCTYPE svg [<!ENTITY p \"<path xmlns='http://www.w3.org/2000/svg' d='M0 0H5'/>\">]>" + ROOT
                        + "&p;&p;" + GOOD + "</svg>");
        add(
                Fate.OPENED,
                "entity-in-style",
                () -> "<!DOCTYPE svg [<!ENTITY s \"fill:red\">]>" + ROOT + "<style>path{&s;}</style>" + GOOD
                        + "</svg>");
        add(
                Fate.OPENED,
                "attlist-namespace",
                () -> "<!DOCTYPE svg [<!ATTLIST svg xmlns:x CDATA #FIXED \"urn:x\">]>" + ROOT + GOOD + "</svg>");
        refused(
                "attlist-href",
                "<!DOCTYPE svg [<!ATTLIST use href CDATA \"" + CANARY + "\">]>" + ROOT + "<use/></svg>");
        add(Fate.OPENED, "doctype-of-another-kind", () -> "<!DOCTYPE html>" + ROOT + GOOD + "</svg>");
        refused("null-character", ROOT + "\u0000</svg>");
        refused("control-reference", ROOT + "<text>&#1;</text></svg>");
        refused("surrogate-reference", ROOT + "<text>&#xD800;</text></svg>");
        refused("attribute-twice", ROOT + "<path d='M0 0' d='M1 1'/></svg>");
        refused("two-roots", ROOT + "</svg>" + ROOT + "</svg>");
        refused("text-after-root", ROOT + "</svg>tail");
        refused("double-dash-comment", ROOT + "<!-- a -- b --></svg>");
        refused("unquoted", ROOT + "<path d=M0/></svg>");
        refused("html-around", "<html xmlns=\"http://www.w3.org/1999/xhtml\">" + ROOT + "</svg></html>");
        refused("svg-without-namespace", "<svg width='10mm'><path d='M0 0H5'/></svg>");
        refused("end-tag-swapped", ROOT + "<g><a></g></a></svg>");
        opened("instruction-php", "<?php system('touch /tmp/owned') ?><?xml-model href=\"" + CANARY + "\"?>");
        opened(
                "foreign-animation",
                "<animate href=\"#good\" attributeName=\"d\" to=\"M0 0\"/><set attributeName=\"display\" to=\"none\"/>"
                        + "<handler xmlns=\"http://www.w3.org/2001/xml-events\">alert(1)</handler>");
        bounded("white-space-20mb", () -> " ".repeat(20_000_000));
        bounded("cdata-20mb", () -> "<desc><![CDATA[" + "<".repeat(20_000_000) + "]]></desc>");
        bounded("tags-of-one-letter", () -> "<g/>".repeat(2_000_000));
        bounded("instructions-1m", () -> "<?a?>".repeat(1_000_000));
        bounded("long-names", () -> each(200, i -> "<" + "n".repeat(20_000) + i + "/>"));
    }

    private void encodings() {
        refused("utf-7", "<?xml version='1.0' encoding='UTF-7'?>" + ROOT + "</svg>");
        refused("says-utf-16-is-not", "<?xml version='1.0' encoding='UTF-16'?>" + ROOT + GOOD + "</svg>");
        raw(
                Fate.REFUSED,
                "utf-32",
                () -> ("<?xml version='1.0'?>" + ROOT + "</svg>").getBytes(Charset.forName("UTF-32")));
        raw(
                Fate.REFUSED,
                "ebcdic",
                () -> ("<?xml version='1.0'?>" + ROOT + "</svg>").getBytes(Charset.forName("IBM037")));
        raw(
                Fate.REFUSED,
                "overlong-utf-8",
                () -> bytes(ROOT + "<text>", new byte[] {(byte) 0xC0, (byte) 0xAF}, "</text></svg>"));
        raw(
                Fate.REFUSED,
                "cut-utf-8",
                () -> bytes(ROOT + "<text>", new byte[] {(byte) 0xE2, (byte) 0x82}, "</text></svg>"));
        raw(Fate.REFUSED, "nothing", () -> new byte[0]);
        raw(Fate.REFUSED, "only-a-mark", () -> new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF});
        raw(Fate.REFUSED, "pdf", () -> "%PDF-1.7\n<svg/>".getBytes(StandardCharsets.US_ASCII));
        raw(Fate.REFUSED, "zip", () -> new byte[] {'P', 'K', 3, 4, 0, 0});
        add(Fate.OPENED, "mark-inside", () -> ROOT + "<text>\ufeff</text>" + GOOD + "</svg>");
    }

    private static byte[] bytes(String before, byte[] middle, String after) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(before.getBytes(StandardCharsets.UTF_8));
        out.writeBytes(middle);
        out.writeBytes(after.getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }

    private static byte[] packed(byte[] plain) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(plain);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private void packing() {
        byte[] plain = (ROOT + GOOD + "</svg>").getBytes(StandardCharsets.UTF_8);
        raw(Fate.OPENED, "gzip-two-members", () -> twice(packed(plain), packed(new byte[] {'\n'})));
        raw(Fate.REFUSED, "gzip-bad-sum", () -> {
            byte[] bad = packed(plain);
            bad[bad.length - 6] ^= 1;
            return bad;
        });
        raw(Fate.REFUSED, "gzip-head-only", () -> new byte[] {0x1F, (byte) 0x8B, 8, 0});
        raw(Fate.REFUSED, "gzip-of-gzip", () -> packed(packed(plain)));
        all.add(new Hostile(
                "gzip-70mb",
                Fate.REFUSED,
                true,
                () -> packed((ROOT + " ".repeat(70_000_000) + "</svg>").getBytes(StandardCharsets.UTF_8))));
    }

    private static byte[] twice(byte[] a, byte[] b) {
        byte[] both = java.util.Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        return both;
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

    private void geometry() {
        opened(
                "path-grammar",
                "<path d='M1 1 L'/><path d='L5 5'/><path d='M1,,1'/><path d='M1 1 2 2 Z Z Z m1 1'/><path d='#'/>");
        opened(
                "arc-beyond-numbers",
                "<path d='M1 1A1e308 1e-308 1e308 1 1 2 2'/><path d='M1 1A1e200 1e200 0 0 0 2 2'/>");
        opened(
                "turn-beyond-numbers",
                "<g transform='rotate(1e308)'><path d='M1 1H2'/></g><path transform='skewX(90)' d='M1 1V2'/>");
        opened("scale-stack", "<g transform='scale(1e30)'>".repeat(20) + "<path d='M1 1H2'/>" + "</g>".repeat(20));
        opened("shrink-stack", "<g transform='scale(1e-30)'>".repeat(20) + "<path d='M1 1H2'/>" + "</g>".repeat(20));
        add(Fate.BOUNDED, "view-box-minute", () -> ROOT.replace("0 0 100 100", "0 0 1e-320 1e-320") + GOOD + "</svg>");
        add(
                Fate.BOUNDED,
                "view-box-vast",
                () -> ROOT.replace("0 0 100 100", "-1e99 -1e99 1e99 1e99") + GOOD + "</svg>");
        add(Fate.BOUNDED, "width-vast", () -> ROOT.replace("100mm", "1e300mm") + GOOD + "</svg>");
        add(Fate.BOUNDED, "width-zero", () -> ROOT.replace("100mm", "0") + GOOD + "</svg>");
        add(Fate.BOUNDED, "width-words", () -> ROOT.replace("100mm", "calc(100mm * 1)") + GOOD + "</svg>");
        bounded("aspect-1mb", () -> "<svg preserveAspectRatio=\"" + "x".repeat(1_000_000) + "\" viewBox='0 0 1 1'/>");
        bounded("closings-4m", () -> "<path d=\"M0 0" + "z".repeat(4_000_000) + "\"/>");
        bounded("moves-2m", () -> "<path d=\"" + "M1 1".repeat(1_900_000) + "\"/>");
        bounded(
                "arcs-wide",
                () -> "<path d=\"M0 0" + "A1e15 1e15 0 01 9 9A1e15 1e15 0 01 0 0".repeat(150_000) + "\"/>");
        bounded("points-same", () -> "<polyline points=\"" + "0 0 ".repeat(1_900_000) + "\"/>");
        bounded("path-spaces", () -> "<path d=\"M0 0" + " ".repeat(7_000_000) + "H5\"/>");
        bounded("exponent-long", () -> "<path d=\"M0 0H1e" + "0".repeat(5_000_000) + "1\"/>");
        bounded("transform-junk", () -> "<g transform=\"" + "a(".repeat(1_000_000) + "\"/>");
        bounded(
                "transform-vast",
                () -> "<g transform=\"" + "translate(1)".repeat(500_000) + "\"><path d='M0 0H1'/></g>");
        bounded(
                "paths-of-holes",
                () -> "<path d=\"" + each(60_000, i -> "M" + i % 300 + " " + i / 300 + "h.5v.5h-.5z") + "\"/>");
        bounded(
                "pieces-20k",
                () -> each(
                        20_000,
                        i -> "<rect x='" + i % 200 * 30 + "' y='" + i / 200 * 30 + "' width='25' height='25'/>"));
        bounded(
                "nested-squares",
                () -> each(
                        20_000,
                        i -> "<rect x='" + i * .1 + "' y='" + i * .1 + "' width='" + (9000 - i * .2) + "' height='"
                                + (9000 - i * .2) + "'/>"));
    }

    private void copies() {
        opened(
                "use-of-everything",
                "<use href='#t'/><text id='t'>x</text><use href='#s'/><style id='s'/><use href=''/><use/>");
        opened(
                "use-script-address",
                "<use href='javascript:alert(1)'/><use href='data:image/svg+xml,&lt;svg/>#a'/><a href='" + CANARY
                        + "'/>");
        bounded(
                "use-of-heavy",
                () -> "<path id='h' d='M0 0" + "l1 1".repeat(2000) + "'/>" + "<use href='#h'/>".repeat(5000));
        bounded(
                "use-fan",
                () -> "<g id='f'>" + "<path d='M0 0H1'/>".repeat(300) + "</g><g id='e'>"
                        + "<use href='#f'/>".repeat(300) + "</g>" + "<use href='#e'/>".repeat(300));
        bounded(
                "symbols-nested",
                () -> each(
                                60,
                                i -> "<symbol id='s" + i + "' viewBox='0 0 1 1' width='2' height='2'><use href='#s"
                                        + (i + 1) + "'/><use href='#s" + (i + 1) + "'/></symbol>")
                        + "<use href='#s0'/>");
        bounded("uses-of-nothing", () -> "<use href='#none'/>".repeat(200_000));
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

    private void lines() {
        bounded("lines-from-one-place", () -> each(90_000, i -> "<path d='M50 50L" + i % 300 + " " + i / 300 + "'/>"));
        bounded(
                "lines-dense",
                () -> each(90_000, i -> "<path d='M" + i % 300 * .001 + " " + i / 300 * .001 + "h.0007'/>"));
        bounded(
                "lines-grid",
                () -> each(
                        40_000,
                        i -> "<path d='M" + i % 200 + " " + i / 200 + "h1'/><path d='M" + i % 200 + " " + i / 200
                                + "v1'/>"));
        bounded("lines-ring", () -> each(50_000, i -> "<path d='M" + ring(i) + "L" + ring(i + 1) + "'/>"));
        bounded(
                "lines-many-rings",
                () -> each(
                        2000, i -> "<path d='M" + i * 30 + " 0h25v25'/><path d='M" + (i * 30 + 25) + " 25h-25v-25'/>"));
        bounded("lines-same", () -> "<path d='M0 0L50 50'/>".repeat(90_000));
        bounded("lines-between-two", () -> each(40_000, i -> "<path d='M0 0Q" + i * .01 + " 9 50 50'/>"));
    }

    private static String ring(int i) {
        return 100 * Math.cos(i * Math.PI / 25_000) + " " + 100 * Math.sin(i * Math.PI / 25_000);
    }

    private void pictures() {
        opened(
                "picture-addresses",
                "<image href='file:///etc/passwd' width='1'/><image href='\\\\127.0.0.1\\share' width='1'/><image href='"
                        + CANARY + "' width='1'/><image href='//127.0.0.1:18999/x' width='1'/>");
        opened(
                "picture-svg-inside",
                "<image width='9' href='data:image/svg+xml;base64,PHN2Zy8+'/><image width='9' href='data:,'/>");
        opened(
                "picture-cut",
                "<image width='9' href='data:image/png;base64,iVBORw0KGgo='/><image width='9' href='data:image/jpeg;base64,/9j/4AAQ'/>");
        bounded(
                "picture-10mb",
                () -> "<image width='9' href='data:image/jpeg;base64," + "/9j/".repeat(2_500_000) + "'/>");
        bounded(
                "pictures-50k",
                () -> "<image width='9' href='data:image/gif;base64,R0lGODlhAQABAAAAACw='/>".repeat(50_000));
    }
}
