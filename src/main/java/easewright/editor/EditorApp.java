package easewright.editor;

import easewright.editor.file.Asking;
import easewright.editor.file.Dialogs;
import easewright.editor.file.FileWork;
import easewright.editor.model.Desk;
import easewright.editor.model.OwnTables;
import easewright.editor.model.Sample;
import easewright.editor.model.Session;
import easewright.editor.model.Settings;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.stage.Stage;

/** The editor. An argument that is no option is a file to open. */
public final class EditorApp extends Application {
    private Session session;
    private FileWork files;
    private List<Path> asked = List.of();

    /** Opens the window and returns when it is closed. */
    public static void open(String... args) {
        // Pictures of drawings are painted with parts of another window toolkit, which is to open no window of its own.
        System.setProperty("java.awt.headless", "true");
        Thread ahead = new Thread(EditorApp::ahead, "ahead");
        ahead.setDaemon(true);
        ahead.start();
        launch(EditorApp.class, args);
    }

    /** What was kept the last time, read once, by whoever asks first: no window waits for a disk that is asked before. */
    private static final class Kept {
        static final Settings SETTINGS = Settings.read(Settings.folder());

        private Kept() {}
    }

    /** What the window needs and the toolkit does not, got ready while that starts. */
    private static void ahead() {
        LengthUnit unit = Kept.SETTINGS.unit();
        Desk.empty(unit, false).words().of("editor.title");
        Sample.all();
    }

    @Override
    public void start(Stage stage) {
        List<String> arguments =
                getParameters() == null ? List.of() : getParameters().getUnnamed();
        asked = arguments.stream().map(Path::of).toList();
        start(
                stage,
                Settings.folder(),
                Kept.SETTINGS,
                new Dialogs(stage, () -> session.desk().words()));
    }

    /**
     * Opens the window on a stage.
     *
     * @param folder where settings are kept
     * @param asking answers what the window asks about files
     */
    void start(Stage stage, Path folder, Asking asking) {
        start(stage, folder, Settings.read(folder), asking);
    }

    private void start(Stage stage, Path folder, Settings settings, Asking asking) {
        session = new Session(settings.unit(), settings.dark());
        session.setOwnTables(OwnTables.unread(settings.tables()));
        if (!settings.unitChosen()) {
            session.takeUnitsFromFiles();
        }
        files = new FileWork(session, asking, settings, folder);
        String title = session.desk().words().of("editor.title");
        Opening.show(stage, title, settings.dark(), () -> fill(stage));
    }

    private void fill(Stage stage) {
        new EditorWindow(stage, session, files);
        files.readTables();
        files.openOneOf(asked);
    }

    Session session() {
        return session;
    }

    FileWork files() {
        return files;
    }
}
