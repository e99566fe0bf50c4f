package easewright.svg;

import easewright.geom.Chain;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Segment;
import java.util.List;
import java.util.Optional;

/**
 * One stroke of a drawn shape, without lifting the pen; segments join end to start. Millimetres.
 *
 * @param closed the end meets the start exactly, and was meant to
 */
public record SubPath(List<Segment> segments, boolean closed) {
    /**
     * @throws IllegalArgumentException if there is no segment, a gap between two, or a closed one does not close
     */
    public SubPath {
        segments = List.copyOf(segments);
        Chain chain = closed ? new Outline(segments) : new Curve(segments);
        segments = chain.segments();
    }

    /** The outline, if it is closed. */
    public Optional<Outline> outline() {
        return closed ? Optional.of(new Outline(segments)) : Optional.empty();
    }
}
