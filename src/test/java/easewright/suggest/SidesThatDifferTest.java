package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Cloths;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whether sides that differ are eased in is a question; where ease is taken for meant it is all that they differ by. */
class SidesThatDifferTest {
    private static Piece piece(String id, String name, String edge, EdgeRole role, double long1) {
        Point low = new Point(200, 0);
        Point high = new Point(200, long1);
        return Piece.bare(id, Outline.polygon(List.of(new Point(0, 0), low, high, new Point(0, long1)))).toBuilder()
                .name(name)
                .edges(List.of(Edge.of(edge, role, low, high)))
                .build();
    }

    private static MateSuggestion only(UnsewnEdges unsewn) {
        assertThat(unsewn.seams()).hasSize(1);
        return (MateSuggestion) unsewn.seams().get(0);
    }

    private static Pattern pattern(Piece... pieces) {
        return Cloths.pattern(List.of(), pieces);
    }

    @Test
    void sidesAreSewnAndNothingIsTakenForEase() {
        UnsewnEdges unsewn = new UnsewnEdges(pattern(
                piece("f", "Front", "side", EdgeRole.SEAM, 616.44), piece("b", "Back", "side", EdgeRole.SEAM, 620)));
        EdgeToEdge.sameNames(unsewn);
        MateSuggestion seam = only(unsewn);
        assertThat(seam.mate().declaredEase()).isZero();
        assertThat(seam.reason().code()).isEqualTo("seam-apart");
        assertThat((Double) seam.reason().values().get("apart")).isCloseTo(3.56, within(1e-9));
    }

    @Test
    void lengthToEaseInIsTheWholeDifference() {
        UnsewnEdges unsewn = new UnsewnEdges(pattern(
                piece("f", "Front", "shoulder", EdgeRole.SHOULDER, 120.21),
                piece("b", "Back", "shoulder", EdgeRole.SHOULDER, 126.58)));
        EdgeToEdge.shoulders(unsewn);
        assertThat(Math.abs(only(unsewn).mate().declaredEase())).isCloseTo(6.37, within(1e-4));
    }
}
