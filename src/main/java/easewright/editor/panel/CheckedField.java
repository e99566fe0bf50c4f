package easewright.editor.panel;

import atlantafx.base.controls.CustomTextField;
import java.util.function.Predicate;
import javafx.css.PseudoClass;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * A field whose text is taken by Enter or by leaving it. What is not accepted stays in the field, marked, with the
 * reason beside it, until the text is changed: then it is judged anew when it is taken. So does what was typed before
 * the program ended, which waits there until Enter takes it. Escape brings back what was there. Undo and redo are those of the work unless something is being typed.
 */
abstract class CheckedField extends CustomTextField {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final PseudoClass WAITING = PseudoClass.getPseudoClass("waiting");

    /** What stands in a field was judged: it is found wrong, or is so no longer. */
    static final EventType<Event> JUDGED = new EventType<>("EASEWRIGHT_FIELD_JUDGED");

    private final Label complaint;
    private String shown = "";
    private String called = "";
    private String meanwhile = "";

    /**
     * @param complaint says what is wrong; hidden while nothing is
     */
    CheckedField(Label complaint) {
        this.complaint = complaint;
        complaint.getStyleClass().add("complaint");
        complaint.setWrapText(true);
        complain("");
        setOnAction(e -> commit());
        textProperty().addListener(o -> {
            if (isWrong() || isWaiting()) {
                complain("");
            }
        });
        focusedProperty().addListener((o, was, is) -> {
            if (!is && !isWaiting() && !isRefused()) {
                commit();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE && !getText().equals(shown)) {
                forget();
                e.consume();
            } else if (isUndoing(e) && getText().equals(shown)) {
                passOn(e);
            }
        });
    }

    private static boolean isUndoing(KeyEvent e) {
        return e.isShortcutDown() && (e.getCode() == KeyCode.Z || e.getCode() == KeyCode.Y);
    }

    /** While nothing is being typed, to take back means the last step of the work: a field would keep the key. */
    private void passOn(KeyEvent e) {
        getScene().getAccelerators().entrySet().stream()
                .filter(a -> a.getKey().match(e))
                .findFirst()
                .ifPresent(a -> {
                    e.consume();
                    a.getValue().run();
                });
    }

    /**
     * Whether there is such a field in a part of the window; where it is asked often, a look-up by style would match each
     * part of each control.
     */
    static boolean anyWithin(Node part, Predicate<CheckedField> which) {
        if (part instanceof CheckedField field) {
            return which.test(field);
        }
        if (part instanceof Parent parent && !(part instanceof Control)) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                if (anyWithin(child, which)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Names the field for screen readers and for the pointer. */
    final void describe(String name, String hint) {
        called = name;
        Heard.name(this, name);
        Hints.on(this, hint);
    }

    /** Takes what was typed, or says why not. */
    abstract void commit();

    /** The name it was given. */
    final String called() {
        return called;
    }

    /** What the field held before anything was typed. */
    final String shown() {
        return shown;
    }

    /** Holds a text as that of the thing itself, whatever is being typed. */
    final void hold(String text) {
        shown = text;
    }

    /**
     * Holds what was typed before the program ended. It is not taken by leaving the field, since whoever comes by may
     * not know of it.
     *
     * @param remark that it waits, and how it is taken
     */
    final void await(String text, String remark) {
        setText(text);
        tell(remark, WAITING);
    }

    /** Brings back what was there before anything was typed. */
    final void forget() {
        setText(shown);
        complain("");
    }

    /** Scrolls the field into sight, with what is said of it. */
    final void toSight() {
        InView.show(complaint);
        InView.show(this);
    }

    /** Whether what stands there was asked for and refused just so: by leaving the field it is not asked for again. */
    boolean isRefused() {
        return false;
    }

    final boolean isWaiting() {
        return getPseudoClassStates().contains(WAITING);
    }

    final boolean isWrong() {
        return getPseudoClassStates().contains(WRONG);
    }

    /** What holds as long as what was typed is not understood, to be said with the reason; empty for nothing. */
    final void meanwhile(String words) {
        meanwhile = words;
    }

    /** Says what is wrong; nothing where nothing is. */
    final void complain(String words) {
        tell(words.isEmpty() || meanwhile.isEmpty() ? words : words + " " + meanwhile, WRONG);
    }

    private void tell(String words, PseudoClass how) {
        boolean any = !words.isEmpty();
        pseudoClassStateChanged(WRONG, any && how == WRONG);
        pseudoClassStateChanged(WAITING, any && how == WAITING);
        complaint.pseudoClassStateChanged(WAITING, any && how == WAITING);
        complaint.setText(words);
        Parts.present(complaint, any);
        Hints.help(this, words);
        fireEvent(new Event(JUDGED));
    }
}
