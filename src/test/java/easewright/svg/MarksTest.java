package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.ChangeNote;
import easewright.pattern.Cloth;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import easewright.pattern.SetAside;
import easewright.pattern.Side;
import easewright.pattern.Wish;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The marks block, out and in (docs/file-format.md). */
class MarksTest {
    static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm'"
            + " viewBox='0 0 400 400'>\n%s<path id='front' d='M10,10 C60,0 80,0.3 110.1,10 L130.7,210 H10z'/>"
            + "<path id='back' d='M200,10h100v200h-100z'/><path id='line' d='M30 30L50 60 M60 60l10 0'/>\n</svg>\n";

    static SvgFile open(String marks) throws SvgProblem {
        return SvgFile.read(String.format(SVG, marks).getBytes(StandardCharsets.UTF_8), "m.svg");
    }

    /** A pattern that uses every part of the block. */
    static Pattern full() throws SvgProblem {
        Pattern bare = open("").pattern();
        Piece front = bare.piece("front").orElseThrow();
        Point corner = new Point(110.1, 10);
        Point middle = front.outline().segments().get(1).at(1 / 3.0);
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("level", "hip");
        settings.put("amount", "24");
        Piece marked = front.toBuilder()
                .name("Front \"1\" & <2>\n")
                .drawn(LineKind.CUTTING, 15.5)
                .cut(2, true)
                .layers(2)
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, new Point(10, 10), corner),
                        new Edge(
                                "side",
                                EdgeRole.SEAM,
                                corner,
                                new Point(130.7, 210),
                                true,
                                OptionalDouble.of(25.4 * 5 / 8)),
                        Edge.of("all", EdgeRole.OTHER, middle, middle)))
                .levels(List.of(
                        new LevelMark(
                                "hip",
                                Optional.of(new Point(20.123456789012345, 1 / 3.0)),
                                Optional.empty(),
                                -7.5,
                                false,
                                12,
                                LevelMark.Span.ALL,
                                Optional.of(new Point(-0.0, 5e-7))),
                        LevelMark.along("waist", "waist")))
                .darts(List.of(
                        new Dart(
                                "d",
                                front.outline().segments().get(0).at(0.3),
                                front.outline().segments().get(0).at(0.4),
                                new Point(40, 90),
                                Optional.empty(),
                                Optional.of("waist")),
                        new Dart(
                                "eye",
                                new Point(50, 100),
                                new Point(60, 100),
                                new Point(55, 130),
                                Optional.of(new Point(55, 70)),
                                Optional.empty())))
                .notches(List.of(new Notch("n", middle), new Notch("n", new Point(130.7, 210))))
                .grain(new Grain(new Point(60, 20), new Point(60, 190)))
                .riders(List.of(new Rider(
                        "line",
                        Rider.Kind.PARALLEL,
                        front.riders().stream()
                                .flatMap(r -> r.segments().stream())
                                .toList(),
                        Optional.of(List.of(
                                new Line(corner, middle),
                                new Cubic(new Point(1 / 3.0, 2), corner, middle, new Point(0, -1e-7)),
                                new Line(new Point(5, 6), corner))))))
                .original(Optional.of(front.outline().transformed(Affine.scaling(1.1, 1 / 3.0))))
                .size(Optional.of("38"))
                .side(Side.LEFT)
                .build();
        return new Pattern(
                List.of(marked, bare.piece("back").orElseThrow()),
                List.of(Level.of("hip", LevelKind.HIP), new Level("arm", LevelKind.UPPER_ARM, false)),
                List.of(new Mate(
                        "side seam",
                        List.of(new EdgeRef("front", "side", 2), EdgeRef.of("front", "waist")),
                        List.of(EdgeRef.of("back", "a/b*c")),
                        -3.25)),
                new Body("Ada", List.of(new BodyMeasure("Hip girth", "hip", 980.5, "fullest"))),
                new Cloth(
                        true,
                        OptionalDouble.of(25),
                        OptionalDouble.of(0.1),
                        OptionalDouble.empty(),
                        OptionalDouble.of(3)),
                Map.of("hip", Wish.of(60), "arm", new Wish(-5, OptionalDouble.of(-8))),
                bare.scale(),
                List.of(new ChangeNote("seam", settings), new ChangeNote("seam", Map.of())),
                List.of(
                        new SetAside(0, new ChangeNote("lengthen", settings)),
                        new SetAside(1, new ChangeNote("seam", settings)),
                        new SetAside(2, new ChangeNote("centre", Map.of()))),
                Map.of("38", new Body("Bea", List.of(new BodyMeasure("Hip girth", "hip", 940, "")))),
                "Kilt, \"my own\" & <skirt>",
                Set.of("pocket", "b & c"));
    }

    @Test
    void aFileThatDoesNotSayWhatTheGarmentIsOpensAsBefore() throws SvgProblem {
        String none = new String(open("").write(full().withGarment("")), StandardCharsets.UTF_8);
        assertThat(none).doesNotContain("<garment");
        assertThat(SvgFile.read(none.getBytes(StandardCharsets.UTF_8), "m")
                        .pattern()
                        .garment())
                .isEmpty();
    }

    static List<String> codes(SvgFile file) {
        return file.findings().stream().map(Finding::code).toList();
    }

    private static Schema schema() throws Exception {
        return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(Path.of("docs/easewright-marks-1.xsd").toFile());
    }

    private static void validate(String marks) throws Exception {
        schema().newValidator().validate(new StreamSource(new StringReader(marks)));
    }

    @Test
    void everythingComesBackEqual() throws Exception {
        Pattern pattern = full();
        byte[] written = open("").write(pattern);
        SvgFile again = SvgFile.read(written, "again.svg");
        assertThat(again.pattern()).isEqualTo(pattern);
        assertThat(again.findings()).isEmpty();
        assertThat(again.write(pattern)).isEqualTo(written);
        String text = new String(written, StandardCharsets.UTF_8);
        validate(text.substring(text.indexOf("<marks"), text.indexOf("</marks>") + 8));
    }

    @Test
    void theTextForNewFilesIsTheSameBlock() throws Exception {
        String block = MarksBlock.text(full());
        assertThat(open(block).pattern()).isEqualTo(full());
        assertThat(block).startsWith("  <metadata>\n    <marks ").endsWith("  </metadata>\n");
    }

    @Test
    void theExampleInTheDocsIsReadAndValid() throws Exception {
        String docs = Files.readString(Path.of("docs/file-format.md"));
        int from = docs.indexOf("<svg ");
        SvgFile file =
                SvgFile.read(docs.substring(from, docs.indexOf("</svg>") + 6).getBytes(StandardCharsets.UTF_8), "docs");
        assertThat(file.findings()).isEmpty();
        assertThat(file.pattern().piece("front").orElseThrow().edges()).hasSize(4);
        assertThat(file.pattern().piece("front").orElseThrow().allowance()).isEqualTo(25.4 * 5 / 8);
        validate(docs.substring(docs.indexOf("<marks "), docs.indexOf("</marks>") + 8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"15", "15mm", "1.5cm", "1.5 CM", ".015e3"})
    void lengthsMayHaveAUnit(String text) {
        Optional<Double> mm = MarkWords.length(text);
        assertThat(mm).isEqualTo(text.contains("e") ? Optional.empty() : Optional.of(15.0));
        assertThat(MarkWords.length("-1 5/8 in")).contains(-1.625 * 25.4);
    }

    @Test
    void aPieceThatWasMovedTakesItsMarksAlong() throws SvgProblem {
        String written = new String(open("").write(full()), StandardCharsets.UTF_8)
                .replace("<path id='front' ", "<path id='front' transform='translate(5,7)' ");
        SvgFile file = SvgFile.read(written.getBytes(StandardCharsets.UTF_8), "m");
        Piece piece = file.pattern().piece("front").orElseThrow();
        assertThat(codes(file)).containsExactly("marks-moved-along");
        assertThat(piece.edges().get(0).to()).isEqualTo(new Point(115.1, 17));
        assertThat(piece.darts().get(1).point()).isEqualTo(new Point(60, 137));
    }

    @Test
    void anOutlineDrawnTheOtherWayRoundKeepsItsEdges() throws SvgProblem {
        String written = new String(open("").write(full()), StandardCharsets.UTF_8)
                .replace(
                        "M10,10 C60,0 80,0.3 110.1,10 L130.7,210 H10z",
                        "M10,10 V210 H130.7 L110.1,10 C80,0.3 60,0 10,10z");
        SvgFile file = SvgFile.read(written.getBytes(StandardCharsets.UTF_8), "m");
        Piece piece = file.pattern().piece("front").orElseThrow();
        Outline was = full().piece("front").orElseThrow().outline();
        assertThat(file.findings()).isEmpty();
        assertThat(piece.edge("side").orElseThrow().on(piece.outline()).length())
                .isEqualTo(was.segments().get(1).length());
        assertThat(piece.edge("side").orElseThrow().from()).isEqualTo(new Point(130.7, 210));
    }

    @Test
    void aKnownLineSetsTheScaleAndTakesTheMarksAlong() throws SvgProblem {
        byte[] marked = open("").write(full());
        SvgFile twice = SvgFile.read(marked, "m", ReadOptions.AS_FILED.withScale(2));
        Pattern pattern = twice.pattern();
        assertThat(pattern.scale().proof()).isEqualTo(Scale.Proof.KNOWN_LINE);
        assertThat(pattern.piece("front").orElseThrow().edges().get(0).to()).isEqualTo(new Point(220.2, 20));
        SvgFile again = SvgFile.read(twice.write(pattern), "again");
        assertThat(again.pattern()).isEqualTo(pattern);
        assertThat(again.findings()).noneMatch(f -> f.code().startsWith("mark"));
    }
}
