package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** A window behind others. */
@ExtendWith(ApplicationExtension.class)
class BehindTest {
    private static final PseudoClass BEHIND = PseudoClass.getPseudoClass("behind");

    private static boolean isBehind(Scene scene) {
        boolean behind = scene.getRoot().getPseudoClassStates().contains(BEHIND);
        assertThat(scene.getFill()).isEqualTo(behind ? Color.BLACK : Color.BEIGE);
        return behind;
    }

    /** A question asked over the window of the prints, for one. */
    @Test
    void itStepsBackUntilTheLastOfSeveralIsClosedAndThenLooksAsBefore() {
        WaitForAsyncUtils.waitForAsyncFx(5000, () -> {
            Scene scene = new Scene(new Pane(), Color.BEIGE);
            Stage owner = new Stage();
            owner.setScene(scene);
            for (int first = 0; first < 2; first++) {
                List<Stage> over = new ArrayList<>();
                for (int i = 0; i < 2; i++) {
                    Stage next = new Stage();
                    Behind.step(owner, next);
                    next.show();
                    over.add(next);
                    assertThat(isBehind(scene)).isTrue();
                }
                over.get(first).hide();
                assertThat(isBehind(scene)).as("one is still over it").isTrue();
                over.get(1 - first).hide();
                assertThat(isBehind(scene)).isFalse();
            }
        });
    }
}
