package easewright.backdrop;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;

/** The shapes of a drawing, however deep the groups lie in which they are: a hostile one may nest without end. */
final class ShapeNodes {
    private ShapeNodes() {}

    /** Goes through all shapes that are painted. */
    static void each(GraphicsNode root, Consumer<ShapeNode> taker) {
        Deque<GraphicsNode> waiting = new ArrayDeque<>();
        waiting.push(root);
        while (!waiting.isEmpty()) {
            GraphicsNode node = waiting.pop();
            if (node instanceof CompositeGraphicsNode group) {
                for (Object child : group.getChildren()) {
                    waiting.push((GraphicsNode) child);
                }
            } else if (node instanceof ShapeNode shape && shape.getShapePainter() != null) {
                taker.accept(shape);
            }
        }
    }
}
