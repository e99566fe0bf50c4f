package easewright.svg;

import easewright.geom.Chain;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Segment;
import java.util.List;
import java.util.Optional;

/**
 * One stroke of a drawn shape, without lifting the pen. Millimetres.
 *
 * @param chain an outline if the end meets the start exactly, and was meant to; else a curve
 */
public record SubPath(Chain chain) {
    /**
     * @throws IllegalArgumentException if there is no segment, a gap between two, or a closed one does not close
     */
    public SubPath(List<Segment> segments, boolean closed) {
        this(closed ? new Outline(segments) : new Curve(segments));
    }

    public List<Segment> segments() {
        return chain.segments();
    }

    public boolean closed() {
        return chain instanceof Outline;
    }

    /** The outline, if it is closed. */
    public Optional<Outline> outline() {
        return chain instanceof Outline outline ? Optional.of(outline) : Optional.empty();
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SubPath s && chain.equals(s.chain);
    }

    @Override
    public int hashCode() {
        return chain.hashCode();
    }
}
