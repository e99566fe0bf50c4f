package easewright.editor.panel;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.util.StringConverter;

/**
 * Letters typed on a list to choose from go to the entry that begins with them; the same letter again to the next. The
 * space bar opens it. A list that hangs on a button is gone through so while it is open.
 */
final class ByLetter {
    /** Letters that follow each other within this time belong together, nanoseconds. */
    private static final long TOGETHER = 900_000_000L;

    private String typed = "";
    private long last;
    private Node on;
    /** The list on which the space bar is held down. */
    private Node opens;

    /** Follows what is typed in a window. */
    static void in(Scene scene) {
        ByLetter letters = new ByLetter();
        scene.addEventFilter(KeyEvent.KEY_TYPED, e -> {
            boolean plain = !e.isShortcutDown() && !e.isAltDown() && !e.isMetaDown();
            String letter = e.getCharacter();
            if (plain && letter.length() == 1 && Character.isLetterOrDigit(letter.charAt(0))) {
                letters.type(scene.getFocusOwner(), letter.toLowerCase(Locale.ROOT));
            }
        });
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> letters.opens = opened(e, scene.getFocusOwner()));
        scene.addEventFilter(KeyEvent.KEY_RELEASED, e -> {
            // Only then: the key let go on a list that is open chooses from it.
            if (e.getCode() == KeyCode.SPACE && letters.opens instanceof ComboBox<?> box && box.isFocused()) {
                box.show();
            }
            letters.opens = null;
        });
    }

    private static Node opened(KeyEvent e, Node owner) {
        boolean plain = !e.isShortcutDown() && !e.isAltDown() && !e.isShiftDown();
        boolean closed = owner instanceof ComboBox<?> box && !box.isEditable() && !box.isShowing();
        return e.getCode() == KeyCode.SPACE && plain && closed ? owner : null;
    }

    private void type(Node list, String letter) {
        long now = System.nanoTime();
        boolean goesOn = list == on && now - last < TOGETHER && !typed.equals(letter);
        typed = goesOn ? typed + letter : letter;
        on = list;
        last = now;
        if (list instanceof ComboBox<?> box && !box.isEditable()) {
            choose(box);
        } else if (list instanceof ChoiceBox<?> box) {
            choose(box);
        } else if (list instanceof MenuButton menu && menu.isShowing()) {
            choose(menu);
        }
    }

    private void choose(MenuButton menu) {
        List<MenuItem> items = ListsByKeys.entries(menu);
        int to = found(lower(items.stream().map(MenuItem::getText)), ListsByKeys.at(items));
        if (to >= 0) {
            ListsByKeys.go(items.get(to));
        }
    }

    private <T> void choose(ComboBox<T> box) {
        int to = found(words(box.getItems(), box.getConverter()), box.getItems().indexOf(box.getValue()));
        if (to >= 0) {
            box.setValue(box.getItems().get(to));
        }
    }

    private <T> void choose(ChoiceBox<T> box) {
        int to = found(words(box.getItems(), box.getConverter()), box.getItems().indexOf(box.getValue()));
        if (to >= 0) {
            box.setValue(box.getItems().get(to));
        }
    }

    private static <T> List<String> words(List<T> items, StringConverter<T> converter) {
        return lower(items.stream().map(i -> converter == null ? String.valueOf(i) : converter.toString(i)));
    }

    private static List<String> lower(Stream<String> words) {
        return words.map(w -> w.toLowerCase(Locale.ROOT)).toList();
    }

    /** Goes round from the present one, which it leaves where it begins a new word; below 0 where there is none. */
    private int found(List<String> words, int present) {
        int first = typed.length() == 1 ? 1 : 0;
        return IntStream.range(first, words.size() + first)
                .map(i -> Math.floorMod(present + i, words.size()))
                .filter(i -> words.get(i).startsWith(typed))
                .findFirst()
                .orElse(-1);
    }
}
