package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.svg.KeptWork;
import easewright.text.Words;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Offers work back that a crash left behind, one line each. */
public final class LeftBehindBar extends VBox {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

    private final FileWork files;

    public LeftBehindBar(FileWork files) {
        this.files = files;
        setId("left-behind");
        getStyleClass().addAll("notice", "left-behind");
        setMaxSize(640, Region.USE_PREF_SIZE);
        List<KeptWork> works = files.leftBehind();
        Label intro = new Label(files.words().of("editor.left.intro"));
        intro.setWrapText(true);
        getChildren().add(intro);
        for (int i = 0; i < works.size(); i++) {
            getChildren().add(row(works.get(i), i));
        }
        hideWhenEmpty();
    }

    private HBox row(KeptWork work, int index) {
        Words words = files.words();
        String file = work.original().getFileName().toString();
        Map<String, Object> values =
                Map.of("file", file, "when", WHEN.format(work.at().atZone(ZoneId.systemDefault())));
        Label what = new Label(words.of("editor.left.work", values));
        what.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(what, Priority.ALWAYS);
        HBox row = new HBox(8, what);
        row.setAlignment(Pos.CENTER_LEFT);
        Button back = button("left-restore-" + index, words, "editor.left.restore", file);
        back.getStyleClass().add("accent");
        back.setOnAction(e -> {
            files.restore(work);
            away(row);
        });
        Button discard = button("left-discard-" + index, words, "editor.left.discard", file);
        discard.setOnAction(e -> {
            files.discard(work);
            away(row);
        });
        row.getChildren().addAll(back, discard);
        return row;
    }

    private static Button button(String id, Words words, String key, String file) {
        Button button = new Button(words.of(key));
        button.setId(id);
        button.getStyleClass().add("small");
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText(words.of(key) + ": " + file);
        Hints.on(button, words.of(key + ".hint"));
        return button;
    }

    private void away(HBox row) {
        getChildren().remove(row);
        hideWhenEmpty();
    }

    private void hideWhenEmpty() {
        boolean any = getChildren().size() > 1;
        setVisible(any);
        setManaged(any);
    }
}
