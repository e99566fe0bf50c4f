package easewright.editor;

import easewright.editor.model.Session;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.stage.Stage;

/**
 * What one display frame costs the window's thread in the real window, in processor time from one pulse to the next,
 * while a seam is pulled at the hip: the change, all panels, layout and painting. What draws the picture has a thread of
 * its own. Arguments: a file, the frames to let run first, the frames to measure.
 */
public final class WindowFrames {
    private WindowFrames() {}

    public static void main(String[] args) {
        Application.launch(Pulled.class, args);
    }

    /** The editor with a hand in it that never tires. */
    public static final class Pulled extends Application {
        private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

        private final EditorApp app = new EditorApp();
        private double[] millis;
        private int warm;
        private int frame;
        private long last;

        @Override
        public void start(Stage stage) throws IOException {
            List<String> arguments = getParameters().getUnnamed();
            app.start(stage, Files.createTempDirectory("frames"));
            warm = Integer.parseInt(arguments.get(1));
            millis = new double[Integer.parseInt(arguments.get(2))];
            app.files().open(Path.of(arguments.get(0)));
            new AnimationTimer() {
                @Override
                public void handle(long now) {
                    if (app.session().desk().isOpen()) {
                        pull(app.session());
                    }
                }
            }.start();
        }

        private void pull(Session session) {
            if (frame == 0) {
                session.chooseLevel("hip");
            }
            long spent = THREADS.getCurrentThreadCpuTime();
            if (frame > warm) {
                millis[frame - warm - 1] = (spent - last) / 1e6;
            }
            last = spent;
            frame++;
            if (frame > warm + millis.length) {
                report();
                Runtime.getRuntime().halt(0);
            }
            session.want(session.desk().wanted().orElseThrow().withAmount(1 + frame % 60));
        }

        private void report() {
            Arrays.sort(millis);
            System.gc();
            long heap = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            System.out.printf(
                    Locale.ROOT,
                    "frame: median %.1f, 99th percentile %.1f, worst %.1f ms; heap %.0f MB%n",
                    millis[millis.length / 2],
                    millis[millis.length * 99 / 100],
                    millis[millis.length - 1],
                    heap / 1e6);
        }
    }
}
