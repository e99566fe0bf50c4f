package easewright.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counts and names as people write them on pieces. */
class WrittenOnPiecesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cut 2|2|false",
                "Cut two|2|false",
                "CUT 1 ON FOLD|1|true",
                "Front, cut 1 x on the fold|1|true",
                "cut 1 pair|2|false",
                "cut a pair|2|false",
                "cut 2 fabric, 2 interfacing|2|false",
                "2x|2|false",
                "Qty: 2|2|false",
                "x 4|4|false",
                "2 \u00d7 self|2|false",
                "place on fold|1|true",
                "cut on fold|1|true"
            })
    void countsInWords(String words, int times, boolean fold) {
        assertThat(CutWords.count(words)).contains(new CutWords.Count(times, fold));
        assertThat(CutWords.any(words)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"1 pair, true", "mirrored, true", "Size 40, false", "hip line, false", "pocket 10 x 12 cm, false"})
    void sayingHowItIsCut(String words, boolean cut) {
        assertThat(CutWords.any(words)).isEqualTo(cut);
        assertThat(CutWords.count(words)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Skirt front, cut 1 on fold|Skirt front",
                "BACK BODICE - cut 2|Back bodice",
                "Sleeve 2x|Sleeve",
                "cut 2|''",
                "Size 40|''",
                "grainline|''",
                "centre front fold|''",
                "hip line|''",
                "Hemline|''",
                "skirt hem|''",
                "bottom hem|''",
                "HEM 4 cm|''",
                "hem allowance 3 cm|''",
                "Hem facing|Hem facing",
                "Hem band, cut 2|Hem band",
                "5 cm|''",
                "Skirt front 10-12-14, cut 1 on fold|Skirt front",
                "Sizes S-M-L|''",
                "S-M-L|''",
                "Collar (cut 2)|Collar",
                "Pocket x 2|Pocket"
            })
    void namesInWords(String words, String name) {
        assertThat(WrittenNames.in(words)).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({
        "hem, true",
        "Hem line, true",
        "hemline, true",
        "skirt hem, true",
        "Bottom hem, true",
        "hem width, true",
        "hem of the skirt, true",
        "hem allowance, false",
        "hem allowance 3 cm, false",
        "hem facing, false",
        "hip, false",
        "them, false",
        "high hem fold, false"
    })
    void hemsByWhicheverName(String words, boolean hem) {
        assertThat(LevelWords.isHem(words)).isEqualTo(hem);
    }
}
