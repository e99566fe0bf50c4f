package easewright.editor.panel;

import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * A field for a name or a count. What is not accepted stays in the field, marked, with the reason beside it.
 */
final class NameField extends TextField {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final Function<String, String> taker;
    private final Label complaint;
    private String shown = "";

    /**
     * @param taker     takes what was typed and gives the reason why not, or nothing
     * @param complaint says what is wrong; hidden while nothing is
     */
    NameField(Label complaint, Function<String, String> taker) {
        this.taker = taker;
        this.complaint = complaint;
        getStyleClass().add("name-field");
        complaint.getStyleClass().add("complaint");
        complaint.setWrapText(true);
        complain("");
        setOnAction(e -> commit());
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

    /** Names the field for screen readers and for the pointer. */
    void describe(String name, String hint) {
        setAccessibleText(name);
        Hints.on(this, hint);
    }

    /** Shows a value, unless the user is typing another one. */
    void show(String text) {
        boolean untouched = getText().equals(shown);
        if (untouched || !isFocused() && !getPseudoClassStates().contains(WRONG)) {
            setText(text);
        }
        shown = text;
    }

    /** Shows the value of another thing: what was typed for the one before it has nothing to do here. */
    void showAnother(String text) {
        shown = text;
        setText(text);
        complain("");
    }

    private void commit() {
        String text = getText();
        if (text.equals(shown)) {
            complain("");
            return;
        }
        complain(taker.apply(text));
    }

    private void complain(String words) {
        pseudoClassStateChanged(WRONG, !words.isEmpty());
        complaint.setText(words);
        complaint.setVisible(!words.isEmpty());
        complaint.setManaged(!words.isEmpty());
        setAccessibleHelp(words);
    }
}
