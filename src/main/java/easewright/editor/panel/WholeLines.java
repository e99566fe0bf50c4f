package easewright.editor.panel;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/**
 * Shows of what is scrolled only whole lines: one that the edge of the page would cut in its height is left out until
 * there is room for it. Nothing moves for that.
 */
final class WholeLines {
    /** What is higher is no line, and may be cut; pixels. */
    private static final double LINE = 64;

    /** How far from an edge lines may be left out, one that stands beside the next included; pixels. */
    private static final double FAR = 2 * LINE;

    /** So much of a line of words, above, is blank; pixels. */
    private static final double RIM = 1;

    /** Less than this is not seen, pixels. */
    private static final double HAIR = 0.5;

    private final ScrollPane page;
    private final Region content;
    private final Rectangle shown = new Rectangle();
    private final Runnable look = this::look;

    private WholeLines(ScrollPane page, Region content) {
        this.page = page;
        this.content = content;
        page.sceneProperty().addListener((o, was, is) -> follow(was, is));
        follow(null, page.getScene());
    }

    static WholeLines on(ScrollPane page, Region content) {
        return new WholeLines(page, content);
    }

    /** The first place no higher than this that can stand at the top of the page without a line being cut, pixels. */
    double wholeBelow(double top) {
        List<double[]> lines = new ArrayList<>();
        gather(content, 0, top, top + page.getViewportBounds().getHeight(), lines);
        return first(lines, top);
    }

    private void follow(Scene was, Scene is) {
        if (was != null) {
            was.removePostLayoutPulseListener(look);
        }
        if (is != null) {
            is.addPostLayoutPulseListener(look);
        }
    }

    /** Once all lies in its place. */
    private void look() {
        double room = page.getViewportBounds().getHeight();
        double whole = content.getHeight();
        if (!isSeen(page)) {
            return;
        }
        if (room <= 0 || whole <= room + RIM) {
            content.setClip(null);
            return;
        }
        double top = Math.max(0, Math.min(1, page.getVvalue())) * (whole - room);
        double bottom = top + room;
        List<double[]> lines = new ArrayList<>();
        gather(content, 0, top, bottom, lines);
        double from = first(lines, top);
        double to = last(lines, bottom);
        shown.setX(-LINE);
        shown.setWidth(content.getWidth() + 2 * LINE);
        shown.setY(from);
        shown.setHeight(Math.max(0, to - from));
        boolean all = from == top && to == bottom;
        // In little room a cut line is better than none.
        boolean few = to - from < room / 2;
        content.setClip(all || few ? null : shown);
    }

    private static boolean isSeen(Node node) {
        return node == null || node.isVisible() && isSeen(node.getParent());
    }

    /** Where what is shown begins: below each line that the upper edge cuts, and each that this would cut in turn. */
    static double first(List<double[]> lines, double top) {
        double from = top;
        for (boolean again = true; again; ) {
            again = false;
            for (double[] line : lines) {
                if (line[0] < from - HAIR && line[1] > from + HAIR && line[1] <= top + FAR) {
                    from = line[1];
                    again = true;
                }
            }
        }
        return from;
    }

    /** Where it ends: above each line that the lower edge cuts, and each that this would cut in turn. */
    static double last(List<double[]> lines, double bottom) {
        double to = bottom;
        for (boolean again = true; again; ) {
            again = false;
            for (double[] line : lines) {
                if (line[0] < to - HAIR && line[1] > to + HAIR && line[0] >= bottom - FAR) {
                    to = line[0];
                    again = true;
                }
            }
        }
        return to;
    }

    /**
     * The lines near the two edges: what is no higher than one, and of text its single lines. On a page nothing is turned
     * or scaled, so that where a part lies is known from where the part lies that holds it.
     *
     * @param above how far below the top of the page the part has the origin of its own measures
     */
    private void gather(Node node, double above, double top, double bottom, List<double[]> lines) {
        if (!node.isVisible()) {
            return;
        }
        double from = above + node.getLayoutBounds().getMinY();
        double to = above + node.getLayoutBounds().getMaxY();
        boolean far = to < top - FAR || from > bottom + FAR || from > top + FAR && to < bottom - FAR;
        if (node != content && far) {
            return;
        }
        if (node instanceof Text text) {
            int count =
                    Math.max(1, (int) Math.round((to - from) / (text.getFont().getSize() * 1.2)));
            double high = (to - from) / count;
            for (int i = 0; i < count; i++) {
                // The tails of its letters reach to its very end.
                lines.add(new double[] {from + i * high + RIM, from + (i + 1) * high});
            }
        } else if (isBox(node) && to - from <= LINE) {
            lines.add(new double[] {from, to});
        } else if (node instanceof Parent parent) {
            for (Node part : parent.getChildrenUnmodifiable()) {
                gather(part, above + part.getLayoutY() + part.getTranslateY(), top, bottom, lines);
            }
        }
    }

    /** What is seen by its own outline, or is one thing however many parts it has, such as a tick box with its words. */
    private static boolean isBox(Node node) {
        if (node.getStyleClass().contains("source-mark")) {
            // It reaches beyond its line, but is seen within it.
            return false;
        }
        if (node instanceof Control && !(node instanceof Label) && !(node instanceof ScrollPane)) {
            return true;
        }
        boolean drawn = node instanceof Region region
                && (region.getBorder() != null || region.getBackground() != null)
                && (!(node instanceof Label) || node.getStyleClass().contains("sign"));
        return drawn || !(node instanceof Parent);
    }
}
