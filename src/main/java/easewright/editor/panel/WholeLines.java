package easewright.editor.panel;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
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

    /** Less than this of a line is only its blank rim, pixels. */
    private static final double RIM = 2;

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

    static void on(ScrollPane page, Region content) {
        new WholeLines(page, content);
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
        List<double[]> cut = new ArrayList<>();
        gather(content, top, bottom, cut);
        double from = first(cut, top);
        double to = last(cut, bottom);
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

    private static double first(List<double[]> lines, double top) {
        double from = top;
        for (boolean again = true; again; ) {
            again = false;
            for (double[] line : lines) {
                if (line[0] < from - RIM && line[1] > from + RIM && line[1] < top + LINE) {
                    from = line[1];
                    again = true;
                }
            }
        }
        return from;
    }

    private static double last(List<double[]> lines, double bottom) {
        double to = bottom;
        for (boolean again = true; again; ) {
            again = false;
            for (double[] line : lines) {
                if (line[0] < to - RIM && line[1] > to + RIM && line[0] > bottom - LINE) {
                    to = line[0];
                    again = true;
                }
            }
        }
        return to;
    }

    /** The lines near the two edges: what is no higher than one, and of text its single lines. */
    private void gather(Node node, double top, double bottom, List<double[]> lines) {
        if (!node.isVisible()) {
            return;
        }
        Bounds at = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
        boolean far = at.getMaxY() < top - LINE
                || at.getMinY() > bottom + LINE
                || at.getMinY() > top + LINE && at.getMaxY() < bottom - LINE;
        if (node != content && far) {
            return;
        }
        if (node instanceof Text text) {
            int count = Math.max(
                    1, (int) Math.round(at.getHeight() / (text.getFont().getSize() * 1.2)));
            double high = at.getHeight() / count;
            for (int i = 0; i < count; i++) {
                lines.add(new double[] {at.getMinY() + i * high, at.getMinY() + (i + 1) * high});
            }
        } else if (isBox(node) && at.getHeight() <= LINE) {
            lines.add(new double[] {at.getMinY(), at.getMaxY()});
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(n -> gather(n, top, bottom, lines));
        }
    }

    /** What is seen by its own outline, and not only by what lies in it. */
    private static boolean isBox(Node node) {
        boolean drawn = node instanceof Region region
                && (region.getBorder() != null || region.getBackground() != null)
                && (!(node instanceof Label) || node.getStyleClass().contains("sign"));
        return drawn || !(node instanceof Parent);
    }
}
