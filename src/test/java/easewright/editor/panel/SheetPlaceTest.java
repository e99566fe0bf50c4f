package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class SheetPlaceTest {
    private Button table;
    private VBox sheet;
    private Scene scene;

    private static Button button(String id) {
        Button button = new Button(id);
        button.setId(id);
        return button;
    }

    @Start
    void start(Stage stage) {
        table = button("table");
        sheet = new VBox(button("one"), button("two"));
        scene = new Scene(new HBox(table, sheet), 300, 200);
        new SheetPlace(scene, sheet);
        stage.setScene(scene);
        stage.show();
    }

    /** What was pressed goes, and before the keys are back in the sheet its other rows are made anew too. */
    @Test
    void theKeysComeBackToARowThatWasMadeAnewMeanwhile(FxRobot robot) {
        robot.interact(() -> sheet.getChildren().get(0).requestFocus());
        Button anew = button("two");
        robot.interact(() -> {
            scene.focusOwnerProperty().addListener((o, was, is) -> {
                if (is == table) {
                    sheet.getChildren().setAll(anew);
                }
            });
            sheet.getChildren().remove(0);
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(scene.getFocusOwner()).isSameAs(anew);
    }
}
