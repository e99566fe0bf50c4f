package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.model.OwnTableWords;
import easewright.editor.model.OwnTables;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The user's own ease tables: which there are, what is wrong with them, another one, one less. */
final class OwnTablesView extends VBox {
    private static final PseudoClass BAD = PseudoClass.getPseudoClass("bad");

    private final Session session;
    private final FileWork files;
    private final Button add = new Button();
    private Optional<OwnTables> shown = Optional.empty();
    private List<String> said = List.of();

    OwnTablesView(Session session, FileWork files) {
        super(6);
        this.session = session;
        this.files = files;
        setId("own-tables");
        getStyleClass().add("own-tables");
        Words words = session.desk().words();
        add.setId("add-table");
        add.setText(words.of("editor.tables.add"));
        add.getStyleClass().add("small");
        Hints.on(add, words.of("editor.tables.add.hint"));
        add.setOnAction(e -> files.asking().whichTable(folder()).ifPresent(files::readTable));
        session.ownTablesProperty().addListener((o, before, now) -> show(now));
        session.deskProperty().addListener((o, before, now) -> {
            // Another garment or another cloth may have no use for a table.
            if (before.reading() != now.reading()) {
                show(session.ownTables());
            }
        });
        show(session.ownTables());
    }

    /** Where the last table lies. */
    private Optional<Path> folder() {
        List<Path> files = session.ownTables().files();
        return files.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(files.get(files.size() - 1).getParent());
    }

    /** Rows are made anew only where they say something else: the keyboard may be in one. */
    private void show(OwnTables tables) {
        List<String> now = tables.entries().stream()
                .map(e -> OwnTableWords.of(e, session.desk()))
                .toList();
        if (shown.filter(tables::equals).isPresent() && now.equals(said)) {
            return;
        }
        shown = Optional.of(tables);
        said = now;
        getChildren().clear();
        for (int i = 0; i < now.size(); i++) {
            getChildren().add(row(tables.entries().get(i), now.get(i)));
        }
        getChildren().add(add);
    }

    private VBox row(OwnTables.Entry entry, String holds) {
        Words words = session.desk().words();
        String file = entry.file().getFileName().toString();
        Label name = new Label(file);
        name.setMaxWidth(Double.MAX_VALUE);
        Hints.on(name, entry.file().toString());
        HBox.setHgrow(name, Priority.ALWAYS);
        Button again = button("again", file, words);
        again.setOnAction(e -> files.readTable(entry.file()));
        Button remove = button("remove", file, words);
        remove.setOnAction(e -> {
            session.setOwnTables(session.ownTables().without(entry.file()));
            add.requestFocus();
        });
        HBox line = new HBox(6, name, again, remove);
        line.setAlignment(Pos.CENTER_LEFT);
        Label text = new Label(holds);
        text.setWrapText(true);
        text.getStyleClass().addAll("quiet", "table-said");
        text.pseudoClassStateChanged(BAD, entry.problem().isPresent());
        return new VBox(1, line, text);
    }

    private static Button button(String what, String file, Words words) {
        Button button = new Button(words.of("editor.tables." + what));
        button.getStyleClass().addAll("small", "table-" + what);
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText(words.of("editor.tables." + what + ".name", Map.of("file", file)));
        Hints.on(button, words.of("editor.tables." + what + ".hint"));
        return button;
    }
}
