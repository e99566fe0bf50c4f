package easewright.editor.panel;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;

/** What a control is called for those who hear the window. */
final class Heard {
    private Heard() {}

    /**
     * Names a control. Of a field or a list two things are heard, the name and what stands in it. The toolkit hands
     * readers the accessible text in place of what stands there, and takes the name from a label alone (its
     * {@code WinAccessible} and {@code MacAccessible}): the name is put on a label that is not to be seen.
     */
    static void name(Control control, String name) {
        if (holdsSomething(control)) {
            // Without a skin a label does not say what is written on it.
            label(control).setAccessibleText(name);
        } else {
            control.setAccessibleText(name);
        }
    }

    /** Names one of several by what they are about, which stands beside all of them, and its own words. */
    static void oneOf(Labeled title, Labeled each) {
        each.setAccessibleText(title.getText() + ": " + each.getText());
    }

    /** All that is written within something, in order. */
    static String all(Node within) {
        List<String> said = new ArrayList<>();
        gather(within, said);
        return String.join(" ", said);
    }

    private static void gather(Node node, List<String> said) {
        if (node == null || !node.isVisible()) {
            return;
        }
        if (node instanceof Label label) {
            String heard = label.getAccessibleText() == null ? label.getText() : label.getAccessibleText();
            said.add(heard.matches(".*[\\p{Alnum})]$") ? heard + "." : heard);
        } else if (node instanceof Parent parent && !(node instanceof Control)) {
            parent.getChildrenUnmodifiable().forEach(n -> gather(n, said));
        }
    }

    private static boolean holdsSomething(Node control) {
        return control instanceof TextInputControl
                || control instanceof ComboBoxBase<?>
                || control instanceof ChoiceBox<?>;
    }

    private static Label label(Control control) {
        return (Label) control.getProperties().computeIfAbsent(Heard.class, k -> {
            Label fresh = new Label();
            fresh.setLabelFor(control);
            return fresh;
        });
    }
}
