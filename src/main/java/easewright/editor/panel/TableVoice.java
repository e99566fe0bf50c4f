package easewright.editor.panel;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * What those hear who do not see the table. A reader says nothing of a picture that changes, but it reads what the keys
 * have gone to: so what there is to say is put on one of two items of the table by turns, to which the keys then seem to
 * have gone.
 */
final class TableVoice {
    private final List<Region> items = List.of(fresh(), fresh());
    private int now;

    private static Region fresh() {
        Region item = new Region();
        item.setManaged(false);
        item.resize(1, 1);
        item.setMouseTransparent(true);
        item.setAccessibleRole(AccessibleRole.TEXT);
        return item;
    }

    /** To be put on the table. */
    List<Region> items() {
        return items;
    }

    /** Where the keys seem to be. */
    Node item() {
        return items.get(now);
    }

    String words() {
        String words = items.get(now).getAccessibleText();
        return words == null ? "" : words;
    }

    /** Has something else to say; false if it is what was said last. */
    boolean say(String words) {
        if (words.equals(words())) {
            return false;
        }
        now = 1 - now;
        items.get(now).setAccessibleText(words);
        return true;
    }
}
