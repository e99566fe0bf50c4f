package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.editor.model.Settings;
import easewright.svg.AtomicSave;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.concurrent.Task;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Opening and saving. Reading and writing happen away from the window's thread; a failure leaves the desk as it was. */
public final class FileWork {
    private final Session session;
    private final Window window;
    private final Path settingsFolder;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "files");
        thread.setDaemon(true);
        return thread;
    });
    private Settings settings;

    public FileWork(Session session, Window window, Settings settings, Path settingsFolder) {
        this.session = session;
        this.window = window;
        this.settings = settings;
        this.settingsFolder = settingsFolder;
        session.deskProperty().addListener((o, before, now) -> remember(now));
    }

    private void remember(Desk desk) {
        Settings now = settings.withUnit(desk.unit()).withDark(desk.dark());
        if (!now.equals(settings)) {
            settings = now;
            settings.write(settingsFolder);
        }
    }

    Words words() {
        return session.desk().words();
    }

    /** Files opened lately that are still there. */
    public List<Path> recent() {
        return settings.recent().stream().filter(Files::isReadable).toList();
    }

    /** Asks which file to open. */
    public void choose() {
        FileChooser chooser = chooser("editor.open.title");
        File file = chooser.showOpenDialog(window);
        if (file != null) {
            open(file.toPath());
        }
    }

    /** Opens a file, after asking about unsaved changes. */
    public void open(Path path) {
        leaving(() -> work(
                () -> SvgFile.read(path),
                svg -> {
                    session.open(new OpenFile(
                            svg, Optional.of(path), path.getFileName().toString()));
                    remember(path);
                },
                path));
    }

    /** Opens one of the samples that come with the program. */
    public void openSample(Sample sample) {
        leaving(() -> work(
                sample::read,
                svg -> session.open(new OpenFile(svg, Optional.empty(), sample.fileName())),
                Path.of(sample.fileName())));
    }

    private void remember(Path path) {
        settings = settings.withRecent(path);
        settings.write(settingsFolder);
    }

    /** Saves to the same file, or asks for one where there is none yet. */
    public void save() {
        saveThen(() -> {});
    }

    private void saveThen(Runnable next) {
        Optional<Path> path = session.desk().file().flatMap(OpenFile::path);
        if (path.isPresent()) {
            save(path.get(), next);
        } else {
            saveAsThen(next);
        }
    }

    /** Asks where to save. */
    public void saveAs() {
        saveAsThen(() -> {});
    }

    private void saveAsThen(Runnable next) {
        if (!session.desk().isOpen()) {
            return;
        }
        FileChooser chooser = chooser("editor.save.title");
        chooser.setInitialFileName(session.desk().file().orElseThrow().name());
        File file = chooser.showSaveDialog(window);
        if (file != null) {
            save(file.toPath(), next);
        }
    }

    /** Writes the present pattern, trial left out, to the path. */
    public void save(Path path) {
        save(path, () -> {});
    }

    private void save(Path path, Runnable next) {
        Desk desk = session.desk();
        SvgFile svg = desk.file().orElseThrow().svg();
        work(
                () -> {
                    AtomicSave.save(path, svg.write(desk.pattern()));
                    return path;
                },
                done -> {
                    session.saved(path);
                    remember(path);
                    session.say(
                            false,
                            "editor.said.saved",
                            Map.of("file", path.getFileName().toString()));
                    next.run();
                },
                path);
    }

    private <T> void work(Callable<T> job, Consumer<T> done, Path path) {
        Task<T> task = new Task<>() {
            @Override
            protected T call() throws Exception {
                return job.call();
            }
        };
        task.setOnSucceeded(e -> done.accept(task.getValue()));
        task.setOnFailed(e -> failed(task.getException(), path));
        worker.execute(task);
    }

    private void failed(Throwable problem, Path path) {
        if (problem instanceof SvgProblem svg) {
            session.say(true, "problem." + svg.code(), svg.values());
        } else {
            String reason = problem.getMessage() == null ? problem.getClass().getSimpleName() : problem.getMessage();
            session.say(true, "editor.said.failed", Map.of("file", path.toString(), "reason", reason));
        }
    }

    /** Does the next thing at once if all is saved; else asks whether to save first, to go without, or to stay. */
    public void leaving(Runnable next) {
        if (session.desk().isSaved()) {
            next.run();
            return;
        }
        Words words = words();
        ButtonType saveFirst = new ButtonType(words.of("editor.leave.save"), ButtonBar.ButtonData.YES);
        ButtonType without = new ButtonType(words.of("editor.leave.without"), ButtonBar.ButtonData.NO);
        ButtonType stay = new ButtonType(words.of("editor.leave.stay"), ButtonBar.ButtonData.CANCEL_CLOSE);
        Alert alert = new Alert(Alert.AlertType.NONE, words.of("editor.leave.text"), saveFirst, without, stay);
        alert.initOwner(window);
        alert.setTitle(words.of("editor.title"));
        alert.setHeaderText(words.of("editor.leave.title"));
        ButtonType answer = alert.showAndWait().orElse(stay);
        if (answer == saveFirst) {
            saveThen(next);
        } else if (answer == without) {
            next.run();
        }
    }

    private FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(words().of(title));
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(words().of("editor.file-kind"), "*.svg", "*.svgz"));
        return chooser;
    }
}
