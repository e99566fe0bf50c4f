package easewright.pattern;

import easewright.geom.Segment;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A drawn line that belongs to a piece and goes along with it when it changes: a hole, an inner line, the cutting
 * line around a stitching line. Segments need not join.
 *
 * @param id       the drawn element's id
 * @param original as it was before any recorded change, if one has drawn it anew: what a change cuts off or draws over could
 *                 not be told from what is there now
 */
public record Rider(String id, Kind kind, List<Segment> segments, Optional<List<Segment>> original) {
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
        original = original.map(List::copyOf);
    }

    /** A line that no change has drawn anew. */
    public Rider(String id, Kind kind, List<Segment> segments) {
        this(id, kind, segments, Optional.empty());
    }

    /** The same line as something else lets it lie, with all that is known of it; not for changes that are recorded. */
    public Rider withSegments(List<Segment> moved) {
        return new Rider(id, kind, moved, original);
    }

    /** The line as a recorded change draws it anew; how it was before the first of them stays known. */
    public Rider changed(List<Segment> anew) {
        return new Rider(id, kind, anew, Optional.of(original.orElse(segments)));
    }

    /** The same line, going along in another way. */
    public Rider as(Kind other) {
        return new Rider(id, other, segments, original);
    }

    /** The line as it was before any recorded change. */
    public Rider asDrawn() {
        return original.map(was -> new Rider(id, kind, was)).orElse(this);
    }

    /** The line as it is, when it is not known what it was. */
    public Rider unknownAsDrawn() {
        return original.isEmpty() ? this : new Rider(id, kind, segments);
    }

    /** The same line lying elsewhere, and so what it was. */
    public Rider mapped(UnaryOperator<List<Segment>> lies) {
        return new Rider(id, kind, lies.apply(segments), original.map(lies));
    }
}
