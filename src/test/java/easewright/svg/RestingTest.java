package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Finding;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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
}
