package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Alteration;
import easewright.alter.EdgeLength;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.ease.EaseTables;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.pattern.SidePair;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A hip that is fuller on one side needs length there as well (common practice). */
class FullerSideTest {
    private static Pattern on(Side side, Alteration change, Pattern pattern) throws Exception {
        return Within.of(new Scope(Optional.empty(), side), change)
                .apply(pattern)
                .pattern();
    }

    private static List<Finding> told(Pattern pattern) {
        return Checks.of(pattern, Measures.of(pattern), EaseTables.standard()).stream()
                .filter(f -> f.code().startsWith("fuller-"))
                .toList();
    }

    private static Pattern skirt() throws Exception {
        return SvgFile.read(Path.of("sample-pieces/skirt.svg")).pattern();
    }

    @ParameterizedTest
    @EnumSource(
            value = Side.class,
            names = {"LEFT", "RIGHT"})
    void whatIsWiderOnOneSideIsToldUntilItIsLongerThere(Side side) throws Exception {
        Pattern wider = on(side, SeamChange.at("hip", 20), skirt());
        assertThat(told(wider)).hasSize(1).allSatisfy(f -> {
            assertThat(f.code()).isEqualTo(side == Side.LEFT ? "fuller-left" : "fuller-right");
            assertThat((Double) f.values().get("by")).isBetween(19.99, 20.01);
            assertThat(f.values()).containsEntry("level", "hip");
        });
        Pattern narrower = on(side, SeamChange.at("hip", -20), skirt());
        assertThat(told(narrower))
                .extracting(Finding::code)
                .allMatch(c -> c.endsWith(side == Side.LEFT ? "right" : "left"));
        Pattern longer = wider;
        for (String piece : List.of("skirt-front", "skirt-back")) {
            EdgeRef edge = EdgeRef.of(piece, "side");
            longer = on(side, new EdgeLength(edge, 10, EdgeLength.Manner.AT_UPPER_END, true), longer);
        }
        assertThat(told(longer)).isEmpty();
    }

    /** The wider side is made, the more its seam curves: that is no length for the hip. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 60, 100})
    void aSeamThatIsLongerOnlyBecauseItCurvesMoreDoesNotSilenceIt(double by) throws Exception {
        Pattern wider = on(Side.LEFT, SeamChange.at("hip", by), skirt());
        assertThat(SidePair.of(wider))
                .hasSize(2)
                .allSatisfy(pair -> assertThat(side(wider, pair.left()) - side(wider, pair.right()))
                        .isGreaterThan(3));
        assertThat(told(wider)).extracting(Finding::code).containsExactly("fuller-left");
    }

    private static double side(Pattern pattern, Piece piece) {
        return Measures.of(pattern)
                .piece(piece.id())
                .flatMap(p -> p.edge("side"))
                .orElseThrow()
                .mm();
    }

    @Test
    void ofSidesAlikeNothingIsTold() throws Exception {
        assertThat(told(skirt())).isEmpty();
        assertThat(told(SeamChange.at("hip", 20).apply(skirt()).pattern())).isEmpty();
        assertThat(told(on(Side.LEFT, SeamChange.at("hip", 2), skirt()))).isEmpty();
    }
}
