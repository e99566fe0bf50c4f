package easewright.editor.panel;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** Scrolls only where there is no room: asks for the height of all it holds. */
final class FittedScroll extends ScrollPane {
    private final Region content;

    FittedScroll(Region content) {
        super(content);
        this.content = content;
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        WholeLines.on(this, content);
    }

    @Override
    protected double computePrefHeight(double width) {
        double room = getWidth() - snappedLeftInset() - snappedRightInset();
        return content.prefHeight(room > 0 ? room : -1) + snappedTopInset() + snappedBottomInset();
    }
}
