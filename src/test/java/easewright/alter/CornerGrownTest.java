package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A corner beyond what is taken for untrue is meant to be so, but for one that a change has made of a smaller one. */
class CornerGrownTest {
    /** A bodice with a straight waist, its side slanting in by so much over 8 in. */
    private static Pattern bodices(double slant, LineKind drawn) {
        return Cloths.pattern(
                        List.of(Level.of("bust", LevelKind.BUST)),
                        half("front", slant, drawn),
                        half("back", slant, drawn))
                .withMates(List.of(new Mate(
                        "side seam", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0)));
    }

    private static Piece half(String id, double slant, LineKind drawn) {
        List<Point> corners = List.of(in(0, 0), in(5, 0), in(5.5, 1), in(10, 8), in(10 - slant, 16), in(0, 16));
        return Cloths.bodice(id, corners, LevelMark.through("bust", in(2, 9))).toBuilder()
                .drawn(drawn, 10)
                .build();
    }

    /** Wider at the bust, and straight from there down to the waist. */
    private static Pattern tapered(Pattern before) throws Refusal {
        return new SeamChange("bust", 1.5 * INCH, List.of(), Taper.STRAIGHT, false, List.of(), List.of(), false, true)
                .apply(before)
                .pattern();
    }

    private static Optional<Finding> waist(Pattern pattern) {
        return Truing.proposals(pattern).stream()
                .map(Proposal::finding)
                .filter(f -> f.code().equals("joined-line-bends")
                        && "waist".equals(f.values().get("edge")))
                .findFirst();
    }

    @Test
    void oneThatAChangeMakesWorseStaysTold() throws Refusal {
        Pattern before = bodices(2, LineKind.STITCHING);
        assertThat((Double) waist(before).orElseThrow().values().get("degrees.degrees"))
                .isCloseTo(28.07, within(0.05));
        Pattern after = tapered(before);
        assertThat((Double) waist(after).orElseThrow().values().get("degrees.degrees"))
                .isBetween(32.0, 36.0);
    }

    @ParameterizedTest
    @EnumSource(LineKind.class)
    void oneThatWasDrawnSoIsMeant(LineKind drawn) throws Refusal {
        Pattern before = bodices(2.5, drawn);
        assertThat(waist(before)).isEmpty();
        Pattern after = tapered(before);
        assertThat(waist(after)).isEmpty();
    }
}
