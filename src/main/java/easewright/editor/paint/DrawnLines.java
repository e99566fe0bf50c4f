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
    private Map<List<Segment>, Drawn> last = Map.of();
    private Map<List<Segment>, Drawn> now = new IdentityHashMap<>();

    /** One run of segments, each of its two forms made when first asked for. */
    private static final class Drawn {
        private List<DrawnLine> lines;
        private ScreenPath path;
    }

    /** Another picture begins; what the last one did not ask for is forgotten. */
    void begin(Viewport from) {
        last = from.equals(view) ? now : Map.of();
        now = new IdentityHashMap<>();
        view = from;
    }

    /** The lines along joined segments, for words that keep clear of them. */
    List<DrawnLine> along(List<Segment> segments) {
        Drawn drawn = drawn(segments);
        if (drawn.lines == null) {
            drawn.lines = DrawnLine.along(segments, view);
        }
        return drawn.lines;
    }

    /** The path along joined segments, to be drawn. */
    ScreenPath path(List<Segment> segments) {
        Drawn drawn = drawn(segments);
        if (drawn.path == null) {
            drawn.path = ScreenPath.of(segments, view);
        }
        return drawn.path;
    }

    private Drawn drawn(List<Segment> segments) {
        return now.computeIfAbsent(segments, s -> {
            Drawn known = last.get(s);
            return known == null ? new Drawn() : known;
        });
    }
}
