package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** The page of one step of marking. It is made anew only while that step is worked at and what it shows has changed. */
abstract class StepPage extends VBox {
    final Session session;
    final Marker marker;
    private final MarkState.Step step;
    private Seen seen;

    StepPage(Session session, Marker marker, MarkState.Step step) {
        this.session = session;
        this.marker = marker;
        this.step = step;
        setSpacing(12);
        getStyleClass().add("step-page");
    }

    /** Fills the page, which from now on follows the desk and the marks. */
    final void begin(Node... parts) {
        getChildren().setAll(parts);
        session.deskProperty().addListener((o, before, now) -> follow());
        marker.stateProperty().addListener((o, before, now) -> follow());
        follow();
    }

    private void follow() {
        MarkState state = marker.state();
        if (seen != null && !state.on()) {
            return;
        }
        Seen now = Seen.of(session.desk(), state);
        if (now.equals(seen)) {
            return;
        }
        seen = now;
        words(session.desk().words());
        if (state.on() && state.step() == step) {
            show(session.desk(), state);
        } else {
            left();
        }
    }

    /** Words that are always the same: screen readers meet them before the step is worked at. */
    abstract void words(Words words);

    /** Another step is worked at. */
    void left() {}

    /** Shows what the step is about. */
    abstract void show(Desk desk, MarkState state);
}
