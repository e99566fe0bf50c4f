package easewright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.check.Checks;
import easewright.draft.Samples;
import easewright.ease.EaseTables;
import easewright.measure.Measures;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sides of a seam are called by what a person has in hand. */
class MateSidesTest {
    private static Pattern skirt() throws Exception {
        return SvgFile.read(Samples.files().get("skirt.svg").getBytes(StandardCharsets.UTF_8), "skirt.svg")
                .pattern();
    }

    private static Mate mate(String first, String second) {
        return new Mate("seam", List.of(EdgeRef.parse(first)), List.of(EdgeRef.parse(second)), 0);
    }

    @Test
    void byTheirPiecesAndOnOnePieceByItsEdges() throws Exception {
        Pattern skirt = skirt();
        assertThat(MateSides.of(skirt, mate("skirt-back/side", "skirt-front/side")))
                .isEqualTo(new MateSides(List.of("Back"), List.of("Front")));
        assertThat(MateSides.of(skirt, mate("skirt-back/side", "skirt-back/hem")))
                .isEqualTo(new MateSides(List.of("Back side"), List.of("Back hem")));
    }

    @Test
    void aSeamThatDoesNotFitIsToldByPieces() throws Exception {
        Pattern odd = skirt().withMates(List.of(mate("skirt-back/hem", "skirt-front/side")));
        assertThat(Checks.of(odd, Measures.of(odd), EaseTables.standard()).stream()
                        .filter(f -> f.code().equals("mate-mismatch")))
                .singleElement()
                .extracting(Words.english(LengthUnit.CM)::of)
                .asString()
                .containsPattern("does not fit: [0-9.]+.cm on Back, [0-9.]+.cm on Front");
    }
}
