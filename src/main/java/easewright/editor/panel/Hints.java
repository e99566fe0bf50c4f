package easewright.editor.panel;

import javafx.event.EventHandler;
import javafx.scene.control.Control;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/**
 * The hint of a control, which appears beside the pointer and is read out where that is asked for. What shows it is a
 * window of its own and costly, and most controls are never pointed at: it is made when the pointer first comes, and
 * then the control keeps it.
 */
final class Hints implements EventHandler<MouseEvent> {
    /** A path of a file is longer than some screens are wide, pixels. */
    private static final double WIDEST = 520;

    private final Control control;
    private String words = "";
    /** What is read out already as the name is not read out once more. */
    private boolean named;

    private Hints(Control control) {
        this.control = control;
    }

    static void on(Control control, String words) {
        Hints hint = of(control);
        if (hint == null) {
            hint = new Hints(control);
            control.getProperties().put(Hints.class, hint);
            control.addEventHandler(MouseEvent.MOUSE_ENTERED, hint);
        }
        if (!words.equals(hint.words)) {
            hint.say(words);
        }
    }

    /** A name for a control that shows only a sign, and the same beside the pointer. */
    static void name(Control control, String name) {
        Heard.name(control, name);
        on(control, name);
        of(control).named = true;
        control.setAccessibleHelp(null);
    }

    /** What is read out to help with a control: this, or its hint where there is nothing to say. */
    static void help(Control control, String words) {
        Hints hint = of(control);
        control.setAccessibleHelp(words.isEmpty() && hint != null && !hint.named ? hint.words : words);
    }

    private static Hints of(Control control) {
        return control.hasProperties() ? (Hints) control.getProperties().get(Hints.class) : null;
    }

    private void say(String now) {
        String help = control.getAccessibleHelp();
        if (!named && (help == null || help.isEmpty() || help.equals(words))) {
            control.setAccessibleHelp(now);
        }
        words = now;
        if (control.getTooltip() != null) {
            control.getTooltip().setText(now);
        }
    }

    @Override
    public void handle(MouseEvent comes) {
        if (control.getTooltip() == null) {
            Tooltip shown = new Tooltip(words);
            shown.setWrapText(true);
            shown.setMaxWidth(WIDEST);
            control.setTooltip(shown);
        }
    }
}
