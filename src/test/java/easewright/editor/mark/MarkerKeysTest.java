package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.LevelKind;
import easewright.pattern.Piece;
import easewright.svg.SvgProblem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The tools on the table led from place to place by keys, without a window. */
class MarkerKeysTest {
    @Test
    void theKeyboardReachesEveryEdgeAndMovesAlongIt() throws SvgProblem {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept();
        bare.marker.go(MarkState.Step.SEAMS);
        int before = bare.session.desk().pattern().mates().size();
        bare.marker.take(Tool.SEW);
        int hem = edgeNumber(bare, "Back", "hem");
        for (int i = 0; i <= hem; i++) {
            bare.marker.step(1);
        }
        bare.marker.click();
        bare.marker.step(1);
        bare.marker.click();
        assertThat(bare.session.desk().pattern().mates()).hasSize(before + 1);
        bare.marker.take(Tool.NOTCH);
        bare.marker.step(1);
        Point from = bare.marker.state().over().orElseThrow().at();
        bare.marker.nudge(0, 40);
        Snap moved = bare.marker.state().over().orElseThrow();
        assertThat(moved.at()).isNotEqualTo(from);
        assertThat(bare.piece(moved.piece().orElseThrow())
                        .outline()
                        .nearest(moved.at())
                        .distance())
                .isLessThan(1e-6);
    }

    /** From place to place by key: every corner of every piece once, and the piece whose marks are listed first. */
    @Test
    void theKeysComeToEveryPieceBeforeTheyComeBack() throws SvgProblem {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept();
        bare.marker.go(MarkState.Step.PIECES);
        List<Piece> pieces = bare.session.desk().pattern().pieces();
        bare.marker.choosePiece(pieces.get(1).id());
        bare.marker.take(Tool.DART);
        List<Snap> walked = new ArrayList<>();
        bare.marker.step(1);
        while (!walked.contains(bare.marker.state().over().orElseThrow())) {
            walked.add(bare.marker.state().over().orElseThrow());
            bare.marker.step(1);
        }
        assertThat(bare.marker.state().over()).contains(walked.get(0));
        assertThat(walked.get(0).piece()).contains(pieces.get(1).id());
        Edge edge = pieces.get(1).edges().get(0);
        assertThat(walked)
                .filteredOn(s -> s.at().distance(edge.from()) < 0.02)
                .extracting(s -> PlaceWords.of(bare.session.desk(), s))
                .singleElement()
                .asString()
                .contains(pieces.get(1).name(), edge.name());
        assertThat(walked.stream().map(s -> s.piece().orElseThrow()).distinct())
                .containsExactlyInAnyOrderElementsOf(
                        pieces.stream().map(Piece::id).toList());
        for (Piece piece : pieces) {
            for (Segment segment : piece.outline().segments()) {
                assertThat(walked).anyMatch(s -> s.at().distance(segment.start()) < 0.02);
            }
        }
    }

    /** From a corner down a side that slopes inwards: the height is what counts, and the piece is not left by it. */
    @Test
    void aLevelIsPutDownASlopingSideByKeys() throws SvgProblem {
        Bare bare =
                Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='front' d='M100,100 H300 L250,400 H100 Z'/></svg>");
        bare.marker.go(MarkState.Step.LEVELS);
        bare.marker.tryTo(p -> LevelEdits.add(p, "bust", LevelKind.BUST));
        bare.marker.takeLevel("bust");
        bare.marker.step(1);
        bare.marker.step(1);
        assertThat(bare.marker.state().over().orElseThrow().at()).isEqualTo(new Point(300, 100));
        for (int i = 0; i < 3; i++) {
            bare.marker.nudge(0, 10);
        }
        assertThat(bare.marker.state().over().orElseThrow().piece()).contains("front");
        bare.marker.click();
        assertThat(bare.piece("front")
                        .level("bust")
                        .orElseThrow()
                        .through()
                        .orElseThrow()
                        .y())
                .isCloseTo(130, within(1e-9));
        // Above the piece there is nothing for it to lie on.
        bare.marker.stepPiece(1);
        bare.marker.nudge(0, -10);
        assertThat(bare.marker.state().over().orElseThrow().piece()).isEmpty();
    }

    private static int edgeNumber(Bare bare, String piece, String name) {
        int number = 0;
        for (Piece p : bare.session.desk().pattern().pieces()) {
            for (Edge e : p.edges()) {
                if (p.name().equals(piece) && e.name().equals(name)) {
                    return number;
                }
                number++;
            }
        }
        throw new AssertionError(piece + "/" + name);
    }
}
