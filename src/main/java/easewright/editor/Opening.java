package easewright.editor;

import easewright.editor.paint.Ink;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;

/**
 * The start of a window. All that lies in it takes longer to make than the window itself: so the window is shown with
 * nothing but the colour of the table, and is filled as soon as that is on the screen.
 */
final class Opening {
    /** By the third call before a picture, the first picture has been painted. */
    private static final int SEEN = 3;

    private Opening() {}

    /**
     * Shows the window, and fills it a moment later, unless it has been closed by then.
     *
     * @param fill puts what lies in the window into the scene that the stage has
     */
    static void show(Stage stage, String title, boolean dark, Runnable fill) {
        stage.setTitle(title);
        stage.setMinWidth(940);
        stage.setMinHeight(620);
        stage.setScene(new Scene(new Pane(), 1280, 800, ground(dark)));
        stage.show();
        new AnimationTimer() {
            private int pictures;

            @Override
            public void handle(long now) {
                pictures++;
                if (pictures == SEEN) {
                    stop();
                    Platform.runLater(() -> {
                        if (stage.isShowing()) {
                            fill.run();
                        }
                    });
                }
            }
        }.start();
    }

    private static Color ground(boolean dark) {
        return (dark ? Ink.DARK : Ink.LIGHT).table();
    }
}
