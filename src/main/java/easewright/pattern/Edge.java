package easewright.pattern;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.OptionalDouble;

/**
 * A named run of a piece's outline, from one corner to another in the direction in which the outline is drawn.
 * The whole outline where both are the same point.
 *
 * @param allowance seam or hem allowance on this edge in mm; empty: the piece's own
 */
public record Edge(String name, EdgeRole role, Point from, Point to, boolean isProtected, OptionalDouble allowance) {
    /**
     * @throws IllegalArgumentException if the name is blank or the allowance is negative or not finite
     */
    public Edge {
        Names.require(name, "edge");
        if (allowance.isPresent() && !(allowance.getAsDouble() >= 0 && Double.isFinite(allowance.getAsDouble()))) {
            throw new Unfit("mark-allowance-negative", "Allowance of edge " + name + " must be 0 or more");
        }
    }

    /** An edge that is protected, or not, as its role has it, with the piece's allowance. */
    public static Edge of(String name, EdgeRole role, Point from, Point to) {
        return new Edge(name, role, from, to, role.protectedByDefault(), OptionalDouble.empty());
    }

    /** The edge's run on an outline. */
    public Curve on(Outline outline) {
        return outline.run(outline.nearest(from).place(), outline.nearest(to).place());
    }

    public Edge withEnds(Point newFrom, Point newTo) {
        return new Edge(name, role, newFrom, newTo, isProtected, allowance);
    }

    public Edge withProtected(boolean keep) {
        return new Edge(name, role, from, to, keep, allowance);
    }
}
