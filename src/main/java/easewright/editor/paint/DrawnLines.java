package easewright.editor.paint;

import easewright.geom.Segment;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines as they lie on the screen, kept from one picture to the next: what is the same object and is seen from the same
 * place lies where it lay.
 */
public final class DrawnLines {
    private Viewport view;
    private Map<List<Segment>, List<DrawnLine>> last = Map.of();
    private Map<List<Segment>, List<DrawnLine>> now = new IdentityHashMap<>();

    /** Another picture begins; what the last one did not ask for is forgotten. */
    void begin(Viewport from) {
        last = from.equals(view) ? now : Map.of();
        now = new IdentityHashMap<>();
        view = from;
    }

    /** The lines along joined segments. */
    List<DrawnLine> along(List<Segment> segments) {
        List<DrawnLine> lines = last.get(segments);
        if (lines == null) {
            lines = DrawnLine.along(segments, view);
        }
        now.put(segments, lines);
        return lines;
    }
}
