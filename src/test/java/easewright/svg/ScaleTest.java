package easewright.svg;

import static easewright.svg.Drawn.codes;
import static easewright.svg.Drawn.mm;
import static easewright.svg.Drawn.read;
import static easewright.svg.Drawn.svg;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the scale is proved, proposed or asked for. */
class ScaleTest {
    private static final String SQUARE = "<rect id='sq' x='10' y='10' width='%s' height='%s'/>"
            + "<text x='20' y='20'>%s</text><rect x='500' width='300' height='300'/>";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            144   | 2 in            | 0.352777777778
            283.4645669 | 10 x 10 cm | 0.352777777778
            100   | Test square 5cm | 0.5
            180   | 2"              | 0.282222222222
            100   | 50,0 mm         | 0.5
            """)
    void aSquareWithItsSizeWrittenInItIsTheBestSign(double side, String words, double unit) {
        Drawing drawing = read(svg("viewBox='0 0 900 400'", SQUARE.formatted(side, side, words)));
        ScaleProposal best = drawing.proposals().get(0);
        assertThat(best.sign()).isEqualTo(ScaleProposal.Sign.TEST_SQUARE);
        assertThat(best.mmPerUnit()).isCloseTo(unit, within(1e-9));
        assertThat(codes(drawing)).contains("scale-unproved", "scale-by-test-square");
    }

    @Test
    void theUsualCountsAreAlwaysOffered() {
        List<ScaleProposal> proposals =
                read(svg("", "<rect width='9' height='9'/>")).proposals();
        assertThat(proposals).extracting(ScaleProposal::seen).containsExactly("72", "90", "96");
        assertThat(proposals.get(1).mmPerUnit()).isCloseTo(25.4 / 90, within(1e-12));
        List<ScaleProposal> signed = read(svg("x='0px' y='0px' viewBox='0 0 9 9'", "<rect width='9' height='9'/>"))
                .proposals();
        assertThat(signed.get(0).sign()).isEqualTo(ScaleProposal.Sign.PROGRAM);
        assertThat(signed.get(0).mmPerUnit()).isCloseTo(25.4 / 72, within(1e-12));
        assertThat(mm("<rect width='9' height='9'/>").proposals()).isEmpty();
    }

    @Test
    void aTestSquareThatContradictsTheFileIsTold() {
        assertThat(codes(mm(SQUARE.formatted(50, 50, "5 cm")))).isEmpty();
        Drawing drawing = mm(SQUARE.formatted(53.3, 53.3, "5 cm"));
        assertThat(drawing.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("test-square-differs");
            assertThat(f.values()).containsEntry("wanted", 50.0);
            assertThat((double) f.values().get("of.percent")).isCloseTo(106.6, within(1e-9));
        });
    }

    /** "The square that says 10 cm measures 9.4 cm", not millimetres to a unit of the drawing. */
    @Test
    void scalesAreToldByWhatATapeShows() throws SvgProblem {
        Words words = Words.english(LengthUnit.CM);
        Finding square = finding(mm(SQUARE.formatted(94, 94, "10 cm")), "test-square-differs");
        assertThat(words.of(square)).contains("is drawn 9.4\u00a0cm wide, 94\u00a0% of its size");
        // 96 units to the inch: 100 units are 2.65 cm.
        Finding unproved =
                finding(read(svg("viewBox='0 0 900 400'", SQUARE.formatted(100, 100, "5 cm"))), "scale-by-test-square");
        assertThat(words.of(unproved)).contains("measures 2.65\u00a0cm as things stand, 52.9\u00a0% of its size");
        assertThat(words.forCommands().of(unproved)).endsWith("--scale 0.5mm.");
        Finding stretched = finding(
                read(svg("width='94mm' height='100mm' viewBox='0 0 100 100'", "<rect width='9' height='9'/>")),
                "scale-axes-differ");
        assertThat(words.of(stretched)).contains("6.4\u00a0% larger");
        String marked = svg(
                "width='94mm' height='94mm' viewBox='0 0 100 100'",
                "<metadata><marks xmlns='urn:easewright:marks:1'>"
                        + "<scale across='1' down='1' proof='physical-size'/></marks></metadata>"
                        + "<rect width='90' height='90'/>");
        Finding changed = SvgFile.read(marked.getBytes(StandardCharsets.UTF_8), "a.svg").findings().stream()
                .filter(f -> f.code().equals("scale-differs"))
                .findFirst()
                .orElseThrow();
        assertThat(words.of(changed)).contains("is now at 94\u00a0% of the size at which it was marked");
    }

    private static Finding finding(Drawing drawing, String code) {
        return drawing.findings().stream()
                .filter(f -> f.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aKnownLineOrTwoPlacesProveTheScale() throws SvgProblem {
        SvgFile file = SvgFile.read(
                svg("", "<line id='l' x2='300'/><rect id='r' width='200' height='100'/>")
                        .getBytes(java.nio.charset.StandardCharsets.UTF_8),
                "a.svg");
        assertThat(file.drawnLength("no")).isEmpty();
        double unit = file.unitFor(file.drawnLength("l").orElseThrow(), 150);
        assertThat(unit).isCloseTo(0.5, within(1e-12));
        SvgFile known = file.reread(file.options().withScale(unit));
        assertThat(known.pattern().scale().proof()).isEqualTo(Scale.Proof.KNOWN_LINE);
        assertThat(known.pattern().pieces().get(0).outline().box().width()).isCloseTo(100, within(1e-9));
        assertThat(known.drawnLength("r").orElseThrow()).isCloseTo(100, within(1e-9));
        assertThat(known.findings()).isEmpty();
    }

    @Test
    void statedLengthsStayOnANewScaleUnlessAsked() throws SvgProblem {
        SvgFile bare = SvgFileTest.file("<path id='a' d='M10,10h100v100H10z'/>");
        Piece piece = bare.pattern().pieces().get(0);
        Edge edge = new Edge(
                "hem",
                EdgeRole.HEM,
                piece.outline().segments().get(0).start(),
                piece.outline().segments().get(0).end(),
                false,
                java.util.OptionalDouble.of(40));
        Pattern marked = bare.pattern()
                .withPiece(piece.toBuilder()
                        .drawn(LineKind.CUTTING, 15)
                        .edges(List.of(edge))
                        .build());
        byte[] written = bare.write(marked);
        ReadOptions twice = ReadOptions.AS_FILED.withScale(2);

        SvgFile kept = SvgFile.read(written, "m", twice);
        assertThat(kept.pattern().pieces().get(0).allowance()).isEqualTo(15);
        assertThat(kept.findings())
                .filteredOn(f -> f.code().equals("stated-lengths-kept"))
                .singleElement()
                .satisfies(f -> assertThat(f.values()).containsEntry("count", 2).containsEntry("of.percent", 200.0));

        SvgFile read = SvgFile.read(written, "m");
        Pattern scaled = read.atScale(read.pattern(), 2, true);
        Piece now = scaled.pieces().get(0);
        assertThat(now.allowance()).isEqualTo(30);
        assertThat(now.edges().get(0).allowance()).hasValue(80);
        assertThat(SvgFile.read(read.write(scaled), "again").pattern()).isEqualTo(scaled);
    }
}
