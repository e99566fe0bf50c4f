package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.model.Doubt;
import easewright.editor.model.HereWords;
import easewright.editor.model.RoundAmounts;
import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** How much, and at which level: typed, or step by step. What is hardly meant is asked about first. */
final class AmountRow extends HBox {
    /** How wide the list of levels is, and how wide where there is little room; pixels. */
    private static final double LEVEL = 140;

    private static final double NARROW = 112;

    private final Session session;
    private final Consumer<UnaryOperator<Wanted>> changer;
    private final Runnable corrector;
    private final ComboBox<String> level = new ComboBox<>();
    private final Label wrong = new Label();
    private final LengthField amount = new LengthField(wrong, mm -> typed(mm.orElse(0)));
    private final Button less = new Button("\u2212");
    private final Button more = new Button("+");
    private final DoubtView doubt;
    private LengthUnit told;
    /** The amount that was shown last, mm. */
    private double stood;
    /** The level and the size at which it was. */
    private List<Optional<String>> stoodAt = List.of();

    private boolean alone = true;
    private boolean showing;
    /** A question is about to be asked about what stands in the field, which stays there. */
    private boolean asking;

    /**
     * @param changer   alters the wish
     * @param corrector told while another amount is being typed
     */
    AmountRow(Session session, Consumer<UnaryOperator<Wanted>> changer, Runnable corrector) {
        super(6);
        this.session = session;
        this.changer = changer;
        this.corrector = corrector;
        doubt = new DoubtView(mm -> {
            changer.accept(w -> w.withAmount(mm));
            focus();
        });
        level.setId("here-level");
        level.setPrefWidth(LEVEL);
        level.setMinWidth(USE_PREF_SIZE);
        level.setOnAction(e -> {
            if (!showing && level.getValue() != null) {
                session.chooseLevel(level.getValue());
            }
        });
        amount.setId("amount");
        amount.setPrefWidth(112);
        amount.takeParts(this::bodyHere, true);
        amount.onEnteredAgain(this::entered);
        amount.textProperty().addListener(o -> corrected());
        less.setId("less");
        more.setId("more");
        less.setOnAction(e -> step(-1));
        more.setOnAction(e -> step(1));
        less.getStyleClass().add("step");
        more.getStyleClass().add("step");
        setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(amount, Priority.ALWAYS);
        getChildren().setAll(level, amount, less, more);
    }

    /** What another page brings to be tried has no amount here, and is kept by Enter all the same. */
    private void entered() {
        if (!amount.getText().isBlank() || session.desk().shownTrial().isPresent()) {
            session.keep();
        }
    }

    /** What is wrong with the text in the field. */
    Label wrong() {
        return wrong;
    }

    /** The question about an amount that is hardly meant. */
    DoubtView doubt() {
        return doubt;
    }

    /**
     * Alone in its row, or with what is done with the amount at the end of it: then the steps stand aside.
     *
     * @param done what is done with it
     */
    void alone(boolean is, Node done) {
        alone = is;
        Parts.present(less, is);
        Parts.present(more, is);
        level.setPrefWidth(is ? LEVEL : NARROW);
        prompt(session.desk());
        getChildren().remove(done);
        if (!is) {
            getChildren().add(done);
        }
    }

    boolean isBeingTyped() {
        return !amount.getText().equals(amount.shown());
    }

    /** Whatever stands there gives way to what is typed next. */
    void focus() {
        amount.requestFocus();
        amount.selectAll();
    }

    /** An amount is begun elsewhere, and goes on in its field. */
    void begin(String typed) {
        amount.requestFocus();
        amount.setText(typed);
        amount.end();
    }

    /**
     * What comes of the amount cannot be gone to: it is heard with the field, and what to do with it there.
     *
     * @param kept whether it is of an amount that was kept
     */
    void heard(Desk desk, String outcome, boolean kept) {
        if (!amount.isWrong() && !amount.isWaiting()) {
            String refused = RefusalView.words(desk);
            String came = refused.isEmpty() ? outcome : refused;
            String hint = desk.words().of("editor.here.amount.hint");
            boolean tried = desk.trial().isPresent()
                    || desk.wanted().filter(w -> w.amount() != 0).isPresent();
            Hints.help(amount, tried || kept ? came : hint);
        }
    }

    /** Tries what was typed, or asks first where it is hardly meant. */
    private void typed(double mm) {
        Optional<Doubt> asked = showing ? Optional.empty() : Doubt.of(session.desk(), mm);
        asking = asked.isPresent();
        changer.accept(w -> w.withAmount(asked.isPresent() ? 0 : mm));
        asking = false;
        doubt.show(asked, session.desk().words());
        asked.ifPresent(d -> Hints.help(amount, d.words()));
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
        corrector.run();
    }

    private void step(int sign) {
        double by = RoundAmounts.step(session.desk().unit());
        changer.accept(w -> w.withAmount(RoundAmounts.next(w.amount(), by, sign > 0)));
    }

    void show(Desk desk) {
        showing = true;
        List<String> names = desk.pattern().levels().stream().map(Level::name).toList();
        if (!level.getItems().equals(names)) {
            level.getItems().setAll(names);
        }
        level.setValue(desk.wanted().map(Wanted::level).orElse(null));
        if (desk.unit() != told) {
            told = desk.unit();
            words(desk.words());
        }
        prompt(desk);
        amount.describe(HereWords.amount(desk), desk.words().of("editor.here.amount.hint"));
        if (!asking) {
            doubt.show(Optional.empty(), desk.words());
            desk.wanted().ifPresent(w -> show(w, desk));
        }
        stood = desk.wanted().map(Wanted::amount).orElse(0.0);
        stoodAt = place(desk);
        showing = false;
    }

    /** That it is by how much the garment becomes wider, and where there is room also what may be typed. */
    private void prompt(Desk desk) {
        boolean wider = desk.wanted().filter(Wanted::aimsAtGirth).isPresent();
        String inch = desk.unit() == LengthUnit.INCH ? ".inch" : "";
        String kind = !wider ? inch : alone ? ".wider" + inch : ".narrow";
        amount.setPromptText(desk.words().of("editor.here.amount.prompt" + kind));
    }

    /** A part of the body, where the amount is one of the girth at the level. */
    private OptionalDouble bodyHere(String typed) throws Unreadable {
        Wanted wanted = session.desk().wanted().orElseThrow();
        return wanted.aimsAtGirth()
                ? OptionalDouble.of(session.desk().bodyAt(wanted.level(), typed))
                : OptionalDouble.empty();
    }

    private void show(Wanted wanted, Desk desk) {
        String text = wanted.amount() == 0
                ? ""
                : amount.asTyped(wanted.amount(), desk.words().signed(wanted.amount()));
        boolean another = wanted.amount() != stood || !place(desk).equals(stoodAt);
        amount.showOf(another, text, desk.unit());
    }

    private static List<Optional<String>> place(Desk desk) {
        return List.of(desk.wanted().map(Wanted::level), desk.size());
    }

    private void words(Words words) {
        Heard.name(level, words.of("editor.here.level"));
        Hints.on(level, words.of("editor.here.level.hint"));
        Hints.name(less, words.of("editor.here.less"));
        Hints.name(more, words.of("editor.here.more"));
    }
}
