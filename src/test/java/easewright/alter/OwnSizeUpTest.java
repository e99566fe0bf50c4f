package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Recipe;
import easewright.measure.Measures;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The comparison with a size up uses the sizes that the file itself holds. */
class OwnSizeUpTest {
    private static final List<String> SIZES = List.of("S", "M", "L");
    private static Pattern nest;

    /** The sample bodice for three people, each 4 % larger than the one before. */
    @BeforeAll
    static void draft() {
        Recipe bodice = Recipe.of("bodice").orElseThrow();
        List<Piece> pieces = new ArrayList<>();
        Pattern last = null;
        for (int i = 0; i < SIZES.size(); i++) {
            double by = 1 + 0.04 * i;
            List<BodyMeasure> measures = bodice.sample().measures().stream()
                    .map(m -> new BodyMeasure(m.name(), m.level(), m.mm() * by, m.takenAt()))
                    .toList();
            last = bodice.draft(new Body("size", measures), Map.of(), Map.of())
                    .draft()
                    .pattern();
            String size = SIZES.get(i);
            last.pieces()
                    .forEach(p -> pieces.add(p.toBuilder()
                            .id(p.id() + "-" + size)
                            .name(p.name() + " " + size)
                            .size(Optional.of(size))
                            .build()));
        }
        nest = last.withPieces(pieces).withMates(List.of());
    }

    private static SizeUp compared(String size, double amount) throws Refusal {
        Alteration change = Within.of(
                new Scope(Optional.of(size), Side.BOTH),
                SeamChange.at("waist", amount).withShares(Share.of("Front", "side"), Share.of("Back", "side")));
        return SizeUp.of(nest, change.apply(nest).pattern(), "waist", Optional.of(size));
    }

    private static SizeUp.Line line(SizeUp compared, String name) {
        return compared.lines().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The neck all round, the armhole of one side, and a shoulder, where a front and a back are sewn to each other. */
    private static double edges(String size, EdgeRole role) {
        double often = role == EdgeRole.NECK ? 1 : role == EdgeRole.ARMHOLE ? 2 : 4;
        return nest.pieces().stream()
                .filter(p -> p.size().equals(Optional.of(size)))
                .flatMap(p -> Measures.of(p, List.of()).edges().stream()
                        .filter(e -> e.role() == role)
                        .map(e -> e.mm() * p.times() * (p.onFold() ? 2 : 1)))
                .mapToDouble(mm -> mm / often)
                .sum();
    }

    @Test
    void theNextSizeOfTheFileAsItIsDrawn() throws Refusal {
        SizeUp up = compared("S", 12);
        assertThat(up.own()).contains("M");
        for (EdgeRole role : List.of(EdgeRole.SHOULDER, EdgeRole.NECK, EdgeRole.ARMHOLE)) {
            SizeUp.Line line = line(up, Settings.name(role));
            assertThat(line.before()).isCloseTo(edges("S", role), within(1e-9));
            assertThat(line.across()).isCloseTo(edges("M", role), within(1e-9));
            assertThat(line.local()).isCloseTo(line.before(), within(1e-6));
        }
        assertThat(line(up, "waist").local() - line(up, "waist").before()).isCloseTo(12, within(1e-6));
        assertThat(line(up, "bust").across()).isGreaterThan(line(up, "bust").before() + 20);
    }

    @Test
    void asManySizesUpAsReachTheGirthAndNoMoreThanThereAre() throws Refusal {
        assertThat(compared("S", 40).own()).contains("L");
        assertThat(compared("S", 75).own()).contains("L");
        assertThat(compared("M", 10).own()).contains("L");
        assertThat(compared("M", -10).own()).contains("S");
    }

    /** The largest size has none above it: its pieces are scaled instead, and that is told. */
    @Test
    void withoutALargerSizeThePiecesAreScaled() throws Refusal {
        SizeUp up = compared("L", 12);
        assertThat(up.own()).isEmpty();
        assertThat(line(up, "waist").across() - line(up, "waist").before()).isCloseTo(12, within(1e-3));
        assertThat(SizeUp.of(nest, nest, "waist", Optional.of("S")).own()).isEmpty();
    }
}
