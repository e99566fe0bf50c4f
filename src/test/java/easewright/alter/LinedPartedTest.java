package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Of a piece that is lined with itself each layer has both sides, and a change at a girth goes by one layer. */
class LinedPartedTest {
    private static Pattern yoke(boolean onFold) {
        List<Point> corners = List.of(new Point(0, 0), new Point(200, 0), new Point(220, 120), new Point(0, 120));
        Piece piece = Piece.bare("yoke", Outline.polygon(corners)).toBuilder()
                .cut(2, onFold)
                .layers(2)
                .edges(List.of(
                        Edge.of("armhole", EdgeRole.SEAM, corners.get(1), corners.get(2)),
                        Edge.of("fold", onFold ? EdgeRole.FOLD : EdgeRole.SEAM, corners.get(3), corners.get(0))))
                .levels(List.of(LevelMark.through("bust", new Point(100, 60))))
                .build();
        return Cloths.pattern(List.of(Level.of("bust", LevelKind.BUST)), piece);
    }

    private static double bust(Pattern pattern) {
        return Measures.of(pattern).girth("bust").orElseThrow().finished();
    }

    @Test
    void onTheFoldItHasALeftAndARightHalfOfTwoLayers() throws Refusal {
        Pattern parted = LeftRight.of(yoke(true), Set.of("yoke")).garment();
        assertThat(parted.pieces())
                .hasSize(2)
                .allMatch(p -> p.times() == 2 && p.layers() == 2 && !p.onFold() && p.side() != Side.BOTH);
        assertThat(bust(parted)).isCloseTo(bust(yoke(true)), within(1e-9)).isCloseTo(420, within(1e-9));
    }

    /** As of a back that is cut once: both sides are drawn on it. */
    @Test
    void drawnWholeItHasNeitherALeftNorARightOne() throws Refusal {
        Alteration left = Within.of(new Scope(Optional.empty(), Side.LEFT), SeamChange.at("bust", 8));
        Pattern changed = left.apply(yoke(false)).pattern();
        assertThat(changed.pieces())
                .singleElement()
                .satisfies(p -> assertThat(p.side()).isEqualTo(Side.BOTH));
        Pattern pair = yoke(false)
                .withPiece(yoke(false).pieces().get(0).toBuilder().layers(1).build());
        assertThat(left.apply(pair).pattern().pieces())
                .as("a left and a right one")
                .hasSize(2);
    }

    @Test
    void aChangeAtTheGirthIsExactForOneLayer() throws Refusal {
        Pattern wider = SeamChange.at("bust", 12).apply(yoke(true)).pattern();
        assertThat(bust(wider)).isCloseTo(432, within(0.01));
        assertThat(wider.pieces().get(0).outline().nearest(new Point(216, 60)).distance())
                .as("half of it on the drawn half")
                .isLessThan(0.01);
    }
}
