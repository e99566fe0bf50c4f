package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Crossing;
import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seams of a pair fixed at both ends: the one that changed less takes the drift up in its bow. */
class SeamBowTest {
    /** Half a bodice: a side seam of 220 mm fixed at underarm and waist, hollowed by so much above and below. */
    private static Piece bodice(String id, double high, double low) {
        Point top = new Point(0, 0);
        Point underarm = new Point(240, 0);
        Point waistSide = new Point(215, 220);
        Point waist = new Point(0, 220);
        Cubic side = new Cubic(underarm, new Point(236 - high, 70), new Point(226 - low, 150), waistSide);
        return Piece.bare(
                        id,
                        new Outline(List.of(
                                new Line(top, underarm), side, new Line(waistSide, waist), new Line(waist, top))))
                .toBuilder()
                .cut(1, true)
                .edges(List.of(
                        Edge.of("armhole", EdgeRole.ARMHOLE, top, underarm),
                        Edge.of("side", EdgeRole.SEAM, underarm, waistSide),
                        Edge.of("waist", EdgeRole.WAIST, waistSide, waist),
                        Edge.of("fold", EdgeRole.FOLD, waist, top)))
                .levels(List.of(LevelMark.through("bust", new Point(20, 90))))
                .build();
    }

    private static final Share[] SHARES = {new Share(EdgeRef.of("front", "side"), 1.01), Share.of("back", "side")};

    private static Pattern sewn(boolean swapped) {
        Piece one = bodice(swapped ? "back" : "front", 12, 6);
        Piece other = bodice(swapped ? "front" : "back", 9, 9);
        Mate sides =
                new Mate("side seam", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0);
        return pattern(List.of(Level.of("bust", LevelKind.BUST)), one, other).withMates(List.of(sides));
    }

    /** Where the user has said who takes how much it is not shared anew, but bowed. */
    private static SeamChange shared(double amount) {
        return SeamChange.at("bust", amount)
                .withShares(new Share(EdgeRef.of("front", "side"), 1), new Share(EdgeRef.of("back", "side"), 1.001));
    }

    private static double drift(Pattern pattern) {
        return Measures.of(pattern).mates().get(0).drift();
    }

    private static Curve side(Piece piece) {
        return piece.edge("side").orElseThrow().on(piece.outline());
    }

    @ParameterizedTest
    @CsvSource({"40, false", "40, true", "-40, false", "-40, true"})
    void theDriftGoesAndTheGirthIsExact(double amount, boolean swapped) throws Refusal {
        Pattern before = sewn(swapped);
        SeamChange plain = shared(amount);
        Pattern drifted = plain.apply(before).pattern();
        assertThat(Math.abs(drift(drifted) - drift(before))).isBetween(0.02, 0.3);
        Altered altered = plain.evened().apply(before);
        assertThat(drift(altered.pattern()) - drift(before)).isCloseTo(0, within(1e-6));
        assertThat(girth(altered.pattern(), "bust") - girth(before, "bust")).isCloseTo(amount, within(1e-6));
        Pattern back =
                plain.evened().opposite().orElseThrow().apply(altered.pattern()).pattern();
        for (int i = 0; i < 2; i++) {
            Outline was = before.pieces().get(i).outline();
            for (Segment s : back.pieces().get(i).outline().segments()) {
                assertThat(was.nearest(s.at(0.4)).distance()).isLessThan(1e-6);
                assertThat(was.nearest(s.start()).distance()).isLessThan(1e-6);
            }
        }
    }

    private static double grown(Pattern before, Pattern after, String piece, String edge) {
        return Math.abs(Cloths.sewn(after, piece, edge) - Cloths.sewn(before, piece, edge));
    }

