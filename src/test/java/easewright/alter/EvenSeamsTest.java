package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.reversed;
import static easewright.alter.Cloths.skirtHalf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Both seam lines of a pair change by the same length: design section 3, "equal mates"; worked example W4. */
class EvenSeamsTest {
    static final List<Level> LEVELS = List.of(Cloths.WAIST, Cloths.HIP);

    /** Half a skirt on the fold whose side slants by {@code slant} over the 8 in from waist to hip, then falls straight. */
    static Piece half(String id, double slant) {
        return skirtHalf(id, 10, 10 + slant, 8, 22);
    }

    static Pattern sewn(Piece front, Piece back) {
        return pattern(LEVELS, front, back)
                .withMates(List.of(new Mate(
                        "side seam",
                        List.of(EdgeRef.of(front.id(), "side")),
                        List.of(EdgeRef.of(back.id(), "side")),
                        0)));
    }

    static double side(Pattern pattern, int piece) {
        return Measures.of(pattern)
                .pieces()
                .get(piece)
                .edge("side")
                .orElseThrow()
                .mm();
    }

    @Test
    void w4TheDriftAndItsCure() throws Refusal {
        Pattern before = sewn(half("front", 1.5), half("back", 0.75));
        SeamChange plain =
                SeamChange.at("hip", 2 * INCH).withTaper(Taper.STRAIGHT).carriedToHem();
        Pattern drifted = plain.apply(before).pattern();
        double front = side(drifted, 0) - side(before, 0);
        double back = side(drifted, 1) - side(before, 1);
        assertThat(front).isCloseTo(0.106801 * INCH, within(5e-7 * INCH));
        assertThat(back).isCloseTo(0.061988 * INCH, within(5e-7 * INCH));
        assertThat(front - back).isCloseTo(1.138, within(5e-4));

        Altered altered = plain.evened().apply(before);
        Pattern after = altered.pattern();
        assertThat(side(after, 0) - side(before, 0)).isCloseTo((front + back) / 2, within(1e-6));
        assertThat(side(after, 1) - side(before, 1)).isCloseTo((front + back) / 2, within(1e-6));
        assertThat(girth(after, "hip") - girth(before, "hip")).isCloseTo(2 * INCH, within(1e-6));
        assertThat(girth(after, "waist")).isEqualTo(girth(before, "waist"));
        for (int i = 0; i < 2; i++) {
            List<Segment> now = after.pieces().get(i).outline().segments();
            List<Segment> was = drifted.pieces().get(i).outline().segments();
            assertThat(now.get(1)).isEqualTo(was.get(1));
            assertThat(now.get(0))
                    .isSameAs(before.pieces().get(i).outline().segments().get(0));
            assertThat(now.get(2).tangent(1)).isEqualTo(was.get(2).tangent(1));
        }
        assertEvened(altered, (front - back) / 2);
        assertThat(after.changes()).containsExactly(plain.evened().note());
        Pattern back2 = plain.evened().opposite().orElseThrow().apply(after).pattern();
        for (int i = 0; i < 2; i++) {
            assertThat(Likeness.sameLine(
                            back2.pieces().get(i).outline(),
                            before.pieces().get(i).outline()))
                    .isTrue();
        }
        assertThat(Ways.from(plain.evened().note())).isEqualTo(plain.evened());
    }

    /** The front's hem is taken in and the back's let down by as much. */
    private static void assertEvened(Altered altered, double by) {
        List<Finding> told = altered.findings().stream()
                .filter(f -> f.code().equals("seam-evened"))
                .toList();
        assertThat(told).hasSize(2).allSatisfy(f -> {
            assertThat(f.values()).containsEntry("edge", "side").containsEntry("beside", "hem");
            double longer = (Double) f.values().get("longer.signed");
            assertThat(longer).isCloseTo(f.piece().equals("front") ? -by : by, within(0.002));
        });
    }

