package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Words;
import org.junit.jupiter.api.Test;

class TableKeysTest {
    /** The list of keys tells the steps in words: they are what the keys do. */
    @Test
    void stepsAreWholeInTheUnitAndAsTold() throws Exception {
        for (LengthUnit unit : LengthUnit.values()) {
            String[] told = Words.english(unit)
                    .of("editor.keys.step." + (unit == LengthUnit.INCH ? "inch" : "cm"))
                    .split(", with Shift ");
            assertThat(TableKeys.step(unit, false)).isEqualTo(Lengths.parse(told[0], unit));
            assertThat(TableKeys.step(unit, true)).isEqualTo(Lengths.parse(told[1], unit));
        }
    }

    /** From none at work forward leads to the first, and back to the last. */
    @Test
    void fromThePlaceAtWorkTheNextAndTheLastAreReached() {
        assertThat(TableKeys.next(-1, 1, 4)).isEqualTo(0);
        assertThat(TableKeys.next(-1, -1, 4)).isEqualTo(3);
        assertThat(TableKeys.next(3, 1, 4)).isEqualTo(0);
        assertThat(TableKeys.next(0, -1, 4)).isEqualTo(3);
        assertThat(TableKeys.next(2, -1, 4)).isEqualTo(1);
        assertThat(TableKeys.next(-1, -1, 1)).isEqualTo(0);
    }
}
