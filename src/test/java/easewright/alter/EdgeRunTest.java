package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Hold;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Walking along an edge of a square of 100: the right side, from (100, 0) down to (100, 100), or all the way round. */
class EdgeRunTest {
    private static final Point TOP = new Point(100, 0);
    private static final Point FOOT = new Point(100, 100);
    private static final Piece SQUARE =
            Piece.bare("p", Outline.polygon(List.of(new Point(0, 0), TOP, FOOT, new Point(0, 100))));

    private static EdgeRun run(Point from, Point to) {
        Edge edge = Edge.of("e", EdgeRole.SEAM, from, to);
        return new EdgeRun(SQUARE.withEdges(List.of(edge)), edge);
    }

    private static Hold at(double x, double y) {
        return Hold.point(new Point(x, y));
    }

    private static Optional<Point> stop(EdgeRun run, Hold from, boolean forward, Point... marks) {
        List<SewnPiece.Mark> stops = java.util.Arrays.stream(marks)
                .map(p -> new SewnPiece.Mark(p, Hold.point(p)))
                .toList();
        return run.stop(from, forward, stops).map(Hold::sewn);
    }

    @Test
    void theNearestMarkOnThatSideStops() {
        EdgeRun side = run(TOP, FOOT);
        Point high = new Point(100, 20);
        Point higher = new Point(100, 10);
        Point low = new Point(100, 70);
        Point lower = new Point(100, 90);
        assertThat(stop(side, at(100, 50), true, lower, high, low, higher)).contains(low);
        assertThat(stop(side, at(100, 50), false, lower, higher, low, high)).contains(high);
        assertThat(stop(side, at(100, 50), true, high)).isEmpty();
        assertThat(stop(side, at(100, 50), true, FOOT)).contains(FOOT);
        assertThat(stop(side, at(100, 50), false, TOP)).contains(TOP);
    }

    @Test
    void whatIsNotOnTheEdgeOrIsWhereOneStandsIsNoStop() {
        EdgeRun side = run(TOP, FOOT);
        assertThat(stop(side, at(100, 50), true, new Point(60, 100))).isEmpty();
        assertThat(stop(side, at(100, 50), true, new Point(98, 70))).isEmpty();
        assertThat(stop(side, at(100, 50), true, new Point(100, 50.4))).isEmpty();
        assertThat(stop(side, at(100, 50), true, new Point(100, 50.6))).isPresent();
    }

    /** A mark rounded by a few hundredths still means the corner. */
    @Test
    void aRoundedMarkIsItsCorner() {
        EdgeRun side = run(new Point(100, 0.04), new Point(99.96, 100));
        assertThat(side.start()).isEqualTo(TOP);
        assertThat(side.end()).isEqualTo(FOOT);
        assertThat(side.holds(TOP)).isTrue();
        assertThat(side.holds(FOOT)).isTrue();
        assertThat(side.holds(new Point(99, 100))).isFalse();
        assertThat(run(new Point(100, 0.06), FOOT).start().y()).isGreaterThan(0.05);
    }

    /** An edge that runs once round the piece ends where it starts: its corner is met either way. */
    @Test
    void onAnEdgeAllRoundTheCornerIsMetBothWays() {
        EdgeRun round = run(TOP, TOP);
        assertThat(stop(round, at(100, 50), true, TOP)).contains(TOP);
        assertThat(stop(round, at(100, 50), false, TOP)).contains(TOP);
        Point left = new Point(0, 50);
        assertThat(stop(round, at(100, 50), true, TOP, left)).contains(left);
        assertThat(stop(round, at(100, 50), false, TOP, left)).contains(TOP);
        assertThat(stop(round, Hold.point(TOP), true, left)).contains(left);
        assertThat(stop(round, Hold.point(TOP), false, left)).contains(left);
        // The side alone is not closed: seen from its top there is nothing before it.
        assertThat(stop(run(TOP, FOOT), Hold.point(TOP), false, FOOT)).isEmpty();
    }

    @Test
    void aDartBetweenTwoPlacesIsFound() {
        EdgeRun side = run(TOP, FOOT);
        Dart dart = new Dart(
                "d", new Point(100, 40), new Point(100, 50), new Point(60, 45), Optional.empty(), Optional.of("e"));
        List<SewnPiece.Mouth> mouths =
                List.of(new SewnPiece.Mouth(dart, Hold.point(dart.mouth1()), Hold.point(dart.mouth2())));
        assertThat(side.dartBetween(TOP, FOOT, mouths)).contains(dart);
        assertThat(side.dartBetween(FOOT, new Point(100, 45), mouths)).contains(dart);
        assertThat(side.dartBetween(TOP, new Point(100, 40), mouths)).isEmpty();
        assertThat(side.dartBetween(new Point(100, 50), FOOT, mouths)).isEmpty();
        assertThat(run(FOOT, new Point(0, 100)).dartBetween(FOOT, new Point(0, 100), mouths))
                .isEmpty();
    }
}
