package easewright.editor.panel;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyEvent;
import javafx.util.StringConverter;

/** Letters typed on a list to choose from go to the entry that begins with them; the same letter again to the next. */
final class ByLetter {
    /** Letters that follow each other within this time belong together, nanoseconds. */
    private static final long TOGETHER = 900_000_000L;

    private String typed = "";
    private long last;
    private Node on;

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
        return items.stream()
                .map(i -> converter == null ? String.valueOf(i) : converter.toString(i))
                .map(w -> w.toLowerCase(Locale.ROOT))
                .toList();
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
