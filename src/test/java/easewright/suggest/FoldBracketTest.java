package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sign that is drawn for a fold is not drawn again where the fold is marked. */
class FoldBracketTest {
    private static Rider through(String id, double... xy) {
        List<easewright.geom.Segment> lines = new ArrayList<>();
        for (int i = 2; i < xy.length; i += 2) {
            lines.add(new Line(new Point(xy[i - 2], xy[i - 1]), new Point(xy[i], xy[i + 1])));
        }
        return new Rider(id, Rider.Kind.INNER, lines);
    }

    @Test
    void onlyTheBracketOfAMarkedFoldIsLeftOut() {
        Rider bracket = through("bracket", 298, 100, 280, 100, 280, 400, 298, 400);
        Rider pocket = through("pocket", 50, 100, 50, 180, 150, 180, 150, 100);
        Piece open = Piece.bare(
                        "front",
                        Outline.polygon(
                                List.of(new Point(0, 0), new Point(300, 0), new Point(300, 500), new Point(0, 500))))
                .toBuilder()
                .riders(List.of(pocket, bracket))
                .build();
        assertThat(FoldBracket.without(open)).containsExactly(pocket, bracket);
        Piece folded = open.toBuilder().cut(1, true).build();
        assertThat(FoldBracket.without(folded)).containsExactly(pocket);
    }
}
