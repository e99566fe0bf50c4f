package easewright.editor.panel;

import easewright.editor.mark.LevelsView;
import easewright.editor.mark.Overlaps;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.Map;
import java.util.OptionalDouble;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Below a piece of a level that comes to an opening there: how much of it lies on the other side. */
final class OverlapLine extends VBox {
    private final Session session;
    private final Label lead = new Label();
    private final LengthField field;
    private final Button everywhere = new Button();
    private String level = "";
    private String piece = "";
    /** Nothing is said yet, and the press takes what the drawing shows. */
    private boolean drawn;

    OverlapLine(Session session) {
        super(3);
        this.session = session;
        Label wrong = new Label();
        field = new LengthField(wrong, this::say);
        field.setPrefWidth(86);
        field.setMinWidth(86);
        lead.getStyleClass().add("quiet");
        lead.setMinWidth(USE_PREF_SIZE);
        everywhere.getStyleClass().add("small");
        everywhere.setMinWidth(USE_PREF_SIZE);
        everywhere.setOnAction(e -> {
            // The press goes away with what it does.
            field.requestFocus();
            session.edit(
                    drawn
                            ? Overlaps.asDrawn(session.desk().pattern(), piece)
                            : Overlaps.atEveryLevel(session.desk().pattern(), piece, level));
        });
        HBox row = new HBox(8, lead, field, everywhere);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPadding(new Insets(0, 0, 0, 10));
        getChildren().setAll(row, wrong);
    }

    /** The id of the field, for who leads to it. */
    static String id(String level, String piece) {
        return "overlap-" + level.replace(' ', '-') + "-on-" + piece;
    }

    private void say(OptionalDouble mm) {
        session.edit(
                mm.isPresent()
                        ? Overlaps.say(session.desk().pattern(), piece, level, mm.getAsDouble())
                        : Overlaps.unsay(session.desk().pattern(), piece, level));
    }

    /**
     * @param another whether it is about another piece than before
     */
    void show(String atLevel, LevelsView.Place at, boolean another, Desk desk) {
        Words words = desk.words();
        level = atLevel;
        piece = at.piece();
        Map<String, Object> values = Map.of("level", level, "piece", at.name());
        Parts.present(this, at.overlap().isPresent());
        lead.setText(words.of("editor.level.overlap"));
        field.setId(id(level, piece));
        field.describe(words.of("editor.level.overlap.name", values), words.of("editor.level.overlap.hint"));
        field.showOf(another, at.overlap().orElse(""), desk.unit());
        everywhere.setId(id(level, piece) + "-everywhere");
        drawn = at.drawn().isPresent();
        everywhere.setText(
                drawn
                        ? words.of(
                                "editor.level.overlap.drawn",
                                Map.of("overlap", at.drawn().get()))
                        : words.of("editor.level.overlap.everywhere"));
        Hints.on(
                everywhere,
                words.of(drawn ? "editor.level.overlap.drawn.hint" : "editor.level.overlap.everywhere.hint", values));
        Parts.about(everywhere, words.of("editor.level.overlap.name", values));
        Parts.present(everywhere, drawn || at.unlike());
    }
}
