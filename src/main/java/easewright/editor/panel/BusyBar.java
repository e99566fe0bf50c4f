package easewright.editor.panel;

import easewright.editor.file.Background;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.Map;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/** What goes on away from the window, once it takes longer than a moment, with a way to give it up. */
public final class BusyBar extends HBox {
    private static final Duration MOMENT = Duration.millis(250);

    private final Session session;
    private final Label what = new Label();
    private final Button cancel = new Button();
    private final PauseTransition moment = new PauseTransition(MOMENT);

    public BusyBar(Session session, Background background) {
        this.session = session;
        setId("busy");
        getStyleClass().addAll("notice", "busy");
        setAlignment(Pos.CENTER_LEFT);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        cancel.setId("busy-cancel");
        cancel.getStyleClass().add("small");
        seen(false);
        moment.setOnFinished(e -> seen(true));
        // From wherever the keys are: whoever waits has nothing else to leave.
        sceneProperty().addListener((o, was, is) -> {
            if (is != null) {
                is.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
            }
        });
        background.workProperty().addListener((o, before, now) -> show(now));
    }

    private void pressed(KeyEvent e) {
        if (e.getCode() == KeyCode.ESCAPE && isVisible() && cancel.isVisible()) {
            e.consume();
            cancel.fire();
        }
    }

    private void show(Optional<Background.Work> work) {
        moment.stop();
        if (work.isEmpty()) {
            seen(false);
            return;
        }
        fill();
        Words words = session.desk().words();
        Background.Work now = work.get();
        what.setText(words.of("editor.busy." + now.what(), Map.of("file", now.file())));
        cancel.setText(words.of("editor.busy.cancel"));
        Hints.on(cancel, words.of("editor.busy.cancel.hint"));
        Parts.present(cancel, now.cancel().isPresent());
        cancel.setOnAction(e -> now.cancel().ifPresent(Runnable::run));
        moment.playFromStart();
    }

    /** The sign that turns has many parts, and most starts of the program never show it. */
    private void fill() {
        if (getChildren().isEmpty()) {
            ProgressIndicator turning = new ProgressIndicator();
            turning.setPrefSize(20, 20);
            getChildren().setAll(turning, what, cancel);
        }
    }

    private void seen(boolean is) {
        Parts.present(this, is);
    }
}
