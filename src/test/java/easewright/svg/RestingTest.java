package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Finding;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;

/** Marks of pieces in layers that are not read, as they stand in the file. */
class RestingTest {
    private static final String RESTING = "<resting><level name='hip' kind='hip'/>"
            + "<piece ref='b' name='Back 38'><at level='hip' through='150 150'/><%s/></piece>"
            + "<mate name='side'><first piece='Back 38' edge='s'/><second piece='a' edge='s'/></mate>"
            + "<y:own xmlns:y='urn:other'/></resting>";

    private static SvgFile open(String inside) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm' viewBox='0 0 400 400'>"
                + "<metadata><marks xmlns='urn:easewright:marks:1'><scale across='1' down='1' proof='physical-size'/>"
                + "<piece ref='a'/>" + inside + "</marks></metadata>"
                + "<path id='a' d='M10,10 h100 v100 h-100z'/>"
                + "<g style='display:none'><path id='b' d='M110,110 h100 v100 h-100z'/></g></svg>";
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "resting.svg");
    }

    private static String marks(byte[] written) throws Exception {
        String text = new String(written, StandardCharsets.UTF_8);
        return text.substring(text.indexOf("<marks"), text.indexOf("</marks>") + 8);
    }

    /** They count nowhere, and stay whole through a saving of something else: also what is not understood in them. */
    @Test
    void theyStayWholeThroughASaving() throws Exception {
        SvgFile file = open(RESTING.formatted("glitter"));
        assertThat(file.pattern().pieces()).extracting(Piece::id).containsExactly("a");
        assertThat(file.pattern().levels()).isEmpty();
        assertThat(file.pattern().mates()).isEmpty();
        Pattern resting = file.resting().orElseThrow();
        assertThat(resting.pieces())
                .singleElement()
                .satisfies(p ->
                        assertThat(p.level("hip").flatMap(LevelMark::through)).isPresent());
        assertThat(file.findings()).extracting(Finding::code).containsOnly("mark-unknown");
        byte[] written = file.write(file.pattern().withGarment("skirt"));
        SvgFile again = SvgFile.read(written, "again.svg");
        assertThat(again.resting()).contains(resting);
        assertThat(marks(written)).containsOnlyOnce("<glitter").containsOnlyOnce("urn:other");
        assertThat(again.write(again.pattern().withGarment("")))
                .as("nothing grows")
                .hasSizeLessThan(written.length);
    }

    @Test
    void theSchemaKnowsThem() throws Exception {
        SvgFile file = open(RESTING.formatted("grain from='150 120' to='150 200'"));
        String block = marks(file.write(file.pattern().withGarment("skirt")));
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(Path.of("docs/easewright-marks-1.xsd").toFile())
                .newValidator()
                .validate(new StreamSource(new StringReader(block)));
    }

    /** A piece that is there again rests no more; one that is said to be none is forgotten. */
    @Test
    void whatIsThereAgainRestsNoMore() throws Exception {
        SvgFile file = open(RESTING.formatted("grain from='150 120' to='150 200'"));
        Pattern none = file.pattern().withNoPiece("b");
        assertThat(SvgFile.read(file.write(none), "none.svg").resting().stream().flatMap(p -> p.pieces().stream()))
                .isEmpty();
    }

    /** What is not understood of a piece goes along when it comes back to the table, and when it goes to rest. */
    @Test
    void whatIsKeptOfAPieceGoesWithIt() throws Exception {
        SvgFile file = open(RESTING.formatted("glitter"));
        Pattern resting = file.resting().orElseThrow();
        Pattern present = file.pattern();
        List<Piece> both = List.of(present.pieces().get(0), resting.pieces().get(0));
        Pattern back = present.withPieces(both).withLevels(resting.levels());
        byte[] written =
                file.withResting(Pattern.bare(List.of(), present.scale())).write(back);
        assertThat(marks(written)).containsOnlyOnce("<glitter").containsOnlyOnce("urn:other");
        SvgFile again = SvgFile.read(written, "again.svg");
        assertThat(again.pattern().pieces()).extracting(Piece::id).containsExactly("a", "b");
        byte[] rests = again.withResting(resting).write(present);
        assertThat(marks(rests)).containsOnlyOnce("<glitter").containsOnlyOnce("urn:other");
        assertThat(SvgFile.read(rests, "rests.svg").resting()).contains(resting);
    }

    /** Nothing is left of an element that holds nothing any more. */
    @Test
    void whereNothingRestsNothingIsWritten() throws Exception {
        SvgFile file = open("<resting><piece ref='b'><glitter/></piece></resting>");
        assertThat(marks(file.write(file.pattern().withNoPiece("b")))).doesNotContain("resting");
    }
}
