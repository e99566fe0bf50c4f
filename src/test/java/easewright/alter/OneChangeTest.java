package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Records of one change in several sizes are told from changes that are only alike. */
class OneChangeTest {
    private static final SeamChange HIP = SeamChange.at("hip", 24);

    private static List<Step> in(Alteration change, String... sizes) {
        return Scope.each(List.of(sizes), Side.BOTH).stream()
                .map(scope -> new Step(Within.of(scope, change).note(), true))
                .toList();
    }

    private static List<Integer> lengths(List<Step> course) {
        return OneChange.course(course).stream().map(c -> c.steps().size()).toList();
    }

    private static List<Step> after(List<Step> first, List<Step> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }

    @Test
    void recordsMadeInOneGoBelongTogether() throws Refusal {
        List<Step> two = in(HIP, "10", "14");
        OneChange one = OneChange.course(two).get(0);
        assertThat(one.sizes()).containsExactly("10", "14");
        assertThat(one.steps()).isEqualTo(two);
        assertThat(one.switched(false).steps()).allMatch(s -> !s.on());
        assertThat(one.withAmount(6).steps()).allMatch(s -> s.amount().getAsDouble() == 6);
        assertThat(OneChange.course(one.withAmount(6).steps())).hasSize(1);
        // Whatever is read again says the same of itself.
        for (Step step : two) {
            assertThat(Ways.from(step.note()).note()).isEqualTo(step.note());
            assertThat(Ways.from(step.note()).opposite().orElseThrow().note().settings())
                    .containsEntry("amount", "-24.0");
        }
    }

    @Test
    void whatWasMadeForItselfStaysApart() {
        assertThat(lengths(after(in(HIP, "10"), in(HIP, "12")))).containsExactly(1, 1);
        assertThat(lengths(after(in(HIP, "10", "12"), in(HIP, "10", "12")))).containsExactly(2, 2);
        assertThat(lengths(after(in(HIP, "10", "12"), in(HIP, "12", "10")))).containsExactly(2, 2);
        assertThat(lengths(List.of(new Step(HIP.note(), true), new Step(HIP.note(), true))))
                .containsExactly(1, 1);
    }

    /** A course that another program or hand has altered is not called one any more. */
    @Test
    void recordsThatAreNotTheSameAnyMoreAreSeveral() {
        List<Step> three = in(HIP, "10", "12", "14");
        assertThat(lengths(List.of(three.get(0), three.get(1).withAmount(3), three.get(2))))
                .containsExactly(1, 1, 1);
        assertThat(lengths(List.of(three.get(0), three.get(1).switched(false), three.get(2))))
                .containsExactly(1, 1, 1);
        assertThat(lengths(three.subList(1, 3))).containsExactly(1, 1);
        assertThat(lengths(List.of(three.get(0), three.get(2)))).containsExactly(2);
        Step other = new Step(
                new ChangeNote(
                        "lengthen", Map.of("level", "hip", "amount", "24.0", "in-size", "12", "as-in-size", "10")),
                true);
        assertThat(lengths(List.of(three.get(0), other))).containsExactly(1, 1);
    }

    @Test
    void whatIsNamedInOneSizeIsFoundInAnother() throws Exception {
        Pattern nest = SvgFile.read(Path.of("sample-pieces/skirt-sizes.svg")).pattern();
        OtherSize there = new OtherSize(
                new Scope(Optional.of("10"), Side.BOTH).part(nest).alone(),
                new Scope(Optional.of("14"), Side.BOTH).part(nest).alone());
        Way slash = Ways.of("slash").orElseThrow();
        assertThat(there.texts(
                        slash, Map.of("slash", List.of("Back 10/hem@9cm > back/waist/end=2; back 10/zip > Front/hip"))))
                .containsEntry(
                        "slash",
                        List.of(
                                "skirt-back-14/hem@9cm > skirt-back-14/waist/end=2",
                                "skirt-back-14/zip > skirt-front-14/hip"));
        assertThat(catchThrowableOfType(
                                Refusal.class,
                                () -> there.texts(slash, Map.of("slash", List.of("10,20 > Front 10/hip"))))
                        .code())
                .isEqualTo("place-of-one-size");
        assertThat(catchThrowableOfType(
                                Refusal.class,
                                () -> there.texts(slash, Map.of("slash", List.of("Sleeve/hem > Front/hip"))))
                        .code())
                .isEqualTo("piece-not-known");
    }
}
