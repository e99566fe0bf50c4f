package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What docs/first-fit.md says of its drawings is so. */
class FirstFitTest {
    private static final Path FOLDER = Path.of("docs", "first-fit");

    @Test
    void theDrawingToStartFromHasNoMarks() throws Exception {
        assertThat(SvgFile.read(FOLDER.resolve("skirt.svg")).marked()).isFalse();
        assertThat(Files.readString(FOLDER.resolve("skirt.svg"))).isEqualTo(FirstFit.bareSkirt());
    }

    @Test
    void theSavedSkirtHasTheEaseWishedFor() throws Exception {
        Pattern skirt = SvgFile.read(FOLDER.resolve("skirt-wider.svg")).pattern();
        EaseSheet sheet = EaseSheet.of(skirt, Measures.of(skirt), EaseTables.standard());
        EaseLine waist = sheet.lines().get(0);
        EaseLine hip = sheet.lines().get(1);
        assertThat(waist.level().name()).isEqualTo("waist");
        assertThat(waist.ease().orElseThrow()).isCloseTo(15, within(0.1));
        assertThat(hip.body()).hasValue(FirstFit.HIP);
        assertThat(hip.ease().orElseThrow()).isCloseTo(FirstFit.WISH, within(0.01));
        assertThat(skirt.changes()).hasSize(1);
    }
}
