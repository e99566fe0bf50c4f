package easewright.svg;

import static easewright.svg.MarksTest.SVG;
import static easewright.svg.MarksTest.codes;
import static easewright.svg.MarksTest.full;
import static easewright.svg.MarksTest.open;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks that cannot be right, or cannot be written: nothing is lost, and it is said. */
class DamagedMarksTest {
    @Test
    void anEmptyWordForTheGarmentIsDamageAndStays() throws SvgProblem {
        String said = new String(open("").write(full().withGarment("skirt")), StandardCharsets.UTF_8);
        byte[] emptied = said.replace("kind=\"skirt\"", "kind=\" \"").getBytes(StandardCharsets.UTF_8);
        SvgFile file = SvgFile.read(emptied, "m");
        assertThat(codes(file)).containsExactly("mark-value-bad");
        assertThat(file.pattern().garment()).isEmpty();
        String kept = new String(file.write(file.pattern().withWish("hip", 40)), StandardCharsets.UTF_8);
        assertThat(kept).contains("<garment kind=\" \"/>");
        String mended = new String(file.write(file.pattern().withGarment("coat")), StandardCharsets.UTF_8);
        assertThat(mended).contains("<garment kind=\"coat\"/>").doesNotContain("kind=\" \"");
    }

    @ParameterizedTest
    @CsvSource({
        "unknown-version, marks-version-unknown, false",
        "two-blocks, marks-several, false",
        "own-entity, marks-unreadable, false",
        "bad-number, mark-value-bad, true",
        "bad-word, mark-value-bad, true",
        "missing-value, mark-value-missing, true",
        "missing-element, mark-not-drawn, true",
        "open-outline, mark-not-closed, true",
        "duplicate-edge, mark-twice, true",
        "off-outline, mark-off-outline, true",
        "unknown-element, mark-unknown, true",
        "unknown-attribute, mark-attribute-unknown, true",
        "negative-allowance, mark-allowance-negative, true",
        "mate-content, mark-content, true",
        "bad-original, mark-original-bad, true",
        "level-nowhere, mark-level-where, true"
    })
    void aDamagedBlockOpensWithAFindingAndLosesNothing(String name, String code, boolean readable) throws Exception {
        byte[] bytes;
        try (InputStream in = MarksTest.class.getResourceAsStream("/marks/" + name + ".svg")) {
            bytes = in.readAllBytes();
        }
        SvgFile file = SvgFile.read(bytes, name);
        assertThat(codes(file)).containsOnlyOnce(code);
        assertThat(file.findings())
                .allSatisfy(f -> assertThat(Words.english(LengthUnit.CM).of(f))
                        .as(f.code())
                        .doesNotContain("{"));
        assertThat(file.write(file.pattern())).isEqualTo(bytes);
        assertThat(file.marked()).isEqualTo(readable);
        Pattern wish = file.pattern().withWish("hip", 40);
        if (!readable) {
            assertThatThrownBy(() -> file.write(wish))
                    .isInstanceOfSatisfying(
                            SvgProblem.class, e -> assertThat(e.code()).isEqualTo("marks-not-understood"));
            return;
        }
        SvgFile again = SvgFile.read(file.write(wish), "again");
        assertThat(again.pattern()).isEqualTo(wish);
        if (!code.equals("mark-attribute-unknown")) {
            assertThat(codes(again)).containsOnlyOnce(code);
        }
    }

