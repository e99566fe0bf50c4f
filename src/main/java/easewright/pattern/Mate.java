package easewright.pattern;

import java.util.List;

/**
 * Two seam lines that are sewn together, each made of one or more edges.
 *
 * @param declaredEase by how much the first is meant to be longer than the second, mm (a sleeve cap longer than its
 *                     armhole; negative where it is meant to be shorter and stretched)
 */
public record Mate(String name, List<EdgeRef> first, List<EdgeRef> second, double declaredEase) {
    /**
     * @throws IllegalArgumentException if the name is blank, a side is empty or the ease is not finite
     */
    public Mate {
        Names.require(name, "mate");
        first = List.copyOf(first);
        second = List.copyOf(second);
        if (first.isEmpty() || second.isEmpty()) {
            throw new Unfit("mark-side-empty", "Mate " + name + " needs an edge on each side");
        }
        if (!Double.isFinite(declaredEase)) {
            throw new IllegalArgumentException("Mate " + name + " has an ease that is no number");
        }
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Mate m
                && name.equals(m.name)
                && first.equals(m.first)
                && second.equals(m.second)
                && Double.compare(declaredEase, m.declaredEase) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * name.hashCode() + first.hashCode()) + second.hashCode();
    }
}
