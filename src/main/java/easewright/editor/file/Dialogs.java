package easewright.editor.file;

import easewright.text.Words;
import java.io.File;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Alert;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks in dialogs over the window. What cannot be taken back stands apart on the left, where Escape does not reach it. */
public final class Dialogs implements Asking {
    private final Window window;
    private final Supplier<Words> words;

    public Dialogs(Window window, Supplier<Words> words) {
        this.window = window;
        this.words = words;
    }

    @Override
    public Optional<Path> whichToOpen(Optional<Path> folder) {
        FileChooser chooser = chooser("editor.open.title", "editor.file-kind", "*.svg", "*.svgz");
        beginIn(chooser, folder);
        return Optional.ofNullable(chooser.showOpenDialog(window)).map(File::toPath);
    }

    @Override
    public Optional<Path> whereToSave(Path proposed) {
        String name = proposed.getFileName().toString();
        FileChooser chooser = name.endsWith(".pdf")
                ? chooser("editor.print.where", "editor.file-kind.pdf", "*.pdf")
                : name.endsWith(".html")
                        ? chooser("editor.print.where", "editor.file-kind.html", "*.html")
                        : chooser("editor.save.title", "editor.file-kind", "*.svg", "*.svgz");
        chooser.setInitialFileName(name);
        beginIn(chooser, Optional.ofNullable(proposed.getParent()));
        return Optional.ofNullable(chooser.showSaveDialog(window)).map(File::toPath);
    }

    /** A folder that is not there would keep the dialog from opening. */
    private static void beginIn(FileChooser chooser, Optional<Path> folder) {
        folder.map(Path::toFile).filter(File::isDirectory).ifPresent(chooser::setInitialDirectory);
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
        Map<Meanwhile, ButtonType> answers = new LinkedHashMap<>();
        answers.put(Meanwhile.OTHER_NAME, button("editor.meanwhile.other", ButtonBar.ButtonData.YES));
        answers.put(Meanwhile.REPLACE, button("editor.meanwhile.replace", ButtonBar.ButtonData.LEFT));
        answers.put(Meanwhile.STAY, button("editor.meanwhile.stay", ButtonBar.ButtonData.CANCEL_CLOSE));
        return ask("editor.meanwhile", Map.of("file", file), answers, Meanwhile.STAY);
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
        alert.setTitle(words.get().of("editor.title"));
        alert.setHeaderText(words.get().of(key + ".title", values));
        if (answers.values().stream().noneMatch(each -> each.getButtonData().isDefaultButton())) {
            // Enter must never answer with what cannot be taken back.
            Button safe = (Button) alert.getDialogPane().lookupButton(answers.get(otherwise));
            safe.setDefaultButton(true);
            alert.setOnShown(shown -> safe.requestFocus());
        }
        Optional<ButtonType> given = alert.showAndWait();
        return answers.entrySet().stream()
                .filter(e -> given.filter(e.getValue()::equals).isPresent())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(otherwise);
    }
}
