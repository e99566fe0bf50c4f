package easewright.editor.panel;

import easewright.editor.file.FileWork;
import easewright.editor.mark.Made;
import easewright.editor.mark.MarkProgress;
import easewright.editor.mark.MarkState;
import easewright.editor.mark.Marker;
import easewright.editor.model.Pointed;
import easewright.editor.model.Session;
import easewright.text.Words;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The page on which a drawing becomes a pattern, part by part. */
public final class MarksPanel extends VBox {
    private static final KeyCombination MAKE = new KeyCodeCombination(KeyCode.ENTER, KeyCombination.SHORTCUT_DOWN);

    private final Session session;
    private final Marker marker;
    private final Map<MarkState.Step, ToggleButton> tabs = new EnumMap<>(MarkState.Step.class);
    private final Button next = new Button();
    private final Map<MarkState.Step, Node> pages = new EnumMap<>(MarkState.Step.class);
    private final Label said = new Label();
    private Optional<Made> made = Optional.empty();
    /** The part that came next then: there it is said what was made. */
    private MarkState.Step madeAt = MarkState.Step.PIECES;

    /**
     * @param shower  brings a piece into sight
     * @param places  brings a place into sight
     * @param onwards what comes after marking
     */
    public MarksPanel(
            Session session,
            Marker marker,
            FileWork files,
            Consumer<String> shower,
            Consumer<Pointed> places,
            Runnable onwards) {
        this.session = session;
        this.marker = marker;
        setId("marks");
        setVisible(false);
        getStyleClass().add("marks");
        pages.put(MarkState.Step.SCALE, page(new ScaleStep(session, marker, files, this::toNext)));
        SuggestStep suggested = new SuggestStep(session, marker, shower, places, this::made);
        pages.put(MarkState.Step.SUGGESTED, page(suggested));
        pages.put(MarkState.Step.PIECES, page(new PiecesStep(session, marker, places)));
        pages.put(MarkState.Step.SEAMS, page(new SeamsStep(session, marker)));
        pages.put(MarkState.Step.LEVELS, page(new LevelsStep(session, marker)));
        HBox row = new HBox(4);
        row.getStyleClass().add("mark-steps");
        ToggleGroup group = new OneOf();
        for (MarkState.Step step : MarkState.Step.values()) {
            ToggleButton tab = new ToggleButton();
            tab.setId("step-" + step.key());
            tab.setToggleGroup(group);
            tab.getStyleClass().addAll("small", "chip");
            tab.setOnAction(e -> {
                tab.setSelected(true);
                marker.go(step);
            });
            tabs.put(step, tab);
            row.getChildren().add(tab);
        }
        Turned stack = new Turned();
        pages.values().forEach(page -> page.setVisible(false));
        stack.hold(pages.values());
        stack.setMinHeight(0);
        VBox.setVgrow(stack, Priority.ALWAYS);
        said.setId("marks-made");
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        said.getStyleClass().add("marks-made");
        getChildren().setAll(row, said, stack, foot(onwards, suggested.accept()));
        // A page that is not looked at waits until it is.
        session.deskProperty().addListener((o, before, now) -> showIfSeen());
        marker.stateProperty().addListener((o, before, now) -> showIfSeen());
        visibleProperty().addListener(o -> showIfSeen());
        show();
    }

    /** On to the next part, and after the last to what all this is for; last, what makes what is suggested. */
    private HBox foot(Runnable onwards, Button accept) {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        next.setId("mark-next");
        next.setOnAction(e -> {
            MarkState.Step[] steps = MarkState.Step.values();
            int now = marker.state().step().ordinal();
            if (now + 1 < steps.length) {
                marker.go(steps[now + 1]);
                // The next thing to press is on the new part, not at its end.
                tabs.get(steps[now + 1]).requestFocus();
            } else {
                onwards.run();
            }
        });
        // Whoever works by keys need not go through all ticks to what makes them. Enter alone turns a tick.
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (MAKE.match(e) && accept.isVisible() && !accept.isDisabled()) {
                e.consume();
                accept.fire();
            }
        });
        HBox box = new HBox(8, gap, next, accept);
        box.getStyleClass().add("mark-foot");
        return box;
    }

    /** On to the part that wants to be looked at, which says what was made. */
    private void made(Made now) {
        made = Optional.of(now);
        madeAt = MarkProgress.afterSuggestions(marker.state(), session.desk().pattern());
        marker.go(madeAt);
        show();
        toNext();
    }

    /** What was pressed is gone with what it offered: the keyboard goes to what comes next. */
    private void toNext() {
        Platform.runLater(next::requestFocus);
    }

    private static ScrollPane page(Region content) {
        ScrollPane page = new ScrollPane(content);
        BarRoom.keep(page);
        WholeLines.on(page, content);
        page.setFitToWidth(true);
        page.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        page.getStyleClass().add("sheet-page");
        return page;
    }

    private void showIfSeen() {
        if (isVisible()) {
            show();
        }
    }

    private void show() {
        Words words = session.desk().words();
        MarkState.Step now = marker.state().step();
        tabs.forEach((step, tab) -> {
            String label = words.of("editor.step." + step.key());
            int waiting = step == MarkState.Step.SUGGESTED ? marker.suggesting().waiting() : 0;
            boolean done = waiting == 0 && MarkProgress.isRight(step, marker.state(), session.desk());
            String counted =
                    waiting > 0 ? label + " " + words.of("editor.page.count", Map.of("count", waiting)) : label;
            tab.setText(done ? "\u2713 " + label : counted);
            tab.setAccessibleText(done ? words.of("editor.step.done", Map.of("step", label)) : counted);
            String hint = words.of("editor.step." + step.key() + ".hint");
            Hints.on(tab, done ? words.of("editor.step.done.hint", Map.of("hint", hint)) : hint);
            tab.setSelected(step == now);
        });
        pages.forEach((step, page) -> page.setVisible(step == now));
        Optional<String> news = made.filter(m -> now == madeAt)
                .flatMap(m -> m.words(session.desk().pattern(), words));
        said.setText(news.orElse(""));
        Parts.present(said, news.isPresent());
        MarkState.Step[] steps = MarkState.Step.values();
        boolean last = now.ordinal() + 1 == steps.length;
        boolean open = MarkProgress.isOpen(marker.state());
        String onwards = open ? "editor.marks.skip." : "editor.marks.next.";
        next.setText(words.of(last ? "editor.marks.onwards" : onwards + steps[now.ordinal() + 1].key()));
        // The one thing to press next stands out: here, or what is still open on the page.
        boolean done = now == MarkState.Step.SUGGESTED
                ? !open
                : MarkProgress.isDone(now, marker.state(), session.desk().pattern());
        next.getStyleClass().remove("accent");
        if (done) {
            next.getStyleClass().add("accent");
        }
        Hints.on(next, words.of("editor.marks.next.hint"));
    }
}
