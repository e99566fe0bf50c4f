package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Grain;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A skirt without a drawn hip gets one to be accepted or not. */
class HipBelowWaistTest {
    /** Where the waist meets the side. */
    private static final double SIDE = 90;

    private static Suggestions on(String body) throws SvgProblem {
        SvgFile svg = SvgFile.read(
                ("<svg xmlns='http://www.w3.org/2000/svg' width='1200mm' height='1200mm' viewBox='0 0 1200 1200'>"
                                + body + "</svg>")
                        .getBytes(StandardCharsets.UTF_8),
                "sheet.svg");
        return Suggestions.of(new Sheet(svg.pattern(), svg.loose(svg.pattern()), svg.texts()), Set.of());
    }

    private static String half(String name, String count, double left, double waist, double hip, double tall) {
        double top = 100;
        return String.format(
                Locale.ROOT,
                "<path d='M%.2f,%.2f L%.2f,%.2f C%.2f,%.2f %.2f,%.2f %.2f,%.2f V%.2f H%.2f Z'/>"
                        + "<text x='%.2f' y='%.2f' font-size='14'>%s<tspan x='%.2f' dy='18'>%s</tspan></text>",
                left,
                top,
                left + waist,
                top - 10,
                left + waist + 15,
                top + tall * 0.1,
                left + hip,
                top + tall * 0.2,
                left + hip,
                top + tall * 0.35,
                top + tall,
                left,
                left + 40,
                top + tall * 0.7,
                name,
                left + 40,
                count);
    }

    private static String skirt(double waist, double hip, double tall) {
        return half("Skirt front", "cut 1 on fold", 60, waist, hip, tall)
                + half("Skirt back", "cut 1 on fold", 500, waist, hip, tall);
    }

    private static double below(Piece piece) {
        return piece.level("hip").orElseThrow().through().orElseThrow().y() - SIDE;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void onGrownUpsTwentyCentimetresBelow(int seed) throws SvgProblem {
        Random random = new Random(seed);
        double hip = 225 + random.nextDouble() * 60;
        Suggestions suggestions = on(skirt(hip - 40 - random.nextDouble() * 15, hip, 500 + random.nextDouble() * 250));
        Pattern pattern = suggestions.outcome();
        assertThat(pattern.pieces())
                .hasSize(2)
                .allSatisfy(p -> assertThat(below(p)).isCloseTo(200, within(1e-6)));
        assertThat(Measures.of(pattern).girth("hip").orElseThrow().finished())
                .isBetween(4 * (hip - 15), 4 * hip + 0.05);
        assertThat(suggestions.all())
                .filteredOn(s -> s.key().equals("level hip"))
                .hasSize(1)
                .allSatisfy(s -> assertThat(s.reason().isLikely()).as("a guess").isFalse());
    }

    @Test
    void theGrainMayBeMarkedUpwards() throws SvgProblem {
        Pattern pattern = on(skirt(200, 245, 600)).outcome();
        for (Piece piece : pattern.pieces()) {
            for (boolean up : new boolean[] {false, true}) {
                Grain grain = up
                        ? new Grain(new Point(0, 500), new Point(0, 300))
                        : new Grain(new Point(0, 300), new Point(0, 500));
                assertThat(HipBelowWaist.on(
                                piece.toBuilder().grain(Optional.of(grain)).build(), 200))
                        .hasValueSatisfying(l ->
                                assertThat(l.through().orElseThrow().y() - SIDE).isCloseTo(200, within(1e-6)));
            }
        }
    }

    @Test
    void onChildrenItLiesHigher() throws SvgProblem {
        Pattern pattern = on(skirt(130, 160, 330)).outcome();
        assertThat(below(pattern.pieces().get(0))).isCloseTo(140, within(1e-6));
    }

    @Test
    void aSkirtThatEndsThereHasNoneAndADrawnOneIsKept() throws SvgProblem {
        assertThat(on(skirt(200, 245, 300)).outcome().level("hip")).isEmpty();
        String drawn = skirt(200, 245, 600)
                + "<path d='M60,285 H304'/><text x='120' y='282' font-size='12'>hip</text>"
                + "<path d='M500,285 H744'/><text x='560' y='282' font-size='12'>hip</text>";
        Pattern pattern = on(drawn).outcome();
        Point through =
                pattern.pieces().get(0).level("hip").orElseThrow().through().orElseThrow();
        assertThat(through.y()).isCloseTo(285, within(1e-6));
    }
}
