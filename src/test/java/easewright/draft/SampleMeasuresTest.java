package easewright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.pattern.Severity;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sample files, read back, measure as they were drafted, bands drawn by their cutting lines included. */
class SampleMeasuresTest {
    static Stream<Draft> drafts() {
        return Samples.drafts().stream();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void measuresAsDrafted(Draft draft) throws SvgProblem {
        Pattern pattern = SvgFile.read(Samples.svg(draft.draft()).getBytes(StandardCharsets.UTF_8), "sample.svg")
                .pattern();
        GarmentMeasures measures = Measures.of(pattern);
        pattern.wishes()
                .forEach((level, ease) -> assertThat(
                                measures.girth(level).orElseThrow().finished())
                        .as(level)
                        .isCloseTo(pattern.body().girth(level).orElseThrow() + ease.mm(), within(0.01)));
        assertThat(measures.mates()).hasSameSizeAs(pattern.mates());
        measures.mates()
                .forEach(walk -> assertThat(walk.drift()).as(walk.mate().name()).isCloseTo(0, within(0.01)));
        assertThat(measures.findings()).noneMatch(f -> f.severity() == Severity.FAULT);
    }
}
