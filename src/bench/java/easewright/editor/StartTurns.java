package easewright.editor;

import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * What a start costs, in processor time of the whole process from the start of the virtual machine, and by the clock:
 * until the window is shown, which is the third pulse after it appeared, and for ours until it can be used, which is the
 * third pulse with its start page in it. Ends there. Argument: {@code bare} for an empty window of the toolkit,
 * {@code editor} for ours. To be run in turns, the empty one with nothing but the toolkit on its class path.
 */
public final class StartTurns {
    private static final int PULSES = 3;

    private StartTurns() {}

    public static void main(String[] args) {
        boolean bare = args[0].equals("bare");
        Platform.startup(() -> Window.getWindows()
                .addListener((ListChangeListener<Window>) c -> count(Window.getWindows().get(0), bare)));
        if (bare) {
            Application.launch(Bare.class);
        } else {
            EditorApp.open();
        }
    }

    private static void count(Window window, boolean bare) {
        new AnimationTimer() {
            private int shown;
            private int filled;

            @Override
            public void handle(long now) {
                shown++;
                if (shown == PULSES) {
                    tell("shown");
                }
                if (!bare && window.getScene().lookup("#start-open") != null) {
                    filled++;
                }
                if (bare ? shown == PULSES : filled == PULSES) {
                    tell("can be used");
                    Runtime.getRuntime().halt(0);
                }
            }
        }.start();
    }

    private static void tell(String when) {
        ProcessHandle.Info process = ProcessHandle.current().info();
        long spent = process.totalCpuDuration().orElseThrow().toMillis();
        long since =
                System.currentTimeMillis() - process.startInstant().orElseThrow().toEpochMilli();
        System.out.printf(Locale.ROOT, "%s: processor %d ms, clock %d ms%n", when, spent, since);
        System.out.flush();
    }

    /** A window with nothing in it. */
    public static final class Bare extends Application {
        @Override
        public void start(Stage stage) {
            stage.setScene(new Scene(new StackPane(), 1280, 800));
            stage.show();
        }
    }
}
