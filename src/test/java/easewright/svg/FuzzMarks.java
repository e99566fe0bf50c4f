package easewright.svg;

import java.util.List;

/** Writes a drawing of two pieces with a block of marks. */
final class FuzzMarks extends FuzzPen {
    FuzzMarks(FuzzPen pen) {
        super(pen);
    }

    private void place() {
        out.append(pick("10 10", "110 10", "110 210", "10 210", "60 10", "110 100", "1e9 0", "10,10", "x y", ""));
    }

    void marks() {
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
}
