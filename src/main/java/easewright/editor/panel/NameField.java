package easewright.editor.panel;

import java.util.function.Function;
import javafx.scene.control.Label;

/** A field for a name or a count. */
final class NameField extends CheckedField {
    private final Function<String, String> taker;

    /**
     * @param taker     takes what was typed and gives the reason why not, or nothing
     * @param complaint says what is wrong; hidden while nothing is
     */
    NameField(Label complaint, Function<String, String> taker) {
        super(complaint);
        this.taker = taker;
        getStyleClass().add("name-field");
    }

    /** Shows a value, unless the user is typing another one. */
    void show(String text) {
        boolean untouched = getText().equals(shown());
        if (untouched || !isFocused() && !isWrong() && !isWaiting()) {
            setText(text);
        }
        hold(text);
    }

    /** Shows the value of another thing: what was typed for the one before it has nothing to do here. */
    void showAnother(String text) {
        hold(text);
        setText(text);
        complain("");
    }

    @Override
    void commit() {
        String text = getText();
        if (text.equals(shown())) {
            complain("");
            return;
        }
        complain(taker.apply(text));
    }
}
