package easewright.editor.panel;

import easewright.editor.mark.EdgeEdits;
import easewright.editor.mark.Marker;
import easewright.editor.mark.PieceView;
import easewright.pattern.EdgeRole;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** One edge in the list: its name, what it is for, its allowance, its length. */
final class EdgeRowView extends VBox {
    static final double NAME = 104;
    static final double ROLE = 104;
    static final double ALLOWANCE = 72;
    static final double LENGTH = 70;

    private final Marker marker;
    private final Words words;
    private final NameField name;
    private final ComboBox<Use> role = new ComboBox<>();
    private final LengthField allowance;
    private final Label length = new Label();
    private final MenuButton more = new MenuButton("\u22ef");
    private final CheckMenuItem kept = new CheckMenuItem();
    private final String piece;
    private PieceView.EdgeRow row;
    private boolean filling;

    /** What an edge is for, in words. */
    private record Use(EdgeRole role, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    EdgeRowView(String piece, Marker marker, Words words) {
        this.piece = piece;
        this.marker = marker;
        this.words = words;
        Label wrong = new Label();
        name = new NameField(wrong, text -> marker.attempt(p -> EdgeEdits.rename(p, piece, row.name(), text)));
        Parts.takeRoom(name, NAME, this);
        role.setPrefWidth(ROLE);
        role.setMinWidth(ROLE);
        for (EdgeRole each : EdgeRole.values()) {
            role.getItems().add(use(each));
        }
        role.setOnAction(e -> {
            if (!filling) {
                marker.attempt(p ->
                        EdgeEdits.role(p, piece, row.name(), role.getValue().role()));
            }
        });
        Label wrongLength = new Label();
        allowance =
                new LengthField(wrongLength, mm -> marker.attempt(p -> EdgeEdits.allowance(p, piece, row.name(), mm)));
        allowance.setPrefWidth(ALLOWANCE);
        allowance.setMinWidth(ALLOWANCE);
        length.setPrefWidth(LENGTH);
        length.setMinWidth(LENGTH);
        length.setAlignment(Pos.CENTER_RIGHT);
        more.getStyleClass().addAll("flat", "small", "dots");
        MenuItem join = new MenuItem(words.of("editor.edge.join"));
        join.setOnAction(e -> marker.tryTo(p -> EdgeEdits.merge(p, piece, row.name())));
        MenuItem away = new MenuItem(words.of("editor.edge.away"));
        away.setOnAction(e -> marker.tryTo(p -> EdgeEdits.remove(p, piece, row.name())));
        kept.setText(words.of("editor.edge.keep"));
        kept.setOnAction(e -> marker.tryTo(p -> EdgeEdits.protect(p, piece, row.name(), kept.isSelected())));
        more.getItems().setAll(join, kept, away);
        HBox line = new HBox(4, name, role, allowance, length, Parts.gap(), more);
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(line, wrong, wrongLength);
        getStyleClass().add("mark-row");
        Parts.lights(this, marker, () -> row.run());
    }

    private Use use(EdgeRole of) {
        return new Use(of, words.name("role", of));
    }

    void show(PieceView.EdgeRow now, String ownAllowance, boolean stitching, LengthUnit unit) {
        row = now;
        Map<String, Object> edge = Map.of("edge", now.name());
        name.setId("edge-" + now.name().replace(' ', '-'));
        name.describe(words.of("editor.edge.name", edge), words.of("editor.edge.name.hint"));
        name.show(now.name());
        filling = true;
        role.setValue(use(now.role()));
        filling = false;
        Heard.name(role, words.of("editor.edge.role", edge));
        Hints.on(role, words.of("editor.edge.role.hint"));
        allowance.describe(
                words.of("editor.edge.allowance", edge),
                words.of(stitching ? "editor.edge.allowance.hint" : "editor.edge.allowance.cutting.hint"));
        allowance.setPromptText(ownAllowance);
        allowance.show(now.allowance(), unit);
        length.setText(now.length());
        Hints.on(
                length,
                now.toCentre()
                        .map(to -> words.of("editor.edge.length.centre.hint", Map.of("length", to)))
                        .orElseGet(() -> words.of("editor.edge.length.hint")));
        kept.setSelected(now.kept());
        Parts.name(more, words.of("editor.edge.more", edge));
    }
}
