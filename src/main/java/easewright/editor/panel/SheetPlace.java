package easewright.editor.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;

/**
 * Where in the sheet the keyboard is or was. Rows are made anew by what is done in them, and a button may have nothing
 * more to do once it is pressed: the keys then stay in the sheet, at the same place or the one next to it, where left to
 * itself the window would begin again from its first corner.
 */
public final class SheetPlace {
    private final Parent sheet;
    private Optional<Node> last = Optional.empty();
    /** All that could have the keyboard when the last place got it, in order. */
    private List<Node> around = List.of();

    /** What of it lay on the same page. */
    private List<Node> page = List.of();

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
            around = stops(sheet);
            page = around(is).map(SheetPlace::within).orElse(List.of());
        } else if (lost) {
            lost = false;
            // Only then, since rows may be made anew until then.
            Platform.runLater(this::goBack);
        }
    }

    /** Unless what was done has led somewhere in the sheet by itself. */
    private void goBack() {
        nearest().filter(to -> !isInSheet(to.getScene().getFocusOwner())).ifPresent(Node::requestFocus);
    }

    /** The place last gone to, if it is still there. */
    public Optional<Node> last() {
        return last.flatMap(this::now);
    }

    /** Else the one before it, as at the end of a list, or the next, on the same page if there is one. */
    private Optional<Node> nearest() {
        return Stream.of(last.stream(), from(page), from(around))
                .flatMap(stops -> stops)
                .map(this::now)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Stream<Node> from(List<Node> stops) {
        int at = last.map(stops::indexOf).orElse(-1);
        List<Node> before = new ArrayList<>(stops.subList(0, Math.max(0, at)));
        Collections.reverse(before);
        return Stream.concat(before.stream(), stops.stream().skip(at + 1L));
    }

    /** The page that scrolls around it. */
    private static Optional<Parent> around(Node stop) {
        Parent page = stop.getParent();
        while (page != null && !(page instanceof ScrollPane)) {
            page = page.getParent();
        }
        return Optional.ofNullable(page);
    }

    /** The same stop as it is now: itself, or what was made in its stead and goes by the same name. */
    private Optional<Node> now(Node then) {
        Predicate<Node> same =
                then.getId() == null ? n -> n == then : n -> then.getId().equals(n.getId());
        return stops(sheet).stream().filter(same).findFirst();
    }

    private boolean isInSheet(Node node) {
        for (Node n = node; n != null; n = n.getParent()) {
            if (n == sheet) {
                return true;
            }
        }
        return false;
    }

    /** Without the page itself, which is only gone to where nothing is left in it. */
    private static List<Node> within(Parent page) {
        return stops(page).stream().filter(n -> n != page).toList();
    }

    private static List<Node> stops(Parent within) {
        List<Node> stops = new ArrayList<>();
        gather(within, stops);
        return stops;
    }

    private static void gather(Node node, List<Node> stops) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        if (node.isFocusTraversable() || OneStop.isIn(node)) {
            stops.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(n -> gather(n, stops));
        }
    }
}
