package easewright.evidence;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;

import easewright.alter.Altered;
import easewright.alter.CentreChange;
import easewright.alter.Cloths;
import easewright.alter.DartFold;
import easewright.alter.HingedSlash;
import easewright.alter.Lengthen;
import easewright.alter.ParallelSlash;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Centre lines, slashes, lengthening and darts, by the worked examples. */
class SlashExamplesTest extends Topic {
    private static final Level BUST = Level.of("bust", LevelKind.BUST);
    private static final double FIFTH_DIGIT = 5.1e-6;

    private final List<Check> checks = new ArrayList<>();

    @Override
    String title() {
        return "Centre lines, slashes, length and darts";
    }

    @Override
    String words() {
        return "A square of 10 in, slashed in its middle from the hem up to a hinge and opened by 1 in, or slashed"
                + " through; a back moved at its centre; a body lengthened below the bust; a dart read at levels.";
    }

    @Override
    List<Check> checks() throws Exception {
        checks.clear();
        centre();
        wedgeAngles();
        wedge();
        through();
        longer();
        dart();
        return List.copyOf(checks);
    }

    private static Source worked(String example) {
        return Source.calculated("worked example " + example + ", docs/sources.md 4.6");
    }

    private void add(String subject, Source source, String unit, double expected, double got, double allowed) {
        checks.add(Check.number(subject, source, unit, expected, got, allowed));
    }

    private static double edge(Piece piece, String name) {
        return Measures.of(piece, List.of()).edge(name).orElseThrow().mm() / INCH;
    }

    private static double degrees(Altered altered, String code, String value) {
        return altered.findings().stream()
                .filter(f -> f.code().equals(code))
                .mapToDouble(f -> (Double) f.values().get(value))
                .findFirst()
                .orElseThrow();
    }

    private void centre() throws Exception {
        Source w5 = worked("W5");
        Piece back = Cloths.back();
        Pattern before = pattern(List.of(BUST, WAIST), back);
        EdgeRef fold = EdgeRef.of("back", "fold");
        Pattern wide = CentreChange.parallel("bust", INCH, fold)
                .acceptingProtected()
                .apply(before)
                .pattern();
        add(
                "centre back 1/2 in out, parallel: bust",
                w5,
                "in",
                1,
                (girth(wide, "bust") - girth(before, "bust")) / INCH,
                1e-6);
        add("the same: waist", w5, "in", 1, (girth(wide, "waist") - girth(before, "waist")) / INCH, 1e-6);
        double nape = wide.pieces().get(0).edge("neck").orElseThrow().from().x();
        add("the same: half the neck", w5, "in", 0.5, -nape / INCH, 1e-6);
        Altered swung = CentreChange.wedge("bust", 0.5 * INCH, fold).apply(before);
        Pattern wedge = swung.pattern();
        add(
                "wedge from the nape, 1/2 in at 16 in: bust at 8 in",
                w5,
                "in",
                0.5,
                (girth(wedge, "bust") - girth(before, "bust")) / INCH,
                1e-6);
        add("the same: waist", w5, "in", 1, (girth(wedge, "waist") - girth(before, "waist")) / INCH, 1e-6);
        add("the same: neck", w5, "in", edge(back, "neck"), edge(wedge.pieces().get(0), "neck"), 1e-9);
        add(
                "the same: slant of the centre back",
                w5,
                "°",
                1.790,
                degrees(swung, "centre-off-fold", "slant.degrees"),
                5e-4);
    }

    private static Piece square(double deep) {
        return Cloths.square("cloth", deep, EdgeRole.SEAM, EdgeRole.SEAM);
    }

    private static Altered opened(double gap, double deep) throws Exception {
        return new HingedSlash("cloth", in(5, 0), in(5, deep), gap * INCH, in(10, deep / 2), false)
                .apply(pattern(List.of(), square(deep)));
    }

    private void wedgeAngles() throws Exception {
        double[][] rows = {{0.5, 8, 3.5816}, {1, 10, 5.7320}, {2, 12, 9.5604}, {2.5, 40, 3.5816}, {1.5, 16, 5.3734}};
        for (double[] row : rows) {
            add(
                    String.format(
                            Locale.ROOT, "slash %.0f in deep opened by %s in: turn", row[1], Double.toString(row[0])),
                    worked("W6"),
                    "°",
                    row[2],
                    degrees(opened(row[0], row[1]), "grain-turned", "turn.degrees"),
                    5.1e-5);
        }
    }

