package easewright.alter;

import easewright.pattern.EdgeRef;

/** How large a part of the whole change an edge takes, relative to the other shares. */
public record Share(EdgeRef edge, double weight) {
    /**
     * @throws IllegalArgumentException unless the weight is a number above 0
     */
    public Share {
        if (!(weight > 0 && Double.isFinite(weight))) {
            throw new IllegalArgumentException("The share of edge " + edge + " must be above 0");
        }
    }

    public static Share of(String piece, String edge) {
        return new Share(EdgeRef.of(piece, edge), 1);
    }
}
