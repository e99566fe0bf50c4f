package easewright.editor.panel;

import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.PerCent;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/**
 * A field for a length, read leniently. While a number is typed without its unit, the unit that it is taken in stands
 * behind it. Of what cannot be read it says what is expected; nothing typed is lost.
 */
final class LengthField extends CheckedField {
    private final Function<OptionalDouble, String> taker;
    private LengthUnit unit = LengthUnit.CM;
    /** The mouse button that is down brought the keys here. */
    private boolean entered;

    private Runnable enteredAgain = () -> {};
    private final Label taken = new Label();
    private final ReadOnlyStringWrapper reading = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper part = new ReadOnlyStringWrapper("");
    private Whole whole = text -> OptionalDouble.empty();
    /** What was taken last, where it was typed in per cent. */
    private OptionalDouble percent = OptionalDouble.empty();

    /** What stood there before what was taken last. */
    private Optional<String> replaced = Optional.empty();

    private boolean refused;
    private boolean partInside;

    /** What parts of it may be typed in per cent: the girth of a body. */
    interface Whole {
        /**
         * In mm; empty where the field takes no parts.
         *
         * @param typed the part, as it was typed
         * @throws Unreadable if there is nothing yet that it could be a part of
         */
        OptionalDouble mm(String typed) throws Unreadable;
    }

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
        taken.getStyleClass().add("unit-taken");
        taken.setMinWidth(USE_PREF_SIZE);
        textProperty().addListener(o -> read());
        focusedProperty().addListener(o -> read());
        addEventFilter(MouseEvent.MOUSE_PRESSED, e -> entered = !isFocused());
        addEventHandler(MouseEvent.MOUSE_CLICKED, e -> clicked(e.getButton()));
        setOnAction(e -> {
            boolean again = getText().strip().equals(shown().strip());
            commit();
            if (again) {
                enteredAgain.run();
            }
            // What is typed next takes the place of what was taken, and does not come in front of it.
            if (isFocused() && !isWrong()) {
                selectAll();
            }
        });
    }

    /**
     * Who comes by a click types over what stands there, as who comes by the keyboard; the next click sets the caret.
     * What was selected by drawing over it stays so.
     */
    private void clicked(MouseButton button) {
        if (entered
                && isFocused()
                && button == MouseButton.PRIMARY
                && getSelectedText().isEmpty()) {
            selectAll();
        }
        entered = false;
    }

    /** What Enter does where the field holds what has been taken already, which may be nothing. */
    void onEnteredAgain(Runnable act) {
        enteredAgain = act;
    }

    /** How a number without a unit is taken while it is typed, in both units; empty while there is none. */
    ReadOnlyStringProperty readingProperty() {
        return reading.getReadOnlyProperty();
    }

    /**
     * Takes parts of something in per cent besides lengths.
     *
     * @param inside whether the field is wide enough to show the length of such a part behind it
     */
    void takeParts(Whole of, boolean inside) {
        whole = of;
        partInside = inside;
    }

    /** The length of the part that stands in the field in per cent; empty while there is none. */
    ReadOnlyStringProperty partProperty() {
        return part.getReadOnlyProperty();
    }

    /** A length as it is to be shown here: in per cent if it was typed so and is still that part. */
    String asTyped(double mm, String text) {
        try {
            OptionalDouble is = percent.isPresent() ? mm(PerCent.shown(percent.getAsDouble())) : percent;
            return is.isPresent() && Math.abs(is.getAsDouble() - mm) < 1e-6
                    ? PerCent.shown(percent.getAsDouble())
                    : text;
        } catch (Unreadable nothingToBePartOf) {
            return text;
        }
    }

    private OptionalDouble mm(String text) throws Unreadable {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble parts = PerCent.of(text);
        OptionalDouble all = parts.isPresent() ? whole.mm(text) : parts;
        return OptionalDouble.of(
                all.isPresent() ? all.getAsDouble() * parts.getAsDouble() / 100 : Lengths.parse(text, unit));
    }

    /** The length of what stands in the field in per cent, or nothing. */
    private String partOf(String text) {
        try {
            return PerCent.of(text).isPresent() ? Lengths.format(mm(text).orElse(0), unit) : "";
        } catch (Unreadable noPart) {
            return "";
        }
    }

    private void read() {
        String text = getText() == null ? "" : getText().strip();
        String length = partOf(text);
        part.set(length.isEmpty() ? "" : "=\u00a0" + length);
        boolean bare = isFocused() && !text.equals(shown().strip()) && !Lengths.saysItsUnit(text);
        boolean behind = bare || partInside && !length.isEmpty();
        if (behind) {
            taken.setText(bare ? unit.symbol() : part.get());
        }
        if (behind != (getRight() != null)) {
            setRight(behind ? taken : null);
        }
        reading.set(bare ? inBoth(text) : "");
    }

    private String inBoth(String text) {
        try {
            double mm = Lengths.parse(text, unit);
            LengthUnit other = unit == LengthUnit.INCH ? LengthUnit.CM : LengthUnit.INCH;
            return Words.english(unit)
                    .of("editor.field.taken", Map.of("amount", mm, "other", Lengths.format(mm, other)));
        } catch (Unreadable unreadable) {
            return "";
        }
    }

    /** Shows a value, unless the user is typing another one. */
    void show(String text, LengthUnit inUnit) {
        boolean untouched = getText().equals(shown());
        if (untouched || !isWaiting()) {
            // What waits was typed in the unit of its time.
            unit = inUnit;
        }
        if (untouched || !isFocused()) {
            if (!untouched && isWrong()) {
                return;
            }
            // What stands there already is not laid out anew; that it was wrong, or waited, is over all the same.
            boolean other = !text.equals(getText()) || isWrong() || isWaiting();
            if ((untouched || !isWaiting()) && other) {
                setText(text);
            }
        }
        hold(text);
        // The text may be the same while the unit or the whole is another.
        read();
    }

    /**
     * Shows a value.
     *
     * @param another whether it is that of another thing than before: what was typed and not taken was meant for the one
     *                before
     */
    void showOf(boolean another, String text, LengthUnit inUnit) {
        if (another && (isWaiting() || isWrong())) {
            showAnother(text, inUnit);
        } else {
            show(text, inUnit);
        }
    }

    /** Shows a value that was not typed here: it takes the place of what was typed and not understood. */
    void showAnother(String text, LengthUnit inUnit) {
        unit = inUnit;
        hold(text);
        setText(text);
        complain("");
    }

    /**
     * Says of what was taken last that it cannot be after all. It stays in the field, marked, unless something else is
     * being typed by now.
     *
     * @return whether there was anything taken
     */
    boolean refuse(String why) {
        boolean still = replaced.isPresent() && getText().strip().equals(shown());
        replaced.ifPresent(this::hold);
        if (still) {
            complain(why);
        }
        refused = still;
        replaced = Optional.empty();
        return still;
    }

    @Override
    boolean isRefused() {
        return refused && isWrong();
    }

    @Override
    void commit() {
        refused = false;
        String text = getText().strip();
        if (text.equals(shown().strip())) {
            complain("");
            return;
        }
        try {
            OptionalDouble mm = mm(text);
            complain("");
            String before = shown();
            replaced = Optional.of(before);
            hold(text);
            percent = PerCent.of(text);
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
