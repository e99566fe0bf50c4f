package easewright.editor.panel;

import easewright.editor.mark.LevelElsewhere;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.Picking;
import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** At the foot of the table, what the next click does, and to whoever works by keyboard how to click. */
public final class HintBar extends HBox {
    private final Session session;
    private final Marker marker;
    private final ByKeys byKeys;
    private final Label text = new Label();
    private final Label keys = new Label();
    private final Button everywhere = new Button();
    private final Button stop = new Button();
    /** What is offered of the level in hand for other sizes, and of which pattern: the mouse moves more often. */
    private Optional<LevelElsewhere> elsewhere = Optional.empty();

    private Pattern offered;
    private Optional<String> level = Optional.empty();

    public HintBar(Session session, Marker marker, ByKeys byKeys) {
        this.session = session;
        this.marker = marker;
        this.byKeys = byKeys;
        setId("hint-bar");
        getStyleClass().add("hint-bar");
        setAlignment(Pos.CENTER_LEFT);
        setMaxHeight(Region.USE_PREF_SIZE);
        marker.stateProperty().addListener((o, before, now) -> show());
        byKeys.onProperty().addListener(o -> show());
        session.picking().askProperty().addListener(o -> show());
        session.deskProperty().addListener((o, before, now) -> {
            if (before.unit() != now.unit()
                    || before.pattern() != now.pattern() && marker.state().tool() == Tool.LEVEL) {
                show();
            }
        });
        show();
    }

    /** Its parts are made for the first tool taken in hand. */
    private void fill() {
        if (getChildren().isEmpty()) {
            stop.setId("tool-stop");
            stop.getStyleClass().add("small");
            stop.setFocusTraversable(false);
            stop.setOnAction(e -> {
                session.picking().stop();
                marker.take(Tool.NONE);
            });
            stop.setMinWidth(USE_PREF_SIZE);
            everywhere.setId("tool-everywhere");
            everywhere.getStyleClass().add("small");
            everywhere.setFocusTraversable(false);
            everywhere.setMinWidth(USE_PREF_SIZE);
            everywhere.setOnAction(e -> elsewhere.ifPresent(sizes -> marker.tryTo(sizes::of)));
            text.setWrapText(true);
            keys.setWrapText(true);
            keys.getStyleClass().add("quiet");
            keys.visibleProperty().bind(byKeys.onProperty());
            keys.managedProperty().bind(byKeys.onProperty());
            VBox words = new VBox(text, keys);
            words.setAlignment(Pos.CENTER_LEFT);
            HBox.setHgrow(words, Priority.ALWAYS);
            getChildren().setAll(words, everywhere, stop);
        }
    }

    private void show() {
        MarkState state = marker.state();
        Optional<Picking.Ask> asked = session.picking().askProperty().get();
        boolean any = state.tool() != Tool.NONE || asked.isPresent();
        Parts.present(this, any);
        if (any) {
            fill();
            Desk desk = session.desk();
            Words words = desk.words();
            text.setText(asked.map(a -> CuttingTableWords.asked(desk, a))
                    .orElseGet(() -> CuttingTableWords.tool(desk, state)));
            if (byKeys.onProperty().get()) {
                keys.setText(asked.isPresent() ? words.of("editor.tool.keys") : CuttingTableWords.keys(desk, state));
            }
            offer(desk, state);
            stop.setText(words.of(asked.isPresent() ? "editor.table.asks.stop" : "editor.tool.stop"));
            Hints.on(stop, words.of(asked.isPresent() ? "editor.table.asks.stop.hint" : "editor.tool.stop.hint"));
        }
    }

    /** For a level that was put on a piece of one size, the same in the others. */
    private void offer(Desk desk, MarkState state) {
        Optional<String> now = state.level().filter(l -> state.tool() == Tool.LEVEL);
        if (desk.pattern() != offered || !now.equals(level)) {
            offered = desk.pattern();
            level = now;
            elsewhere = now.map(l -> LevelElsewhere.ofPlaced(desk, l)).filter(LevelElsewhere::isOffered);
            elsewhere.ifPresent(sizes -> {
                everywhere.setText(sizes.press(desk.words()));
                Hints.on(everywhere, sizes.hint(desk.words()));
            });
        }
        Parts.present(everywhere, elsewhere.isPresent());
    }
}
