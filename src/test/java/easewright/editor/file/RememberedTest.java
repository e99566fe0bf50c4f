package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Settings;
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
        one.tables(List.of(table));
        other.used(folder.resolve("skirt.svg"));
        assertThat(Settings.read(folder).tables()).containsExactly(table);
        assertThat(Settings.read(folder).recent()).containsExactly(folder.resolve("skirt.svg"));
    }

    @Test
    void whereNothingCanBeKeptTheWindowStillRemembers() throws Exception {
        Path file = Files.writeString(folder.resolve("no-folder"), "");
        Path drawing = Files.writeString(folder.resolve("skirt.svg"), "");
        Remembered one = new Remembered(Settings.FIRST, file);
        one.used(drawing);
        one.tables(List.of(folder.resolve("mine.txt")));
        assertThat(one.recent()).containsExactly(drawing);
    }
}
