package easewright.svg;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Makes one input for one reader out of a seed: mostly well-formed by its grammar, then spoilt in a few places. */
final class FuzzCases {
    /** The readers that are fuzzed. */
    enum Reader {
        PATH,
        TRANSFORM,
        STYLE,
        MARKS,
        DRAWING
    }

    private static final String[] NUMBERS = {
        "0",
        "-0",
        "1",
        "10",
        "-5",
        ".5",
        "-.5",
        "1.5",
        "100",
        "1e2",
        "1E-3",
        "+7",
        "1e308",
        "-1e308",
        "1e309",
        "1e-400",
        "0.0000001",
        "99999999",
        "1e9",
        "00012",
        "3.14159265358979323846",
        "NaN",
        "Infinity",
        "5.",
        ".",
        "-",
        "1e",
        "1e+",
        "\u0661",
        "0x10",
        "1_0",
        "1,5"
    };
    private static final String[] SPOILS = {
        "", " ", ",", ",,", "\u0000", "\n", "\t", "\f", "\u00a0", "<", ">", "&", "&#10;", "&#x0;", "&bad;", "\"", "'",
                "(", ")",
        "{", "}", ";", ":", "/*", "*/", "\\", "]]>", "<!--", "-->", "\ud83e\udea1", "\u202e", "-", "e", "M", "z", "A",
                "%", "url(#a)",
        "@media{", "!important", "#", "NaN"
    };

    private final Random random;
    private final StringBuilder out = new StringBuilder();

    private FuzzCases(Random random) {
        this.random = random;
    }

    static String of(Reader reader, long seed) {
        FuzzCases cases = new FuzzCases(new Random(seed * 0x9E3779B97F4A7C15L + reader.ordinal()));
        switch (reader) {
            case PATH -> cases.path();
            case TRANSFORM -> cases.transform();
            case STYLE -> cases.style();
            case MARKS -> cases.marks();
            default -> cases.drawing();
        }
        return cases.spoilt();
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    private String pick(String... words) {
        return words[random.nextInt(words.length)];
    }

    private void number() {
        if (chance(12)) {
            out.append(pick(NUMBERS));
        } else {
            double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(4));
            out.append(String.format(Locale.ROOT, "%." + random.nextInt(5) + "f", value));
        }
    }

    private void separator() {
        out.append(pick(" ", ",", " , ", "", "\n", " ", ","));
    }

    private void path() {
        if (!chance(15)) {
            out.append(pick("M", "m", " M ")).append("10 10");
        }
        int commands = 1 + random.nextInt(chance(20) ? 400 : 12);
        for (int i = 0; i < commands; i++) {
            char letter = "MmLlHhVvCcSsQqTtAaZzzZ".charAt(random.nextInt(22));
            out.append(letter);
            int sets = chance(4) ? 2 : 1;
            int numbers = switch (Character.toUpperCase(letter)) {
                case 'M', 'L', 'T' -> 2;
                case 'H', 'V' -> 1;
                case 'C' -> 6;
                case 'S', 'Q' -> 4;
                case 'A' -> 7;
                default -> 0;
            };
            for (int n = 0; n < numbers * sets; n++) {
                boolean flag = numbers == 7 && (n % 7 == 3 || n % 7 == 4);
                if (flag) {
                    out.append(random.nextInt(2));
                } else {
                    number();
                }
                separator();
            }
        }
    }

