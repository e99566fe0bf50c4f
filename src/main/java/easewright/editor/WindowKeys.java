package easewright.editor;

import easewright.editor.file.FileWork;
import easewright.editor.model.Session;
import easewright.editor.panel.CuttingTable;
import easewright.editor.panel.SheetPanel;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** The keys that do the same wherever in the window the keyboard is. */
final class WindowKeys {
    private static final List<String> PAGES = List.of("marks", "ease", "rings", "size", "changes", "true", "notes");

    private final Scene scene;
    /** The key that is down leads to another page. */
    private boolean leads;

    WindowKeys(Scene scene) {
        this.scene = scene;
    }

    /** A key by itself. */
    void key(KeyCode code, Runnable act) {
        put(act, code);
    }

    void files(FileWork files, Runnable printer) {
        put(files::choose, KeyCode.O, KeyCombination.SHORTCUT_DOWN);
        put(files::save, KeyCode.S, KeyCombination.SHORTCUT_DOWN);
        put(files::saveAs, KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
        put(printer, KeyCode.P, KeyCombination.SHORTCUT_DOWN);
    }

    /** Leaving asks what closing the window asks. */
    void leave(Runnable leaving) {
        put(leaving, KeyCode.Q, KeyCombination.SHORTCUT_DOWN);
    }

    void undo(Session session) {
        put(session::undo, KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
        put(session::redo, KeyCode.Y, KeyCombination.SHORTCUT_DOWN);
        put(session::redo, KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    }

    void pages(Supplier<SheetPanel> sheet) {
        for (int i = 0; i < PAGES.size(); i++) {
            String page = PAGES.get(i);
            KeyCode digit = KeyCode.getKeyCode(String.valueOf(i + 1));
            put(() -> sheet.get().goTo(page), digit, KeyCombination.ALT_DOWN);
        }
        put(() -> sheet.get().toAmount(), KeyCode.DIGIT0, KeyCombination.ALT_DOWN);
        // Where Alt with a digit types a sign as well, that is not to be left behind in a field.
        scene.addEventFilter(
                KeyEvent.KEY_PRESSED,
                e -> leads = e.isAltDown() && !e.isControlDown() && e.getCode().isDigitKey());
        scene.addEventFilter(KeyEvent.KEY_TYPED, e -> {
            if (leads) {
                e.consume();
            }
        });
    }

    /** With the keys of the platform; where a sign stands on its key depends on the keyboard. */
    void zoom(CuttingTable table) {
        for (KeyCode nearer : List.of(KeyCode.PLUS, KeyCode.EQUALS, KeyCode.ADD)) {
            put(() -> table.zoom(CuttingTable.NEARER), nearer, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_ANY);
        }
        for (KeyCode farther : List.of(KeyCode.MINUS, KeyCode.SUBTRACT)) {
            put(() -> table.zoom(1 / CuttingTable.NEARER), farther, KeyCombination.SHORTCUT_DOWN);
        }
        for (KeyCode all : List.of(KeyCode.DIGIT0, KeyCode.NUMPAD0)) {
            put(table::fit, all, KeyCombination.SHORTCUT_DOWN);
        }
    }

    private void put(Runnable act, KeyCode code, KeyCombination.Modifier... with) {
        scene.getAccelerators().put(new KeyCodeCombination(code, with), act);
    }
}
