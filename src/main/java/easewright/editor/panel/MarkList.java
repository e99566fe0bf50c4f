package easewright.editor.panel;

import easewright.editor.mark.Marker;
import easewright.editor.mark.PieceView;
import easewright.editor.mark.Tool;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A short list of marks of one kind, each with its name to change and a cross to take it away. */
final class MarkList extends VBox {
    private final Tool tool;
    private final String key;
    private final Marker marker;
    private final Label title = new Label();
    private final ToggleButton add;
    private final VBox list = new VBox();
    private final List<Row> rows = new ArrayList<>();
    private List<PieceView.MarkRow> shown = List.of();
    private BiFunction<Integer, String, String> renamer = (i, text) -> "";
    private IntConsumer remover = i -> {};

    /**
     * @param key of its words in the bundle
     */
    MarkList(Tool tool, String key, Marker marker) {
        super(2);
        this.tool = tool;
        this.key = key;
        this.marker = marker;
        add = Parts.tool(tool, marker);
        getChildren().setAll(Parts.heading(title, add), list);
    }

    void words(Words words) {
        title.setText(words.of(key));
        Parts.show(add, tool, marker, words);
    }

    /**
     * @param rename takes a number and a new name, and gives the reason why not, or nothing
     */
    void show(
            List<PieceView.MarkRow> marks,
            Words words,
            BiFunction<Integer, String, String> rename,
            IntConsumer remove) {
        shown = marks;
        renamer = rename;
        remover = remove;
        if (rows.size() != marks.size()) {
            rows.clear();
            for (int i = 0; i < marks.size(); i++) {
                rows.add(new Row(i, words));
            }
            list.getChildren().setAll(rows);
        }
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(marks.get(i), words);
        }
    }

    private final class Row extends VBox {
        private final NameField name;
        private final Label where = new Label();

        Row(int number, Words words) {
            Label wrong = new Label();
            name = new NameField(wrong, text -> renamer.apply(number, text));
            name.setPrefWidth(150);
            name.setMinWidth(150);
            where.getStyleClass().add("quiet");
            where.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(where, Priority.ALWAYS);
            HBox line = new HBox(8, name, where, Parts.cross(words.of(key + ".away"), () -> remover.accept(number)));
            line.setAlignment(Pos.CENTER_LEFT);
            getChildren().setAll(line, wrong);
            getStyleClass().add("mark-row");
            Parts.lights(this, marker, () -> shown.get(number).shown());
        }

        void show(PieceView.MarkRow mark, Words words) {
            name.describe(words.of(key + ".name", Map.of("name", mark.name())), words.of(key + ".name.hint"));
            name.show(mark.name());
            where.setText(mark.where());
        }
    }
}
