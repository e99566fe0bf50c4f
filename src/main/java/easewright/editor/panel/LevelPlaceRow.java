package easewright.editor.panel;

import easewright.editor.mark.LevelEdits;
import easewright.editor.mark.LevelsView;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A level on one piece: how far from its reference it lies, how wide the piece is there, and whether it counts. */
final class LevelPlaceRow extends VBox {
    /** How wide the name of a piece may be to stand before its distance, pixels. */
    static final double PIECE = 98;

    /** No wider than this, so that figure and tick stay with the name that they belong to, pixels. */
    static final double WIDEST = 460;

    private final Session session;
    private final Label piece = new Label();
    private final LengthField distance;
    private final Label how = new Label();
    private final Label width = new Label();
    private final Region gap = new Region();
    private final CheckBox counts = new CheckBox();
    private final Button off = Parts.cross("", this::takeOff);
    private final Label wrong = new Label();
    private final OverlapLine overlap;
    private String level = "";
    private LevelsView.Place at;

    LevelPlaceRow(Session session) {
        this.session = session;
        overlap = new OverlapLine(session);
        distance = new LengthField(
                wrong,
                mm -> mm.ifPresent(d -> session.edit(
                        LevelEdits.distance(session.desk().pattern(), at.piece(), level, at.above() ? -d : d))));
        distance.setPrefWidth(86);
        distance.setMinWidth(86);
        how.getStyleClass().add("quiet");
        how.setWrapText(true);
        how.setMinHeight(USE_PREF_SIZE);
        how.setMaxWidth(Double.MAX_VALUE);
        width.setMinWidth(USE_PREF_SIZE);
        counts.setOnAction(
                e -> session.edit(LevelEdits.counts(session.desk().pattern(), at.piece(), level, counts.isSelected())));
        HBox line = new HBox(6, distance, how, width, gap, counts, off);
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(new LeadLine(piece, line, PIECE), overlap);
        setSpacing(4);
        setMaxWidth(WIDEST);
        getStyleClass().add("mark-row");
    }

    /** What is wrong with what was typed; it is shown below all rows. */
    Label wrong() {
        return wrong;
    }

    private void takeOff() {
        session.edit(LevelEdits.takeOff(session.desk().pattern(), at.piece(), level));
    }

    /**
     * @param told whether it says from where it is measured, which else stands over all rows
     */
    void show(String name, LevelsView.Place now, boolean told, Desk desk) {
        Words words = desk.words();
        boolean elsewhere = at != null && !at.piece().equals(now.piece());
        level = name;
        at = now;
        Map<String, Object> values = Map.of("level", level, "piece", now.name());
        piece.setText(now.name());
        Parts.name(off, words.of("editor.level.take-off", values));
        distance.setId("level-" + level.replace(' ', '-') + "-on-" + now.piece());
        distance.describe(words.of("editor.level.distance", values), words.of("editor.level.distance.hint"));
        distance.showOf(elsewhere, now.distance(), desk.unit());
        boolean straight = !now.distance().isEmpty();
        Parts.present(distance, straight);
        how.setText(told ? now.how() : "");
        Parts.present(how, told);
        // What says from where it is measured may need all the room there is; else the figure stands beside its piece.
        HBox.setHgrow(how, told ? Priority.ALWAYS : Priority.NEVER);
        HBox.setHgrow(gap, told ? Priority.NEVER : Priority.ALWAYS);
        width.setText(now.width());
        // A figure of another kind than that in the field.
        HBox.setMargin(width, new Insets(0, 0, 0, straight ? 6 : 0));
        Hints.on(width, words.of("editor.level.width.hint"));
        counts.setSelected(now.counts());
        counts.setAccessibleText(words.of("editor.level.counts", values));
        Hints.on(counts, words.of("editor.level.counts.hint"));
        overlap.show(level, now, elsewhere, desk);
    }
}
