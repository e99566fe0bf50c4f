package easewright.editor.file;

import easewright.text.Words;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Alert;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.layout.Region;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks in dialogs over the window. What cannot be taken back stands apart on the left, where Escape does not reach it. */
public final class Dialogs implements Asking {
    private static final double WIDTH = 560;
    /** At the left what is not taken back, at the right to stay, and last what is best done. */
    private static final String ORDER = "L_+CY";

    private static final List<String> ENDINGS = List.of(".svg", ".svgz", ".pdf", ".html");

    private final Window window;
    private final Supplier<Words> words;

    public Dialogs(Window window, Supplier<Words> words) {
        this.window = window;
        this.words = words;
    }

    @Override
    public Optional<Path> whichToOpen(Path folder) {
        FileChooser chooser = chooser("editor.open.title", "editor.file-kind", "*.svg", "*.svgz");
        // Measurements and ease tables are opened in the same way as drawings.
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(words.get().of("editor.file-kind.text"), "*.txt"),
                        new FileChooser.ExtensionFilter(words.get().of("editor.file-kind.any"), "*.*"));
        beginIn(chooser, folder);
        return Optional.ofNullable(chooser.showOpenDialog(window)).map(File::toPath);
    }

    @Override
    public Optional<Path> whichTable(Optional<Path> folder) {
        FileChooser chooser = chooser("editor.tables.title", "editor.file-kind.table", "*.txt");
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(words.get().of("editor.file-kind.any"), "*.*"));
        folder.ifPresent(f -> beginIn(chooser, f));
        return Optional.ofNullable(chooser.showOpenDialog(window)).map(File::toPath);
    }

    @Override
    public Optional<Path> whereToSave(Path proposed) {
        String name = proposed.getFileName().toString();
        String ending = ENDINGS.stream()
                .filter(name.toLowerCase(Locale.ROOT)::endsWith)
                .findFirst()
                .orElse(".svg");
        FileChooser chooser = ending.equals(".pdf") || ending.equals(".html")
                ? chooser("editor.print.where", "editor.file-kind" + ending, "*" + ending)
                : chooser("editor.save.title", "editor.file-kind", "*.svg", "*.svgz");
        chooser.setInitialFileName(name);
        beginIn(chooser, proposed.getParent());
        while (true) {
            Optional<Path> chosen =
                    Optional.ofNullable(chooser.showSaveDialog(window)).map(File::toPath);
            Optional<Path> file = chosen.map(path -> ending(path, ending));
            // The chooser has asked about the name that was typed, and not about the one with the ending.
            if (file.equals(chosen) || !Files.exists(file.get())) {
                return file;
            }
            Meanwhile answer = there(file.get().getFileName().toString());
            if (answer != Meanwhile.OTHER_NAME) {
                return file.filter(f -> answer == Meanwhile.REPLACE);
            }
        }
    }

    /**
     * With its ending, without which no other program would know what the file is, nor this one list it again. A
     * drawing may have that of drawings packed or not.
     */
    static Path ending(Path file, String ending) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        boolean drawing = ending.startsWith(".svg") && (name.endsWith(".svg") || name.endsWith(".svgz"));
        boolean has = drawing || name.endsWith(ending);
        return has ? file : file.resolveSibling(file.getFileName() + ending);
    }

    /** A folder that is not there would keep the dialog from opening. */
    private static void beginIn(FileChooser chooser, Path folder) {
        if (folder != null && Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
    }

    private FileChooser chooser(String title, String kind, String... endings) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(words.get().of(title));
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(words.get().of(kind), endings));
        return chooser;
    }

    @Override
    public Leave leaving(String file) {
        Map<Leave, ButtonType> answers = new LinkedHashMap<>();
        answers.put(Leave.SAVE_FIRST, button("editor.leave.save", ButtonBar.ButtonData.YES));
        answers.put(Leave.WITHOUT_SAVING, button("editor.leave.without", ButtonBar.ButtonData.LEFT));
        answers.put(Leave.STAY, button("editor.leave.stay", ButtonBar.ButtonData.CANCEL_CLOSE));
        return ask("editor.leave", Map.of("file", file), answers, Leave.STAY);
    }

    @Override
    public Meanwhile changedMeanwhile(String file) {
        return replacing("editor.meanwhile", "editor.meanwhile.other", file);
    }

    /** What to do where a file is there that the user has not been asked about. */
    private Meanwhile there(String file) {
        return replacing("editor.there", "editor.there.other", file);
    }

    private Meanwhile replacing(String question, String other, String file) {
        Map<Meanwhile, ButtonType> answers = new LinkedHashMap<>();
        answers.put(Meanwhile.OTHER_NAME, button(other, ButtonBar.ButtonData.YES));
        answers.put(Meanwhile.REPLACE, button("editor.meanwhile.replace", ButtonBar.ButtonData.LEFT));
        answers.put(Meanwhile.STAY, button("editor.meanwhile.stay", ButtonBar.ButtonData.CANCEL_CLOSE));
        return ask(question, Map.of("file", file), answers, Meanwhile.STAY);
    }

    @Override
    public boolean throwAway(String file) {
        Map<Boolean, ButtonType> answers = new LinkedHashMap<>();
        answers.put(true, button("editor.left.discard", ButtonBar.ButtonData.LEFT));
        answers.put(false, button("editor.left.keep", ButtonBar.ButtonData.CANCEL_CLOSE));
        return ask("editor.left.sure", Map.of("file", file), answers, false);
    }

    private ButtonType button(String key, ButtonBar.ButtonData side) {
        return new ButtonType(words.get().of(key), side);
    }

    private <T> T ask(String key, Map<String, ?> values, Map<T, ButtonType> answers, T otherwise) {
        Alert alert = new Alert(
                Alert.AlertType.NONE,
                words.get().of(key + ".text", values),
                answers.values().toArray(ButtonType[]::new));
        alert.initOwner(window);
        // In the colours of the window over which it stands.
        alert.getDialogPane().getStylesheets().addAll(window.getScene().getStylesheets());
        alert.getDialogPane().getStyleClass().addAll(window.getScene().getRoot().getStyleClass());
        // A long name wraps: left to itself the dialog would be put in the middle as wide as it is on one line.
        alert.getDialogPane().setPrefWidth(WIDTH);
        alert.setTitle(words.get().of("editor.title"));
        alert.setHeaderText(words.get().of(key + ".title", values));
        // What is best done stands last in every question, as it does in the window.
        ((ButtonBar) alert.getDialogPane().lookup(".button-bar")).setButtonOrder(ORDER);
        for (ButtonType answer : answers.values()) {
            Button button = (Button) alert.getDialogPane().lookupButton(answer);
            // As wide as its words, whatever the others are.
            ButtonBar.setButtonUniformSize(button, false);
            button.setMinWidth(Region.USE_PREF_SIZE);
            // The question is heard with whichever answer has the keys.
            button.setAccessibleHelp(alert.getHeaderText() + " " + alert.getContentText());
        }
        if (answers.values().stream().noneMatch(each -> each.getButtonData().isDefaultButton())) {
            // Enter must never answer with what cannot be taken back.
            Button safe = (Button) alert.getDialogPane().lookupButton(answers.get(otherwise));
            safe.setDefaultButton(true);
            alert.setOnShown(shown -> safe.requestFocus());
        }
        Behind.step(window, alert.getDialogPane().getScene().getWindow());
        Optional<ButtonType> given = alert.showAndWait();
        return answers.entrySet().stream()
                .filter(e -> given.filter(e.getValue()::equals).isPresent())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(otherwise);
    }
}
