package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Doubt;
import easewright.editor.model.Effect;
import easewright.editor.model.HereWords;
import easewright.editor.model.Session;
import easewright.editor.model.Trial;
import easewright.editor.model.TrueBench;
import easewright.editor.model.Wanted;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The one place to say "this much, here": level, amount, way; tried at once, done on request. */
public final class HerePanel extends VBox {
    private static final PseudoClass INVITING = PseudoClass.getPseudoClass("inviting");

    /** Its share of the sheet's height, and pixels: at most, beside a page that is read, and of what comes and goes. */
    private static final double SHARE = 0.55;

    private static final double MOST = 460;
    private static final double FOLDED = 252;
    private static final double LEAST_ROOM = 72;

    private final Session session;
    private final Label title = new Label();
    private final WayChoice way = new WayChoice(this::change);
    private final ComboBox<String> level = new ComboBox<>();
    private final LengthField amount;
    private final Button less = new Button("\u2212");
    private final Button more = new Button("+");
    private final DoubtView doubt = new DoubtView(mm -> change(w -> w.withAmount(mm)));
    private final Label wayTitle = new Label();
    private final Label outcome = new Label();
    private final EffectView effect = new EffectView(() -> change(w -> w.withEven(true)));
    private final SeamSettings seams = new SeamSettings(this::change);
    private final SideChoice sides = new SideChoice(this::change);
    private final WayFormView form;
    private final WhereView where;
    private final FollowUpView followUp;
    private final ToggleButton ask = new ToggleButton();
    private final Label refusal = new Label();
    private final Button largest = new Button();
    private final Button openUp = new Button();
    private final Button keep = new Button();
    private final Button leave = new Button();
    /** All that comes and goes: it scrolls in a room of its own, so that what lies around it keeps its place. */
    private final VBox said = new VBox(8);

    private final HBox how = new HBox(8, wayTitle, way);
    private LengthUnit told;
    private boolean showing;
    private boolean folds;
    private double sheet;
    /** A question is about to be asked about what stands in the field, which stays there. */
    private boolean asking;

