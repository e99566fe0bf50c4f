package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.sewn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.BodiceDraft;
import easewright.draft.KnitTopDraft;
import easewright.draft.SampleBodies;
import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.measure.NotchMeeting;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.List;
import org.junit.jupiter.api.Test;

class SleeveWidthTest {
    private static final String ARM = "upper arm";
    private static final Level UPPER_ARM = Level.of(ARM, LevelKind.UPPER_ARM);

    private static Pattern bodice() {
        return new BodiceDraft(SampleBodies.MAREN, 90, 40, 50).draft().pattern();
    }

    @Test
    void theSampleSleeveFitsItsArmholeAsBefore() throws Refusal {
        Pattern before = bodice();
        for (double amount : new double[] {25, -18, 0.01}) {
            SleeveWidth change = SleeveWidth.at(ARM, amount);
            Altered altered = change.apply(before);
            Pattern after = altered.pattern();
            assertThat(girth(after, ARM) - girth(before, ARM)).isCloseTo(amount, within(1e-6));
            assertThat(girth(after, "wrist")).isCloseTo(girth(before, "wrist"), within(1e-9));
            assertThat(girth(after, "bust")).isEqualTo(girth(before, "bust"));
            Piece was = before.piece("bodice-sleeve").orElseThrow();
            Piece is = after.piece("bodice-sleeve").orElseThrow();
            assertThat(sewn(is, "cap")).isCloseTo(sewn(was, "cap"), within(1e-6));
            assertThat(sewn(is, "front underarm") - sewn(was, "front underarm"))
                    .isCloseTo(sewn(is, "back underarm") - sewn(was, "back underarm"), within(1e-4));
            assertThat(is.edge("hem")).isEqualTo(was.edge("hem"));
            for (int mate = 0; mate < 4; mate++) {
                assertThat(Measures.of(after).mates().get(mate).drift())
                        .isCloseTo(Measures.of(before).mates().get(mate).drift(), within(1e-4));
            }
            List<NotchMeeting> met = Measures.of(after).mates().get(2).notches();
            List<NotchMeeting> meant = Measures.of(before).mates().get(2).notches();
            for (int i = 0; i < met.size(); i++) {
                assertThat(met.get(i).first()).isCloseTo(meant.get(i).first(), within(0.01));
            }
            Pattern back = change.opposite().orElseThrow().apply(after).pattern();
            assertThat(Likeness.same(back.piece("bodice-sleeve").orElseThrow(), was))
                    .isTrue();
            assertThat(Ways.from(change.note())).isEqualTo(change);
        }
        assertThat(SleeveWidth.at(ARM, 0).apply(before).pattern()).isSameAs(before);
    }

    /** What the cap loses is said; the naive spread, the amount at the underarm corners, falls short at the level below. */
    @Test
    void theCapHeightLostIsSaidAndTheNaiveSpreadFallsShort() throws Refusal {
        Pattern before = bodice();
        Altered altered = SleeveWidth.at(ARM, 25).apply(before);
        Finding height = altered.findings().get(0);
        assertThat(height.code()).isEqualTo("cap-height");
        double lost = (Double) height.values().get("before")
                - (Double) height.values().get("after");
        assertThat(lost).isBetween(5.0, 20.0);
        Piece was = before.piece("bodice-sleeve").orElseThrow();
        Piece is = altered.pattern().piece("bodice-sleeve").orElseThrow();
        double wider = width(is) - width(was);
        assertThat(wider).isGreaterThan(25.5);
        double naive = 25 / wider * 25;
        assertThat(naive).isLessThan(24.6);
    }

    private static double width(Piece sleeve) {
        Edge cap = sleeve.edge("cap").orElseThrow();
        return cap.from().distance(cap.to());
    }

    @Test
    void aShortSleeveMayKeepTheWidthToItsHem() throws Refusal {
        Pattern before =
                new KnitTopDraft(SampleBodies.TOVE, -30, 70, -10, 35).draft().pattern();
        SleeveWidth change = SleeveWidth.at(ARM, 20).carriedToHem();
        Altered altered = change.apply(before);
        Piece was = before.piece("top-sleeve").orElseThrow();
        Piece is = altered.pattern().piece("top-sleeve").orElseThrow();
        assertThat(girth(altered.pattern(), ARM) - girth(before, ARM)).isCloseTo(20, within(1e-6));
        assertThat(sewn(is, "cap")).isCloseTo(sewn(was, "cap"), within(1e-6));
        assertThat(sewn(is, "front underarm")).isCloseTo(sewn(was, "front underarm"), within(1e-9));
        assertThat(sewn(is, "hem") - sewn(was, "hem")).isCloseTo(20, within(0.5));
        Pattern back = change.opposite().orElseThrow().apply(altered.pattern()).pattern();
        assertThat(Likeness.same(back.piece("top-sleeve").orElseThrow(), was)).isTrue();
    }

