package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.model.SizeWords;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Why not a size up? The change beside what scaling the pieces to the same girth would have done. */
public final class SizePanel extends SheetPage {
    private final Label intro = new Label();
    private final Label sum = new Label();
    private final GridPane grid = new GridPane();

    public SizePanel(Session session) {
        super(session, "size-up");
        intro.setWrapText(true);
        intro.getStyleClass().add("page-intro");
        sum.setWrapText(true);
        sum.getStyleClass().add("page-intro");
        grid.getStyleClass().add("size-grid");
        ColumnConstraints name = new ColumnConstraints();
        name.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(name);
        for (int i = 0; i < 3; i++) {
            ColumnConstraints number = new ColumnConstraints(96);
            number.setHalignment(HPos.RIGHT);
            grid.getColumnConstraints().add(number);
        }
        begin(new VBox(12, intro, grid, sum));
    }

    @Override
    void show(Desk desk) {
        Words words = desk.words();
        SizeWords shown = SizeWords.of(desk);
        intro.setText(shown.intro());
        grid.getChildren().clear();
        boolean any = !shown.lines().isEmpty();
        String size = shown.larger() ? "larger" : "smaller";
        sum.setText(any ? words.of("editor.size.sum." + size) : "");
        if (!any) {
            return;
        }
        Map<String, String> own =
                Map.of("size", shown.own().orElse(""), "unit", desk.unit().symbol());
        List<String> heads = List.of("measure", "before", "here", shown.own().isPresent() ? "own" : size);
        for (int i = 0; i < heads.size(); i++) {
            Label head = new Label(words.of("editor.size.head." + heads.get(i), own));
            Hints.on(head, words.of("editor.size.head." + heads.get(i) + ".hint", own));
            head.getStyleClass().add("size-head");
            grid.add(head, i, 0);
        }
        for (int row = 0; row < shown.lines().size(); row++) {
            SizeWords.Line line = shown.lines().get(row);
            Label name = new Label(line.name());
            name.setWrapText(true);
            name.setAccessibleText(line.said());
            grid.add(name, 0, row + 1);
            grid.add(new Label(line.before()), 1, row + 1);
            grid.add(cell(line, line.here()), 2, row + 1);
            grid.add(cell(line, line.size()), 3, row + 1);
        }
    }

    private static Label cell(SizeWords.Line line, SizeWords.Cell cell) {
        Label label = new Label(cell.words());
        label.getStyleClass().add(line.asked() ? "size-asked" : cell.same() ? "size-kept" : "size-grown");
        return label;
    }
}