    /**
     * The bow is laid on the seam that changed less, in two cubics on the longer stretch, here from the level down to the
     * waist: at its middle it is what
     * the finding says, at a quarter half of that, as 3τ² − 2τ³ is, and at both ends nothing, in place and direction.
     */
    @ParameterizedTest
    @CsvSource({"40", "-40"})
    void theBowIsLaidOnTheLongerStretchAndDiesAwayAtItsEnds(double amount) throws Refusal {
        Pattern before = sewn(false);
        SeamChange plain = shared(amount);
        Altered altered = plain.evened().apply(before);
        Finding bowed = altered.findings().stream()
                .filter(f -> f.code().equals("seam-bowed"))
                .findFirst()
                .orElseThrow();
        Piece is = altered.pattern().piece(bowed.piece()).orElseThrow();
        Pattern plainly = plain.apply(before).pattern();
        String edge = (String) bowed.values().get("edge");
        assertThat(before.pieces())
                .allSatisfy(piece -> assertThat(grown(before, plainly, bowed.piece(), edge))
                        .isLessThanOrEqualTo(grown(before, plainly, piece.id(), edge)));
        Piece was = plainly.piece(bowed.piece()).orElseThrow();
        double by = (Double) bowed.values().get("by.signed");
        assertThat(Math.abs(by)).isGreaterThan(0.1);
        // Below the level the change itself ends 130 mm lower, at the waist.
        double[] shares = {0, 0.25, 0.5, 0.75, 1};
        double[] wanted = {0, 0.5, 1, 0.5, 0};
        for (int i = 0; i < shares.length; i++) {
            double y = 90 + 130 * shares[i] - (i == 4 ? 1e-6 : 0);
            double moved = across(is, y) - across(was, y);
            assertThat(Math.abs(moved))
                    .as("at %s", shares[i])
                    .isCloseTo(Math.abs(by) * wanted[i], within(Math.abs(by) / 8));
        }
        for (double y = 10; y < 90; y += 20) {
            assertThat(across(is, y)).isCloseTo(across(was, y), within(Math.abs(by) / 500));
        }
        List<Segment> run = side(is).segments();
        for (int i = 1; i < run.size(); i++) {
            assertThat(run.get(i - 1).tangent(1).cross(run.get(i).tangent(0))).isCloseTo(0, within(1e-9));
        }
        assertThat(run.get(0).tangent(0).cross(side(was).segments().get(0).tangent(0)))
                .isCloseTo(0, within(1e-9));
        assertThat(run.get(run.size() - 1).tangent(1).cross(last(side(was)).tangent(1)))
                .isCloseTo(0, within(1e-9));
        assertThat(altered.moved())
                .filteredOn(m -> m.pieceId().equals(bowed.piece()))
                .hasSize(2);
    }

    private static Segment last(Curve run) {
        return run.segments().get(run.segments().size() - 1);
    }

    /** How far from the fold the side seam lies at a height. */
    private static double across(Piece piece, double y) {
        List<Crossing> level = piece.outline().crossings(new Point(0, y), new Point(1, 0));
        return level.get(level.size() - 1).along();
    }

    /** A seam drawn in several stretches is bowed over all of them alike and gets no corner where they meet. */
    @Test
    void aSeamOfSeveralStretchesStaysSmooth() throws Refusal {
        Pattern whole = sewn(false);
        Pattern before = whole;
        for (Piece piece : whole.pieces()) {
            Outline outline = piece.outline();
            for (double t : new double[] {0.75, 0.6}) {
                outline = outline.splitAt(
                        outline.nearest(piece.outline().segments().get(1).at(t)).place());
            }
            before = before.withPiece(piece.withOutline(outline));
        }
        Pattern after = shared(40).evened().apply(before).pattern();
        assertThat(drift(after) - drift(before)).isCloseTo(0, within(1e-6));
        for (Piece piece : after.pieces()) {
            List<Segment> run = side(piece).segments();
            assertThat(run.size()).isGreaterThan(3);
            for (int i = 1; i < run.size(); i++) {
                assertThat(run.get(i - 1).tangent(1).cross(run.get(i).tangent(0)))
                        .isCloseTo(0, within(1e-6));
            }
        }
    }

    /** Less than a hundredth of a millimetre is not worth a bow. */
    @Test
    void aDriftNoOneCouldMeasureIsLeft() throws Refusal {
        Pattern before = sewn(false);
        SeamChange plain = shared(2);
        assertThat(Math.abs(drift(plain.apply(before).pattern()) - drift(before)))
                .isBetween(1e-4, 0.01);
        Altered altered = plain.evened().apply(before);
        assertThat(altered.findings()).noneMatch(f -> f.code().equals("seam-bowed"));
    }

    @Test
    void inflectionsAreCountedAsTheEyeSeesThem() {
        Point left = new Point(0, 0);
        Point right = new Point(90, 0);
        Cubic over = new Cubic(left, new Point(30, -20), new Point(60, -20), right);
        Cubic under = new Cubic(left, new Point(30, 20), new Point(60, 20), right);
        Cubic wave = new Cubic(left, new Point(30, -40), new Point(60, 40), right);
        Cubic on = new Cubic(right, new Point(120, -40), new Point(150, 40), new Point(180, 0));
        assertThat(SeamBow.inflections(new Curve(List.of(over)))).isZero();
        assertThat(SeamBow.inflections(new Curve(List.of(under)))).isZero();
        assertThat(SeamBow.inflections(new Curve(List.of(new Line(left, right)))))
                .isZero();
        assertThat(SeamBow.inflections(new Curve(List.of(wave)))).isEqualTo(1);
        assertThat(SeamBow.inflections(new Curve(List.of(wave, on)))).isEqualTo(3);
    }
}
