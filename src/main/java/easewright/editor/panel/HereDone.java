package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;

/** What is done with what is tried: it is taken back, or kept. */
final class HereDone extends HBox {
    /** A button that is filled: one at a time. */
    private static final String ACCENT = "accent";

    private final Button keep = new Button();
    private final Button leave = new Button();

    /**
     * @param doer does what is pressed, and whatever follows it
     */
    HereDone(Session session, Consumer<Runnable> doer) {
        super(6);
        keep.setId("keep");
        keep.setOnAction(e -> doer.accept(session::keep));
        leave.setId("leave");
        leave.setOnAction(e -> doer.accept(session::leave));
        for (Button each : new Button[] {leave, keep}) {
            each.setMinWidth(USE_PREF_SIZE);
            getChildren().add(each);
        }
        setMinWidth(USE_PREF_SIZE);
        stand(true);
    }

    /** Whether what is tried is the next thing to decide, or something that is asked beside it. */
    void stand(boolean first) {
        keep.getStyleClass().remove(ACCENT);
        if (first) {
            keep.getStyleClass().add(ACCENT);
        }
    }

    /**
     * @param unsure whether something that was typed is not understood or not settled
     */
    void show(Desk desk, boolean unsure, boolean nothing) {
        keep.setDisable(unsure || desk.shownTrial().isEmpty());
        leave.setDisable(nothing);
    }

    /** To what is most likely done next. */
    void takeKeys() {
        (keep.isDisabled() ? leave : keep).requestFocus();
    }

    void words(Words words) {
        Parts.say(keep, words, "editor.here.keep");
        Parts.say(leave, words, "editor.here.leave");
    }
}