    /** Closed form: a cap of two straight lines of 250 mm over 300 mm is 200 mm high; over 400 mm, 150 mm. */
    private static Piece tent(double allowance) {
        Point left = new Point(0, 0);
        Point top = new Point(150, -200);
        Point right = new Point(300, 0);
        Point hemRight = new Point(260, 400);
        Point hemLeft = new Point(40, 400);
        Outline outline = Outline.polygon(List.of(left, top, right, hemRight, hemLeft));
        return Piece.bare("s", outline).toBuilder()
                .cut(2, false)
                .drawn(allowance > 0 ? LineKind.CUTTING : LineKind.STITCHING, allowance)
                .edges(List.of(
                        Edge.of("back cap", EdgeRole.CAP, left, top),
                        Edge.of("front cap", EdgeRole.CAP, top, right),
                        Edge.of("front", EdgeRole.SEAM, right, hemRight),
                        Edge.of("hem", EdgeRole.HEM, hemRight, hemLeft),
                        Edge.of("back", EdgeRole.SEAM, hemLeft, left)))
                .notches(List.of(new Notch("n", new Point(75, -100))))
                .grain(new Grain(new Point(150, 0), new Point(150, 300)))
                .levels(List.of(LevelMark.through(ARM, new Point(150, 100))))
                .build();
    }

    private static Pattern just(Piece piece) {
        return Pattern.bare(List.of(piece), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(UPPER_ARM));
    }

    @Test
    void closedFormOfATent() throws Refusal {
        // At the level, a quarter of the way to the hem, three quarters of the widening are left: 75 for 100.
        Piece was = tent(0);
        Altered altered = SleeveWidth.at(ARM, 75).apply(just(was));
        Piece is = altered.pattern().pieces().get(0);
        assertThat(is.edge("back cap").orElseThrow().from().x()).isCloseTo(-50, within(1e-6));
        assertThat(is.edge("back cap").orElseThrow().to().y()).isCloseTo(-150, within(1e-6));
        assertThat(altered.findings().get(0).values().get("before")).isEqualTo(200.0);
        assertThat((Double) altered.findings().get(0).values().get("after")).isCloseTo(150, within(1e-6));
        assertThat(is.notches().get(0).at().distance(new Point(50, -75))).isLessThan(1e-6);
        assertThat(is.outline().segments().get(3))
                .isSameAs(was.outline().segments().get(3));
    }

    @Test
    void aSleeveDrawnByItsCuttingLineKeepsItsSewnCap() throws Refusal {
        Pattern before = just(tent(12));
        Piece was = before.pieces().get(0);
        Pattern after = SleeveWidth.at(ARM, 30).apply(before).pattern();
        Piece is = after.pieces().get(0);
        assertThat(girth(after, ARM) - girth(before, ARM)).isCloseTo(30, within(1e-6));
        assertThat(sewn(is, "back cap") + sewn(is, "front cap"))
                .isCloseTo(sewn(was, "back cap") + sewn(was, "front cap"), within(1e-6));
    }

    @Test
    void refusedWithTheLargestAmountOrTheReason() {
        // A cap of 500 mm cannot span more than 500 mm.
        Refusal flat = catchThrowableOfType(
                Refusal.class, () -> SleeveWidth.at(ARM, 250).apply(just(tent(0))));
        assertThat(flat.code()).isEqualTo("cap-too-short");
        assertThat(flat.largest().orElseThrow()).isBetween(140.0, 150.0);
        Piece half = tent(0).toBuilder().cut(1, true).build();
        assertThat(catchThrowableOfType(
                                Refusal.class, () -> SleeveWidth.at(ARM, 5).apply(just(half)))
                        .code())
                .isEqualTo("sleeve-not-whole");
        Piece open = tent(0).withEdges(tent(0).edges().subList(0, 2));
        assertThat(catchThrowableOfType(
                                Refusal.class, () -> SleeveWidth.at(ARM, 5).apply(just(open)))
                        .code())
                .isEqualTo("sleeve-not-whole");
        Piece none = tent(0).withEdges(tent(0).edges().subList(2, 5));
        assertThat(catchThrowableOfType(
                                Refusal.class, () -> SleeveWidth.at(ARM, 5).apply(just(none)))
                        .code())
                .isEqualTo("no-sleeve-at-level");
    }

