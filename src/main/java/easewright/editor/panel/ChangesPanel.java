package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What has been done to the pattern, oldest first, in plain words. */
public final class ChangesPanel extends ScrollPane {
    private final Session session;
    private final VBox list = new VBox();
    private final Label title = new Label();
    private final Button undo = new Button();
    private final Button redo = new Button();

    public ChangesPanel(Session session) {
        this.session = session;
        setId("changes");
        setFitToWidth(true);
        getStyleClass().add("sheet-page");
        title.getStyleClass().add("page-intro");
        title.setWrapText(true);
        undo.setOnAction(e -> session.undo());
        redo.setOnAction(e -> session.redo());
        setContent(new VBox(12, title, list, new HBox(8, undo, redo)));
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    private void show(Desk desk) {
        Words words = desk.words();
        List<String> lines = new ChangeWords(words).of(desk.pattern());
        title.setText(words.of(lines.isEmpty() ? "editor.changes.none" : "editor.changes.intro"));
        list.getChildren().clear();
        for (int i = 0; i < lines.size(); i++) {
            Label number = new Label(String.valueOf(i + 1));
            number.getStyleClass().add("change-number");
            Label line = new Label(lines.get(i));
            line.setWrapText(true);
            HBox row = new HBox(10, number, line);
            row.getStyleClass().add("list-row");
            list.getChildren().add(row);
        }
        undo.setText(words.of("editor.undo"));
        undo.setTooltip(new Tooltip(words.of("editor.undo.hint")));
        undo.setDisable(!desk.history().canUndo());
        redo.setText(words.of("editor.redo"));
        redo.setTooltip(new Tooltip(words.of("editor.redo.hint")));
        redo.setDisable(!desk.history().canRedo());
    }
}
