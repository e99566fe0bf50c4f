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
}
