package easewright.backdrop;

import java.util.HashSet;
import java.util.Set;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.InterruptedBridgeException;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Element;

/** Leaves out an element that cannot be painted instead of giving the whole drawing up, and knows when it is too much. */
final class LenientBuilder extends GVTBuilder {
    /** More than this, what is copied included, is not painted. */
    static final int MOST = 100_000;

    /** Copies of copies multiply. */
    private static final int MOST_COPIES = 5_000;

    /** Copies inside copies nest no deeper than this. */
    private static final int DEEPEST = 300;

    /** What is being copied: a copy of something within itself would have no end. */
    private final Set<String> copying = new HashSet<>();

    private int copies;
    private int built;
    private int depth;

    /** What a copy shows, which comes this way and not by the other. */
    @Override
    public GraphicsNode build(BridgeContext context, Element element) {
        String copied = copied(element);
        if (!enter(copied)) {
            throw new BridgeException(context, element, "a copy within itself");
        }
        try {
            return super.build(context, element);
        } finally {
            leave(copied);
        }
    }

    @Override
    protected void buildGraphicsNode(BridgeContext context, Element element, CompositeGraphicsNode parent) {
        String copied = copied(element);
        if (!enter(copied)) {
            return;
        }
        try {
            super.buildGraphicsNode(context, element, parent);
        } catch (InterruptedBridgeException e) {
            throw e;
        } catch (BridgeException | IllegalArgumentException | IllegalStateException | NullPointerException e) {
            // Whatever is wrong with this one element is wrong with it alone; the others are still to be seen.
            return;
        } finally {
            leave(copied);
        }
    }

    private static String copied(Element element) {
        return element.getLocalName().equals("use") ? element.getAttributeNS(SceneryDocument.XLINK, "href") : "";
    }

    private boolean enter(String copied) {
        copies += copied.isEmpty() ? 0 : 1;
        if (++built > MOST || copies > MOST_COPIES || Thread.currentThread().isInterrupted()) {
            throw new InterruptedBridgeException();
        }
        boolean open = depth < DEEPEST && (copied.isEmpty() || copying.add(copied));
        depth += open ? 1 : 0;
        return open;
    }

    private void leave(String copied) {
        depth--;
        copying.remove(copied);
    }
}
