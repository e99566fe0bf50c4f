package easewright.alter;

import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.polygon;
import static easewright.alter.EvenSeamsTest.LEVELS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.LevelSeams;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Seams that were drawn unequal, and what a drafter does about them. */
class SeamMatchTest {
    private static Pattern sewn(Mate mate, Piece... pieces) {
        return pattern(LEVELS, pieces).withMates(List.of(mate));
    }

    private static Mate sides(double ease) {
        return new Mate("side seam", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), ease);
    }

    /** Half a skirt on the fold whose side slants out by 20 mm, so long. */
    private static Piece half(String id, double x, double side) {
        double down = Math.sqrt(side * side - 20 * 20);
        Piece piece = polygon(
                id,
                List.of(new Point(x, 0), new Point(x + 200, 0), new Point(x + 220, down), new Point(x, down)),
                "waist WAIST, side SEAM, hem HEM, fold FOLD");
        return piece.toBuilder().cut(1, true).build();
    }

    private static List<SeamMatch.Choice> choices(Pattern pattern) {
        GarmentMeasures is = Measures.of(pattern);
        return SeamMatch.of(pattern, is, is, is.mates().get(0));
    }

    private static double drift(Pattern pattern) {
        return Measures.of(pattern).mates().get(0).drift();
    }

    /** 600 mm are sewn to 592 mm: the front 8 mm shorter or the back 8 mm longer, at the hem, each in its own direction. */
    @Test
    void eitherSideGivesWayAtTheHemByWhatIsOff() throws Refusal {
        Pattern drawn = sewn(sides(0), half("front", 0, 600), half("back", 400, 592));
        List<SeamMatch.Choice> choices = choices(drawn);
        assertThat(choices).hasSize(2).allMatch(SeamMatch.Choice::atHem);
        assertThat(choices)
                .extracting(SeamMatch.Choice::edge)
                .extracting(EdgeRef::piece)
                .as("the shorter made longer first")
                .containsExactly("back", "front");
        assertThat(choices.get(0).by()).isCloseTo(8, within(1e-9));
        assertThat(choices.get(1).by()).isCloseTo(-8, within(1e-9));
        for (SeamMatch.Choice choice : choices) {
            Pattern made = choice.change().apply(drawn).pattern();
            assertThat(made.pieces()).isEqualTo(choice.altered().pattern().pieces());
            assertThat(drift(made)).isCloseTo(0, within(1e-6));
            Piece was = drawn.piece(choice.edge().piece()).orElseThrow();
            Piece is = made.piece(choice.edge().piece()).orElseThrow();
            Point corner = was.edge("side").orElseThrow().to();
            Point along = was.outline().segments().get(1).tangent(1);
            assertThat(is.edge("side").orElseThrow().to().distance(corner.plus(along.times(choice.by()))))
                    .isLessThan(1e-6);
            assertThat(is.edge("fold")).isEqualTo(was.edge("fold"));
            assertThat(is.edge("waist")).isEqualTo(was.edge("waist"));
            assertThat(Ways.from(choice.change().note())).isEqualTo(choice.change());
            Pattern back = choice.change().opposite().orElseThrow().apply(made).pattern();
            assertThat(Likeness.same(back.piece(was.id()).orElseThrow(), was)).isTrue();
        }
    }

    /** Levels that meet as seen from the hem would lie 8 mm apart if the seam were made to fit at the hem. */
    @Test
    void levelsThatMeetAlongTheSeamGoOnMeeting() throws Refusal {
        for (boolean fromHem : new boolean[] {true, false}) {
            Piece front = atHip(half("front", 0, 600), fromHem ? 208 : 200);
            Pattern drawn = sewn(sides(0), front, atHip(half("back", 400, 592), 200));
            assertThat(apart(drawn)).isLessThan(1e-6);
            List<SeamMatch.Choice> choices = choices(drawn);
            assertThat(choices).hasSize(2);
            for (SeamMatch.Choice choice : choices) {
                Pattern made = choice.altered().pattern();
                assertThat(choice.atHem()).isEqualTo(!fromHem);
                assertThat(drift(made)).isCloseTo(0, within(1e-6));
                assertThat(apart(made)).as("%s", choice.change()).isLessThan(0.01);
            }
        }
    }

    /** Its hip crosses the side so far along it. */
    private static Piece atHip(Piece half, double along) {
        Point on = half.edge("side").orElseThrow().on(half.outline()).pointAtLength(along);
        return half.withLevels(List.of(LevelMark.through("hip", new Point(on.x() - 50, on.y()))));
    }

    private static double apart(Pattern pattern) {
        return LevelSeams.of(pattern, Measures.of(pattern)).stream()
                .mapToDouble(m -> Math.abs(m.off()))
                .max()
                .orElseThrow();
    }

    /** Which of the two is first, which way round they are drawn, and marked ease make no difference to what is met. */
    @Test
    void whatIsOffIsMetOnRandomSeams() throws Refusal {
        Random random = new Random(11);
        Worst left = new Worst("matched seams, misfit, mm");
        int hems = 0;
        for (int i = 0; i < 60; i++) {
            double ease = random.nextInt(3) == 0 ? random.nextDouble() * 10 : 0;
            double off = (random.nextBoolean() ? 1 : -1) * (Cutting.SAME + 0.1 + random.nextDouble() * 25);
            Piece front = half("front", 0, 500 + off + ease);
            Piece back = half("back", 400, 500);
            Pattern drawn = sewn(
                    sides(ease),
                    random.nextBoolean() ? Cloths.reversed(front) : front,
                    random.nextBoolean() ? Cloths.reversed(back) : back);
            List<SeamMatch.Choice> choices = choices(drawn);
            assertThat(choices).as("%d", i).hasSize(2);
            for (SeamMatch.Choice choice : choices) {
                hems += choice.atHem() ? 1 : 0;
                left.meet(i, Math.abs(drift(choice.altered().pattern())));
            }
        }
        assertThat(hems).isEqualTo(120);
        left.within(1e-6);
    }

    /** Random pieces, drawn by stitching or cutting line: no protected edge is moved, in place, shape or length. */
    @Test
    void noProtectedEdgeMoves() {
        int offered = 0;
        for (long seed = 1; seed <= 60; seed++) {
            for (LineKind drawnBy : LineKind.values()) {
                Pattern pattern = TruingPropertiesTest.pair(seed, drawnBy);
                GarmentMeasures is = Measures.of(pattern);
                for (MateWalk walk : is.mates()) {
                    MateWalk off = new MateWalk(
                            new Mate(
                                    walk.mate().name(),
                                    walk.mate().first(),
                                    walk.mate().second(),
                                    walk.first() - walk.second() - 6),
                            walk.size(),
                            walk.first(),
                            walk.second(),
                            6,
                            List.of());
                    Pattern marked = pattern.withMates(List.of(off.mate()));
                    for (SeamMatch.Choice choice :
                            SeamMatch.of(marked, Measures.of(marked), Measures.of(marked), off)) {
                        offered++;
                        assertProtectedUnmoved(marked, choice.altered().pattern(), seed);
                        assertThat(Math.abs(drift(choice.altered().pattern())))
                                .as("seed %d", seed)
                                .isLessThan(0.01);
                    }
                }
            }
        }
        assertThat(offered).isGreaterThan(60);
    }

    private static void assertProtectedUnmoved(Pattern before, Pattern after, long seed) {
        for (Piece was : before.pieces()) {
            Piece is = after.piece(was.id()).orElseThrow();
            for (Edge edge : was.edges()) {
                if (edge.isProtected()) {
                    List<Segment> then = edge.on(was.outline()).segments();
                    List<Segment> now =
                            is.edge(edge.name()).orElseThrow().on(is.outline()).segments();
                    assertThat(now).as("seed %d, %s", seed, edge.name()).isEqualTo(then);
                }
            }
        }
    }

    /** Cap and armhole are protected, and so is a shoulder: none of them is offered to be changed. */
    @Test
    void aProtectedSideIsNotOffered() {
        Piece front = polygon(
                "front",
                List.of(new Point(0, 0), new Point(120, 20), new Point(120, 500), new Point(0, 500)),
                "shoulder SHOULDER, side SEAM, hem HEM, fold FOLD");
        Piece back = polygon(
                "back",
                List.of(new Point(300, 0), new Point(430, 0), new Point(430, 500), new Point(300, 500)),
                "shoulder SHOULDER, side SEAM, hem HEM, fold FOLD");
        Mate shoulders = new Mate(
                "shoulder", List.of(EdgeRef.of("front", "shoulder")), List.of(EdgeRef.of("back", "shoulder")), 0);
        assertThat(choices(sewn(shoulders, front, back))).isEmpty();
        Piece open = back.withEdges(back.edges().stream()
                .map(e -> e.name().equals("shoulder") ? e.withProtected(false) : e)
                .toList());
        assertThat(choices(sewn(shoulders, front, open)))
                .extracting(SeamMatch.Choice::edge)
                .containsOnly(EdgeRef.of("back", "shoulder"));
    }

    /** Of a bodice side the upper end is at the protected armhole, so that the lower gives way; the waist hardly changes. */
    @Test
    void aSideWithoutAHemGivesWayWhereNothingIsProtected() {
        Piece front = polygon(
                "front",
                List.of(
                        new Point(0, 0),
                        new Point(150, 0),
                        new Point(220, 100),
                        new Point(200, 300),
                        new Point(0, 300)),
                "shoulder SHOULDER, armhole ARMHOLE, side SEAM, waist WAIST, fold FOLD");
        Piece back = polygon(
                "back",
                List.of(
                        new Point(400, 0),
                        new Point(550, 0),
                        new Point(620, 100),
                        new Point(600, 307),
                        new Point(400, 307)),
                "shoulder SHOULDER, armhole ARMHOLE, side SEAM, waist WAIST, fold FOLD");
        Pattern drawn = sewn(sides(0), front, back);
        assertThat(choices(drawn)).hasSize(2).allSatisfy(choice -> {
            assertThat(choice.atHem()).isFalse();
            assertThat(((EdgeLength) choice.change()).how()).isEqualTo(EdgeLength.Manner.AT_LOWER_END);
        });
    }

    /** A half that counts twice on a whole band changes by half as much on either of its halves. */
    @Test
    void anEdgeThatCountsTwiceChangesByHalf() {
        Piece half = half("front", 0, 600);
        Piece band = polygon(
                "band",
                List.of(new Point(0, 800), new Point(410, 800), new Point(410, 840), new Point(0, 840)),
                "outer OTHER, end OTHER, seam WAIST, other end OTHER");
        Mate mate = new Mate("band", List.of(EdgeRef.of("band", "seam")), List.of(new EdgeRef("front", "waist", 2)), 0);
        assertThat(choices(sewn(mate, half, band)))
                .filteredOn(c -> c.edge().piece().equals("band"))
                .singleElement()
                .satisfies(c -> assertThat(c.by()).isCloseTo(-10, within(1e-9)));
        assertThat(choices(sewn(mate, half, band)))
                .filteredOn(c -> c.edge().piece().equals("front"))
                .allSatisfy(c -> assertThat(c.by()).isCloseTo(5, within(1e-9)));
    }

    @Test
    void whatIsTheSameForCuttingIsLeft() {
        assertThat(choices(sewn(sides(0), half("front", 0, 600), half("back", 400, 601.4))))
                .isEmpty();
        assertThat(choices(sewn(sides(1.4), half("front", 0, 600), half("back", 400, 599.9))))
                .isEmpty();
        assertThat(choices(sewn(sides(0), half("front", 0, 600), half("back", 400, 601.6))))
                .hasSize(2);
    }

    /** In a nest the size that does not fit is changed, and no other. */
    @Test
    void inSeveralSizesTheOneThatDoesNotFitIsChanged() {
        Piece front = half("front", 0, 600);
        Piece back = half("back", 400, 592);
        Pattern nest = pattern(
                        LEVELS,
                        inSize(front, "36"),
                        inSize(back, "36"),
                        inSize(half("front", 800, 600), "38"),
                        inSize(half("back", 1200, 600), "38"))
                .withMates(List.of(sides(0)));
        GarmentMeasures is = Measures.of(nest);
        assertThat(is.mates()).hasSize(2);
        for (MateWalk walk : is.mates()) {
            List<SeamMatch.Choice> choices = SeamMatch.of(nest, is, is, walk);
            assertThat(choices).hasSize(walk.size().equals(Optional.of("36")) ? 2 : 0);
            for (SeamMatch.Choice choice : choices) {
                List<Piece> after = choice.altered().pattern().pieces();
                assertThat(after.get(2)).isSameAs(nest.pieces().get(2));
                assertThat(after.get(3)).isSameAs(nest.pieces().get(3));
            }
        }
    }

    private static Piece inSize(Piece piece, String size) {
        return piece.toBuilder()
                .id(piece.id() + "-" + size)
                .name(piece.name() + " (" + size + ")")
                .size(Optional.of(size))
                .build();
    }
}
