package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NameRowsTest {
    private static final String LONG = "Front bodice lining with the princess seam, upper left part 2";

    @Test
    void aNameIsPartedBetweenItsWordsIntoEvenRows() {
        assertThat(NameRows.even("Center back panel", 2)).containsExactly("Center", "back panel");
        assertThat(NameRows.even("Back", 3)).containsExactly("Back");
        assertThat(NameRows.even(LONG, 4))
                .containsExactly("Front bodice", "lining with the", "princess seam,", "upper left part 2");
    }

    @Test
    void whatHasNoRoomIsToldByDots() {
        assertThat(NameRows.cut(LONG, 2, 16)).containsExactly("Front bodice", "lining with the\u2026");
        assertThat(NameRows.cut("Undercollar", 2, 8)).containsExactly("Underco\u2026");
        assertThat(NameRows.cut("Back", 1, 8)).containsExactly("Back");
        assertThat(NameRows.shortened("Pocket flap", 8)).isEqualTo("Pocket\u2026");
    }

    /** All letters are there in their order; no row is longer than asked for where words are short enough; dots only where cut. */
    @Test
    void rowsHoldTheName() {
        Random random = new Random(60);
        for (int round = 0; round < 500; round++) {
            List<String> words = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(10); i++) {
                words.add("abcdefghijkl".substring(0, 1 + random.nextInt(12)));
            }
            String name = String.join(" ", words);
            int many = 1 + random.nextInt(4);
            assertThat(String.join(" ", NameRows.even(name, many))).isEqualTo(name);
            assertThat(NameRows.even(name, many).size()).isLessThanOrEqualTo(many);
            int letters = 3 + random.nextInt(20);
            List<String> cut = NameRows.cut(name, many, letters);
            assertThat(cut).hasSizeLessThanOrEqualTo(many).allMatch(row -> row.length() <= letters);
            String joined = String.join(" ", cut);
            if (NameRows.isWhole(cut)) {
                assertThat(joined).isEqualTo(name);
            } else {
                assertThat(name).startsWith(joined.substring(0, joined.length() - 1));
            }
        }
    }

    @Test
    void aLetterThatTakesTwoPlacesIsNotParted() {
        String scissors = "\ud83d\ude00".repeat(9);
        String cut = NameRows.shortened(scissors, 8);
        assertThat(Character.isHighSurrogate(cut.charAt(cut.length() - 2))).isFalse();
    }
}
