package easewright.alter;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Small pieces for the tests of alterations. */
public final class Cloths {
    public static final double INCH = 25.4;
    public static final Level WAIST = Level.of("waist", LevelKind.WAIST);
    public static final Level HIP = Level.of("hip", LevelKind.HIP);

    private Cloths() {}

    public static Point in(double x, double y) {
        return new Point(x * INCH, y * INCH);
    }

    public static Pattern pattern(List<Level> levels, Piece... pieces) {
        return Pattern.bare(List.of(pieces), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(levels);
    }

    public static double girth(Pattern pattern, String level) {
        return Measures.of(pattern).girth(level).orElseThrow().finished();
    }

    /** The length of an edge as it is sewn, mm. */
    public static double sewn(Piece piece, String edge) {
        return Measures.of(piece, List.of()).edge(edge).orElseThrow().mm();
    }

    public static double sewn(Pattern pattern, String piece, String edge) {
        return sewn(pattern.piece(piece).orElseThrow(), edge);
    }

    /** The same piece drawn the other way round. */
    static Piece reversed(Piece piece) {
        return piece.withOutline(piece.outline().reversed())
                .withEdges(piece.edges().stream()
                        .map(e -> e.withEnds(e.to(), e.from()))
                        .toList());
    }

    /** Why a change is not made. */
    static Refusal refusal(Alteration change, Pattern pattern) {
        return catchThrowableOfType(Refusal.class, () -> change.apply(pattern));
    }

    /**
     * A piece of straight edges.
     *
     * @param edges one for each corner to the next, with names and roles such as {@code "waist WAIST, left side SEAM"}
     */
    public static Piece polygon(String id, List<Point> corners, String edges) {
        Outline outline = Outline.polygon(corners);
        String[] all = edges.split(", ");
        List<Edge> named = new ArrayList<>();
        for (int i = 0; i < all.length; i++) {
            int space = all[i].lastIndexOf(' ');
            named.add(Edge.of(
                    all[i].substring(0, space),
                    EdgeRole.valueOf(all[i].substring(space + 1)),
                    corners.get(i),
                    corners.get((i + 1) % corners.size())));
        }
        return Piece.bare(id, outline).withEdges(named);
    }

    /** A square, or a strip of another depth, its edges top, right, hem and left; inches. */
    public static Piece square(String id, double deep, EdgeRole top, EdgeRole left) {
        return polygon(
                id,
                List.of(in(0, 0), in(10, 0), in(10, deep), in(0, deep)),
                "top " + top + ", right SEAM, hem HEM, left " + left);
    }

    /** Half a bodice on the fold by its corners: from the neck's centre round by the side to the fold. */
    public static Piece bodice(String id, List<Point> corners, LevelMark... levels) {
        return polygon(id, corners, "neck NECK, shoulder SHOULDER, armhole ARMHOLE, side SEAM, waist WAIST, fold FOLD")
                .toBuilder()
                .cut(1, true)
                .levels(List.of(levels))
                .build();
    }

    /** Worked example W5: a back with its bust level half way between nape and waist. */
    public static Piece back() {
        return bodice(
                "back",
                List.of(in(0, 0), in(3, -0.5), in(7, 1), in(9, 8), in(9, 16), in(0, 16)),
                LevelMark.through("bust", in(2, 8)),
                LevelMark.along("waist", "waist"));
    }

    /** Worked example W14: a bodice whose bust level lies so far below its underarm. */
    public static Piece lowBust(String id, double below) {
        return bodice(
                id,
                List.of(in(0, 0), in(5, 0), in(5.5, 1), in(10, 8), in(10, 16), in(0, 16)),
                LevelMark.through("bust", in(2, 8 + below)));
    }

    /** Half a body on the fold from the shoulder to the hem, its side bent at the waist. */
    public static Piece body(double waist, LevelMark... levels) {
        return polygon(
                        "body",
                        List.of(in(0, 0), in(9, 0), in(10, 8), in(waist, 16), in(11, 24), in(0, 24)),
                        "shoulder SHOULDER, armhole ARMHOLE, upper side SEAM, lower side SEAM, hem HEM, fold FOLD")
                .toBuilder()
                .cut(1, true)
                .levels(List.of(levels))
                .build();
    }

    /** Worked example W3: a straight side seam, waist to hip 8 in, hem 14 in lower, and a level between and at the hem. */
    public static Piece straightSkirt(String id) {
        return skirtHalf(id, 9.75, 9.75, 8, 22)
                .withLevels(List.of(
                        LevelMark.along("waist", "waist"),
                        LevelMark.through("hip", in(1, 8)),
                        LevelMark.through("between", in(1, 4)),
                        LevelMark.through("low", in(1, 22))));
    }

    /** Half a skirt on the fold, drawn clockwise from the fold's top: waist, side, hem, fold. Inches. */
    public static Piece skirtHalf(String id, double waist, double hip, double hipDepth, double length) {
        Point top = in(0, 0);
        Point waistSide = in(waist, 0);
        Point hipSide = in(hip, hipDepth);
        Point hemSide = in(hip, length);
        Point hemFold = in(0, length);
        List<Segment> segments = List.of(
                new Line(top, waistSide),
                new Line(waistSide, hipSide),
                new Line(hipSide, hemSide),
                new Line(hemSide, hemFold),
                new Line(hemFold, top));
        return Piece.bare(id, new Outline(segments)).toBuilder()
                .cut(1, true)
                .edges(skirtEdges(top, waistSide, hemSide, hemFold))
                .levels(List.of(LevelMark.along("waist", "waist"), LevelMark.through("hip", in(1, hipDepth))))
                .build();
    }

    private static List<Edge> skirtEdges(Point top, Point waistSide, Point hemSide, Point hemFold) {
        return List.of(
                Edge.of("waist", EdgeRole.WAIST, top, waistSide),
                Edge.of("side", EdgeRole.SEAM, waistSide, hemSide),
                Edge.of("hem", EdgeRole.HEM, hemSide, hemFold),
                Edge.of("fold", EdgeRole.FOLD, hemFold, top));
    }

    /** The same with a curved side and a curved waist that holds a drawn dart. Millimetres. */
    public static Piece curvedSkirt(String id) {
        Point top = new Point(0, 8);
        Point waistSide = new Point(190, -6);
        Point hemSide = new Point(240, 600);
        Point hemFold = new Point(0, 604);
        Cubic waist = new Cubic(top, new Point(60, 8), new Point(130, 2), waistSide);
        Cubic upper = new Cubic(waistSide, new Point(205, 50), new Point(238, 130), new Point(240, 200));
        Line lower = new Line(new Point(240, 200), hemSide);
        Cubic hem = new Cubic(hemSide, new Point(160, 603), new Point(80, 604), hemFold);
        Dart dart = new Dart(
                "dart", waist.at(0.45), waist.at(0.55), new Point(90, 110), Optional.empty(), Optional.of("waist"));
        return Piece.bare(id, new Outline(List.of(waist, upper, lower, hem, new Line(hemFold, top)))).toBuilder()
                .cut(1, true)
                .edges(skirtEdges(top, waistSide, hemSide, hemFold))
                .levels(List.of(LevelMark.along("waist", "waist"), LevelMark.through("hip", new Point(20, 200))))
                .darts(List.of(dart))
                .build();
    }
}
