package easewright.editor.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;

/**
 * Where in the sheet the keyboard is or was. Rows are made anew by what is done in them, and a button may have nothing
 * more to do once it is pressed: the keys then stay in the sheet, at the same place or the next one to it, where left to
 * itself the window would begin again from its first corner.
 */
public final class SheetPlace {
    private final Parent sheet;
    private Optional<Node> last = Optional.empty();
    /** All that could have the keyboard when the last place got it, in order. */
    private List<Node> around = List.of();

    private boolean lost;

    public SheetPlace(Scene scene, Parent sheet) {
        this.sheet = sheet;
        scene.focusOwnerProperty().addListener((o, was, is) -> moved(was, is));
    }

    private void moved(Node was, Node is) {
        if (is == null) {
            lost = last.isPresent() && was == last.get();
        } else if (isInSheet(is)) {
            lost = false;
            last = Optional.of(is);
            around = stops();
        } else if (lost) {
            lost = false;
            nearest().ifPresent(n -> Platform.runLater(() -> goBack(n)));
        }
    }

    /** Unless what was done has led somewhere in the sheet by itself. */
    private void goBack(Node to) {
        if (!isInSheet(to.getScene().getFocusOwner())) {
            to.requestFocus();
        }
    }

    /** The place last gone to, if it is still there. */
    public Optional<Node> last() {
        return last.flatMap(this::now);
    }

    /** Else the next one after it, or the one before. */
    private Optional<Node> nearest() {
        int at = last.map(around::indexOf).orElse(-1);
        List<Node> order = new ArrayList<>();
        last.ifPresent(order::add);
        if (at >= 0) {
            order.addAll(around.subList(at + 1, around.size()));
            for (int i = at - 1; i >= 0; i--) {
                order.add(around.get(i));
            }
        }
        return order.stream().map(this::now).flatMap(Optional::stream).findFirst();
    }

    /** The same stop as it is now: itself, or what was made in its stead and goes by the same name. */
    private Optional<Node> now(Node then) {
        Predicate<Node> same =
                then.getId() == null ? n -> n == then : n -> then.getId().equals(n.getId());
        return stops().stream().filter(same).findFirst();
    }

    private boolean isInSheet(Node node) {
        for (Node n = node; n != null; n = n.getParent()) {
            if (n == sheet) {
                return true;
            }
        }
        return false;
    }

    private List<Node> stops() {
        List<Node> stops = new ArrayList<>();
        gather(sheet, stops);
        return stops;
    }

    private static void gather(Node node, List<Node> stops) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        if (node.isFocusTraversable()) {
            stops.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(n -> gather(n, stops));
        }
    }
}
