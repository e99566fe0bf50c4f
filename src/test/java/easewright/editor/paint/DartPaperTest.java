package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DartPaperTest {
    private static final Dart DART =
            new Dart("dart", new Point(40, 0), new Point(60, 0), new Point(50, 80), Optional.empty(), Optional.empty());

    private static Outline outline(Point... over) {
        List<Point> corners = new ArrayList<>(List.of(new Point(0, 0), DART.mouth1()));
        corners.addAll(List.of(over));
        corners.addAll(List.of(DART.mouth2(), new Point(100, 0), new Point(100, 200), new Point(0, 200)));
        return Outline.polygon(corners);
    }

    private static double area(List<Point> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            twice += corners.get(i).cross(corners.get((i + 1) % corners.size()));
        }
        return Math.abs(twice) / 2;
    }

    /** The cap is folded away with the rest: 9 mm high over a mouth of 20 mm. */
    @Test
    void theCapOverAMouthIsPartOfIt() {
        List<Point> paper = DartPaper.of(DART, outline(new Point(50, -9)));
        assertThat(paper).contains(new Point(50, -9));
        assertThat(area(paper)).isCloseTo(20 * 80 / 2.0 + 20 * 9 / 2.0, within(1e-9));
        assertThat(area(DartPaper.of(DART, outline()))).isCloseTo(20 * 80 / 2.0, within(1e-9));
    }

    /** A dart that is cut out of the piece is seen as far as its legs go. */
    @Test
    void aDartThatIsCutOutHasNone() {
        assertThat(DartPaper.of(DART, outline(DART.point()))).isEqualTo(DART.corners());
    }

    /** Nor has one that lies within the piece, or whose mouth is not on the line. */
    @Test
    void oneInsideThePieceHasNone() {
        Dart inside = DART.mapped(p -> p.plus(new Point(0, 50)));
        assertThat(DartPaper.of(inside, outline())).isEqualTo(inside.corners());
    }
}
