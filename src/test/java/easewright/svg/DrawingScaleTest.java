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
        assertThat(drawing.pageUnit()).contains("cm");
        assertThat(read(svg("width='20cm' viewBox='0 0 2000 1000'", UNIT)).scale())
                .isEqualTo(new Scale(0.1, 0.1, Scale.Proof.PHYSICAL_SIZE));
        Drawing oneSided = read(svg("height='100mm' viewBox='0 0 2000 1000'", UNIT));
        assertThat(oneSided.scale()).isEqualTo(new Scale(0.1, 0.1, Scale.Proof.PHYSICAL_SIZE));
        assertThat(oneSided.pageUnit()).contains("mm");
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
        assertThat(drawing.pageUnit()).isEmpty();
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

    /** The unit may be told by the page where nothing states it in millimetres: proposed, never taken. */
    @ParameterizedTest
    @CsvSource({
        "width='100%' height='100%' viewBox='0 0 210 297', 1",
        "viewBox='0 0 841 1189', 1",
        "viewBox='0 0 595.28 841.89', 0.352778",
        "viewBox='0 0 744.09 1052.36', 0.282222",
        "width='400px' viewBox='0 0 793.7 1122.52', 0.264583",
        "width='3401.575' height='3401.575' viewBox='0 0 900 900', 1",
        "height='3401.575px' viewBox='0 0 800 900', 1",
        "width='3188.976px' height='3188.976px' viewBox='0 0 900 900', 1",
        "width='210mm' height='297mm', 0.264583"
    })
    void thePageTellsTheUnit(String root, double unit) {
        Drawing drawing = read(svg(root.strip(), UNIT));
        assertThat(drawing.scale().proof()).isEqualTo(Scale.Proof.UNPROVED);
        assertThat(drawing.proposals().get(0).mmPerUnit()).isCloseTo(unit, within(unit * 3e-5));
        assertThat(drawing.findings()).anyMatch(f -> f.code().startsWith("scale-proposed"));
    }

    @ParameterizedTest
    @CsvSource({
        "'scale(3.7795276)', 96",
        "'translate(10 20) scale(3.543307,-3.543307)', 90",
        "'matrix(2.834646 0 0 2.834646 0 0)', 72"
    })
    void aGroupThatTurnsMillimetresIntoUnitsTellsThem(String transform, int perInch) {
        String line = "<g><g transform='" + transform + "'><line id='l' x1='0' x2='100'/></g></g>";
        Drawing drawing = read(svg("width='4000px' height='4000px'", line));
        assertThat(drawing.scale().proof()).isEqualTo(Scale.Proof.UNPROVED);
        double unit = drawing.proposals().get(0).mmPerUnit();
        assertThat(unit).isCloseTo(25.4 / perInch, within(1e-9));
        Drawing set = read(svg("width='4000px' height='4000px'", line), OptionalDouble.of(unit));
        assertThat(length(set.shapes().get(0))).isCloseTo(100, within(1e-3));
    }

    /** A drawing in mm on a page in whatever unit is as large as it is. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "width='210mm' height='297mm' viewBox='0 0 210 297'",
                "width='21cm' height='29.7cm' viewBox='0 0 210 297'",
                "width='8.267716536in' height='11.692913386in' viewBox='0 0 210 297'",
                "width='595.275590551pt' height='841.889763780pt' viewBox='0 0 210 297'",
                "width='21CM' height='100%' viewBox='0 0 210 297'",
                "width='210mm' height='1122.519685px' viewBox='0 0 210 297'",
                "width='100%' height='11.692913386in' viewBox='0 0 210 297'",
                "width='840Q' viewBox='0 0 210 297'",
                "style='width:210mm;height:297mm' viewBox='0 0 210 297'",
                "width='420mm' height='297mm' viewBox='0 0 210 297' preserveAspectRatio='xMinYMin meet'"
            })
    void aPageInAnyUnitOfPaperProvesIt(String root) {
        Drawing drawing = read(svg(
                root,
                "<g transform='scale(10)'><g transform='translate(3 4) scale(.1 .1)'>"
                        + "<line id='l' x1='10' x2='110' y2='0'/></g></g>"));
        assertThat(drawing.scale().proof()).isEqualTo(Scale.Proof.PHYSICAL_SIZE);
        assertThat(length(drawing.shapes().get(0))).isCloseTo(100, within(1e-6));
        assertThat(drawing.findings()).isEmpty();
    }

    /** A px side that says otherwise than the side in mm leaves the size open. */
    @Test
    void sidesThatDisagreeProveNothing() {
        Drawing drawing = read(svg("width='210mm' height='500px' viewBox='0 0 210 297'", UNIT));
        assertThat(drawing.scale().proof()).isEqualTo(Scale.Proof.UNPROVED);
        assertThat(codes(drawing)).contains("scale-unproved");
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
