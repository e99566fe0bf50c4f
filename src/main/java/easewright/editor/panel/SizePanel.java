package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.model.SizeWords;
import easewright.editor.model.Wanted;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Why not a size up? The change beside what scaling the pieces to the same girth would have done. */
public final class SizePanel extends SheetPage {
    private final Label intro = new Label();
    private final Label sum = new Label();
    private final GridPane grid = new GridPane();
    private final Label at = new Label();
    private final FlowPane chips = new FlowPane(4, 4);
    private List<String> levels = List.of();
    private Optional<String> chosen = Optional.empty();
    private Optional<String> wanted = Optional.empty();

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
            // As wide as what stands in it: the name takes the rest.
            ColumnConstraints number = new ColumnConstraints();
            number.setHalignment(HPos.RIGHT);
            grid.getColumnConstraints().add(number);
        }
        chips.setId("size-levels");
        chips.setAlignment(Pos.CENTER_LEFT);
        // Where the words below it begin.
        chips.setPadding(new Insets(0, 8, 0, 8));
        begin(new VBox(12, chips, intro, grid, sum));
    }

    @Override
    void show(Desk desk) {
        Words words = desk.words();
        Optional<String> atWork = desk.wanted().map(Wanted::level);
        if (!atWork.equals(wanted)) {
            // Whoever goes on to another level wants to see that one.
            wanted = atWork;
            chosen = Optional.empty();
        }
        SizeWords shown = SizeWords.of(desk, chosen);
        choice(shown, words);
        intro.setText(shown.intro());
        grid.getChildren().clear();
        boolean any = !shown.lines().isEmpty();
        String size = shown.larger() ? "larger" : "smaller";
        sum.setText(any ? words.of("editor.size.sum." + size) : "");
        if (!any) {
            return;
        }
        Map<String, String> own = Map.of(
                "size", shown.own().orElse(""),
                "other", shown.other(),
                "unit", desk.unit().symbol());
        List<String> heads = List.of("measure", "before", "here", shown.own().isPresent() ? "own" : size);
        for (int i = 0; i < heads.size(); i++) {
            Label head = new Label(words.of("editor.size.head." + heads.get(i), own));
            Hints.on(head, words.of("editor.size.head." + heads.get(i) + ".hint", own));
            head.getStyleClass().add("size-head");
            head.setMinWidth(USE_PREF_SIZE);
            grid.add(head, i, 0);
        }
        for (int row = 0; row < shown.lines().size(); row++) {
            SizeWords.Line line = shown.lines().get(row);
            Label name = new Label(line.name());
            name.setWrapText(true);
            name.setAccessibleText(line.said());
            grid.add(name, 0, row + 1);
            Label before = new Label(line.before());
            before.setMinWidth(USE_PREF_SIZE);
            grid.add(before, 1, row + 1);
            grid.add(cell(line, line.here()), 2, row + 1);
            grid.add(cell(line, line.size()), 3, row + 1);
        }
    }

    /** The levels that were changed, where there are several. */
    private void choice(SizeWords shown, Words words) {
        Parts.present(chips, shown.levels().size() > 1);
        at.setText(words.of("editor.size.at"));
        if (!shown.levels().equals(levels)) {
            levels = shown.levels();
            chips.getChildren().setAll(at);
            ToggleGroup group = new OneOf();
            for (String level : levels) {
                ToggleButton chip = new ToggleButton(level);
                chip.setMnemonicParsing(false);
                chip.setToggleGroup(group);
                chip.setId("size-at-" + level.replace(' ', '-'));
                chip.getStyleClass().addAll("small", "chip");
                chip.setOnAction(e -> {
                    chosen = Optional.of(level);
                    show(session.desk());
                });
                Heard.oneOf(at, chip);
                chips.getChildren().add(chip);
            }
        }
        chips.getChildren().stream()
                .filter(ToggleButton.class::isInstance)
                .map(ToggleButton.class::cast)
                .forEach(chip -> chip.setSelected(
                        shown.level().filter(chip.getText()::equals).isPresent()));
    }

    private static Label cell(SizeWords.Line line, SizeWords.Cell cell) {
        Label label = new Label(cell.words());
        label.setMinWidth(USE_PREF_SIZE);
        label.getStyleClass().add(line.asked() ? "size-asked" : cell.same() ? "size-kept" : "size-grown");
        return label;
    }
}
