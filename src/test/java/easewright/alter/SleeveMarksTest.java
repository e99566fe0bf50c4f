package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A sleeve of straight lines, so that all has a closed form: a cap of two lines over 300 mm, 100 mm high, and below it
 * 380 and 420 mm down to a slanting hem. Made {@link #BY} wider between its underarm corners, each goes half of that.
 */
class SleeveMarksTest {
    private static final double BY = 16;
    private static final double CAP = 2 * Math.hypot(150, 100);

    /** The cap's lines keep their length over the wider base. */
    private static final double LOWER = Math.sqrt(CAP * CAP / 4 - (150 + BY / 2) * (150 + BY / 2)) / 100;

    private static final Level ARM = Level.of("arm", LevelKind.UPPER_ARM);
    private static final Level CROWN = Level.of("crown", LevelKind.OTHER);
    private static final Point START = new Point(0, 100);
    private static final Point TOP = new Point(150, 0);
    private static final Point END = new Point(300, 100);
    private static final Point END_HEM = new Point(280, 520);
    private static final Point START_HEM = new Point(20, 480);

    private static Piece sleeve() {
        return Piece.bare("s", Outline.polygon(List.of(START, TOP, END, END_HEM, START_HEM))).toBuilder()
                .edges(List.of(
                        Edge.of("cap", EdgeRole.CAP, START, END),
                        Edge.of("back underarm", EdgeRole.SEAM, END, END_HEM),
                        Edge.of("hem", EdgeRole.HEM, END_HEM, START_HEM),
                        Edge.of("front underarm", EdgeRole.SEAM, START_HEM, START)))
                .levels(List.of(
                        LevelMark.through("arm", new Point(150, 100)),
                        LevelMark.through("crown", new Point(150, 60)).withReference(new Point(150, 40)),
                        LevelMark.through("elbow", new Point(75, 300))))
                .build();
    }

    private static Altered wider(Piece sleeve) throws Refusal {
        Pattern before = pattern(List.of(ARM, CROWN), sleeve);
        Altered altered = SleeveWidth.at("arm", BY).apply(before);
        assertThat(girth(altered.pattern(), "arm")).isCloseTo(300 + BY, within(1e-6));
        return altered;
    }

    private static Piece made(Piece sleeve) throws Refusal {
        return wider(sleeve).pattern().pieces().get(0);
    }

    private static void assertAt(Point p, double x, double y) {
        assertThat(p.distance(new Point(x, y))).as("%s", p).isLessThan(1e-6);
    }

    @Test
    void theCapIsLowerByWhatItsSeamNeedsAndThatIsSaid() throws Refusal {
        Altered altered = wider(sleeve());
        List<Segment> all = altered.pattern().pieces().get(0).outline().segments();
        assertAt(all.get(0).start(), -BY / 2, 100);
        assertAt(all.get(0).end(), 150, 100 - 100 * LOWER);
        assertAt(all.get(1).end(), 300 + BY / 2, 100);
        assertThat(all.get(2).end()).isEqualTo(END_HEM);
        assertThat(all.get(3)).isEqualTo(new Line(END_HEM, START_HEM));
        Finding height = altered.findings().get(0);
        assertThat(height.code()).isEqualTo("cap-height");
        assertThat((Double) height.values().get("before")).isCloseTo(100, within(1e-9));
        assertThat((Double) height.values().get("after")).isCloseTo(100 * LOWER, within(1e-6));
        assertThat((Double) height.values().get("change.signed")).isCloseTo(100 * LOWER - 100, within(1e-6));
    }

    /** Two parts of a sleeve, each with a cap of its own, take half each. */
    @Test
    void twoPartsShareTheAmount() throws Refusal {
        Piece other =
                Piece.bare("t", sleeve().outline()).withEdges(sleeve().edges()).withLevels(sleeve().levels());
        Pattern before = pattern(List.of(ARM), sleeve(), other);
        Pattern after = SleeveWidth.at("arm", 2 * BY).apply(before).pattern();
        for (Piece each : after.pieces()) {
            assertAt(each.outline().segments().get(0).start(), -BY / 2, 100);
        }
    }

    @Test
    void notchesAndDartsLeanWithTheirSeam() throws Refusal {
        Point middle = END.towards(END_HEM, 0.5);
        Dart elbow = new Dart(
                "elbow",
                END.towards(END_HEM, 0.45),
                END.towards(END_HEM, 0.55),
                new Point(230, 300),
                Optional.empty(),
                Optional.of("back underarm"));
        Dart within = new Dart(
                "within",
                new Point(75, 200),
                new Point(85, 200),
                new Point(75, 300),
                Optional.of(new Point(75, 140)),
                Optional.empty());
        Piece after = made(sleeve().toBuilder()
                .notches(List.of(
                        new Notch("seam", middle),
                        new Notch("other seam", START_HEM.towards(START, 0.75)),
                        new Notch("hem", END_HEM.towards(START_HEM, 0.5)),
                        new Notch("cap", START.towards(TOP, 0.5)),
                        new Notch("inside", new Point(75, 200)),
                        new Notch("in the cap", new Point(120, 70))))
                .darts(List.of(elbow, within))
                .build());
        assertAt(after.notches().get(0).at(), middle.x() + BY / 4, middle.y());
        assertAt(after.notches().get(1).at(), 5 - BY * 3 / 8, 195);
        assertThat(after.notches().get(2).at()).isEqualTo(END_HEM.towards(START_HEM, 0.5));
        assertAt(after.notches().get(3).at(), (150 - BY / 2) / 2, 100 - 50 * LOWER);
        // Within the cloth by how far across it lies, and how near to the hem: here a quarter across, a quarter down.
        assertAt(after.notches().get(4).at(), 75 - BY / 4 * 0.75, 200);
        assertAt(after.notches().get(5).at(), 120 - BY / 10, 100 - 30 * LOWER);
        Dart is = after.darts().get(0);
        assertAt(is.mouth1(), elbow.mouth1().x() + BY / 2 * 0.55, elbow.mouth1().y());
        assertAt(is.mouth2(), elbow.mouth2().x() + BY / 2 * 0.45, elbow.mouth2().y());
        assertAt(is.point(), 230 + BY * (230 / 300.0 - 0.5) * 0.5, 300);
        Dart inside = after.darts().get(1);
        assertAt(inside.point(), 75 - BY / 4 * 0.5, 300);
        assertAt(inside.otherPoint().orElseThrow(), 75 - BY / 4 * 0.9, 140);
    }

    @Test
    void levelsInTheCapComeDownWithIt() throws Refusal {
        Piece after = made(sleeve());
        LevelMark crown = after.level("crown").orElseThrow();
        assertAt(crown.through().orElseThrow(), 150, 100 - 40 * LOWER);
        assertAt(crown.reference().orElseThrow(), 150, 100 - 60 * LOWER);
        assertThat(after.level("arm")).isEqualTo(sleeve().level("arm"));
        assertThat(after.level("elbow")).isEqualTo(sleeve().level("elbow"));
    }

    @Test
    void linesDrawnOnTheSleeveGoAlong() throws Refusal {
        Line low = new Line(new Point(75, 200), new Point(225, 200));
        Cubic high = new Cubic(new Point(150, 20), new Point(150, 40), new Point(150, 60), new Point(150, 80));
        Line beside = new Line(new Point(310, 100), new Point(290, 520));
        Cubic bent = new Cubic(new Point(310, 100), new Point(303, 240), new Point(297, 380), new Point(290, 520));
        Line below = new Line(new Point(40, 495), new Point(260, 530));
        Cubic belowBent = new Cubic(new Point(40, 495), new Point(110, 510), new Point(190, 515), new Point(260, 530));
        List<Rider> riders = List.of(
                new Rider("inner", Rider.Kind.INNER, List.of(low, high)),
                new Rider("cut", Rider.Kind.PARALLEL, List.of(beside, bent)),
                new Rider("hem", Rider.Kind.PARALLEL, List.of(below, belowBent)),
                new Rider("all", Rider.Kind.PARALLEL, List.of(beside, below, belowBent)));
        Piece after = made(sleeve().toBuilder().riders(riders).build());
        List<Segment> inner = after.riders().get(0).segments();
        assertAt(inner.get(0).start(), 75 - BY / 4 * 0.75, 200);
        assertAt(inner.get(0).end(), 225 + BY / 4 * 0.75, 200);
        assertAt(inner.get(1).start(), 150, 100 - 80 * LOWER);
        assertAt(inner.get(1).end(), 150, 100 - 20 * LOWER);
        assertAt(inner.get(1).at(0.5), 150, 100 - 50 * LOWER);
        for (Segment cut : after.riders().get(1).segments()) {
            assertAt(cut.start(), 310 + BY / 2, 100);
            assertThat(cut.end().distance(new Point(290, 520))).isLessThan(0.02);
            assertThat(cut.at(0.5).x() - beside.at(0.5).x()).isCloseTo(BY / 4, within(0.2));
            assertThat(cut.at(0.5).y()).isCloseTo(310, within(0.2));
        }
        assertThat(after.riders().get(2)).isSameAs(riders.get(2));
        assertThat(after.riders().get(3).segments().get(0)).isNotEqualTo(beside);
        assertThat(after.riders().get(3).segments().get(1)).isSameAs(below);
        assertThat(after.riders().get(3).segments().get(2)).isSameAs(belowBent);
    }

    /** Carried to the hem the seams move out as they are, and what lies between goes in proportion across. */
    @Test
    void carriedToTheHemNothingLeans() throws Refusal {
        Pattern before = pattern(
                List.of(ARM, CROWN),
                sleeve().toBuilder()
                        .notches(List.of(
                                new Notch("seam", END.towards(END_HEM, 0.5)), new Notch("inside", new Point(75, 200))))
                        .build());
        Piece after = SleeveWidth.at("arm", BY)
                .carriedToHem()
                .apply(before)
                .pattern()
                .pieces()
                .get(0);
        assertAt(after.outline().segments().get(2).end(), 280 + BY / 2, 520);
        assertAt(after.outline().segments().get(3).end(), 20 - BY / 2, 480);
        assertAt(after.notches().get(0).at(), 290 + BY / 2, 310);
        assertAt(after.notches().get(1).at(), 75 - BY / 4, 200);
    }

    @Test
    void whatIsNoSleeveIsRefused() throws Refusal {
        Pattern before = pattern(List.of(ARM, CROWN, Level.of("wrist", LevelKind.WRIST)), sleeve());
        assertThat(code(SleeveWidth.at("hip", 5), before)).isEqualTo("level-unknown");
        assertThat(code(SleeveWidth.at("wrist", 5), before)).isEqualTo("no-sleeve-at-level");
        assertThat(code(new SleeveWidth("arm", 5, List.of("body"), false, false), before))
                .isEqualTo("piece-unknown");
        assertThat(code(new SleeveWidth("wrist", 5, List.of("s"), false, false), before))
                .isEqualTo("piece-not-counted");
        Pattern uncounted = pattern(
                List.of(ARM),
                sleeve().withLevels(List.of(
                        LevelMark.through("arm", new Point(150, 100)).notCounted())));
        assertThat(code(SleeveWidth.at("arm", 5), uncounted)).isEqualTo("no-sleeve-at-level");
        Pattern folded = pattern(List.of(ARM), sleeve().toBuilder().cut(1, true).build());
        assertThat(code(SleeveWidth.at("arm", 5), folded)).isEqualTo("sleeve-not-whole");
        Piece held = sleeve().withEdges(sleeve().edges().stream()
                .map(e -> e.role() == EdgeRole.SEAM ? e.withProtected(true) : e)
                .toList());
        assertThat(code(SleeveWidth.at("arm", 5), pattern(List.of(ARM), held))).isEqualTo("edge-protected");
        new SleeveWidth("arm", 5, List.of(), false, true).apply(pattern(List.of(ARM), held));
        // Wider than the cap's seam is long it cannot be, and not as long either: 5 % of the height is left.
        Refusal flat = catchThrowableOfType(
                Refusal.class, () -> SleeveWidth.at("arm", 100).apply(before));
        assertThat(flat.code()).isEqualTo("cap-too-short");
        double lowest = 2 * Math.sqrt(CAP * CAP / 4 - 25) - 300;
        assertThat(flat.largest().orElseThrow()).isCloseTo(lowest, within(1e-3));
        Refusal closed = catchThrowableOfType(
                Refusal.class, () -> SleeveWidth.at("arm", -299.5).apply(before));
        assertThat(closed.code()).isIn("cap-too-short", "outline-crosses-itself");
    }

    private static String code(Alteration change, Pattern pattern) {
        return catchThrowableOfType(Refusal.class, () -> change.apply(pattern)).code();
    }
}
