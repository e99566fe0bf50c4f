package easewright.svg;

/** Writes rules of style. */
final class FuzzStyle extends FuzzPen {
    FuzzStyle(FuzzPen pen) {
        super(pen);
    }

    private void selector() {
        int parts = 1 + random.nextInt(4);
        for (int i = 0; i < parts; i++) {
            out.append(pick(
                    "path",
                    "*",
                    "#a",
                    ".b",
                    "g",
                    "[id]",
                    "[id='a']",
                    "[class~=b]",
                    "[id^=\"a\"]",
                    ":not(.b)",
                    "::before",
                    "svg|path",
                    "\u00e9",
                    "rect"));
            out.append(pick("", " ", ">", " > ", "+", "~", "  ", ","));
        }
    }

    void declarations() {
        int count = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            String name = pick(
                    "display",
                    "visibility",
                    "transform",
                    "d",
                    "r",
                    "x",
                    "width",
                    "fill",
                    "rotate",
                    "scale",
                    "translate",
                    "transform-origin",
                    "transform-box",
                    "clip-path",
                    "font-size",
                    "--x",
                    "DISPLAY");
            out.append(name).append(pick(":", " : ", ":", ""));
            if (name.equals("transform")) {
                transform();
            } else if (name.equals("d")) {
                out.append("path(\"");
                path();
                out.append("\")");
            } else if (chance(3)) {
                number();
                out.append(pick("", "px", "%", "mm", "deg"));
            } else {
                out.append(pick(
                        "none",
                        "inline",
                        "hidden",
                        "visible",
                        "inherit",
                        "red",
                        "url(#a)",
                        "var(--x)",
                        "50% 50%",
                        "left top",
                        "fill-box"));
            }
            out.append(pick("", " !important", "!important")).append(pick(";", ";", " ; ", ""));
        }
    }

    void style() {
        int rules = 1 + random.nextInt(5);
        for (int i = 0; i < rules; i++) {
            out.append(pick(
                    "", "", "", "@media screen{", "@media print{", "@import url(x);", "/* c */", "@font-face", "<!--"));
            selector();
            out.append("{");
            declarations();
            out.append(pick("}", "}", "}", "}}", ""));
        }
    }
}
