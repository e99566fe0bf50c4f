package easewright.svg;

import easewright.svg.HostileDrawings.Fate;

/** Hostile by what they draw: geometry, copies, lines that meet, pictures. */
final class HostileShapes extends HostileList {
    HostileShapes() {
        geometry();
        copies();
        lines();
        pictures();
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
