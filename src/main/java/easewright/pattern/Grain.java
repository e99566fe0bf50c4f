package easewright.pattern;

import easewright.geom.Point;

/** The grainline. Levels lie square to it. Without one, the grain is taken as the page's upright. */
public record Grain(Point from, Point to) {
    /**
     * @throws IllegalArgumentException if both ends are the same place
     */
    public Grain {
        if (from.equals(to)) {
            throw new Unfit("mark-grain-short", "A grainline needs two different ends");
        }
    }

    /** Unit direction of the grain. */
    public Point direction() {
        return to.minus(from).unit();
    }
}
