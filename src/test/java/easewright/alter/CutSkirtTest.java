package easewright.alter;

import static easewright.alter.Cloths.HIP;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.reversed;
import static easewright.alter.Cloths.sewn;
import static easewright.alter.Cloths.skirtHalf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A skirt drawn by its cutting line, 10 mm outside the stitching: what is to stay stays where it is sewn. */
class CutSkirtTest {
    private static Piece skirt(Dart... darts) {
        Piece drawn = skirtHalf("front", 9, 10, 8, 22);
        return drawn
                .withEdges(drawn.edges().stream()
                        .map(e -> e.role() == EdgeRole.FOLD ? Edge.of(e.name(), EdgeRole.CENTRE, e.from(), e.to()) : e)
                        .toList())
                .toBuilder()
                .cut(2, false)
                .darts(List.of(darts))
                .drawn(LineKind.CUTTING, 10)
                .build();
    }

    private static void assertWidened(Pattern before, Pattern after, double amount) {
        assertThat(girth(after, "hip") - girth(before, "hip")).isCloseTo(amount, within(1e-6));
    }

    /** A dart in the side ends the change where it is sewn; neither its mouth nor anything below moves. */
    @Test
    void aDartInTheSideStaysWhereItIsSewn() throws Refusal {
        for (boolean swapped : new boolean[] {false, true}) {
            Dart dart = new Dart(
                    "dart",
                    in(10, swapped ? 13 : 12),
                    in(10, swapped ? 12 : 13),
                    in(6, 12.5),
                    Optional.empty(),
                    Optional.of("side"));
            for (Piece piece : List.of(skirt(dart), reversed(skirt(dart)))) {
                for (double amount : new double[] {40, -40}) {
                    Pattern before = pattern(List.of(HIP), piece);
                    Pattern after = SeamChange.at("hip", amount).apply(before).pattern();
                    assertWidened(before, after, amount);
                    Piece is = after.pieces().get(0);
                    assertThat(is.darts()).isEqualTo(piece.darts());
                    var sewnBefore = StitchOutline.of(piece).mouth(dart).orElseThrow();
                    var sewnAfter = StitchOutline.of(is).mouth(dart).orElseThrow();
                    for (int i = 0; i < 2; i++) {
                        assertThat(sewnAfter
                                        .get(i)
                                        .sewn()
                                        .distance(sewnBefore.get(i).sewn()))
                                .isLessThan(1e-6);
                    }
                    assertThat(sewn(is, "hem")).isCloseTo(sewn(piece, "hem"), within(1e-6));
                    assertThat(sewn(is, "waist")).isCloseTo(sewn(piece, "waist"), within(1e-6));
                    Pattern back = SeamChange.at("hip", -amount).apply(after).pattern();
                    assertThat(Worst.apart(back.pieces().get(0).outline(), piece.outline()))
                            .isLessThan(1e-6);
                }
            }
        }
    }

    /** The centre swung about its upper end: the sewn waist keeps its length, the sewn centre too, to 1 part in 1/cos. */
    @Test
    void theCentreSwingsAboutItsSewnEnd() throws Refusal {
        double[] hem = new double[2];
        int i = 0;
        for (Piece piece : List.of(skirt(), reversed(skirt()))) {
            Pattern before = pattern(List.of(HIP), piece);
            CentreChange wedge = CentreChange.wedge("hip", 20, EdgeRef.of("front", "fold"));
            Pattern after = wedge.apply(before).pattern();
            assertWidened(before, after, 20);
            Piece is = after.pieces().get(0);
            assertThat(sewn(is, "waist")).isCloseTo(sewn(piece, "waist"), within(1e-6));
            assertThat(sewn(is, "side")).isCloseTo(sewn(piece, "side"), within(1e-6));
            hem[i++] = sewn(is, "hem");
            // Two pieces: 10 each at the hip, 8 in below the cut waist; from the sewn waist it goes on in proportion.
            double down = (22 * 25.4 - 20) / (8 * 25.4 - 10);
            assertThat(sewn(is, "hem") - sewn(piece, "hem")).isCloseTo(10 * down, within(0.3));
            Pattern back = wedge.opposite().orElseThrow().apply(after).pattern();
            assertThat(Worst.apart(back.pieces().get(0).outline(), piece.outline()))
                    .isLessThan(1e-6);
        }
        assertThat(hem[0]).isCloseTo(hem[1], within(1e-9));
    }

    /** Carried to the hem, the hem gains what the hip gains, and the waist nothing. */
    @Test
    void carriedToTheHem() throws Refusal {
        for (Piece piece : List.of(skirt(), reversed(skirt()))) {
            Pattern before = pattern(List.of(HIP), piece);
            Pattern after =
                    SeamChange.at("hip", 40).carriedToHem().apply(before).pattern();
            assertWidened(before, after, 40);
            Piece is = after.pieces().get(0);
            assertThat(sewn(is, "hem") - sewn(piece, "hem")).isCloseTo(20, within(1e-6));
            assertThat(sewn(is, "waist")).isCloseTo(sewn(piece, "waist"), within(1e-6));
            assertThat(sewn(is, "fold")).isCloseTo(sewn(piece, "fold"), within(1e-6));
        }
    }
}