    /**
     * @param table  where an amount may be begun as well
     * @param leader leads to the page on which sewn pieces are made to fit
     */
    public HerePanel(Session session, CuttingTable table, TrueBench bench, Runnable leader) {
        this.session = session;
        this.followUp = new FollowUpView(session, bench, leader);
        this.form = new WayFormView(session);
        this.where = new WhereView(session);
        setId("here");
        getStyleClass().add("here");
        Label wrong = new Label();
        amount = new LengthField(wrong, mm -> typed(mm.orElse(0)));
        amount.setId("amount");
        amount.setPrefWidth(132);
        amount.onEnteredAgain(session::keep);
        table.onAmount(this::begin);
        amount.textProperty().addListener(o -> corrected());
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE && where.isOpen()) {
                e.consume();
                where.open(false);
                ask.requestFocus();
            } else if (e.getCode() == KeyCode.ESCAPE) {
                session.leave();
            }
        });
        level.setId("here-level");
        level.setPrefWidth(164);
        level.setOnAction(e -> {
            if (!showing && level.getValue() != null) {
                session.chooseLevel(level.getValue());
            }
        });
        less.setId("less");
        more.setId("more");
        less.setOnAction(e -> step(-1));
        more.setOnAction(e -> step(1));
        less.getStyleClass().add("step");
        more.getStyleClass().add("step");
        keep.setId("keep");
        keep.getStyleClass().add("accent");
        keep.setOnAction(e -> done(session::keep));
        leave.setId("leave");
        leave.setOnAction(e -> done(session::leave));
        largest.setId("largest");
        largest.getStyleClass().add("small");
        openUp.setId("open-up");
        openUp.getStyleClass().add("small");
        openUp.setOnAction(e -> change(w -> w.withOpenUp(true)));
        ask.setId("ask-where");
        ask.getStyleClass().addAll("small", "chip");
        ask.setOnAction(e -> where.open(ask.isSelected()));
        where.visibleProperty().addListener((o, was, is) -> {
            ask.setSelected(is);
            // What stands aside for the question comes back when it goes, also when an answer set up what was there
            // before.
            show(session.desk());
            requestLayout();
        });
        title.getStyleClass().add("section-title");
        outcome.setId("outcome");
        outcome.getStyleClass().add("outcome");
        outcome.setWrapText(true);
        refusal.setWrapText(true);
        refusal.setId("refusal");
        refusal.getStyleClass().add("complaint");
        lay(wrong);
        session.deskProperty().addListener((o, before, now) -> show(now));
        show(session.desk());
    }

    private void lay(Label wrong) {
        title.setMinWidth(USE_PREF_SIZE);
        ask.setMinWidth(USE_PREF_SIZE);
        HBox head = new HBox(8, title, ask);
        head.setAlignment(Pos.CENTER_LEFT);
        HBox what = new HBox(6, level, amount, less, more);
        what.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(amount, Priority.ALWAYS);
        how.setAlignment(Pos.CENTER_LEFT);
        wayTitle.setMinWidth(USE_PREF_SIZE);
        HBox.setHgrow(way, Priority.ALWAYS);
        HBox ways = new HBox(6, largest, openUp);
        said.getChildren()
                .setAll(wrong, doubt, refusal, ways, outcome, where, followUp, effect, how, seams, form, sides);
        for (Region always : List.of(wrong, doubt, refusal, ways, outcome, how)) {
            always.setMinHeight(USE_PREF_SIZE);
        }
        ways.managedProperty().bind(largest.managedProperty().or(openUp.managedProperty()));
        ways.visibleProperty().bind(ways.managedProperty());
        ScrollPane room = new FittedScroll(said);
        room.getStyleClass().add("here-settings");
        room.setMinHeight(LEAST_ROOM);
        VBox.setVgrow(room, Priority.ALWAYS);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox done = new HBox(8, gap, leave, keep);
        getChildren().setAll(head, what, room, done);
        for (Region always : List.of(head, what, done)) {
            always.setMinHeight(USE_PREF_SIZE);
        }
    }

    /** Tries what was typed, or asks first where it is hardly meant. */
    private void typed(double mm) {
        Optional<Doubt> asked = showing ? Optional.empty() : Doubt.of(session.desk(), mm);
        asking = asked.isPresent();
        change(w -> w.withAmount(asked.isPresent() ? 0 : mm));
        asking = false;
        doubt.show(asked, session.desk().words());
    }

    private boolean isBeingTyped() {
        return !amount.getText().equals(amount.shown());
    }

    /** What was asked or refused of the amount that stood there is not said of the one being typed. */
    private void corrected() {
        if (showing) {
            return;
        }
        if (doubt.isVisible() && isBeingTyped()) {
            doubt.show(Optional.empty(), session.desk().words());
            amount.hold("");
        }
        session.desk()
                .wanted()
                .ifPresent(w -> refused(session.desk(), w, session.desk().words()));
    }

    /** Makes room for a page that is read. How high it is depends on nothing that is tried: the amount keeps its place. */
    void fold(boolean small) {
        folds = small;
        requestLayout();
        show(session.desk());
    }

    /**
     * Takes its share of the height.
     *
     * @param height of the sheet, pixels
     */
    void share(double height) {
        sheet = height;
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return folds && !where.isOpen() ? FOLDED : Math.max(FOLDED, Math.min(MOST, SHARE * sheet));
    }

    /** After it there is nothing more to keep or to leave: the keyboard goes to the next amount. */
    private void done(Runnable act) {
        act.run();
        toAmount();
    }

    void toAmount() {
        amount.requestFocus();
    }

    /** An amount is begun elsewhere, and goes on in its field. */
    private void begin(String typed) {
        amount.requestFocus();
        amount.setText(typed);
        amount.end();
    }

    private void change(UnaryOperator<Wanted> step) {
        if (!showing) {
            session.desk().wanted().ifPresent(w -> session.want(step.apply(w)));
        }
    }

    private void step(int sign) {
        double by = session.desk().unit() == LengthUnit.INCH ? 25.4 / 8 : 5;
        change(w -> {
            double next = w.amount() + sign * by;
            return w.withAmount(Math.abs(next) < 1e-9 ? 0 : next);
        });
    }

    private void show(Desk desk) {
        showing = true;
        List<String> names = desk.pattern().levels().stream().map(Level::name).toList();
        if (!level.getItems().equals(names)) {
            level.getItems().setAll(names);
        }
        level.setValue(desk.wanted().map(Wanted::level).orElse(null));
        visible(this, desk.wanted().isPresent());
        if (!asking) {
            doubt.show(Optional.empty(), desk.words());
        }
        desk.wanted().ifPresent(w -> show(desk, w, desk.words()));
        showing = false;
    }

    private void show(Desk desk, Wanted wanted, Words words) {
        if (words.unit() != told) {
            told = words.unit();
            words(words);
        }
        way.show(desk, wanted);
        if (!asking) {
            amount.show(wanted.amount() == 0 ? "" : words.signed(wanted.amount()), desk.unit());
        }
        amount.setPromptText(words.of(
                desk.unit() == LengthUnit.INCH ? "editor.here.amount.prompt.inch" : "editor.here.amount.prompt"));
        outcome.setText(HereWords.outcome(desk));
        outcome.pseudoClassStateChanged(INVITING, wanted.amount() == 0);
        effect.show(Effect.of(desk), words);
        heard(desk, words);
        boolean small = folds && wanted.amount() == 0 && wanted.atSeams();
        boolean set = !small && !where.isOpen();
        visible(how, set);
        visible(seams, set && wanted.atSeams());
        if (wanted.atSeams()) {
            seams.show(desk, wanted);
        }
        form.show(desk);
        sides.show(wanted);
        visible(sides, set && wanted.maySided());
        refused(desk, wanted, words);
        visible(outcome, !outcome.getText().isEmpty() && (wanted.amount() != 0 || !where.isOpen()));
        keep.setDisable(desk.shownTrial().isEmpty());
        leave.setDisable(wanted.amount() == 0);
    }

    /** What comes of the amount cannot be gone to: it is heard with the field, and what to do with it there. */
    private void heard(Desk desk, Words words) {
        if (!amount.isWrong()) {
            String hint = words.of("editor.here.amount.hint");
            String refused = desk.refusedTrial()
                    .map(Trial.Refused::refusal)
                    .map(r -> words.problem(r.code(), r.values()))
                    .orElse("");
            String came = refused.isEmpty() ? outcome.getText() : refused;
            Hints.help(amount, desk.wanted().filter(w -> w.amount() != 0).isPresent() ? came : hint);
        }
    }

    private void refused(Desk desk, Wanted wanted, Words words) {
        var refused = desk.refusedTrial().map(Trial.Refused::refusal);
        refusal.setText(refused.map(r -> words.problem(r.code(), r.values())).orElse(""));
        visible(refusal, refused.isPresent() && !isBeingTyped());
        visible(
                openUp,
                refusal.isVisible()
                        && refused.filter(r -> r.code().equals("edge-protected"))
                                .isPresent()
                        && !wanted.openUp());
        var reach = desk.refusedTrial().map(Trial.Refused::largest).filter(l -> l.isPresent() && l.getAsDouble() != 0);
        visible(largest, refusal.isVisible() && reach.isPresent());
        reach.ifPresent(l -> {
            largest.setText(words.of("editor.here.largest", Map.of("amount.signed", l.getAsDouble())));
            Hints.on(largest, words.of("editor.here.largest.hint"));
            largest.setOnAction(e -> change(w -> w.withAmount(l.getAsDouble())));
        });
    }

    private void words(Words words) {
        title.setText(words.of("editor.here.title"));
        sides.words(words);
        wayTitle.setText(words.of("editor.way.title"));
        ask.setText(words.of("editor.where"));
        Hints.on(ask, words.of("editor.where.hint"));
        Heard.name(level, words.of("editor.here.level"));
        Hints.on(level, words.of("editor.here.level.hint"));
        amount.describe(words.of("editor.here.amount"), words.of("editor.here.amount.hint"));
        Hints.name(less, words.of("editor.here.less"));
        Hints.name(more, words.of("editor.here.more"));
        keep.setText(words.of("editor.here.keep"));
        Hints.on(keep, words.of("editor.here.keep.hint"));
        leave.setText(words.of("editor.here.leave"));
        Hints.on(leave, words.of("editor.here.leave.hint"));
        openUp.setText(words.of("editor.here.open-up"));
        Hints.on(openUp, words.of("editor.here.open-up.hint"));
    }

    private static void visible(Region node, boolean is) {
        node.setVisible(is);
        node.setManaged(is);
    }
}
