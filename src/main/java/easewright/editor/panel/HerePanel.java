package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Effect;
import easewright.editor.model.HereWords;
import easewright.editor.model.Partners;
import easewright.editor.model.Session;
import easewright.editor.model.TrueBench;
import easewright.editor.model.Wanted;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The one place to say "this much, here": level, amount, way; tried at once, done on request. */
public final class HerePanel extends VBox {
    private static final PseudoClass INVITING = PseudoClass.getPseudoClass("inviting");

    /** Of what comes and goes, pixels. */
    private static final double LEAST_ROOM = 72;

    private final Session session;
    private final CuttingTable table;
    private final HereHead head = new HereHead(this::ask, this::refold);
    private final WayChoice way = new WayChoice(this::change);
    private final AlsoInChoice alsoIn = new AlsoInChoice(this::change);
    private final AmountRow amount;
    private final Label wayTitle = new Label();
    private final Label outcome = new WrappedLabel("");
    private final EffectView effect =
            new EffectView(() -> change(w -> w.withEven(true)), edges -> change(w -> Partners.taking(w, edges)));
    private final SeamSettings seams = new SeamSettings(this::change);
    private final SideChoice sides = new SideChoice(this::change);
    /** Short choices, on one line where they find room. */
    private final FlowPane choices = new FlowPane(12, 8, seams.taper(), sides);

    private final WayFormView form;
    private final WhereView where;
    private final FollowUpView followUp;
    private final RefusalView refusal = new RefusalView(this::change);
    private final Button keep = new Button();
    private final Button leave = new Button();
    /** All that comes and goes: it stands above the amount, which so keeps its place, and scrolls where there is no room. */
    private final VBox said = new VBox(5);

    private final HBox how = new HBox(8, wayTitle, way);
    private LengthUnit told;
    private boolean showing;
    private boolean waits;
    private boolean folds;
    private final HereHeight height = new HereHeight();
    private final MeasuredOnce content = new MeasuredOnce();
    private final MeasuredOnce least = new MeasuredOnce();

