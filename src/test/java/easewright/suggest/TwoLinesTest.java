package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A line that a change drew anew stays known as it was drawn, whatever it is said to be. */
class TwoLinesTest {
    private static Outline square(double from, double to) {
        return Outline.polygon(
                List.of(new Point(from, from), new Point(to, from), new Point(to, to), new Point(from, to)));
    }

    private static Rider drawnAnew(String id, Rider.Kind kind, Outline line) {
        List<Segment> was = List.of(new Line(new Point(0, 0), new Point(1, 1)));
        return new Rider(id, kind, was).changed(line.segments());
    }

    @Test
    void linesThatChangePlacesKeepHowTheyWereDrawn() {
        Rider cutting = drawnAnew("cutting", Rider.Kind.INNER, square(-10, 210));
        Rider former = drawnAnew("former", Rider.Kind.PARALLEL, square(-15, 215));
        Piece piece = Piece.bare("sewn", square(0, 200)).toBuilder()
                .riders(List.of(cutting, former))
                .build();
        assertThat(TwoLines.along(piece, cutting).riders())
                .containsExactly(
                        drawnAnew("cutting", Rider.Kind.PARALLEL, square(-10, 210)),
                        drawnAnew("former", Rider.Kind.INNER, square(-15, 215)));
    }
}
