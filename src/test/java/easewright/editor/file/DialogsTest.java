package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class DialogsTest {
    @Test
    void aNameHasItsEndingOnceHoweverItWasTyped() {
        Path folder = Path.of("patterns");
        assertThat(Dialogs.ending(folder.resolve("skirt"), ".svg")).isEqualTo(folder.resolve("skirt.svg"));
        assertThat(Dialogs.ending(folder.resolve("skirt.svg"), ".svg")).isEqualTo(folder.resolve("skirt.svg"));
        assertThat(Dialogs.ending(folder.resolve("Skirt.SVG"), ".svg")).isEqualTo(folder.resolve("Skirt.SVG"));
        assertThat(Dialogs.ending(folder.resolve("skirt 2.1"), ".pdf")).isEqualTo(folder.resolve("skirt 2.1.pdf"));
    }

    /** What is written then is what the ending says. */
    @Test
    void aDrawingMayBePackedOrNot() {
        assertThat(Dialogs.ending(Path.of("skirt.svgz"), ".svg")).isEqualTo(Path.of("skirt.svgz"));
        assertThat(Dialogs.ending(Path.of("skirt.svg"), ".svgz")).isEqualTo(Path.of("skirt.svg"));
        assertThat(Dialogs.ending(Path.of("skirt"), ".svgz")).isEqualTo(Path.of("skirt.svgz"));
    }

    /** A print is not written over the pattern, whose name is easily picked from the list. */
    @Test
    void aPrintNeverTakesThePatternsName() {
        assertThat(Dialogs.ending(Path.of("skirt.svg"), ".pdf")).isEqualTo(Path.of("skirt.svg.pdf"));
        assertThat(Dialogs.ending(Path.of("skirt.svgz"), ".pdf")).isEqualTo(Path.of("skirt.svgz.pdf"));
    }
}
