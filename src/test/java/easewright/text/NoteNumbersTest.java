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

    @Test
    void aLineBeginsGreatUnlessItIsAnAddress() {
        NoteNumbers<String> notes = new NoteNumbers<>();
        notes.mark("rule of thumb");
        notes.mark("\"Pattern Alteration\", Guide C-228");
        notes.mark("sewing.example.org, sleeve block");
        assertThat(notes.lines(n -> n))
                .containsExactly(
                        "[1] Rule of thumb",
                        "[2] \"Pattern Alteration\", Guide C-228",
                        "[3] sewing.example.org, sleeve block");
    }
}
