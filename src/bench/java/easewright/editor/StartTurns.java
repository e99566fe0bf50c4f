package easewright.editor;

import java.lang.management.ManagementFactory;
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
 * What a start costs, in processor time of the whole process from the start of the virtual machine to the third pulse
 * of the shown window, and ends there. Argument: {@code bare} for an empty window of the toolkit, {@code editor} for
 * ours with its start page. To be run in turns.
 */
public final class StartTurns {
    private static final int PULSES = 3;

    private StartTurns() {}

    public static void main(String[] args) {
        Platform.startup(() -> Window.getWindows()
                .addListener((ListChangeListener<Window>) c -> count()));
        if (args[0].equals("bare")) {
            Application.launch(Bare.class);
        } else {
            EditorApp.open();
        }
    }

    private static void count() {
        new AnimationTimer() {
            private int pulses;

            @Override
            public void handle(long now) {
                pulses++;
                if (pulses == PULSES) {
                    long spent = ProcessHandle.current()
                            .info()
                            .totalCpuDuration()
                            .orElseThrow()
                            .toMillis();
                    long since =
                            System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
                    System.out.printf(Locale.ROOT, "processor %d ms, clock %d ms%n", spent, since);
                    System.out.flush();
                    Runtime.getRuntime().halt(0);
                }
            }
        }.start();
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
