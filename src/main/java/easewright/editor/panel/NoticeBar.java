package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.editor.model.ShortName;
import easewright.text.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.event.EventTarget;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * One line at the foot of the table for what has just happened. Stays until put away or followed by work; that something was saved is no news for long, and stands at the head of
 * the window: it goes by itself, or as soon as a hand comes to the table.
 */
public final class NoticeBar extends HBox {
    private static final PseudoClass BAD = PseudoClass.getPseudoClass("bad");

    /** The button that puts the line away, and what is blank around the text. */
    private static final double ROUND_TEXT = 70;

    /** Its lines are no longer than can be read at ease, pixels. */
    private static final double MOST = 430;

    /** Long enough for a line to be read twice. */
    private static final Duration READ = Duration.seconds(12);

    private static final Set<String> PASSING =
            Set.of("editor.said.saved", "editor.said.saved-already", "editor.said.saved-over");

    private final Session session;
    private final Runnable onwards;
    private final PauseTransition read = new PauseTransition(READ);
    private final Label text = new Label();
    private final Button away = new Button("\u00d7");
    private final Button again = new Button();
    private final Button elsewhere = new Button();
    /** What can be done where work could not be saved. */
    private final HBox ways = new HBox(8, again, elsewhere);

    private final FileWork files;
    /** What had the keys when they were given to what is said. */
    private Node before;

    /**
     * @param over    what it lies over
     * @param onwards gives the keys to something else once it is put away, if they came here by themselves
     */
    public NoticeBar(Session session, FileWork files, Region over, Runnable onwards) {
        this.onwards = onwards;
        this.files = files;
        this.session = session;
        setId("notice");
        getStyleClass().add("notice");
        setAlignment(Pos.CENTER_LEFT);
        setMaxHeight(Region.USE_PREF_SIZE);
        setMaxWidth(Region.USE_PREF_SIZE);
        over.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> goFor(e.getTarget()));
        over.addEventFilter(ScrollEvent.SCROLL, e -> goFor(e.getTarget()));
        read.setOnFinished(e -> {
            if (!isHover() && !away.isFocused()) {
                go();
            }
        });
        hoverProperty().addListener(o -> read.playFromStart());
        session.deskProperty().addListener((o, before, now) -> {
            show(now);
            if (!now.notice().equals(before.notice())) {
                read.playFromStart();
            }
        });
        show(session.desk());
    }

    /** Makes room for a hand that comes to what lies below. */
    private void goFor(EventTarget at) {
        boolean here = false;
        for (Node node = at instanceof Node n ? n : null; node != null; node = node.getParent()) {
            here |= node == this;
        }
        if (!here) {
            go();
        }
    }

    private void go() {
        if (session.desk().notice().filter(n -> PASSING.contains(n.key())).isPresent()) {
            session.hush();
        }
    }

    /** How wide it may be, pixels. */
    void widest(double pixels) {
        text.setMaxWidth(Math.min(MOST, pixels) - ROUND_TEXT);
    }

    private void show(Desk desk) {
        Parts.present(this, desk.notice().isPresent());
        if (desk.notice().isPresent()) {
            fill();
            Desk.Notice n = desk.notice().get();
            Words words = desk.words();
            text.setText(said(n, ShortName.in(n.values()), words));
            Hints.on(text, whole(n, desk));
            Parts.present(ways, n.unsaved());
            Parts.say(again, words, "editor.notice.again");
            again.setAccessibleText(again.getText() + ": " + text.getText());
            elsewhere.setText(words.of("editor.save-as.short"));
            Hints.on(elsewhere, words.of("editor.save-as.hint"));
            pseudoClassStateChanged(BAD, n.bad());
            // The line itself cannot be gone to: it is heard with its only button.
            away.setAccessibleText(text.getText() + " " + desk.words().of("editor.notice.away"));
            Hints.on(away, desk.words().of("editor.notice.away"));
        }
    }

    /** With every name whole, and the file by its place where that is known. */
    private static String whole(Desk.Notice notice, Desk desk) {
        Map<String, Object> values = new LinkedHashMap<>(notice.values());
        if (values.containsKey("path")) {
            values.put("file", values.get("path"));
        }
        return said(notice, values, desk.words());
    }

    private static String said(Desk.Notice notice, Map<String, Object> values, Words words) {
        String said = words.of(notice.key(), values);
        return notice.unsaved() ? words.of("editor.notice.unsaved", Map.of("why", said)) : said;
    }

    /** Gives the keys to what is said, from wherever they are: so it is heard. Put away, it gives them back. */
    public void takeKeys() {
        if (isVisible() && !away.isFocused()) {
            before = getScene().getFocusOwner();
            away.requestFocus();
        }
    }

    private void putAway() {
        Node back = before;
        before = null;
        session.hush();
        if (back != null && back.getScene() == getScene()) {
            back.requestFocus();
        } else {
            onwards.run();
        }
    }

    /** Its parts are made for the first notice. */
    private void fill() {
        if (getChildren().isEmpty()) {
            text.setWrapText(true);
            VBox told = new VBox(8, text, ways);
            HBox.setHgrow(told, Priority.ALWAYS);
            again.setId("notice-again");
            again.setOnAction(e -> files.saveAgain());
            elsewhere.setId("notice-save-as");
            elsewhere.setOnAction(e -> files.saveAs());
            for (Button way : List.of(again, elsewhere)) {
                way.getStyleClass().add("small");
            }
            away.getStyleClass().addAll("flat", "small");
            away.setOnAction(e -> putAway());
            away.setOnKeyPressed(e -> {
                if (e.getCode() == KeyCode.ESCAPE) {
                    e.consume();
                    putAway();
                }
            });
            getChildren().setAll(told, away);
        }
    }
}
