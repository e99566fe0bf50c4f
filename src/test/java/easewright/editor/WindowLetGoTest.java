package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Sample;
import java.lang.ref.WeakReference;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A stage that shows another window keeps nothing of the one that it showed before: all tests share one. */
@ExtendWith(Swift.class)
class WindowLetGoTest {
    @TempDir
    static Path folder;

    private Stage stage;
    private EditorApp app;

    @Start
    void start(Stage shown) {
        stage = shown;
        app = new EditorApp();
        app.start(shown, folder, new Answers());
    }

    @Test
    void a_window_is_let_go_with_all_it_holds(FxRobot robot) throws Exception {
        Journey.untilFilled(stage);
        robot.interact(() -> app.files().openSample(Sample.all().get(0)));
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> app.session().desk().isOpen());
        WeakReference<Object> session = new WeakReference<>(app.session());
        // What was painted last is kept by the toolkit until something like it is painted in its place.
        for (int more = 0; more < 3; more++) {
            robot.interact(() -> {
                app.files().close();
                app = new EditorApp();
                app.start(stage, folder, new Answers());
            });
            Journey.untilFilled(stage);
        }
        Journey.forgetEvents();
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> {
            WaitForAsyncUtils.waitForFxEvents();
            System.gc();
            return session.get() == null;
        });
        assertThat(session.get()).isNull();
    }
}