    private void wedge() throws Exception {
        Source w6 = worked("W6");
        Piece after = opened(1, 10).pattern().pieces().get(0);
        double[][] corners = {{9.97500, -0.49937}, {10.97375, 9.45063}, {5.99875, 9.95000}};
        String[] names = {"top corner", "hem corner", "cut corner"};
        for (int i = 0; i < corners.length; i++) {
            Point expected = in(corners[i][0], corners[i][1]);
            Point got = nearestCorner(after.outline(), expected);
            add(
                    "square opened by 1 in: " + names[i] + ", across",
                    w6,
                    "in",
                    corners[i][0],
                    got.x() / INCH,
                    FIFTH_DIGIT);
            add("the same, down", w6, "in", corners[i][1], got.y() / INCH, FIFTH_DIGIT);
        }
        add("its hem, 5 + 1 + 5", w6, "in", 11, edge(after, "hem"), 1e-9);
        add("its top, 5 + 5", w6, "in", 10, edge(after, "top"), 1e-9);
        double gained = after.outline().signedArea() / (INCH * INCH) - 100;
        add("cloth gained, ½·10²·sin θ", w6, "in²", 4.993746, gained, 5e-7);
    }

    private static Point nearestCorner(Outline outline, Point wanted) {
        Point best = outline.segments().get(0).start();
        for (Segment s : outline.segments()) {
            best = s.start().distance(wanted) < best.distance(wanted) ? s.start() : best;
        }
        return best;
    }

    private void through() throws Exception {
        Source w7 = worked("W7");
        Piece after = new ParallelSlash("cloth", in(5, 0), in(5, 10), INCH, in(10, 5), false)
                .apply(pattern(List.of(), square(10)))
                .pattern()
                .pieces()
                .get(0);
        add("square slashed through by 1 in: top", w7, "in", 11, edge(after, "top"), 1e-9);
        add("the same: hem", w7, "in", 11, edge(after, "hem"), 1e-9);
        add("the same: cloth gained", w7, "in²", 10, after.outline().signedArea() / (INCH * INCH) - 100, 1e-9);
    }

    private void longer() throws Exception {
        Source w17 = worked("W17");
        Level hip = Level.of("hip", LevelKind.HIP);
        Piece body = Cloths.body(10, LevelMark.through("bust", in(3, 9)), LevelMark.through("hip", in(3, 23)));
        Pattern before = pattern(List.of(BUST, hip), body);
        Pattern after = Lengthen.below("bust", 3 * INCH, INCH).apply(before).pattern();
        Piece piece = after.pieces().get(0);
        add(
                "lengthened 1 in below the bust: bust girth",
                w17,
                "in",
                girth(before, "bust") / INCH,
                girth(after, "bust") / INCH,
                1e-9);
        add("the same: hip girth", w17, "in", girth(before, "hip") / INCH, girth(after, "hip") / INCH, 1e-9);
        add("the same: upright side seam", w17, "in", 9, edge(piece, "upper side"), 1e-9);
        add("the same: fold", w17, "in", 25, edge(piece, "fold"), 1e-9);
        add(
                "the same: hip level moves down",
                w17,
                "in",
                24,
                piece.level("hip").orElseThrow().through().orElseThrow().y() / INCH,
                1e-9);
    }

    /** The cap of a folded dart, and its intake w(1 − y/L) at levels. */
    private void dart() {
        Source w8 = worked("W8");
        DartFold inches = fold("dart, legs 3 1/2 in, 1 in wide", 3.5, 1, 16.42642, 0.072169, "in", INCH);
        add(
                "the same: cap from the point",
                w8,
                "in",
                3.536270,
                (deep(3.5, 1) * INCH - inches.peak().y()) / INCH,
                5e-7);
        fold("dart, legs 12 cm, 2 cm wide", 12, 2, 9.56038, 0.083624, "cm", 10);
        Piece plain = square(20).toBuilder()
                .darts(List.of(new Dart("d", in(4, 0), in(5, 0), in(4.5, 3.5), Optional.empty(), Optional.of("top"))))
                .build();
        for (double y : new double[] {0.5, 1.75, 3}) {
            Piece at = plain.withLevels(List.of(LevelMark.through("bust", in(1, y))));
            add(
                    "dart 1 in wide, 3 1/2 in long, " + y + " in down: intake",
                    w8,
                    "in",
                    1 - y / 3.5,
                    Measures.width(at, BUST).orElseThrow().dartIntake() / INCH,
                    1e-9);
        }
    }

    private static double deep(double leg, double intake) {
        return Math.sqrt(leg * leg - intake * intake / 4);
    }

    private DartFold fold(String subject, double leg, double intake, double angle, double cap, String unit, double mm) {
        DartFold fold = DartFold.of(new Dart(
                "d",
                new Point(-intake / 2 * mm, 0),
                new Point(intake / 2 * mm, 0),
                new Point(0, deep(leg, intake) * mm),
                Optional.empty(),
                Optional.empty()));
        add(subject + ": angle", worked("W8"), "°", angle, Math.toDegrees(fold.angle()), 5e-6);
        add(subject + ": cap beyond the mouth", worked("W8"), unit, cap, fold.overChord() / mm, 5e-7);
        return fold;
    }
}
