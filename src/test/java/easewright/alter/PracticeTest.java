package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where practice stops (docs/sources.md 4.3): 1/2 in is routine, 1 in the ceiling, a taper 10 times as long. */
class PracticeTest {
    private static final Piece PIECE = Piece.bare("p", Sketch.outline("0,0 100,0 100,100 0,100"));
    private static final Edge EDGE = Edge.of("side", EdgeRole.SEAM, new Point(100, 0), new Point(100, 100));
    private static final double NONE = Double.POSITIVE_INFINITY;

    private static List<String> codes(double amount, double taper) {
        return Practice.edge(PIECE, EDGE, EDGE, amount, taper, false).stream()
                .map(Finding::code)
                .toList();
    }

    @Test
    void amountsAtTheLimits() {
        assertThat(codes(12.7, NONE)).isEmpty();
        assertThat(codes(-12.7, NONE)).isEmpty();
        assertThat(codes(12.71, NONE)).containsExactly("edge-past-routine");
        assertThat(codes(25.4, NONE)).containsExactly("edge-past-routine");
        assertThat(codes(-25.41, NONE)).containsExactly("edge-past-practice");
        Finding past = Practice.edge(PIECE, EDGE, EDGE, -30, NONE, false).get(0);
        assertThat(past.severity()).isEqualTo(Severity.CAUTION);
        assertThat(past.values()).containsEntry("amount.signed", -30.0).containsEntry("limit", 25.4);
        assertThat(past.values()).containsEntry("edge", "side");
        assertThat(past.piece()).isEqualTo("p");
    }

    @Test
    void tapersAtTheLimits() {
        assertThat(codes(10, 100)).isEmpty();
        assertThat(codes(10, 99.9)).containsExactly("taper-short");
        assertThat(codes(-10, 50)).containsExactly("taper-short");
        assertThat(codes(10, 49.9)).containsExactly("taper-steep");
        Finding steep = Practice.edge(PIECE, EDGE, EDGE, 10, 40, false).get(0);
        assertThat(steep.severity()).isEqualTo(Severity.CAUTION);
        assertThat((Double) steep.values().get("slope.degrees")).isCloseTo(14.036, within(1e-3));
        assertThat(steep.values()).containsEntry("taper", 40.0).containsEntry("needed", 100.0);
        assertThat(Practice.edge(PIECE, EDGE, EDGE, 10, 60, false).get(0).severity())
                .isEqualTo(Severity.NOTE);
        assertThat(codes(30, 100)).containsExactly("taper-steep", "edge-past-practice");
    }

    /** A sleeve is better widened across. */
    @Test
    void steepOnASleeveNamesTheSleevesOwnWay() {
        Piece plain = Cloths.skirtHalf("front", 8, 9.5, 8, 22);
        Edge side = plain.edge("side").orElseThrow();
        Piece sleeve = plain.withEdges(List.of(
                side,
                Edge.of(
                        "cap",
                        EdgeRole.CAP,
                        plain.edge("waist").orElseThrow().from(),
                        plain.edge("waist").orElseThrow().to())));
        assertThat(Practice.edge(plain, side, side, 10, 30, false).get(0).code())
                .isEqualTo("taper-steep");
        assertThat(Practice.edge(sleeve, side, side, 10, 30, false).get(0).code())
                .isEqualTo("taper-steep-sleeve");
    }

    /** What is carried to the hem already need not be told to be. */
    @Test
    void whatIsFollowedIsNotAdvised() {
        Finding steep = Practice.edge(PIECE, EDGE, EDGE, 10, 40, true).get(0);
        assertThat(steep.severity()).isEqualTo(Severity.CAUTION);
        Words words = Words.english(LengthUnit.CM);
        assertThat(words.of(steep)).contains("Better").doesNotContain("hem");
        assertThat(words.of(Practice.edge(PIECE, EDGE, EDGE, 10, 40, false).get(0)))
                .contains("carry it to the hem");
    }
}
