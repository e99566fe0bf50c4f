package easewright.geom;

/** A place on an outline or curve: which segment, and the parameter t from 0 to 1 on it. */
public record Place(int segment, double t) implements Comparable<Place> {
    /**
     * @throws IllegalArgumentException if the segment is negative or t is outside 0…1
     */
    public Place {
        if (segment < 0 || !(t >= 0 && t <= 1)) {
            throw new IllegalArgumentException("No such place: segment " + segment + ", t " + t);
        }
        // Minus zero is the same place as zero and must be equal to it.
        t += 0.0;
    }

    @Override
    public int compareTo(Place other) {
        int bySegment = Integer.compare(segment, other.segment);
        return bySegment != 0 ? bySegment : Double.compare(t, other.t);
    }

    /** Spelt out for speed, as in {@link Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Place p && segment == p.segment && Double.compare(t, p.t) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * segment + Double.hashCode(t);
    }
}
