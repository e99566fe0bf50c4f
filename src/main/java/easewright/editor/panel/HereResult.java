package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Effect;
import easewright.editor.model.HereWords;
import easewright.editor.model.Partners;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;

/**
 * What comes of the amount. It stands below it, and is as high from the start as what mostly comes to be said, so that
 * the amount and its steps keep their place under the hand.
 */
final class HereResult extends MeasuredBox {
    private static final PseudoClass INVITING = PseudoClass.getPseudoClass("inviting");

    /** Two lines of what it becomes, and three of what moves and what stays; pixels. */
    private static final double KEPT = 112;

    private final Session session;
    private final AmountRow amount;
    private final WhereView where;
    private final FollowUpView followUp;
    private final Label outcome = new WrappedLabel("");
    private final EffectView effect;
    private final RefusalView refusal;
    private final PromiseView promise = new PromiseView();
    private boolean promises;
    private boolean keeps;
    private boolean told;
    private boolean invites;

    /**
     * @param amount   of which it is told what is wrong with it
     * @param where    what is asked in place of all this
     * @param followUp what earlier changes ask for
     * @param changer  alters the wish
     */
    HereResult(
            Session session,
            AmountRow amount,
            WhereView where,
            FollowUpView followUp,
            Consumer<UnaryOperator<Wanted>> changer) {
        super(5);
        this.session = session;
        this.amount = amount;
        this.where = where;
        this.followUp = followUp;
        effect = new EffectView(
                () -> changer.accept(w -> w.withEven(true)), edges -> changer.accept(w -> Partners.taking(w, edges)));
        refusal = new RefusalView(changer);
        outcome.setId("outcome");
        outcome.getStyleClass().add("outcome");
        outcome.setMinHeight(USE_PREF_SIZE);
        promise.setId("here-promise");
        // What comes between takes the room that is kept.
        List.of(followUp, refusal).forEach(each -> each.visibleProperty().addListener(o -> tell()));
        getChildren().setAll(outcome, amount.wrong(), amount.doubt(), refusal, where, followUp, effect, promise);
    }

    /**
     * @param unsettled what has to be settled before anything can be kept, in words; empty for nothing
     * @param nothing   whether nothing is tried
     * @param row       whether there is to be no more than a line above the row of the amount
     * @param room      whether it keeps room for what is to come
     */
    void show(Desk desk, String unsettled, boolean nothing, boolean row, boolean room) {
        String kept = session.kept().map(k -> k.words(desk)).orElse("");
        // One instruction at a time: while a place is asked for, the one that stands at the table.
        String said = session.picking()
                .askProperty()
                .get()
                .map(ask -> CuttingTableWords.asked(desk, ask))
                .orElseGet(() -> kept.isEmpty() ? HereWords.outcome(desk) : kept);
        boolean unsure = !unsettled.isEmpty();
        outcome.pseudoClassStateChanged(INVITING, unsure || nothing && kept.isEmpty());
        amount.heard(desk, unsure ? unsettled : said, !kept.isEmpty());
        effect.show(Effect.of(desk), desk);
        refused(desk);
        boolean aside = row || where.isOpen();
        boolean brief = aside && kept.isEmpty() && !session.picking().isAsking();
        outcome.setText(unsure ? unsettled : brief ? HereWords.brief(desk).orElse(said) : said);
        if (aside) {
            Parts.present(effect, false);
        }
        followUp.makeRoom(aside);
        // In a row what is wrong stands alone above it, and nothing is invited to.
        boolean tells = !nothing || !kept.isEmpty() || unsure;
        told = tells && !(row && unsure);
        invites = !tells && !aside;
        keeps = room && !aside;
        promises = keeps && !tells;
        if (promises) {
            promise.say(desk.words());
        }
        tell();
    }

    /** Something is asked about what was typed: nothing is invited to beside it. */
    void tell() {
        boolean invited = invites && !amount.doubt().isVisible();
        Parts.present(outcome, !outcome.getText().isEmpty() && (told || invited));
        boolean asked = List.of(amount.wrong(), amount.doubt(), refusal, followUp).stream()
                .anyMatch(Node::isVisible);
        Parts.present(promise, promises && !asked);
    }

    /** Whether there is anything to be seen of it. */
    boolean isTelling() {
        return getChildren().stream().anyMatch(Node::isVisible);
    }

    void refused(Desk desk) {
        refusal.show(desk, amount.isBeingTyped());
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.max(keeps ? KEPT : 0, super.computePrefHeight(width));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }
}
