package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class NoteNumbersTest {
    @Test
    void everyNoteIsToldOnceUnderTheNumberItWasFirstGiven() {
        NoteNumbers<String> notes = new NoteNumbers<>();
        assertThat(notes.lines(n -> n)).isEmpty();
        assertThat(notes.mark("hem")).isEqualTo("[1]");
        assertThat(notes.mark("cap")).isEqualTo("[2]");
        assertThat(notes.mark("hem")).isEqualTo("[1]");
        assertThat(notes.notes()).containsExactly("hem", "cap");
        assertThat(notes.lines(n -> n.toUpperCase(Locale.ROOT))).containsExactly("[1] HEM", "[2] CAP");
    }
}