    @Test
    void atTheWaistTheGirthIsSolvedAnew() throws Refusal {
        Pattern before = sewn(half("front", 1.5), half("back", 0.75));
        SeamChange even = SeamChange.at("waist", -30).keeping("hip").evened();
        Pattern after = even.apply(before).pattern();
        assertThat(girth(after, "waist") - girth(before, "waist")).isCloseTo(-30, within(1e-6));
        assertThat(side(after, 0) - side(before, 0)).isCloseTo(side(after, 1) - side(before, 1), within(1e-6));
        assertThat(girth(after, "hip")).isCloseTo(girth(before, "hip"), within(1e-6));
    }

    /** A tenth of a millimetre drifts by 0.002 mm only; where an end moves that is evened as exactly as any. */
    @Test
    void aSmallAmountIsEvenedToo() throws Refusal {
        Pattern before = sewn(half("front", 1.5), half("back", 0.75));
        Pattern after = SeamChange.at("hip", 0.1)
                .withTaper(Taper.STRAIGHT)
                .carriedToHem()
                .evened()
                .apply(before)
                .pattern();
        assertThat(side(after, 0) - side(before, 0)).isCloseTo(side(after, 1) - side(before, 1), within(1e-8));
    }

    /** Pinched, what evens the hem is done first; each stretch that moves is told of once, and the waist is not. */
    @Test
    void aPinchTellsOfEveryStretchThatMoved() throws Refusal {
        Pattern before = sewn(half("front", 1.5), half("back", 0.75));
        Altered altered =
                SeamChange.at("hip", -2 * INCH).carriedToHem().evened().apply(before);
        assertThat(altered.moved())
                .hasSize(4)
                .allSatisfy(m -> assertThat(m.after()).isNotEqualTo(m.before()));
        assertThat(altered.moved())
                .extracting(Moved::pieceId)
                .containsExactlyInAnyOrder("front", "front", "back", "back");
    }

    /** From the waist down to the hem a straight seam moves as one and changes no length: there is nothing to even. */
    @Test
    void whereNoLengthChangesNothingIsEvened() throws Refusal {
        Pattern before = sewn(half("front", 1.5), half("back", 0.75));
        SeamChange plain = SeamChange.at("waist", 20).carriedToHem();
        Altered even = plain.evened().apply(before);
        assertThat(even.pattern().pieces())
                .isEqualTo(plain.apply(before).pattern().pieces());
        assertThat(even.findings()).noneMatch(f -> f.code().equals("seam-evened"));
    }

    /** The front's side moves as one, the back's begins above its waist level and becomes longer: both share that at the hem. */
    @Test
    void aSeamMovedAsOneTakesItsPartOfTheDrift() throws Refusal {
        Piece back = half("back", 0.75)
                .withLevels(List.of(LevelMark.through("waist", in(1, 2)), LevelMark.through("hip", in(1, 8))));
        Pattern before = sewn(half("front", 1.5), back);
        SeamChange plain = SeamChange.at("waist", 40).carriedToHem();
        Pattern drifted = plain.apply(before).pattern();
        assertThat(side(drifted, 0)).isCloseTo(side(before, 0), within(1e-9));
        double longer = side(drifted, 1) - side(before, 1);
        assertThat(longer).isGreaterThan(0.5);
        Pattern after = plain.evened().apply(before).pattern();
        for (int i = 0; i < 2; i++) {
            assertThat(side(after, i) - side(before, i)).isCloseTo(longer / 2, within(1e-6));
            Edge is = after.pieces().get(i).edge("side").orElseThrow();
            assertThat(is.from())
                    .isEqualTo(
                            drifted.pieces().get(i).edge("side").orElseThrow().from());
        }
    }

