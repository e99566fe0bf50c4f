package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.editor.model.Settings;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RememberedTest {
    @TempDir
    Path folder;

    /** Two windows share what is remembered: neither takes away what the other has put there. */
    @Test
    void whatAnotherWindowHasPutThereStays() {
        Remembered one = new Remembered(Settings.FIRST, folder);
        Remembered other = new Remembered(Settings.FIRST, folder);
        Path table = folder.resolve("mine.txt");
        one.tables(List.of(), List.of(table));
        other.used(folder.resolve("skirt.svg"));
        assertThat(Settings.read(folder).tables()).containsExactly(table);
        assertThat(Settings.read(folder).recent()).containsExactly(folder.resolve("skirt.svg"));
    }

    /** Entry by entry: each window adds and takes away its own. */
    @Test
    void twoWindowsThatBothChangeTheListOfTablesKeepBoth() {
        Path first = folder.resolve("first.txt");
        Path mine = folder.resolve("mine.txt");
        Path theirs = folder.resolve("theirs.txt");
        Settings kept = new Settings(LengthUnit.CM, false, List.of(), List.of(first));
        assertThat(kept.write(folder)).isTrue();
        Remembered one = new Remembered(kept, folder);
        Remembered other = new Remembered(kept, folder);
        one.tables(List.of(first), List.of(first, mine));
        other.tables(List.of(first), List.of(first, theirs));
        assertThat(Settings.read(folder).tables()).containsExactly(first, mine, theirs);
        other.tables(List.of(first, theirs), List.of(theirs));
        one.tables(List.of(first, mine), List.of(first));
        assertThat(Settings.read(folder).tables()).containsExactly(theirs);
    }

    /** Light in one window, inches in the other: both are remembered. */
    @Test
    void whatOneWindowDidNotChangeItDoesNotPutBack() {
        Remembered one = new Remembered(Settings.FIRST, folder);
        Remembered other = new Remembered(Settings.FIRST, folder);
        Desk first = Desk.empty(LengthUnit.CM, false);
        one.see(first, Desk.empty(LengthUnit.CM, true));
        other.see(first, Desk.empty(LengthUnit.INCH, false));
        assertThat(Settings.read(folder).dark()).isTrue();
        assertThat(Settings.read(folder).unit()).isEqualTo(LengthUnit.INCH);
    }

    @Test
    void whereNothingCanBeKeptTheWindowStillRemembers() throws Exception {
        Path file = Files.writeString(folder.resolve("no-folder"), "");
        Path drawing = Files.writeString(folder.resolve("skirt.svg"), "");
        Remembered one = new Remembered(Settings.FIRST, file);
        one.used(drawing);
        one.tables(List.of(), List.of(folder.resolve("mine.txt")));
        assertThat(one.recent()).containsExactly(drawing);
    }
}
