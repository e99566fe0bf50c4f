package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.HereWords;
import easewright.editor.model.Session;
import easewright.editor.model.TrueBench;
import easewright.editor.model.Wanted;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The one place to say "this much, here". Level and amount come first, then what comes of them, tried at once, then how it
 * is made; what is done with it stands at the foot. Beside a page that is read it is folded to one row.
 */
public final class HerePanel extends BorderPane {
    /** Between its parts, and of what is scrolled in it at least; pixels. */
    private static final double GAP = 5;

    /** Between what comes of the amount, how it is made and what is done with it; pixels. */
    private static final double APART = 10;

    private static final double LEAST_ROOM = 72;

    private final Session session;
    private final CuttingTable table;
    private final HereHead head = new HereHead(this::ask, this::refold);
    private final AlsoInChoice alsoIn = new AlsoInChoice(this::change);
    private final AmountRow amount;
    private final WhereView where;
    private final FollowUpView followUp;
    private final HereResult result;
    private final HereSettings settings;
    private final HereDone done;
    private final VBox above = new VBox(GAP);
    private final HBox foot = new HBox();
    private ScrollPane room;
    private LengthUnit told;
    private boolean showing;
    private boolean waits;
    private boolean small;
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
        this.settings = new HereSettings(session, this::change, this::refold);
        this.where = new WhereView(session, this::toAmount);
        setId("here");
        getStyleClass().add("here");
        amount = new AmountRow(session, this::change, this::corrected);
        result = new HereResult(session, amount, where, followUp, this::change);
        addEventHandler(CheckedField.JUDGED, e -> judged());
        // Both come after what the amount itself changes.
        List.of(amount.wrong(), amount.doubt())
                .forEach(each -> each.visibleProperty().addListener(o -> {
                    result.tell();
                    makeRoom();
                }));
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
        // After it there is nothing more to keep or to leave: the keyboard goes to the next amount.
        done = new HereDone(session, act -> {
            act.run();
            toAmount();
        });
        where.visibleProperty().addListener((o, was, is) -> {
            head.asked(is);
            done.stand(!is);
            // What stands aside for the question comes back when it goes, also when an answer set up what was there
            // before.
            refold();
        });
        lay();
        session.deskProperty().addListener((o, before, now) -> show(now));
        session.picking().askProperty().addListener(o -> show(session.desk()));
        show(session.desk());
    }

    private void lay() {
        VBox said = new VBox(APART, result, settings);
        VBox.setVgrow(result, Priority.ALWAYS);
        room = new FittedScroll(said, LEAST_ROOM);
        room.getStyleClass().add("here-room");
        // Its bar stands in the margin.
        BorderPane.setMargin(room, new Insets(GAP + 2, -FittedScroll.GUTTER, 0, 0));
        foot.setAlignment(Pos.CENTER_RIGHT);
        HBox.setHgrow(amount, Priority.ALWAYS);
        // The Tab key goes through it as it is seen, and comes last to what is done with it.
        setTop(above);
        setCenter(room);
        setBottom(foot);
        for (Region always : List.of(above, head, alsoIn, amount, foot, done)) {
            always.setMinHeight(USE_PREF_SIZE);
        }
        lay(false);
    }

    /** All of it, or its one row: there what is done with the amount stands beside it. */
    private void lay(boolean row) {
        Node keys = getScene() == null ? null : getScene().getFocusOwner();
        small = row;
        above.getChildren().remove(amount);
        foot.getChildren().clear();
        amount.alone(!row, done);
        if (row) {
            above.getChildren().setAll(head);
            foot.getChildren().setAll(amount);
        } else {
            above.getChildren().setAll(head, alsoIn, amount);
            foot.getChildren().setAll(done);
        }
        BorderPane.setMargin(foot, new Insets(row ? GAP : APART, 0, 0, 0));
        height.letGo();
        // What is put elsewhere keeps the keys.
        if (keys != null && (isWithin(keys, amount) || isWithin(keys, done))) {
            keys.requestFocus();
        }
    }

    private static boolean isWithin(Node part, Node whole) {
        return part != null && (part == whole || isWithin(part.getParent(), whole));
    }

    private void ask(boolean open) {
        where.open(open);
        if (open) {
            where.takeKeys();
        }
    }

    /** Makes room for a page that is read. */
    void fold(boolean beside) {
        head.beside(beside);
        refold();
    }

    /** Where the page above says which seams no longer fit, this does not. */
    void leaveSeamsTo(boolean page) {
        followUp.stand(page);
    }

    private void refold() {
        height.letGo();
        show(session.desk());
        requestLayout();
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
        return height.of(content.at(width, w -> super.computePrefHeight(inside(w))));
    }

    @Override
    protected double computeMinHeight(double width) {
        return least.at(width, w -> super.computeMinHeight(inside(w)));
    }

    /** The toolkit measures what lies in a pane with borders as if these took no room. */
    private double inside(double width) {
        return width < 0 ? width : Math.max(0, width - snappedLeftInset() - snappedRightInset());
    }

    @Override
    public void requestLayout() {
        MeasuredOnce.forget(content, least);
        super.requestLayout();
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        MeasuredOnce.forget(content, least);
    }

    /** Puts all its fields into the window. */
    void fill() {
        settings.fill();
    }

    void toAmount() {
        amount.focus();
    }

    /** To what is done with what is tried. */
    void toDecision() {
        done.takeKeys();
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
        return CheckedField.anyWithin(amount, which) || CheckedField.anyWithin(settings, which);
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
        boolean unfolded = settings.isUnfolded();
        settings.follow(desk, wanted);
        if (unfolded != settings.isUnfolded()) {
            height.letGo();
        }
        boolean held = settings.isLed() || where.isOpen();
        boolean row = head.isFolded() && !held;
        if (row != small) {
            lay(row);
        }
        head.title(HereWords.title(desk));
        head.show(row, held);
        alsoIn.show(desk, wanted);
        boolean nothing = wanted.amount() == 0 && desk.trial().isEmpty();
        String unsettled = isMisread() ? words.of("editor.here.misread") : waits ? words.of("editor.here.waiting") : "";
        settings.show(desk, wanted);
        Parts.present(settings, !row && !where.isOpen());
        result.show(desk, unsettled, nothing, row, !settings.isUnfolded());
        makeRoom();
        height.held(table.isPulling() || !nothing);
        done.show(desk, !unsettled.isEmpty(), nothing);
    }

    /** Of another amount that is being typed nothing is known yet. */
    private void corrected() {
        result.refused(session.desk());
        makeRoom();
    }

    /** In a row only for what there is to be told. */
    private void makeRoom() {
        Parts.present(room, !small || result.isTelling());
    }

    private void words(Words words) {
        settings.words(words);
        head.words(words);
        done.words(words);
    }
}