    /** Random sleeves, amounts, turns and mirrorings; each case is named by its seed. */
    @Test
    void promisesOnRandomSleeves() throws Refusal {
        Worst girth = new Worst("sleeves, girth, mm");
        Worst cap = new Worst("sleeves, cap seam, mm");
        Worst back = new Worst("sleeves there and back, mm");
        Worst turned = new Worst("sleeves turned and mirrored, mm");
        int refused = 0;
        int cases = RandomCloth.cases(400);
        for (long seed = 1; seed <= cases; seed++) {
            RandomCloth random = new RandomCloth(seed);
            Piece piece = sleeve(random);
            Pattern before = just(piece);
            SleeveWidth change = SleeveWidth.at(ARM, random.between(-40, 50));
            change = random.chance(0.3) ? change.carriedToHem() : change;
            Pattern after;
            try {
                after = change.apply(before).pattern();
            } catch (Refusal refusal) {
                assertThat(refusal.code()).as("seed %d", seed).isEqualTo("cap-too-short");
                assertThat(refusal.largest()).isPresent();
                refused++;
                continue;
            }
            Piece is = after.pieces().get(0);
            girth.meet(seed, Math.abs(girth(after, ARM) - girth(before, ARM) - change.amount()));
            cap.meet(seed, Math.abs(sewn(is, "cap") - sewn(piece, "cap")));
            Outline restored = change.opposite()
                    .orElseThrow()
                    .apply(after)
                    .pattern()
                    .pieces()
                    .get(0)
                    .outline();
            for (Segment s : restored.segments()) {
                for (int i = 0; i < 6; i++) {
                    back.meet(seed, piece.outline().nearest(s.at(i / 6.0)).distance());
                }
            }
            Affine turn = Affine.rotation(random.between(-3, 3), new Point(100, 200));
            Affine map = random.chance(0.5) ? turn.after(Affine.scaling(-1, 1)) : turn;
            Outline there = change.apply(just(RandomCloth.mapped(piece, map)))
                    .pattern()
                    .pieces()
                    .get(0)
                    .outline();
            Outline here = is.outline().transformed(map);
            for (Segment s : there.segments()) {
                turned.meet(seed, here.nearest(s.at(0.4)).distance());
            }
            assertThat(change.withAmount(0).apply(before).pattern()).isSameAs(before);
        }
        assertThat(refused).isLessThan(cases / 10);
        girth.within(1e-6);
        cap.within(1e-6);
        back.within(1e-6);
        turned.within(1e-6);
    }

    private static Piece sleeve(RandomCloth random) {
        double half = random.between(130, 190);
        double height = random.between(90, 160);
        double length = random.between(150, 450);
        Point left = new Point(-half, 0);
        Point top = new Point(random.between(-10, 10), -height);
        Point right = new Point(half + random.between(-8, 8), 0);
        Point hemRight = new Point(half * random.between(0.6, 0.95), length);
        Point hemLeft = new Point(-half * random.between(0.6, 0.95), length);
        Point level = new Point(0, random.between(5, length / 3));
        Cubic back =
                new Cubic(left, new Point(-half * 0.6, random.between(-20, 10)), new Point(-half * 0.5, -height), top);
        Cubic front =
                new Cubic(top, new Point(half * 0.5, -height), new Point(half * 0.6, random.between(-10, 20)), right);
        Cubic seam = new Cubic(
                right,
                right.towards(hemRight, 0.3).plus(new Point(random.between(-6, 6), 0)),
                right.towards(hemRight, 0.7).plus(new Point(random.between(-6, 6), 0)),
                hemRight);
        return Piece.bare(
                        "s",
                        new Outline(List.of(back, front, seam, new Line(hemRight, hemLeft), new Line(hemLeft, left))))
                .toBuilder()
                .cut(2, false)
                .edges(List.of(
                        Edge.of("cap", EdgeRole.CAP, left, right),
                        Edge.of("front", EdgeRole.SEAM, right, hemRight),
                        Edge.of("hem", EdgeRole.HEM, hemRight, hemLeft),
                        Edge.of("back", EdgeRole.SEAM, hemLeft, left)))
                .grain(new Grain(new Point(0, 10), new Point(0, length - 10)))
                .levels(List.of(LevelMark.through(ARM, level)))
                .build();
    }
}