    /** Drawn the other way round, with a bowed hem, it is the same: the hem keeps its direction at the fold. */
    @Test
    void theWayRoundDoesNotMatter() throws Refusal {
        Pattern before = sewn(bowed(half("front", 1.5)), bowed(half("back", 0.75)));
        Pattern other =
                sewn(reversed(before.pieces().get(0)), reversed(before.pieces().get(1)));
        for (double amount : new double[] {50, -50}) {
            SeamChange plain = SeamChange.at("hip", amount).carriedToHem();
            SeamChange change = plain.evened();
            Pattern drifted = plain.apply(before).pattern();
            Pattern after = change.apply(before).pattern();
            Pattern turned = change.apply(other).pattern();
            assertThat(toldOf(change, other)).isEqualTo(toldOf(change, before));
            for (int i = 0; i < 2; i++) {
                assertThat(Likeness.sameLine(
                                after.pieces().get(i).outline(),
                                turned.pieces().get(i).outline()))
                        .isTrue();
                Edge hem = after.pieces().get(i).edge("hem").orElseThrow();
                Segment last =
                        hem.on(after.pieces().get(i).outline()).segments().get(0);
                Segment was = drifted.pieces().get(i).outline().segments().get(3);
                assertThat(last.tangent(1).cross(was.tangent(1))).isCloseTo(0, within(1e-4));
            }
            assertThat(side(after, 0) - side(before, 0)).isCloseTo(side(after, 1) - side(before, 1), within(1e-6));
        }
    }

    private static List<Object> toldOf(SeamChange change, Pattern pattern) throws Refusal {
        List<Object> told = new ArrayList<>();
        for (Finding f : change.apply(pattern).findings()) {
            Object longer = f.values().getOrDefault("longer.signed", 0.0);
            told.add(List.of(
                    f.code(), f.piece(), f.values().getOrDefault("beside", ""), Math.round((Double) longer * 1e5)));
        }
        return told;
    }

    private static Piece bowed(Piece half) {
        List<Segment> segments = new ArrayList<>(half.outline().segments());
        Segment hem = segments.get(3);
        Point down = new Point(0, 12);
        segments.set(
                3,
                new Cubic(
                        hem.start(), hem.at(1 / 3.0).plus(down), hem.at(2 / 3.0).plus(down), hem.end()));
        return half.withOutline(new Outline(segments));
    }

    static double moved(Pattern before, Altered altered, int piece) {
        return Measures.width(altered.pattern().pieces().get(piece), Cloths.HIP)
                        .orElseThrow()
                        .net()
                - Measures.width(before.pieces().get(piece), Cloths.HIP)
                        .orElseThrow()
                        .net();
    }

    /** A waistband that the change does not reach is no seam to even, and not mistaken for one. */
    @Test
    void aPairThatTheChangeLeavesAloneIsLeftAlone() throws Refusal {
        Piece band = Cloths.square("band", 2, EdgeRole.WAIST, EdgeRole.OTHER);
        Pattern before = pattern(LEVELS, half("front", 1.5), half("back", 0.75), band);
        Mate waist = new Mate("waist", List.of(EdgeRef.of("front", "waist")), List.of(EdgeRef.of("band", "top")), 0);
        Mate sides =
                new Mate("side seam", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0);
        Pattern after = SeamChange.at("hip", 2 * INCH)
                .carriedToHem()
                .evened()
                .apply(before.withMates(List.of(waist, sides)))
                .pattern();
        assertThat(side(after, 0) - side(before, 0)).isCloseTo(side(after, 1) - side(before, 1), within(1e-6));
        assertThat(after.piece("band")).isEqualTo(before.piece("band"));
    }

    @Test
    void withoutAMateOrAWayItIsRefused() {
        Pattern loose = pattern(LEVELS, half("front", 1.5), half("back", 0.75));
        Refusal none = catchThrowableOfType(
                Refusal.class, () -> SeamChange.at("hip", 20).evened().apply(loose));
        assertThat(none.code()).isEqualTo("even-without-mate");
        Piece front = half("front", 1.5);
        Piece held = front.withEdges(front.edges().stream()
                .map(e -> e.name().equals("hem") ? e.withProtected(true) : e)
                .toList());
        Refusal hem = catchThrowableOfType(
                Refusal.class,
                () -> SeamChange.at("hip", 2 * INCH).carriedToHem().evened().apply(sewn(held, half("back", 0.75))));
        assertThat(hem.code()).isEqualTo("edge-protected");
    }
}
