package easewright.editor.panel;

import easewright.editor.model.Course;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One change of the list: on or off, what it does, its amount, its place, and the way out. */
final class ChangeRowView extends VBox {
    private static final PseudoClass OFF = PseudoClass.getPseudoClass("off");

    /** Between the signs at the end of a row, pixels. */
    private static final double GAP = 2;

    private static final double BESIDE = 8;

    private final Label refusal = new Label();
    private final Button way = new Button();
    private final CheckBox on = new CheckBox();
    private final boolean made;
    private final Label sign = new Label();
    private final HBox doings = new HBox(BESIDE);
    private final boolean hasAmount;
    private Optional<LengthField> typed = Optional.empty();
    private final String off;

    /** What the row asks of the list. */
    interface Asked {
        void switched(int step, boolean on);

        /** Gives the reason why not, or nothing. */
        String amount(int step, double mm);

        void rise(int step);

        void remove(int step);
    }

    ChangeRowView(int step, Course.Line line, Words words, Asked asked) {
        getStyleClass().addAll("list-row", "change-row");
        setId("change-" + step);
        Map<String, Object> named = Map.of("number", step + 1);

        made = line.on();
        on.setId("change-on-" + step);
        on.setSelected(line.on());
        on.setAccessibleText(words.of("editor.changes.on", Map.of("number", step + 1, "words", line.words())));
        Hints.on(on, words.of("editor.changes.on.hint"));
        on.setOnAction(e -> asked.switched(step, on.isSelected()));
        Label said = new Label(line.words());
        said.getStyleClass().add("change-words");
        said.setWrapText(true);
        said.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(said, Priority.ALWAYS);
        on.getStyleClass().add("first-line");
        HBox what = new HBox(10, on, said);

        doings.setAlignment(Pos.CENTER_LEFT);
        doings.getStyleClass().add("change-doings");
        Label wrong = new Label();
        wrong.setManaged(false);
        hasAmount = !line.amount().isEmpty();
        if (hasAmount) {
            doings.getChildren().add(amount(step, line, words, asked, wrong));
        }
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button up = button("change-up-" + step, Icons.UP, words, "editor.changes.up", named);
        up.setDisable(!line.mayRise());
        up.setOnAction(e -> asked.rise(step));
        Button down = button("change-down-" + step, Icons.DOWN, words, "editor.changes.down", named);
        down.setDisable(!line.maySink());
        down.setOnAction(e -> asked.rise(step + 1));
        Button away = button("change-remove-" + step, Icons.AWAY, words, "editor.changes.remove", named);
        away.setOnAction(e -> asked.remove(step));
        // In both kinds of row with the same gaps, so that they stand one below the other.
        HBox moves = new HBox(GAP, up, down, away);
        moves.setMinWidth(USE_PREF_SIZE);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            boolean plainAlt = e.isAltDown() && !e.isShiftDown() && !e.isShortcutDown();
            if (plainAlt && (e.getCode() == KeyCode.UP || e.getCode() == KeyCode.DOWN)) {
                e.consume();
                (e.getCode() == KeyCode.UP ? up : down).fire();
            }
        });
        off = words.of("editor.changes.off");
        // Below the words: beside them they would be set anew.
        sign.setId("change-sign-" + step);
        sign.getStyleClass().add("off-sign");
        sign.setMinWidth(USE_PREF_SIZE);
        doings.getChildren().add(sign);
        if (hasAmount) {
            doings.getChildren().add(gap);
        }
        // Where there is no amount to be worked on, one line is enough.
        (hasAmount ? doings : what).getChildren().add(moves);

        refusal.setWrapText(true);
        refusal.getStyleClass().add("complaint");
        way.setId("change-lean-" + step);
        Hints.on(way, words.of("editor.changes.leaning.hint"));
        complain("");
        getChildren().setAll(what, doings, wrong, refusal, way);
    }

    private LengthField amount(int step, Course.Line line, Words words, Asked asked, Label wrong) {
        LengthField amount = LengthField.refusing(wrong, mm -> asked.amount(step, required(mm)));
        typed = Optional.of(amount);
        amount.setId("change-amount-" + step);
        amount.setPrefWidth(104);
        // The way out of a refused amount goes with it; that of another wish stands below its reason.
        amount.addEventHandler(CheckedField.JUDGED, e -> {
            if (!amount.isWrong() && !refusal.isVisible()) {
                Parts.present(way, false);
            }
        });
        LengthUnit unit = words.unit();
        amount.show(line.amount(), unit);
        amount.describe(
                words.of("editor.changes.amount", Map.of("number", step + 1)), words.of("editor.changes.amount.hint"));
        return amount;
    }

    /** An emptied field is no amount. */
    private static double required(OptionalDouble mm) {
        return mm.orElseThrow(() -> new IllegalArgumentException("A change needs an amount"));
    }

    private static Button button(String id, String icon, Words words, String key, Map<String, Object> named) {
        Button button = new Button();
        button.setId(id);
        button.setGraphic(Icons.of(icon));
        button.getStyleClass().addAll("flat", "small-icon");
        button.setAccessibleText(words.of(key, named));
        Hints.on(button, words.of(key + ".hint"));
        return button;
    }

    /** An amount that was refused gives way, with its reason, to a new wish: the reason would soon stand there twice. */
    void forgetRefused() {
        typed.filter(CheckedField::isWrong).ifPresent(CheckedField::forget);
    }

    /** Says why the last wish for this change was not fulfilled; an empty text takes it away. The row shows what is. */
    void complain(String why) {
        refusal.setText(why);
        Parts.present(refusal, !why.isEmpty());
        Parts.present(way, !why.isEmpty() && way.isVisible());
        state(made, made ? "" : off);
    }

    /** Says why the amount that was taken is not made after all. */
    void refuseAmount(String why) {
        if (!typed.map(a -> a.refuse(why)).orElse(false)) {
            complain(why);
        }
    }

    /** Shows at once what was asked for, which may take a while to be made. */
    void working(boolean is, String said) {
        state(is, said);
    }

    private void state(boolean is, String said) {
        on.setSelected(is);
        pseudoClassStateChanged(OFF, !is);
        sign.setText(said);
        Parts.present(sign, !said.isEmpty());
        doings.setManaged(hasAmount || !said.isEmpty());
    }

    /** Offers a way out beside the reason. */
    void offer(String press, Runnable taken) {
        way.setText(press);
        way.setAccessibleText(press);
        way.setOnAction(e -> taken.run());
        Parts.present(way, true);
    }
}