    private void transform() {
        int functions = 1 + random.nextInt(4);
        for (int i = 0; i < functions; i++) {
            out.append(pick(
                    "matrix",
                    "translate",
                    "scale",
                    "rotate",
                    "skewX",
                    "skewY",
                    "skew",
                    "translateX",
                    "scaleY",
                    "Rotate",
                    "none",
                    "rotate3d",
                    "perspective",
                    "calc"));
            out.append(pick("(", "(", "(", " (", "( "));
            int arguments = random.nextInt(7);
            for (int n = 0; n < arguments; n++) {
                number();
                out.append(pick("", "", "", "deg", "px", "mm", "%", "rad", "turn", "em"));
                separator();
            }
            out.append(")").append(pick("", " ", ",", ", "));
        }
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

    private void declarations() {
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

    private void style() {
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

    private void place() {
        out.append(pick("10 10", "110 10", "110 210", "10 210", "60 10", "110 100", "1e9 0", "10,10", "x y", ""));
    }

    private void marks() {
        out.append("<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='300mm' viewBox='0 0 300 300'>")
                .append("<path id='a' d='M10 10H110V210H10Z'/><path id='b' d='M150 10L250 10L250 210L150 210'/>")
                .append("<line id='c' x1='150' y1='210' x2='150' y2='10'/><path id='in' d='M20 20H40'/><metadata>");
        int blocks = chance(12) ? 2 : 1;
        for (int b = 0; b < blocks; b++) {
            out.append("<marks xmlns='")
                    .append(pick(
                            "urn:easewright:marks:1",
                            "urn:easewright:marks:1",
                            "urn:easewright:marks:1",
                            "urn:easewright:marks:2",
                            "urn:other"))
                    .append("'>");
            int marks = random.nextInt(6);
            for (int i = 0; i < marks; i++) {
                mark();
            }
            out.append("</marks>");
        }
        out.append("</metadata></svg>");
    }

    private void mark() {
        switch (random.nextInt(8)) {
            case 0 -> {
                out.append("<scale across='");
                number();
                out.append("' down='");
                number();
                out.append("' proof='")
                        .append(pick("physical-size", "known-line", "unproved", "x"))
                        .append("'/>");
            }
            case 1 ->
                out.append("<level name='")
                        .append(pick("hip", "waist", "", "hip"))
                        .append("' kind='")
                        .append(pick("hip", "waist", "other", "HIP"))
                        .append("'/>");
            case 2 -> {
                out.append("<wish level='hip' ease='");
                number();
                out.append(pick("", "mm", "cm", "in", "5/8in")).append("'/>");
            }
            case 3 ->
                out.append("<mate name='m' ease='1'><first piece='a' edge='e' times='")
                        .append(pick("1", "2", "0", "99999", "-1"))
                        .append("'/><second piece='")
                        .append(pick("a", "b", "z"))
                        .append("' edge='f'/></mate>");
            case 4 ->
                out.append("<change method='seam'><set name='")
                        .append(pick("at", "", "by"))
                        .append("' value='x'/></change>");
            case 5 ->
                out.append("<body name='&lt;b&gt;'><measure name='w' level='hip' is='")
                        .append(pick("98cm", "-1", "1e400", "x"))
                        .append("'/></body>");
            case 6 ->
                out.append("<cloth kind='")
                        .append(pick("knit", "woven", "felt"))
                        .append("' across='")
                        .append(pick("30", "1e9", "-5", "%"))
                        .append("'/>");
            default -> piece();
        }
    }

    private void piece() {
        out.append("<piece ref='")
                .append(pick("a", "b c", "b  c", "c b", "b", "in", "a a", "z", "b#0 c#0", "b#9", ""))
                .append("' name='")
                .append(pick("Front", "", " ", "a"))
                .append("' cut='")
                .append(pick("1", "2", "0", "x"))
                .append("' allowance='");
        number();
        out.append("'").append(chance(3) ? " box='10 10 110 210'" : "").append(">");
        int inside = random.nextInt(4);
        for (int i = 0; i < inside; i++) {
            String name = pick("edge", "at", "notch", "dart", "grain", "rider", "original", "other");
            out.append("<")
                    .append(name)
                    .append(" name='")
                    .append(pick("e", "f", ""))
                    .append("' role='")
                    .append(pick("seam", "fold", "x"))
                    .append("' level='hip' ref='")
                    .append(pick("in", "a", "in#0"))
                    .append("'");
            for (String attribute : List.of("from", "to", "via", "at", "through", "mouth", "mouth2", "point")) {
                if (chance(2)) {
                    out.append(" ").append(attribute).append("='");
                    place();
                    out.append("'");
                }
            }
            if (name.equals("original")) {
                out.append(" d='");
                path();
                out.append("'");
            }
            out.append("/>");
        }
        out.append("</piece>");
    }

    private void drawing() {
        out.append(pick("", "", "<?xml version='1.0' encoding='UTF-8'?>\r\n", "<!DOCTYPE svg [<!ENTITY e 'x'>]>\n"));
        out.append("<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='");
        number();
        out.append(pick("mm", "px", "", "%", "in", "q")).append("' height='300mm' viewBox='0 0 300 ");
        number();
        out.append("' preserveAspectRatio='")
                .append(pick("none", "xMinYMin", "xMidYMid slice", "x"))
                .append("'>");
        out.append("<style>");
        style();
        out.append("</style>");
        int elements = 1 + random.nextInt(6);
        int open = 0;
        for (int i = 0; i < elements; i++) {
            switch (random.nextInt(8)) {
                case 0 -> {
                    out.append("<g id='").append(pick("a", "b", "c")).append("' transform='");
                    transform();
                    out.append("'>");
                    open++;
                }
                case 1 ->
                    out.append("<use href='#").append(pick("a", "b", "c", "d")).append("' x='5'/>");
                case 2 -> {
                    out.append("<rect id='d' width='50' height='");
                    number();
                    out.append("' rx='");
                    number();
                    out.append("'/>");
                }
                case 3 -> {
                    out.append("<polygon points='");
                    for (int n = random.nextInt(9); n >= 0; n--) {
                        number();
                        separator();
                    }
                    out.append("'/>");
                }
                case 4 -> {
                    out.append("<circle r='");
                    number();
                    out.append("' style='");
                    declarations();
                    out.append("'/>");
                }
                case 5 ->
                    out.append("<line x1='")
                            .append(pick("0", "10", "20"))
                            .append("' y2='")
                            .append(pick("0", "30", "60"))
                            .append("'/>");
                case 6 -> out.append("<text x='5' y='6'>10 cm &e;</text><image href='data:image/png;base64,AAAA'/>");
                default -> {
                    out.append("<path d='");
                    path();
                    out.append("' transform='");
                    transform();
                    out.append("'/>");
                }
            }
        }
        out.append("</g>".repeat(open)).append("</svg>");
    }

    private String spoilt() {
        int spoils = chance(3) ? 0 : random.nextInt(3);
        for (int i = 0; i < spoils && out.length() > 0; i++) {
            int at = random.nextInt(out.length());
            switch (random.nextInt(4)) {
                case 0 -> out.deleteCharAt(at);
                case 1 -> out.insert(at, pick(SPOILS));
                case 2 -> out.setLength(chance(4) ? at : out.length());
                default -> {
                    int to = Math.min(out.length(), at + random.nextInt(20));
                    out.insert(at, out.substring(at, to));
                }
            }
        }
        return out.toString();
    }
}
