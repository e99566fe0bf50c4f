package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.scene.shape.Line;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EaseBarTest {
    /** Wherever the least ease lies between two strokes. */
    @ParameterizedTest
    @ValueSource(doubles = {120, 121.5, 123, 124.2})
    void whatIsTooLittleIsHatchedUpToItsTick(double end) {
        List<Line> strokes = EaseBar.hatching(end);
        assertThat(strokes).allMatch(s -> s.getEndX() <= end);
        Line last = strokes.get(strokes.size() - 1);
        assertThat(end - last.getEndX()).as("no barer than between two strokes").isLessThanOrEqualTo(1);
        assertThat((last.getStartY() - last.getEndY()) / (last.getEndX() - last.getStartX()))
                .as("cut off, not turned")
                .isCloseTo(2, within(1e-9));
    }
}
