package easewright.print.report;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark.Anchor;
import easewright.print.ink.Pen;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import easewright.print.report.Part.Figure;
import easewright.print.sheet.ClothPlan;
import easewright.print.sheet.ClothPlan.OnCloth;
import easewright.text.Words;
import java.util.List;
import java.util.Map;

/** Pieces on the cloth, its length from left to right. */
final class ClothFigure {
    private static final double WIDTH = 176;
    /** How high the cloth is drawn at most, and how high where there is less room, mm. */
    static final List<Double> HEIGHTS = List.of(58.0, 54.0, 50.0, 46.0, 42.0);

    private static final double LEFT = 9;
    private static final double BELOW = 7;

    private ClothFigure() {}

    static boolean sideBySide(List<Figure> figures) {
        double sum = figures.stream().mapToDouble(Figure::width).sum();
        return sum + (figures.size() - 1) * ReportPages.GAP <= WIDTH;
    }

    /**
     * The figure.
     *
     * @param tallest height of the cloth at most, mm
     * @param longest length that fills the width: figures to be compared are drawn to one scale, mm
     */
    static Figure of(ClothPlan plan, double tallest, double longest, String caption, Words words) {
        double across = plan.drawnWidth();
        double scale = Math.min((WIDTH - LEFT - 2) / longest, tallest / across);
        // Along the cloth to the right, across it upwards, so that the fold lies at the foot.
        Affine lying = new Affine(0, -scale, scale, 0, LEFT, across * scale + 2);
        Pencil pencil = new Pencil();
        Box cloth = new Box(LEFT, 2, LEFT + plan.length() * scale, 2 + across * scale);
        pencil.box(cloth, Pen.RULE);
        for (OnCloth piece : plan.pieces()) {
            Outline outline = piece.outline().transformed(lying);
            pencil.fill(outline, Tone.PALE).around(outline, Pen.EDGE);
            name(pencil, piece.name(), outline.box());
        }
        if (plan.folded()) {
            pencil.line(cloth.minX(), cloth.maxY(), cloth.maxX(), cloth.maxY(), Pen.FOLD);
        }
        double middle = cloth.centre().y();
        String width = words.of(
                plan.folded() ? "report.cloth.half" : "report.cloth.width", Map.of("width", plan.drawnWidth()));
        pencil.write(width, new Point(LEFT - 3, middle), 2.8, Anchor.MIDDLE, -Math.PI / 2, false, Tone.DARK);
        double y = cloth.maxY() + 3;
        pencil.line(cloth.minX(), y, cloth.maxX(), y, Pen.MEASURE);
        pencil.arrowHead(new Point(cloth.maxX(), y), new Point(1, 0), 1.8, Tone.DARK)
                .arrowHead(new Point(cloth.minX(), y), new Point(-1, 0), 1.8, Tone.DARK);
        String length = words.coarse(ClothNeeded.sold(plan.length()));
        pencil.write(length, new Point(cloth.centre().x(), y + 3.4), 2.8, Anchor.MIDDLE, 0, false, Tone.DARK);
        List<String> names =
                plan.pieces().stream().map(OnCloth::name).distinct().toList();
        return new Figure(
                pencil.picture(),
                Math.max(40, cloth.maxX() + 2),
                cloth.maxY() + BELOW,
                caption,
                caption + " " + String.join(", ", names));
    }

    private static void name(Pencil pencil, String name, Box box) {
        Lettering face = Lettering.of(false);
        double room = Math.max(box.width(), box.height()) - 2;
        String fitted = face.fitted(name, 2.8, Math.max(4, room));
        boolean level = face.width(fitted, 2.8) <= box.width() - 1 || box.width() >= box.height();
        double turn = level ? 0 : -Math.PI / 2;
        Point at = box.centre().plus(level ? new Point(0, 1) : new Point(1, 0));
        pencil.write(fitted, at, 2.8, Anchor.MIDDLE, turn, false, Tone.BLACK);
    }
}
