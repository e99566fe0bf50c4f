package easewright.editor.panel;

import easewright.editor.mark.Marker;
import easewright.editor.mark.PieceView;
import easewright.editor.mark.Tool;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A short list of marks of one kind, each with its name and its lengths to change and a cross to take it away. */
final class MarkList extends VBox {
    /** Wide enough for tens of inches in sixteenths, pixels. */
    private static final double LENGTH = 88;

    private static final double NAME = EdgeRowView.NAME;

    /** The edge on which a length is measured, so that the lengths stand one below the other; pixels. */
    private static final double EDGE = 94;

    /** So many lengths have room beside the name; more stand below it. */
    private static final int BESIDE = 2;

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
    private Measuring measurer = (i, measure, mm) -> "";

    /** Takes the number of a mark, the key of one of its lengths and the length, mm; gives the reason why not, or nothing. */
    interface Measuring {
        String apply(int number, String key, double mm);
    }

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

    /** What is shown next is of another piece: nothing typed for the one before may be taken for it. */
    void clear() {
        rows.clear();
        list.getChildren().clear();
    }

    /**
     * @param rename takes a number and a new name, and gives the reason why not, or nothing
     */
    void show(
            List<PieceView.MarkRow> marks,
            Words words,
            LengthUnit unit,
            BiFunction<Integer, String, String> rename,
            Measuring measure,
            IntConsumer remove) {
        shown = marks;
        renamer = rename;
        remover = remove;
        measurer = measure;
        if (rows.size() != marks.size() || isOfOtherKind(marks)) {
            rows.clear();
            for (int i = 0; i < marks.size(); i++) {
                rows.add(new Row(i, marks.get(i), words));
            }
            list.getChildren().setAll(rows);
        }
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(marks.get(i), words, unit);
        }
    }

    /** Whether a mark has other lengths than the row in its place. */
    private boolean isOfOtherKind(List<PieceView.MarkRow> marks) {
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i).measures().size() != rows.get(i).measures.size()) {
                return true;
            }
        }
        return false;
    }

    /** One length of a mark: words, the field, words. */
    private final class MeasureField extends HBox {
        private final Label before = new Label();
        private final LengthField length;
        private final Label after = new Label();
        private String last = "";
        private LengthUnit lastUnit = LengthUnit.CM;

        MeasureField(int number, String key, Label wrong) {
            super(4);
            length = LengthField.refusing(wrong, mm -> {
                if (mm.isPresent()) {
                    return measurer.apply(number, key, mm.getAsDouble());
                }
                // A mark is taken away by its cross, not by an empty length.
                length().show(last, lastUnit);
                return "";
            });
            length.setPrefWidth(LENGTH);
            length.setMinWidth(LENGTH);
            before.getStyleClass().add("quiet");
            after.getStyleClass().add("quiet");
            setAlignment(Pos.CENTER_LEFT);
            setMinWidth(0);
            after.setMinWidth(0);
            getChildren().setAll(before, length, after);
        }

        private LengthField length() {
            return length;
        }

        void show(PieceView.Measure measure, String mark, Words words, LengthUnit unit) {
            last = measure.length();
            lastUnit = unit;
            before.setText(measure.before());
            // Names of edges may be long and are cut short; a single word beside a number is not.
            boolean onEdge = !measure.after().isEmpty();
            before.setMinWidth(USE_PREF_SIZE);
            before.setPrefWidth(onEdge ? EDGE : USE_COMPUTED_SIZE);
            after.setText(measure.after());
            Hints.on(before, measure.before());
            Hints.on(after, measure.after());
            length.describe(words.of(measure.key(), Map.of("name", mark)), words.of(measure.key() + ".hint"));
            length.show(measure.length(), unit);
        }
    }

    private final class Row extends VBox {
        private final NameField name;
        private final Button away;
        private final List<MeasureField> measures = new ArrayList<>();

        Row(int number, PieceView.MarkRow mark, Words words) {
            Label wrong = new Label();
            name = new NameField(wrong, text -> renamer.apply(number, text));
            Parts.takeRoom(name, NAME, this);
            HBox line = new HBox(8, name);
            VBox complaints = new VBox(wrong);
            for (PieceView.Measure measure : mark.measures()) {
                Label unfit = new Label();
                MeasureField field = new MeasureField(number, measure.key(), unfit);
                field.length.setId(tool.key() + "-" + number + "-" + measures.size());
                measures.add(field);
                complaints.getChildren().add(unfit);
            }
            HBox below = new HBox(10);
            boolean many = measures.size() > BESIDE;
            (many ? below : line).getChildren().addAll(measures);
            away = Parts.cross("", () -> remover.accept(number));
            if (many || measures.isEmpty()) {
                line.getChildren().add(Parts.gap());
            } else {
                // What stands behind its length has all the room before the cross.
                HBox.setHgrow(measures.get(measures.size() - 1), Priority.ALWAYS);
            }
            line.getChildren().add(away);
            line.setAlignment(Pos.CENTER_LEFT);
            getChildren().setAll(line, complaints);
            if (many) {
                below.setAlignment(Pos.CENTER_LEFT);
                setSpacing(4);
                getChildren().add(1, below);
            }
            getStyleClass().add("mark-row");
            Parts.lights(this, marker, () -> shown.get(number).shown());
        }

        void show(PieceView.MarkRow mark, Words words, LengthUnit unit) {
            Map<String, Object> called = Map.of("name", mark.name());
            name.describe(words.of(key + ".name", called), words.of(key + ".name.hint"));
            Parts.name(away, words.of(key + ".away", called));
            name.show(mark.name());
            for (int i = 0; i < measures.size(); i++) {
                measures.get(i).show(mark.measures().get(i), mark.name(), words, unit);
            }
        }
    }
}
