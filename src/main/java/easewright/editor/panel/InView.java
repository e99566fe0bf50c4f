package easewright.editor.panel;

import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;

/** Scrolls what has the keys into sight, however they came there: only where Tab led them the toolkit does so itself. */
final class InView {
    /** So much is to be seen around it, pixels. */
    private static final double AROUND = 6;

    private InView() {}

    /**
     * @param byKeys whether the window is worked by keyboard: nothing is to move under a mouse that is pressed
     */
    static void follow(Scene scene, BooleanSupplier byKeys) {
        scene.focusOwnerProperty().addListener((o, was, is) -> {
            if (is != null && byKeys.getAsBoolean()) {
                // What was made just now has no place yet.
                Platform.runLater(() -> showFocused(is));
            }
        });
    }

    private static void showFocused(Node node) {
        if (node.getScene() != null && node.getScene().getFocusOwner() == node) {
            show(node);
        }
    }

    /** Scrolls what is around the part as far as needed for it to be seen. */
    static void show(Node node) {
        for (Parent around = node.getParent(); around != null; around = around.getParent()) {
            if (around instanceof ScrollPane pane && pane.getContent() != null) {
                show(node, pane);
            }
        }
    }

    /** Scrolls what is around the part so that it begins with it, as far as there is enough below. */
    static void first(Node node) {
        for (Parent around = node.getParent(); around != null; around = around.getParent()) {
            if (around instanceof ScrollPane pane && pane.getContent() != null) {
                pane.applyCss();
                pane.layout();
                double top = pane.getContent()
                        .sceneToLocal(node.localToScene(node.getBoundsInLocal()))
                        .getMinY();
                double rest = pane.getContent().getLayoutBounds().getHeight()
                        - pane.getViewportBounds().getHeight();
                pane.setVvalue(rest > 0 ? Math.min(1, top / rest) * pane.getVmax() : 0);
            }
        }
    }

    private static void show(Node node, ScrollPane pane) {
        pane.applyCss();
        pane.layout();
        Bounds place = pane.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal()));
        double room = pane.getViewportBounds().getHeight();
        double rest = pane.getContent().getLayoutBounds().getHeight() - room;
        if (rest <= 0) {
            return;
        }
        double from = pane.getVvalue() / pane.getVmax() * rest;
        double top = place.getMinY() - AROUND;
        double bottom = place.getMaxY() + AROUND;
        if (top < from || place.getHeight() > room) {
            pane.setVvalue(Math.max(0, top / rest) * pane.getVmax());
        } else if (bottom > from + room) {
            pane.setVvalue(Math.min(1, (bottom - room) / rest) * pane.getVmax());
        }
    }
}
