package easewright.editor.file;

import easewright.editor.model.Settings;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/** A program of several windows, each of which puts tables of its own among the settings, all at once. */
final class SettingsWriter {
    static final int PROGRAMS = 3;
    private static final int WINDOWS = 4;
    private static final int EACH = 8;

    /** Long enough for all to have their turn on a machine that is busy with other things. */
    private static final Duration PATIENCE = Duration.ofMinutes(1);

    private SettingsWriter() {}

    static Process start(Path folder, int program) throws Exception {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SettingsWriter.class.getName(),
                        folder.toString(),
                        Integer.toString(program))
                .inheritIO()
                .start();
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int program = Integer.parseInt(args[1]);
        CountDownLatch start = new CountDownLatch(1);
        List<Thread> windows = new ArrayList<>();
        for (int window = 0; window < WINDOWS; window++) {
            List<Path> mine = tables(folder, program, window);
            Thread thread = new Thread(() -> {
                Remembered remembered = new Remembered(Settings.read(folder), folder, Runnable::run, PATIENCE);
                try {
                    start.await();
                } catch (InterruptedException e) {
                    return;
                }
                for (int i = 0; i < mine.size(); i++) {
                    remembered.tables(mine.subList(0, i), mine.subList(0, i + 1));
                }
            });
            thread.start();
            windows.add(thread);
        }
        start.countDown();
        for (Thread window : windows) {
            window.join();
        }
    }

    /** Those of all windows of all programs. */
    static List<Path> all(Path folder) {
        List<Path> all = new ArrayList<>();
        for (int program = 0; program < PROGRAMS; program++) {
            for (int window = 0; window < WINDOWS; window++) {
                all.addAll(tables(folder, program, window));
            }
        }
        return all;
    }

    private static List<Path> tables(Path folder, int program, int window) {
        List<Path> tables = new ArrayList<>();
        for (int i = 0; i < EACH; i++) {
            tables.add(folder.resolve("table-" + program + "-" + window + "-" + i + ".txt"));
        }
        return tables;
    }
}
