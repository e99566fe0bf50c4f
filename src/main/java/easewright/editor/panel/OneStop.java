package easewright.editor.panel;

import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;

/**
 * Buttons that lie together in a row and are one stop on the way of the Tab key, as in the tool bars of other programs.
 * The arrows go from one to the next, Home and End to the first and the last. Tab comes back to where the keys were last.
 */
final class OneStop {
    private final List<Pane> parts;
    private Node stop;

    private OneStop(List<Pane> parts) {
        this.parts = parts;
    }

    /**
     * Makes the buttons of a row one stop, those too that come into it later.
     *
     * @param parts the row in its order; it begins in the first of them
     */
    static void in(Pane... parts) {
        OneStop stop = new OneStop(List.of(parts));
        stop.parts.forEach(stop::follow);
        stop.settle();
    }

    private void follow(Pane part) {
        part.getChildren().addListener((ListChangeListener<Node>) change -> {
            while (change.next()) {
                change.getAddedSubList().forEach(this::add);
            }
            settle();
        });
        part.getChildren().forEach(this::add);
        part.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        part.addEventFilter(MouseEvent.MOUSE_PRESSED, this::pressed);
    }

    /** Whether it can have the keys, also where Tab does not come to it by itself. */
    static boolean isIn(Node node) {
        return node instanceof ButtonBase
                && node.hasProperties()
                && node.getProperties().containsKey(OneStop.class);
    }

    private void add(Node node) {
        if (node instanceof ButtonBase && node.getProperties().put(OneStop.class, true) == null) {
            node.focusedProperty().addListener((o, was, is) -> {
                if (is) {
                    stop = node;
                    settle();
                }
            });
            node.disabledProperty().addListener((o, was, is) -> settle());
            node.visibleProperty().addListener((o, was, is) -> settle());
        }
    }

    private List<Node> row() {
        return parts.stream().flatMap(p -> p.getChildren().stream()).toList();
    }

    private List<Node> buttons() {
        return row().stream()
                .filter(OneStop::isIn)
                .filter(n -> n.isVisible() && !n.isDisabled())
                .toList();
    }

    /** The stop is where the keys were last; a button that has nothing more to do hands them to the one beside it. */
    private void settle() {
        List<Node> buttons = buttons();
        if (!buttons.contains(stop)) {
            boolean had = stop != null && stop.isFocused() && row().contains(stop);
            stop = had ? beside(buttons) : first(buttons);
            if (had && stop != null) {
                stop.requestFocus();
            }
        }
        row().stream().filter(OneStop::isIn).forEach(b -> b.setFocusTraversable(b == stop));
    }

    private Node beside(List<Node> buttons) {
        List<Node> row = row();
        int at = row.indexOf(stop);
        return buttons.stream()
                .filter(b -> row.indexOf(b) > at)
                .findFirst()
                .orElse(buttons.isEmpty() ? null : buttons.get(buttons.size() - 1));
    }

    /** What is on in the first part, or else the first. */
    private Node first(List<Node> buttons) {
        return buttons.stream()
                .filter(b -> b.getParent() == parts.get(0))
                .filter(b -> b instanceof ToggleButton toggle && toggle.isSelected())
                .findFirst()
                .orElse(buttons.isEmpty() ? null : buttons.get(0));
    }

    private void pressed(KeyEvent e) {
        // Where a list hangs on a button, down opens it.
        if (e.getTarget() instanceof MenuButton && (e.getCode() == KeyCode.UP || e.getCode() == KeyCode.DOWN)) {
            return;
        }
        List<Node> buttons = buttons();
        int at = buttons.indexOf(e.getTarget());
        int to = ByArrows.to(e, at, buttons.size());
        if (at >= 0 && to >= 0) {
            e.consume();
            buttons.get(to).requestFocus();
        }
    }

    /** What is pressed by the mouse gets the keys as any other button does. */
    private void pressed(MouseEvent e) {
        Node at = e.getTarget() instanceof Node target ? target : null;
        while (at != null && !isIn(at)) {
            at = at.getParent();
        }
        if (at != null && row().contains(at) && !at.isDisabled()) {
            stop = at;
            settle();
        }
    }
}
