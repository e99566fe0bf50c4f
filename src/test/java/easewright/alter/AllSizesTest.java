package easewright.alter;

import static easewright.alter.Cloths.girth;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AllSizesTest {
    private static final LengthReader<NumberFormatException> MM = Double::parseDouble;

    private static Piece front(String size, double hip) {
        Piece piece = Cloths.skirtHalf("p" + size, hip - 2, hip, 8, 24);
        return piece.toBuilder()
                .name("Front " + size)
                .levels(List.of(LevelMark.through("hip " + size, Cloths.in(1, 8))))
                .build();
    }

    private static Pattern nest() {
        return Cloths.pattern(
                List.of(
                        Level.of("hip 38", LevelKind.HIP),
                        Level.of("hip 40", LevelKind.HIP),
                        Level.of("hip 42", LevelKind.HIP)),
                front("38", 9.5),
                front("40", 10),
                front("42", 10.5));
    }

    @Test
    void everySizeIsChangedExactlyAndOnItsOwn() throws Refusal {
        Pattern before = nest();
        Map<String, List<String>> texts =
                Map.of("level", List.of("Hip *"), "amount", List.of("24"), "edge", List.of("front */side"));
        Pattern now = before;
        List<Map<String, List<String>>> each = AllSizes.of(texts, before);
        assertThat(each).hasSize(3);
        for (Map<String, List<String>> one : each) {
            now = Ways.from(SettingText.read(SeamChange.WAY, one, now, MM))
                    .apply(now)
                    .pattern();
        }
        for (String level : List.of("hip 38", "hip 40", "hip 42")) {
            assertThat(girth(now, level) - girth(before, level)).isCloseTo(24, within(1e-9));
        }
        assertThat(now.changes()).hasSize(3);
    }

    @Test
    void sizesOfPiecesWhereThereIsNoLevel() throws Refusal {
        List<Map<String, List<String>>> each =
                AllSizes.of(Map.of("edge", List.of("front */hem"), "amount", List.of("5")), nest());
        assertThat(each)
                .extracting(m -> m.get("edge").get(0))
                .containsExactly("front 38/hem", "front 40/hem", "front 42/hem");
    }

    @Test
    void withoutAStarNothingIsMultiplied() throws Refusal {
        Map<String, List<String>> texts = Map.of("level", List.of("hip 38"), "amount", List.of("5"));
        assertThat(AllSizes.of(texts, nest())).containsExactly(texts);
        assertThat(catchThrowableOfType(Refusal.class, () -> AllSizes.of(Map.of("level", List.of("knee *")), nest()))
                        .code())
                .isEqualTo("size-unknown");
        assertThat(catchThrowableOfType(Refusal.class, () -> AllSizes.of(Map.of("edge", List.of("front/*")), nest()))
                        .code())
                .isEqualTo("size-form");
    }
}
