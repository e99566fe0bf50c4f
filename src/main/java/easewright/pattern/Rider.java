package easewright.pattern;

import easewright.geom.Segment;
import java.util.List;

/**
 * A drawn line that belongs to a piece and goes along with it when it changes: a hole, an inner line, the cutting
 * line around a stitching line. Segments need not join.
 *
 * @param id the drawn element's id
 */
public record Rider(String id, Kind kind, List<Segment> segments) {
    /** How the line goes along. */
    public enum Kind {
        /** Moves only with a part of the piece that moves as a whole. */
        INNER,
        /** Keeps its distance from the outline (a cutting line drawn around the stitching line). */
        PARALLEL,
        /**
         * A mark drawn at the outline, such as a notch tick or a level from edge to edge: each end of each segment
         * goes with the place of the outline nearest to it.
         */
        ATTACHED
    }

    public Rider {
        segments = List.copyOf(segments);
    }

    public Rider withSegments(List<Segment> moved) {
        return new Rider(id, kind, moved);
    }
}
