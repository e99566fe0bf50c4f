package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.EaseTables;
import easewright.geom.Outline;
import easewright.geom.Point;
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
import easewright.pattern.Scale;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A collar set on from centre line to centre line leaves the button stands free, and a band does not. */
class CollarFitTest {
    private static Piece front() {
        List<Point> corners = List.of(
                new Point(0, 100), new Point(100, 100), new Point(220, 60), new Point(240, 500), new Point(0, 500));
        return Piece.bare("front", Outline.polygon(corners)).toBuilder()
                .cut(2, false)
                .edges(List.of(
                        Edge.of("neck", EdgeRole.NECK, corners.get(0), corners.get(1)),
                        Edge.of("front edge", EdgeRole.OPENING, corners.get(4), corners.get(0))))
                .levels(List.of(LevelMark.through("bust", new Point(120, 300)).withOverlap(15)))
                .build();
    }

    private static Piece collar(double mm) {
        List<Point> corners =
                List.of(new Point(500, 0), new Point(500 + mm, 0), new Point(500 + mm, 60), new Point(500, 60));
        return Piece.bare("collar", Outline.polygon(corners))
                .withEdges(List.of(Edge.of("neck", EdgeRole.SEAM, corners.get(0), corners.get(1))));
    }

    private static Optional<String> told(double collar) {
        Pattern pattern = Pattern.bare(List.of(front(), collar(collar)), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(Level.of("bust", LevelKind.BUST)))
                .withMates(List.of(new Mate(
                        "collar", List.of(new EdgeRef("front", "neck", 2)), List.of(EdgeRef.of("collar", "neck")), 0)));
        return Checks.of(pattern, Measures.of(pattern), EaseTables.standard()).stream()
                .map(Finding::code)
                .filter(code -> code.startsWith("mate-"))
                .findFirst();
    }

    @Test
    void aCollarFromCentreToCentreFits() {
        assertThat(told(200)).as("a band, from edge to edge").isEmpty();
        assertThat(told(170)).contains("mate-fits-centre");
        assertThat(told(171)).contains("mate-fits-centre");
        assertThat(told(190)).contains("mate-mismatch");
        assertThat(told(150)).contains("mate-mismatch");
    }
}