    /** What no pattern can have is told by what is wrong with it, in the words of the bundle. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <piece ref="front" name="Front" allowance="-1"/> | mark-allowance-negative
            <piece ref="front" name="Front"><edge name=" " role="seam" from="110 10" to="110 210"/></piece> | mark-name-empty
            <piece ref="front" name="Front"><grain from="50 50" to="50 50"/></piece> | mark-grain-short
            <body><measure name="Hip girth" level="hip" is="0"/></body> | mark-measure-none
            <mate name="m"><first piece="front" edge="side"/></mate> | mark-side-empty
            """)
    void whatNoPatternCanHaveIsToldByWhatIsWrongWithIt(String mark, String code) throws Exception {
        String said;
        try (InputStream in = MarksTest.class.getResourceAsStream("/marks/negative-allowance.svg")) {
            said = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        String other = said.replaceFirst("(?s)<piece.*</piece>", Matcher.quoteReplacement(mark));
        SvgFile file = SvgFile.read(other.getBytes(StandardCharsets.UTF_8), "m");
        assertThat(codes(file)).contains(code);
        assertThat(file.findings())
                .allSatisfy(f -> assertThat(Words.english(LengthUnit.CM).of(f))
                        .doesNotContain("finding.")
                        .doesNotContain("{"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cloth kind=\"knit\"",
                "garment kind=\"skirt\"",
                "level name=\"hip\"",
                "wish level=\"hip\" ease=\"40\""
            })
    void whatOthersPutIntoAMarkStaysInTheFile(String mark) throws SvgProblem {
        String filled = "<" + mark + "><more of=\"theirs\"/></" + mark.split(" ")[0] + ">";
        SvgFile file = open("<metadata><marks xmlns='urn:easewright:marks:1'>" + filled + "</marks></metadata>");
        assertThat(codes(file)).containsOnlyOnce("mark-content");
        byte[] written = file.write(file.pattern().withWish("waist", 40));
        assertThat(new String(written, StandardCharsets.UTF_8)).containsOnlyOnce(filled);
    }

    /** The scale is written anew each time, with what others put into it. */
    @ParameterizedTest
    @ValueSource(strings = {"1", "wide"})
    void whatOthersPutIntoTheScaleStaysThere(String across) throws SvgProblem {
        String inside = "<note xmlns=\"urn:theirs\" by=\"a &amp; b\">checked</note>";
        String filled = "<scale across='" + across + "' down='1' proof='physical-size'>" + inside + "</scale>";
        SvgFile file = open("<metadata><marks xmlns='urn:easewright:marks:1'>" + filled + "</marks></metadata>");
        assertThat(codes(file)).contains("mark-unknown");
        byte[] once = file.write(file.pattern().withWish("waist", 40));
        SvgFile again = SvgFile.read(once, "again");
        assertThat(codes(again)).containsOnlyOnce("mark-unknown").doesNotContain("mark-value-bad");
        byte[] twice = again.write(again.pattern().withWish("waist", 50));
        for (byte[] written : List.of(once, twice)) {
            String text = new String(written, StandardCharsets.UTF_8);
            assertThat(text).containsOnlyOnce(inside);
            int at = text.indexOf(inside);
            assertThat(text.lastIndexOf("<scale", at)).isGreaterThan(text.lastIndexOf("</", at));
            assertThat(text.indexOf("</scale>", at)).isGreaterThan(at);
        }
    }

    @Test
    void whatTheEncodingLacksBecomesAReference() throws Exception {
        Charset latin = StandardCharsets.ISO_8859_1;
        byte[] bytes = ("<?xml version='1.0' encoding='ISO-8859-1'?>\r\n" + String.format(SVG, "<!-- \u00fc -->"))
                .getBytes(latin);
        SvgFile file = SvgFile.read(bytes, "l");
        Piece piece = file.pattern().pieces().get(0).withName("\u00c4rmel \u20ac \ud83e\udea1");
        byte[] written = file.write(file.pattern().withPiece(piece));
        assertThat(new String(written, latin)).contains("<!-- \u00fc -->").contains("\"\u00c4rmel &#8364; &#129697;\"");
        assertThat(SvgFile.read(written, "l").pattern().pieces().get(0)).isEqualTo(piece);
    }

    @Test
    void aControlCharacterIsRefused() throws Exception {
        SvgFile file = open("");
        Piece piece = file.pattern().pieces().get(0).withName("a\u0007");
        assertThatThrownBy(() -> file.write(file.pattern().withPiece(piece)))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("text-unwritable"));
    }

    @Test
    void aNewMarkTakesThePlaceOfADamagedOne() throws IOException, SvgProblem {
        SvgFile file;
        try (InputStream in = MarksTest.class.getResourceAsStream("/marks/bad-number.svg")) {
            file = SvgFile.read(in.readAllBytes(), "b");
        }
        Piece piece = file.pattern().pieces().get(0);
        Piece marked =
                piece.withEdges(List.of(Edge.of("side", EdgeRole.SEAM, new Point(110, 10), new Point(110, 210))));
        SvgFile again = SvgFile.read(file.write(file.pattern().withPiece(marked)), "again");
        assertThat(codes(again)).isEmpty();
        assertThat(again.pattern().pieces()).containsExactly(marked);
    }
}
