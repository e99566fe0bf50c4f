package easewright.alter;

import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What goes with the part of a slashed piece that moves: a square of 100, slashed down its middle, its right part moved. */
class SlashedMarksTest {
    static final Point TOP = new Point(50, 0);

    static final Point FOOT = new Point(50, 100);

    static final Point RIGHT = new Point(100, 50);

    static final double BY = 10;

    private static final Level HIP = Level.of("hip", LevelKind.HIP);

    static Piece square(EdgeRole top) {
        List<Point> c = List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100));
        return Piece.bare("p", Outline.polygon(c)).toBuilder()
                .edges(List.of(
                        Edge.of("top", top, c.get(0), c.get(1)),
                        Edge.of("right", EdgeRole.SEAM, c.get(1), c.get(2)),
                        Edge.of("hem", EdgeRole.HEM, c.get(2), c.get(3)),
                        Edge.of("left", EdgeRole.SEAM, c.get(3), c.get(0))))
                .levels(List.of(LevelMark.through("hip", new Point(20, 50))))
                .build();
    }

    static Pattern just(Piece piece) {
        return pattern(List.of(HIP), piece);
    }

    static Altered through(Piece piece, double amount) throws Refusal {
        return new ParallelSlash("p", TOP, FOOT, amount, RIGHT, true).apply(just(piece));
    }

    static Altered hinged(Piece piece, double gap) throws Refusal {
        return new HingedSlash("p", TOP, FOOT, gap, RIGHT, true).apply(just(piece));
    }

    static Piece piece(Altered altered) {
        return altered.pattern().pieces().get(0);
    }

    private static Line line(double x1, double y1, double x2, double y2) {
        return new Line(new Point(x1, y1), new Point(x2, y2));
    }

    private static Rider carried(Rider rider) throws Refusal {
        return piece(through(
                        square(EdgeRole.SEAM).toBuilder().riders(List.of(rider)).build(), BY))
                .riders()
                .get(0);
    }

    @Test
    void attachedLinesGoWithTheirEnds() throws Refusal {
        Rider level = carried(new Rider("r", Rider.Kind.ATTACHED, List.of(line(0, 50, 100, 50), line(100, 60, 0, 60))));
        assertThat(level.segments()).containsExactly(line(0, 50, 110, 50), line(110, 60, 0, 60));
        Rider tick = carried(new Rider("r", Rider.Kind.ATTACHED, List.of(line(100, 20, 94, 20))));
        assertThat(tick.segments()).containsExactly(line(110, 20, 104, 20));
        Rider still = new Rider("r", Rider.Kind.ATTACHED, List.of(line(0, 20, 6, 20)));
        assertThat(carried(still)).isSameAs(still);
    }

    @Test
    void innerLinesGoOrStayAsAWhole() throws Refusal {
        Rider goes = carried(new Rider("r", Rider.Kind.INNER, List.of(line(70, 30, 90, 30), line(90, 30, 90, 60))));
        assertThat(goes.segments()).containsExactly(line(80, 30, 100, 30), line(100, 30, 100, 60));
        Rider stays = new Rider("r", Rider.Kind.INNER, List.of(line(10, 30, 40, 30)));
        assertThat(carried(stays)).isSameAs(stays);
        Rider both = new Rider("r", Rider.Kind.INNER, List.of(line(30, 30, 70, 30)));
        Altered crossed =
                through(square(EdgeRole.SEAM).toBuilder().riders(List.of(both)).build(), BY);
        assertThat(piece(crossed).riders().get(0)).isSameAs(both);
        assertThat(crossed.findings()).extracting(Finding::code).contains("inner-line-crosses-slash");
        assertThat(through(square(EdgeRole.SEAM), BY).findings()).isEmpty();
    }

    @Test
    void theGrainGoesWithThePartItLiesOn() throws Refusal {
        Grain right = new Grain(new Point(80, 20), new Point(80, 80));
        Grain left = new Grain(new Point(20, 20), new Point(20, 80));
        assertThat(piece(through(square(EdgeRole.SEAM).toBuilder().grain(right).build(), BY))
                        .grain())
                .contains(new Grain(new Point(90, 20), new Point(90, 80)));
        assertThat(piece(through(square(EdgeRole.SEAM).toBuilder().grain(left).build(), BY))
                        .grain())
                .contains(left);
        Piece turned =
                piece(hinged(square(EdgeRole.SEAM).toBuilder().grain(right).build(), BY));
        double degrees = Math.toDegrees(Math.acos(turned.grainDirection().dot(new Point(0, 1))));
        assertThat(degrees).isCloseTo(Math.toDegrees(2 * Math.asin(0.05)), within(1e-9));
        assertThat(piece(hinged(square(EdgeRole.SEAM).toBuilder().grain(left).build(), BY))
                        .grain())
                .contains(left);
    }

    /** Turned, the grain and a level across both parts stay with the centre, wherever they are drawn; shifted, with their part. */
    @Test
    void grainAndLevelsKeepToTheCentreWhereAPartTurns() throws Refusal {
        Grain right = new Grain(new Point(80, 20), new Point(80, 80));
        LevelMark across = LevelMark.through("hip", new Point(80, 50));
        Piece folded = square(EdgeRole.SEAM).toBuilder()
                .edges(List.of(Edge.of("fold", EdgeRole.FOLD, new Point(0, 100), new Point(0, 0))))
                .grain(right)
                .levels(List.of(across))
                .build();
        assertThat(piece(hinged(folded, BY)).grain()).contains(right);
        assertThat(piece(hinged(folded, BY)).levels()).containsExactly(across);
        assertThat(piece(through(folded, BY)).grain()).contains(new Grain(new Point(90, 20), new Point(90, 80)));
        assertThat(piece(through(folded, BY)).levels()).containsExactly(LevelMark.through("hip", new Point(90, 50)));
        Piece otherFold =
                folded.withEdges(List.of(Edge.of("fold", EdgeRole.FOLD, new Point(100, 0), new Point(100, 100))));
        Grain turned = piece(hinged(otherFold, BY)).grain().orElseThrow();
        assertThat(turned.from().distance(right.from())).isGreaterThan(1);
        Point through = piece(hinged(otherFold, BY)).levels().get(0).through().orElseThrow();
        assertThat(through.distance(across.through().orElseThrow())).isGreaterThan(1);
    }

    /** A level that the turning part alone has goes with it; one that the staying part alone has stays. */
    @Test
    void aLevelOfOnePartGoesWithIt() throws Refusal {
        Piece legs = Piece.bare("p", easewright.geom.Sketch.outline("0,0 100,0 100,100 60,100 50,40 40,100 0,100"))
                .withLevels(List.of(
                        LevelMark.through("hip", new Point(80, 70)), LevelMark.through("low", new Point(20, 80))));
        Altered altered = new HingedSlash("p", TOP, new Point(50, 40), 5, RIGHT, true).apply(just(legs));
        assertThat(piece(altered).levels().get(0).through().orElseThrow().distance(new Point(80, 70)))
                .isGreaterThan(1);
        assertThat(piece(altered).levels().get(1)).isEqualTo(legs.levels().get(1));
    }

    /** A line of two stretches of which only the last end stays is not torn: it stays whole, and that is said. */
    @Test
    void aLineMostlyOnTheMovingPartIsNotTorn() throws Refusal {
        Rider line = new Rider("r", Rider.Kind.INNER, List.of(line(90, 30, 70, 30), line(70, 30, 30, 30)));
        Altered altered =
                through(square(EdgeRole.SEAM).toBuilder().riders(List.of(line)).build(), BY);
        assertThat(piece(altered).riders().get(0)).isSameAs(line);
        assertThat(altered.findings()).extracting(Finding::code).containsExactly("inner-line-crosses-slash");
        assertThat(altered.findings().get(0).values()).containsEntry("line", "r");
    }

    /** Of a piece with two legs the one under the level's middle is lengthened alone. */
    @Test
    void onlyTheMeasuredLegIsLengthened() throws Refusal {
        Piece legs = Piece.bare("p", easewright.geom.Sketch.outline("0,0 100,0 100,100 60,100 50,40 40,100 0,100"));
        for (double x : new double[] {20, 80}) {
            Piece one = legs.withLevels(List.of(LevelMark.through("hip", new Point(x, 70))));
            Piece after = Lengthen.below("hip", 0, BY)
                    .apply(just(one))
                    .pattern()
                    .pieces()
                    .get(0);
            assertThat(after.outline().nearest(new Point(x, 110)).distance()).isLessThan(1e-9);
            assertThat(after.outline().nearest(new Point(100 - x, 100)).distance())
                    .isLessThan(1e-9);
        }
    }

    @Test
    void aTuckThatWouldFoldAMarkAwayIsRefused() throws Refusal {
        Piece notched = square(EdgeRole.SEAM).toBuilder()
                .notches(List.of(new Notch("n", new Point(55, 100))))
                .build();
        assertThat(code(notched, -BY)).isEqualTo("tuck-takes-mark");
        assertThat(piece(through(notched, -4)).notches().get(0).at()).isEqualTo(new Point(51, 100));
        Dart dart = new Dart(
                "d", new Point(54, 0), new Point(58, 0), new Point(56, 30), Optional.empty(), Optional.of("top"));
        assertThat(code(square(EdgeRole.SEAM).toBuilder().darts(List.of(dart)).build(), -BY))
                .isIn("tuck-takes-mark", "slash-crosses-dart");
        assertThat(piece(through(square(EdgeRole.SEAM), -BY)).outline().box().width())
                .isCloseTo(90, within(1e-9));
    }

    static String code(Piece piece, double amount) {
        return catchThrowableOfType(Refusal.class, () -> through(piece, amount)).code();
    }

    @Test
    void whatAHingedSlashBringsWithIt() throws Refusal {
        Altered plain = hinged(square(EdgeRole.SEAM), BY);
        assertThat(plain.findings()).extracting(Finding::code).containsExactly("grain-turned", "hinge-corner");
        assertThat(plain.findings().get(1).severity()).isEqualTo(Severity.NOTE);
        assertThat(plain.findings().get(1).values()).containsEntry("edge", "top");
        Altered shoulder = hinged(square(EdgeRole.SHOULDER), 11);
        assertThat(shoulder.findings())
                .extracting(Finding::code)
                .containsExactly("grain-turned", "hinge-corner", "wedge-wide");
        assertThat(shoulder.findings().get(1).severity()).isEqualTo(Severity.CAUTION);
        Altered corner =
                new HingedSlash("p", new Point(100, 0), FOOT, 5, RIGHT, true).apply(just(square(EdgeRole.SEAM)));
        assertThat(corner.findings()).extracting(Finding::code).containsExactly("grain-turned");
    }
}
