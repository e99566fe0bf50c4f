package easewright.editor.panel;

import easewright.editor.model.Session;
import easewright.editor.model.Wanted;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.input.KeyEvent;

/** The table by keyboard: look around, go from hold to hold, pull, keep or leave. */
final class TableKeys {
    private static final double LOOK = 60;

    /** What an amount can begin with. */
    private static final String AMOUNT = "0123456789+-\u2212.,\u00bc\u00bd\u00be";

    private final CuttingTable table;
    private final Session session;
    private final PlaceHand places;

    /** Takes what is typed of an amount while the table has the keys. */
    private Consumer<String> amounts = typed -> {};

    TableKeys(CuttingTable table, Session session, PlaceHand places) {
        this.table = table;
        this.session = session;
        this.places = places;
    }

    /** Where an amount goes on that is begun to be typed on the table. */
    void onAmount(Consumer<String> taker) {
        amounts = taker;
    }

    /** First who asks for a place hears a key, then who makes marks. */
    void pressed(KeyEvent e) {
        if (places.key(e)) {
            table.tell();
        } else if (!table.hand().map(h -> h.key(e, table.view())).orElse(false)) {
            handle(e);
        }
    }

    void typed(KeyEvent e) {
        boolean free = !table.isMarking()
                && !places.isAsked()
                && session.desk().wanted().isPresent();
        if (free && beginsAmount(e)) {
            e.consume();
            amounts.accept(e.getCharacter());
        }
    }

    private void handle(KeyEvent e) {
        // With Alt only the arrows are the table's: the rest leads elsewhere in the window.
        if (e.isShortcutDown() || e.isAltDown() && !e.getCode().isArrowKey()) {
            return;
        }
        boolean pulls = table.holds().isPointed() && !e.isAltDown();
        switch (e.getCode()) {
            case HOME -> table.fit();
            case PAGE_UP -> table.zoom(CuttingTable.NEARER);
            case PAGE_DOWN -> table.zoom(1 / CuttingTable.NEARER);
            case N -> table.holds().next(e.isShiftDown() ? -1 : 1);
            case L -> nextLevel(e.isShiftDown() ? -1 : 1);
            case ENTER -> session.keep();
            case ESCAPE -> table.letGo();
            case LEFT -> {
                if (pulls) {
                    pull(-1, e.isShiftDown());
                } else {
                    table.moveView(LOOK, 0);
                }
            }
            case RIGHT -> {
                if (pulls) {
                    pull(1, e.isShiftDown());
                } else {
                    table.moveView(-LOOK, 0);
                }
            }
            case UP -> table.moveView(0, LOOK);
            case DOWN -> table.moveView(0, -LOOK);
            default -> {
                return;
            }
        }
        e.consume();
    }

    /** The level below the one at work, or with −1 the one above; while marks are made, none is at work. */
    private void nextLevel(int by) {
        List<String> levels =
                session.desk().pattern().levels().stream().map(Level::name).toList();
        if (levels.isEmpty() || table.isMarking()) {
            return;
        }
        int at = session.desk().wanted().map(w -> levels.indexOf(w.level())).orElse(-1);
        session.chooseLevel(levels.get(next(at, by, levels.size())));
        if (!table.holds().isPointed()) {
            table.holds().next(1);
        }
    }

    /**
     * The place after the one at work, or with −1 the one before it, around.
     *
     * @param at −1 where none is at work
     */
    static int next(int at, int by, int count) {
        return Math.floorMod((at < 0 && by < 0 ? 0 : at) + by, count);
    }

    /** Whether something is typed that an amount begins with. */
    static boolean beginsAmount(KeyEvent typed) {
        return !typed.isShortcutDown()
                && !typed.isAltDown()
                && typed.getCharacter().length() == 1
                && AMOUNT.contains(typed.getCharacter());
    }

    /** What an arrow moves by, mm: 1 mm or 1/16 in, ten or eight times as much with shift. */
    static double step(LengthUnit unit, boolean far) {
        return unit == LengthUnit.INCH ? 25.4 / 16 * (far ? 8 : 1) : far ? 10 : 1;
    }

    /** One step of the girth. */
    private void pull(int sign, boolean far) {
        double step = step(session.desk().unit(), far);
        session.desk().wanted().ifPresent(w -> session.want(stepped(w, sign * step)));
    }

    private static Wanted stepped(Wanted wanted, double by) {
        double next = wanted.amount() + by;
        return wanted.withAmount(Math.abs(next) < 1e-9 ? 0 : next);
    }
}
