package easewright.editor;

import easewright.editor.file.Dialogs;
import easewright.editor.model.Session;
import easewright.editor.panel.CuttingTable;
import easewright.pattern.PatternPart;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * How long a file takes to open, and what one display frame costs the window's thread in the real window, in processor
 * time from one pulse to the next: panels, layout and painting, and what is worked out. What draws the picture has a
 * thread of its own. Told apart are the first pictures of the opened file, for which the sheet beside the table is laid
 * out, those in which a level is chosen, and then the work itself. Arguments: a file, the frames to let run first, the frames to measure, and what is done in each
 * frame: {@code pull} a seam at the hip by a mouse that moves between every two pictures, {@code all} the same in all
 * sizes at once, {@code want} other amounts without a mouse, of which every second frame paints none, {@code pan} over the
 * whole drawing, {@code walk} over some pieces seen near, or {@code zoom}.
 */
public final class WindowFrames {
    private WindowFrames() {}

    public static void main(String[] args) {
        Application.launch(Pulled.class, args);
    }

    /** Pictures in which nothing is done: after the file has opened, and after the level has been chosen. */
    private static final int OPENED = 60;

    private static final int CHOSEN = 30;

    /** The editor with a hand in it that never tires. */
    public static final class Pulled extends Application {
        private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

        private final EditorApp app = new EditorApp();
        private final double[] still = new double[OPENED + CHOSEN];
        private double[] millis;
        private int warm;
        private int idle;
        private int frame;
        private long last;
        private long opened;
        private long asked;
        private String work;
        private BenchHand hand;

        @Override
        public void start(Stage stage) throws IOException {
            List<String> arguments = getParameters().getUnnamed();
            app.start(
                    stage,
                    Files.createTempDirectory("frames"),
                    new Dialogs(stage, () -> app.session().desk().words()));
            warm = Integer.parseInt(arguments.get(1));
            millis = new double[warm + Integer.parseInt(arguments.get(2))];
            work = arguments.size() > 3 ? arguments.get(3) : "pull";
            opened = System.nanoTime();
            asked = THREADS.getCurrentThreadCpuTime();
            app.files().open(Path.of(arguments.get(0)));
            new AnimationTimer() {
                @Override
                public void handle(long now) {
                    CuttingTable table = (CuttingTable) stage.getScene().lookup("#table");
                    if (table != null && app.session().desk().isOpen()) {
                        frame(app.session(), table);
                    }
                }
            }.start();
        }

        private void frame(Session session, CuttingTable table) {
            long spent = THREADS.getCurrentThreadCpuTime();
            if (idle <= still.length) {
                still(session, spent);
                last = spent;
                idle++;
                return;
            }
            if (frame > 0) {
                millis[frame - 1] = (spent - last) / 1e6;
            }
            last = spent;
            frame++;
            if (frame > millis.length) {
                report();
                Runtime.getRuntime().halt(0);
            }
            boolean forth = frame % 60 < 30;
            int amount = 1 + frame % 60;
            switch (work) {
                case "pan" -> table.moveView(forth ? 7 : -7, forth ? 5 : -5);
                case "walk" -> {
                    if (frame == 1) {
                        table.show(session.desk().pattern().pieces().get(0).id());
                        table.zoom(0.2 / table.view().scale());
                    }
                    table.moveView(forth ? -7 : 7, forth ? -5 : 5);
                }
                case "zoom" -> table.zoom(forth ? 1.05 : 1 / 1.05);
                case "want" ->
                    session.want(session.desk().wanted().orElseThrow().withAmount(amount));
                default ->
                    // Between this picture and the next, as a pointer tells of itself.
                    Platform.runLater(() -> {
                        if (hand == null) {
                            hand = new BenchHand(session, table);
                        }
                        hand.pullTo(amount);
                    });
            }
        }

        /** Nothing is done but to choose a level: what that takes is not taken for the work of the first frames. */
        private void still(Session session, long spent) {
            if (idle == 0) {
                System.out.printf(
                        Locale.ROOT,
                        "open: %.2f s, of it the window's thread %.0f ms%n",
                        (System.nanoTime() - opened) / 1e9,
                        (spent - asked) / 1e6);
            } else {
                still[idle - 1] = (spent - last) / 1e6;
            }
            if (idle == OPENED) {
                session.chooseLevel("hip");
            }
            if (idle == still.length) {
                tellStill("after opening", 0, OPENED);
                tellStill("the level chosen", OPENED, still.length);
                if (work.equals("all")) {
                    session.want(session.desk()
                            .wanted()
                            .orElseThrow()
                            .withAlsoIn(Set.copyOf(
                                    PatternPart.sizes(session.desk().pattern()))));
                }
            }
        }

        private void tellStill(String which, int from, int to) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: first picture %.0f ms, the %d after it %.0f ms%n",
                    which,
                    still[from],
                    to - from - 1,
                    Arrays.stream(still, from + 1, to).sum());
        }

        private void report() {
            told("the first " + Math.min(30, millis.length), 0, Math.min(30, millis.length));
            told("the first " + Math.min(100, millis.length), 0, Math.min(100, millis.length));
            told("all", 0, millis.length);
            told("after " + warm, warm, millis.length);
            System.gc();
            long heap = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            System.out.printf(Locale.ROOT, "heap %.0f MB%n", heap / 1e6);
        }

        private void told(String which, int from, int to) {
            double[] some = Arrays.copyOfRange(millis, from, to);
            Arrays.sort(some);
            System.out.printf(
                    Locale.ROOT,
                    "%s, %s: median %.1f, 95th percentile %.1f, 99th %.1f, worst %.1f ms%n",
                    work,
                    which,
                    some[some.length / 2],
                    some[some.length * 95 / 100],
                    some[some.length * 99 / 100],
                    some[some.length - 1]);
        }
    }
}
