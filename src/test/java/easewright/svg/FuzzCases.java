package easewright.svg;

import java.util.Random;

/** Makes one input for one reader out of a seed: mostly well-formed by its grammar, then spoilt in a few places. */
final class FuzzCases extends FuzzPen {
    /** The readers that are fuzzed. */
    enum Reader {
        PATH,
        TRANSFORM,
        STYLE,
        MARKS,
        DRAWING
    }

    private static final String[] SPOILS = {
        "", " ", ",", ",,", "\u0000", "\n", "\t", "\f", "\u00a0", "<", ">", "&", "&#10;", "&#x0;", "&bad;", "\"", "'",
                "(", ")",
        "{", "}", ";", ":", "/*", "*/", "\\", "]]>", "<!--", "-->", "\ud83e\udea1", "\u202e", "-", "e", "M", "z", "A",
                "%", "url(#a)",
        "@media{", "!important", "#", "NaN"
    };

    private FuzzCases(Random random) {
        super(random);
    }

    static String of(Reader reader, long seed) {
        FuzzCases cases = new FuzzCases(new Random(seed * 0x9E3779B97F4A7C15L + reader.ordinal()));
        switch (reader) {
            case PATH -> cases.path();
            case TRANSFORM -> cases.transform();
            case STYLE -> new FuzzStyle(cases).style();
            case MARKS -> new FuzzMarks(cases).marks();
            default -> cases.drawing();
        }
        return cases.spoilt();
    }

    private void drawing() {
        FuzzStyle style = new FuzzStyle(this);
        out.append(pick("", "", "<?xml version='1.0' encoding='UTF-8'?>\r\n", "<!DOCTYPE svg [<!ENTITY e 'x'>]>\n"));
        out.append("<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='");
        number();
        out.append(pick("mm", "px", "", "%", "in", "q")).append("' height='300mm' viewBox='0 0 300 ");
        number();
        out.append("' preserveAspectRatio='")
                .append(pick("none", "xMinYMin", "xMidYMid slice", "x"))
                .append("'>");
        out.append("<style>");
        style.style();
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
                    style.declarations();
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
