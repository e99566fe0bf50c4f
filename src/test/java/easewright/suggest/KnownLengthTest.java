package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KnownLengthTest {
    private static List<KnownLength> on(String body) throws SvgProblem {
        return KnownLength.on(sheet(body));
    }

    private static Sheet sheet(String body) throws SvgProblem {
        SvgFile svg = SvgFile.read(
                ("<svg xmlns='http://www.w3.org/2000/svg' width='900mm' height='900mm' viewBox='0 0 900 900'>"
                                + "<path id='front' d='M300 300H500V800H300Z'/>" + body + "</svg>")
                        .getBytes(StandardCharsets.UTF_8),
                "test.svg");
        return new Sheet(svg.pattern(), svg.loose(svg.pattern()), svg.texts());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5 cm × 5 cm|50",
                "Test square 2 in|50.8",
                "1/2 inch|12.7",
                "1 1/2\"|38.1",
                "10,5 cm|105",
                "100mm|100",
                "Front, cut 2|0",
                "size 12|0"
            })
    void lengthsAreReadFromWords(String words, double mm) {
        assertThat(WrittenLength.in(words).orElse(0)).isCloseTo(mm, within(1e-9));
    }

    @Test
    void aSquareOfAnyMakingWithWordsInside() throws SvgProblem {
        String words = "<text x='25' y='40' font-size='6' text-anchor='middle'>5 cm</text>";
        for (String square : List.of(
                "<rect x='10' y='10' width='40' height='40'/>",
                "<path d='M10 10h40v40h-40z'/>",
                "<path d='M10,10 H50 M50,10 V50 M50,50 H10 M10,50 V10'/>",
                "<polyline points='10,10 50,10 50,50 10,50 10,10'/>")) {
            List<KnownLength> found = on(square + words);
            assertThat(found).as(square).hasSize(1);
            assertThat(found.get(0).square()).isTrue();
            assertThat(found.get(0).drawn()).isCloseTo(40, within(1e-6));
            assertThat(found.get(0).stated().orElseThrow()).isCloseTo(50, within(1e-9));
            assertThat(found.get(0).agrees()).isFalse();
        }
    }

    /** However long the words are, and on whichever side of it they stand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "210|125|start|5 cm test square",
                "210|125|start|check: 5 cm, print at 100 %",
                "140|125|end|Test square, 5 cm on each side",
                "150|95|start|This square should measure 5 cm x 5 cm when printed"
            })
    void aSquareWithWordsBesideItProvesTheScaleAndIsNoPiece(int x, int y, String anchor, String words)
            throws SvgProblem {
        String drawn = "<rect x='150' y='100' width='50' height='50'/><text x='" + x + "' y='" + y
                + "' font-size='10' text-anchor='" + anchor + "'>" + words + "</text>";
        assertThat(on(drawn)).singleElement().satisfies(known -> {
            assertThat(known.agrees()).isTrue();
            assertThat(known.piece()).as("taken for a piece so far").isPresent();
        });
        Sheet sheet = sheet(drawn);
        assertThat(NoPiece.find(sheet)).hasSize(1);
        assertThat(on(drawn.replace(words, "Pocket for the back, hem 3 cm")))
                .allSatisfy(known -> assertThat(known.stated()).isEmpty());
    }

    @Test
    void aLineWithNothingButALengthBesideItIsARuler() throws SvgProblem {
        List<KnownLength> found = on(
                "<line x1='20' y1='20' x2='120' y2='20'/><text x='50' y='17' font-size='8'>10 cm"
                        + "</text><line x1='320' y1='320' x2='420' y2='320'/><text x='350' y='317' font-size='8'>hem 3 cm</text>");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).square()).isFalse();
        assertThat(found.get(0).agrees()).isTrue();
    }

    @Test
    void oblongsAndSlantedFoursAreNoSquares() throws SvgProblem {
        assertThat(on("<rect x='10' y='10' width='40' height='44'/><path d='M100 10l30 30l-30 30l-30 -30z'/>"))
                .isEmpty();
    }
}
