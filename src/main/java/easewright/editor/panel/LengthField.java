package easewright.editor.panel;

import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * A field for a length, read leniently. What cannot be read stays in the field, marked, with what is expected beside
 * it; nothing typed is ever lost.
 */
final class LengthField extends TextField {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final Function<OptionalDouble, String> taker;
    private final Label complaint;
    private LengthUnit unit = LengthUnit.CM;
    private String shown = "";
    private Runnable enteredAgain = () -> {};

    /**
     * @param taker     takes the length in mm, or empty when the field was emptied
     * @param complaint says what is wrong; hidden while nothing is
     */
    LengthField(Label complaint, Consumer<OptionalDouble> taker) {
        this(
                mm -> {
                    taker.accept(mm);
                    return "";
                },
                complaint);
    }

    /**
     * A field for a length that may be refused.
     *
     * @param taker     takes the length in mm, or empty when the field was emptied, and gives the reason why not, or nothing
     * @param complaint says what is wrong; hidden while nothing is
     */
    static LengthField refusing(Label complaint, Function<OptionalDouble, String> taker) {
        return new LengthField(taker, complaint);
    }

    private LengthField(Function<OptionalDouble, String> taker, Label complaint) {
        this.taker = taker;
        this.complaint = complaint;
        getStyleClass().add("length-field");
        complaint.getStyleClass().add("complaint");
        complaint.setWrapText(true);
        complain("");
        setOnAction(e -> {
            boolean again = !getText().isBlank() && getText().strip().equals(shown.strip());
            commit();
            if (again) {
                enteredAgain.run();
            }
        });
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                commit();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE && !getText().equals(shown)) {
                setText(shown);
                complain("");
                e.consume();
            }
        });
    }

    /** What Enter does where the field holds what has been taken already. */
    void onEnteredAgain(Runnable act) {
        enteredAgain = act;
    }

    /** Names the field for screen readers and for the pointer. */
    void describe(String name, String hint) {
        setAccessibleText(name);
        Hints.on(this, hint);
    }

    /** Shows a value, unless the user is typing another one. */
    void show(String text, LengthUnit inUnit) {
        boolean untouched = getText().equals(shown);
        unit = inUnit;
        if (untouched || !isFocused()) {
            if (!untouched && getPseudoClassStates().contains(WRONG)) {
                return;
            }
            setText(text);
        }
        shown = text;
    }

    void commit() {
        String text = getText().strip();
        if (text.equals(shown.strip())) {
            complain("");
            return;
        }
        try {
            OptionalDouble mm = text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Lengths.parse(text, unit));
            complain("");
            String before = shown;
            shown = text;
            String refused = taker.apply(mm);
            if (!refused.isEmpty()) {
                shown = before;
                setText(text);
                complain(refused);
            }
        } catch (Unreadable e) {
            complain(Words.english(unit).problem(e.code(), e.values()));
        } catch (IllegalArgumentException e) {
            complain(Words.english(unit).of("editor.field.range"));
        }
    }

    private void complain(String words) {
        pseudoClassStateChanged(WRONG, !words.isEmpty());
        complaint.setText(words);
        complaint.setVisible(!words.isEmpty());
        complaint.setManaged(!words.isEmpty());
        setAccessibleHelp(words);
    }
}
