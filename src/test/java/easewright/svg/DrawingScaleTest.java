package easewright.svg;

import static easewright.svg.DrawingReaderTest.UNIT;
import static easewright.svg.Drawn.codes;
import static easewright.svg.Drawn.length;
import static easewright.svg.Drawn.read;
import static easewright.svg.Drawn.svg;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Box;
import easewright.pattern.Finding;
import easewright.pattern.Scale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a drawing says of its size, and what is proposed where it says nothing. */
class DrawingScaleTest {
    @Test
    void physicalSizeProvesTheScale() {
        Drawing drawing = read(svg("width='20cm' height='200mm' viewBox='0 0 2000 2000'", UNIT));
        assertThat(drawing.scale()).isEqualTo(new Scale(0.1, 0.1, Scale.Proof.PHYSICAL_SIZE));
        assertThat(drawing.findings()).isEmpty();
        assertThat(read(svg("width='20cm' viewBox='0 0 2000 1000'", UNIT)).scale())
                .isEqualTo(new Scale(0.1, 0.1, Scale.Proof.PHYSICAL_SIZE));
        Drawing oneSided = read(svg("height='100mm' viewBox='0 0 2000 1000'", UNIT));
        assertThat(oneSided.scale()).isEqualTo(new Scale(0.1, 0.1, Scale.Proof.PHYSICAL_SIZE));
        assertThat(oneSided.page()).contains(new Box(0, 0, 200, 100));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "viewBox='0 0 100 100'",
                "width='100' height='100'",
                "width='100px' height='100px' viewBox='0 0 100 100'",
                "width='100%' height='100%' viewBox='0 0 100 100'",
                "width='auto' viewBox='0 0 100 100'"
            })
    void withoutPhysicalSizeTheScaleIsUnprovedAndProposalsAreMade(String root) {
        Drawing drawing = read(svg(root, UNIT));
        assertThat(drawing.scale().proof()).isEqualTo(Scale.Proof.UNPROVED);
        Finding finding = drawing.findings().get(0);
        assertThat(finding.code()).isEqualTo("scale-unproved");
        // Signature factors of common editors, from memory.
        assertThat((double) finding.values().get("at72.number")).isCloseTo(0.352778, within(5e-7));
        assertThat((double) finding.values().get("at90.number")).isCloseTo(0.282222, within(5e-7));
        assertThat((double) finding.values().get("at96.number")).isCloseTo(0.264583, within(5e-7));
        assertThat(length(drawing.shapes().get(0))).isCloseTo(40 * 25.4 / 96, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "width='595.28' height='841.89' viewBox='0 0 595.28 841.89', 72",
        "width='1052.36px' height='744.09px', 90",
        "width='793.7' height='1122.52', 96",
        "x='0px' y='0px' viewBox='0 0 500 500', 72",
        "inkscape:version='0.48.4 r9939', 90"
    })
    void signsOfTheDrawingProposeAScale(String root, int perInch) {
        Drawing drawing = read(svg(root.strip(), UNIT));
        assertThat(drawing.scale().proof()).isEqualTo(Scale.Proof.UNPROVED);
        assertThat(drawing.findings())
                .filteredOn(f -> f.code().equals("scale-proposed"))
                .singleElement()
                .satisfies(f -> assertThat(f.values()).containsEntry("perInch", perInch));
    }

    @Test
    void aKnownLineBeatsTheFile() {
        Drawing drawing = read(
                svg("width='200mm' height='100mm' viewBox='0 0 100 100'", "<line id='l' x1='10' x2='20'/>"),
                OptionalDouble.of(0.5));
        assertThat(drawing.scale()).isEqualTo(new Scale(0.5, 0.5, Scale.Proof.KNOWN_LINE));
        assertThat(length(drawing.shapes().get(0))).isCloseTo(5, within(1e-12));
        Drawing none = read(svg("", "<line x2='100'/>"), OptionalDouble.of(25.4 / 72));
        assertThat(length(none.shapes().get(0))).isCloseTo(2540 / 72.0, within(1e-12));
        assertThat(none.findings()).isEmpty();
        assertThatThrownBy(() -> read(svg("", UNIT), OptionalDouble.of(0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void differentProportionsAreTold() {
        assertThat(codes(read(svg("width='200mm' height='100mm' viewBox='0 0 100 100'", UNIT))))
                .contains("scale-axes-differ");
    }
}
