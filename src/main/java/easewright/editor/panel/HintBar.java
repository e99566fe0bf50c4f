package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.mark.Tool;
import easewright.editor.model.Session;
import easewright.text.Words;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** At the head of the table, what the next click does, and to whoever works by keyboard how to click. */
public final class HintBar extends HBox {
    private final Session session;
    private final Marker marker;
    private final ByKeys byKeys;
    private final Label text = new Label();
    private final Label keys = new Label();
    private final Button stop = new Button();

    public HintBar(Session session, Marker marker, ByKeys byKeys) {
        this.session = session;
        this.marker = marker;
        this.byKeys = byKeys;
        setId("hint-bar");
        getStyleClass().add("hint-bar");
        setAlignment(Pos.CENTER_LEFT);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        marker.stateProperty().addListener((o, before, now) -> show());
        byKeys.onProperty().addListener(o -> show());
        show();
    }

    /** Its parts are made for the first tool taken in hand. */
    private void fill() {
        if (getChildren().isEmpty()) {
            stop.setId("tool-stop");
            stop.getStyleClass().add("small");
            stop.setFocusTraversable(false);
            stop.setOnAction(e -> marker.take(Tool.NONE));
            keys.getStyleClass().add("quiet");
            keys.visibleProperty().bind(byKeys.onProperty());
            keys.managedProperty().bind(byKeys.onProperty());
            getChildren().setAll(new VBox(text, keys), stop);
        }
    }

    private void show() {
        MarkState state = marker.state();
        boolean any = state.tool() != Tool.NONE;
        setVisible(any);
        setManaged(any);
        if (any) {
            fill();
            Words words = session.desk().words();
            text.setText(TableWords.tool(session.desk(), state));
            if (byKeys.onProperty().get()) {
                keys.setText(TableWords.keys(session.desk(), state));
            }
            stop.setText(words.of("editor.tool.stop"));
            Hints.on(stop, words.of("editor.tool.stop.hint"));
        }
    }
}