    /**
     * @param table  where an amount may be begun as well
     * @param leader leads to the page on which sewn pieces are made to fit
     */
    public HerePanel(Session session, CuttingTable table, TrueBench bench, Runnable leader) {
        this.session = session;
        this.table = table;
        this.followUp = new FollowUpView(session, bench, leader);
        this.form = new WayFormView(session, this::change);
        this.where = new WhereView(session, this::toAmount);
        setId("here");
        getStyleClass().add("here");
        amount = new AmountRow(session, this::change, () -> refused(session.desk()));
        addEventHandler(CheckedField.JUDGED, e -> judged());
        table.onAmount(amount::begin);
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE && where.isOpen()) {
                e.consume();
                where.open(false);
                head.toQuestion();
            } else if (e.getCode() == KeyCode.ESCAPE) {
                session.leave();
            }
        });
        keep.setId("keep");
        keep.getStyleClass().add("accent");
        keep.setOnAction(e -> done(session::keep));
        leave.setId("leave");
        leave.setOnAction(e -> done(session::leave));
        where.visibleProperty().addListener((o, was, is) -> {
            head.asked(is);
            // What stands aside for the question comes back when it goes, also when an answer set up what was there
            // before.
            show(session.desk());
            requestLayout();
        });
        outcome.setId("outcome");
        outcome.getStyleClass().add("outcome");
        lay();
        session.deskProperty().addListener((o, before, now) -> show(now));
        session.picking().askProperty().addListener(o -> show(session.desk()));
        show(session.desk());
    }

    private void lay() {
        how.setAlignment(Pos.CENTER_LEFT);
        wayTitle.setMinWidth(SeamSettings.LEAD);
        HBox.setHgrow(way, Priority.ALWAYS);
        said.getChildren().setAll(outcome, where, followUp, effect, how, seams, form, choices);
        outcome.setMinHeight(USE_PREF_SIZE);
        how.setMinHeight(USE_PREF_SIZE);
        // What comes and goes above them moves no setting that is pressed.
        said.setAlignment(Pos.BOTTOM_LEFT);
        ScrollPane room = new FittedScroll(said, LEAST_ROOM);
        room.getStyleClass().add("here-settings");
        VBox.setVgrow(room, Priority.ALWAYS);
        // Its bar stands in the margin.
        VBox.setMargin(room, new Insets(0, -FittedScroll.GUTTER, 0, 0));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox done = new HBox(8, gap, leave, keep);
        VBox.setMargin(amount, new Insets(4, 0, 0, 0));
        VBox.setMargin(done, new Insets(3, 0, 0, 0));
        getChildren().setAll(head, alsoIn, room, amount.wrong(), amount.doubt(), refusal, amount, done);
        for (Region always : List.of(head, alsoIn, amount.wrong(), amount.doubt(), refusal, amount, done)) {
            always.setMinHeight(USE_PREF_SIZE);
        }
    }

    private void ask(boolean open) {
        where.open(open);
        if (open) {
            where.takeKeys();
        }
    }

    /** Makes room for a page that is read. */
    void fold(boolean small) {
        folds = small;
        head.mayFold(!small);
        refold();
    }

    /** Where the page above says which seams no longer fit, this does not. */
    void leaveSeamsTo(boolean page) {
        followUp.stand(page);
    }

    private void refold() {
        requestLayout();
        show(session.desk());
    }

    /**
     * Takes its share of the height.
     *
     * @param height of the sheet, pixels
     * @param page   what the page above and its tabs want of it at least
     */
    void share(double height, double page) {
        this.height.share(height, page);
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return height.of(content.at(width, super::computePrefHeight));
    }

    @Override
    protected double computeMinHeight(double width) {
        return least.at(width, super::computeMinHeight);
    }

    @Override
    public void requestLayout() {
        // Called before it has any fields as well.
        if (content != null) {
            content.forget();
            least.forget();
        }
        super.requestLayout();
    }

    /** After it there is nothing more to keep or to leave: the keyboard goes to the next amount. */
    private void done(Runnable act) {
        act.run();
        toAmount();
    }

    void toAmount() {
        amount.focus();
    }

    private void change(UnaryOperator<Wanted> step) {
        if (!showing) {
            session.desk().wanted().ifPresent(w -> session.want(step.apply(w)));
            if (isMisread()) {
                session.untry();
            }
        }
    }

    /** While something that stands here is not understood there is nothing to keep; then it is tried again. */
    private void judged() {
        if (showing) {
            return;
        }
        if (isMisread()) {
            session.untry();
            show(session.desk());
        } else if (isUntried(session.desk()) && !anyField(f -> !f.getText().equals(f.shown()))) {
            change(w -> w);
        } else if (waits != isWaiting()) {
            show(session.desk());
        }
    }

    private static boolean isUntried(Desk desk) {
        return desk.trial().isEmpty()
                && desk.wanted().filter(w -> w.amount() != 0).isPresent();
    }

    private boolean anyField(Predicate<CheckedField> which) {
        return CheckedField.anyWithin(amount, which) || CheckedField.anyWithin(said, which);
    }

    private boolean isMisread() {
        return anyField(CheckedField::isWrong);
    }

    private boolean isWaiting() {
        return anyField(CheckedField::isWaiting);
    }

    private void show(Desk desk) {
        showing = true;
        waits = isWaiting();
        amount.show(desk);
        Parts.present(this, desk.wanted().isPresent());
        desk.wanted().ifPresent(w -> show(desk, w, desk.words()));
        showing = false;
    }

    private void show(Desk desk, Wanted wanted, Words words) {
        if (words.unit() != told) {
            told = words.unit();
            words(words);
        }
        head.title(HereWords.title(desk));
        alsoIn.show(desk, wanted);
        way.show(desk, wanted);
        boolean misread = isMisread();
        String kept = session.kept().map(k -> k.words(desk)).orElse("");
        // One instruction at a time: while a place is asked for, the one that stands at the table.
        String said = session.picking()
                .askProperty()
                .get()
                .map(ask -> CuttingTableWords.asked(desk, ask))
                .orElseGet(() -> kept.isEmpty() ? HereWords.outcome(desk) : kept);
        outcome.setText(misread ? words.of("editor.here.misread") : waits ? words.of("editor.here.waiting") : said);
        boolean nothing = wanted.amount() == 0 && desk.trial().isEmpty();
        outcome.pseudoClassStateChanged(INVITING, misread || waits || nothing && kept.isEmpty());
        effect.show(Effect.of(desk), desk);
        amount.heard(desk, outcome.getText(), !kept.isEmpty());
        boolean small = wanted.atSeams() && (head.isFolded() || folds && wanted.amount() == 0);
        boolean set = !small && !where.isOpen();
        Parts.present(how, set);
        Parts.present(seams, set && wanted.atSeams());
        Parts.present(seams.taper(), set && wanted.atSeams());
        if (wanted.atSeams()) {
            seams.show(desk, wanted);
        }
        form.show(desk);
        if (where.isOpen()) {
            Parts.present(form, false);
        }
        sides.show(wanted);
        Parts.present(sides, set && wanted.maySided());
        Parts.present(choices, sides.isManaged() || seams.taper().isManaged());
        refused(desk);
        height.pulled(table.isPulling());
        Parts.present(
                outcome,
                !outcome.getText().isEmpty() && (misread || waits || !nothing || !kept.isEmpty() || !where.isOpen()));
        keep.setDisable(misread || waits || desk.shownTrial().isEmpty());
        leave.setDisable(nothing);
    }

    private void refused(Desk desk) {
        refusal.show(desk, amount.isBeingTyped());
    }

    private void words(Words words) {
        sides.words(words);
        wayTitle.setText(words.of("editor.way.title"));
        head.words(words);
        keep.setText(words.of("editor.here.keep"));
        Hints.on(keep, words.of("editor.here.keep.hint"));
        leave.setText(words.of("editor.here.leave"));
        Hints.on(leave, words.of("editor.here.leave.hint"));
    }
}
