package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How often edges count where a size up is compared: what lies on each other once, and one side where sides are alike. */
class SizeUpCountTest {
    private static final List<Point> HALF =
            List.of(in(0, 0), in(3, 0), in(7, 0), in(7, 9), in(10, 9), in(10, 20), in(0, 20));
    private static final String EDGES =
            "neck NECK, shoulder SHOULDER, armhole ARMHOLE, underarm OTHER, side SEAM, hem HEM, fold FOLD";

    private static Piece half(String name, int times, boolean fold) {
        return polygon(name, HALF, EDGES).toBuilder()
                .cut(times, fold)
                .levels(List.of(LevelMark.through("bust", in(2, 14))))
                .build();
    }

    private static double before(String role, Piece... pieces) throws Refusal {
        var p = pattern(List.of(Level.of("bust", LevelKind.BUST)), pieces);
        SizeUp size = SizeUp.of(p, SeamChange.at("bust", INCH).apply(p).pattern(), "bust");
        return size.lines().stream()
                        .filter(l -> l.kind() == SizeUp.Kind.EDGES && l.name().equals(role))
                        .findFirst()
                        .orElseThrow()
                        .before()
                / INCH;
    }

    private static Piece yoke(int times, boolean fold) {
        return half("Yoke", times, fold).withLevels(List.of());
    }

    @Test
    void aYokeOfTwoLayersCountsOnce() throws Refusal {
        Piece front = half("front", 2, false);
        for (Piece yoke : List.of(yoke(2, true), yoke(1, true), yoke(4, false), yoke(2, false))) {
            assertThat(before("neck", front, yoke)).isCloseTo(12, within(1e-6));
            assertThat(before("armhole", front, yoke)).isCloseTo(18, within(1e-6));
            assertThat(before("shoulder", front, yoke)).isCloseTo(4, within(1e-6));
        }
    }

    @Test
    void facingsAndLiningsLieOnWhatCountsAlready() throws Refusal {
        Piece front = half("front", 2, false);
        Piece back = half("back", 1, true);
        for (String name : List.of("front facing", "Lining front")) {
            Piece on = half(name, 2, false).withLevels(List.of());
            assertThat(before("neck", front, back, on)).isCloseTo(12, within(1e-6));
            assertThat(before("armhole", front, back, on)).isCloseTo(18, within(1e-6));
        }
    }

    /** A facing that is cut in one with its front does not make the front a facing. */
    @Test
    void aFrontWithItsFacingIsAFront() throws Refusal {
        assertThat(before("neck", half("Front with facing", 2, false), half("back", 1, true)))
                .isCloseTo(12, within(1e-6));
    }

    /** One shape for front and back is cut twice, and is no layer. */
    @Test
    void aShapeForFrontAndBackCountsTwice() throws Refusal {
        assertThat(before("neck", half("Top", 2, true))).isCloseTo(12, within(1e-6));
        assertThat(before("armhole", half("Top", 2, true))).isCloseTo(18, within(1e-6));
    }

    @Test
    void aCapIsThatOfOneSleeveAndACrotchOneSeam() throws Refusal {
        Piece front = half("front", 2, false);
        Piece sleeve = polygon(
                        "sleeve",
                        List.of(in(20, 0), in(32, 0), in(32, 10), in(20, 10)),
                        "cap CAP, right SEAM, hem HEM, left SEAM")
                .toBuilder()
                .cut(2, false)
                .build();
        assertThat(before("cap", front, sleeve)).isCloseTo(12, within(1e-6));
        Piece leg = polygon(
                        "leg",
                        List.of(in(40, 0), in(50, 0), in(50, 20), in(40, 20)),
                        "waist WAIST, side SEAM, hem HEM, crotch CROTCH")
                .toBuilder()
                .cut(2, false)
                .build();
        assertThat(before("crotch", front, leg)).isCloseTo(20, within(1e-6));
    }
}
