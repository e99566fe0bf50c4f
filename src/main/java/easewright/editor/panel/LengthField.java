package easewright.editor.panel;

import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.Label;

/** A field for a length, read leniently. Of what cannot be read it says what is expected; nothing typed is lost. */
final class LengthField extends CheckedField {
    private final Function<OptionalDouble, String> taker;
    private LengthUnit unit = LengthUnit.CM;
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
     * @param taker     takes the length in mm, or empty when the field was emptied, and gives the reason why not, or
     *                  nothing
     * @param complaint says what is wrong; hidden while nothing is
     */
    static LengthField refusing(Label complaint, Function<OptionalDouble, String> taker) {
        return new LengthField(taker, complaint);
    }

    private LengthField(Function<OptionalDouble, String> taker, Label complaint) {
        super(complaint);
        this.taker = taker;
        getStyleClass().add("length-field");
        setOnAction(e -> {
            boolean again = !getText().isBlank() && getText().strip().equals(shown().strip());
            commit();
            if (again) {
                enteredAgain.run();
            }
        });
    }

    /** What Enter does where the field holds what has been taken already. */
    void onEnteredAgain(Runnable act) {
        enteredAgain = act;
    }

    /** Shows a value, unless the user is typing another one. */
    void show(String text, LengthUnit inUnit) {
        boolean untouched = getText().equals(shown());
        unit = inUnit;
        if (untouched || !isFocused()) {
            if (!untouched && isWrong()) {
                return;
            }
            setText(text);
        }
        hold(text);
    }

    @Override
    void commit() {
        String text = getText().strip();
        if (text.equals(shown().strip())) {
            complain("");
            return;
        }
        try {
            OptionalDouble mm = text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Lengths.parse(text, unit));
            complain("");
            String before = shown();
            hold(text);
            String refused = taker.apply(mm);
            if (!refused.isEmpty()) {
                hold(before);
                setText(text);
                complain(refused);
            }
        } catch (Unreadable e) {
            complain(Words.english(unit).problem(e.code(), e.values()));
        } catch (IllegalArgumentException e) {
            complain(Words.english(unit).of("editor.field.range"));
        }
    }
}
