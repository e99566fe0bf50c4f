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

    /** What the window needs and the toolkit does not, got ready while that starts. */
    private static void ahead() {
        Desk.empty(LengthUnit.CM, false).words().of("editor.title");
        Sample.all();
    }

    @Override
    public void start(Stage stage) {
        List<String> arguments =
                getParameters() == null ? List.of() : getParameters().getUnnamed();
        asked = arguments.stream().map(Path::of).toList();
        start(stage, Settings.folder());
    }

    /**
     * Opens the window on a stage.
     *
     * @param folder where settings are kept
     */
    void start(Stage stage, Path folder) {
        start(stage, folder, new Dialogs(stage, () -> session.desk().words()));
    }

    /**
     * @param asking answers what the window asks about files
     */
    void start(Stage stage, Path folder, Asking asking) {
        Settings settings = Settings.read(folder);
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
