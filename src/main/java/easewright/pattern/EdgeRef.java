package easewright.pattern;

/**
 * An edge of a piece, taken a number of times: {@code front/side}, {@code back/waist*2}.
 *
 * @param times how often the drawn run counts in the sum (2 for a half drawn on the fold)
 */
public record EdgeRef(String piece, String edge, int times) {
    /**
     * @throws IllegalArgumentException if a name is blank or {@code times} below 1
     */
    public EdgeRef {
        Names.require(piece, "piece");
        Names.require(edge, "edge");
        if (times < 1) {
            throw new IllegalArgumentException("An edge must count at least once");
        }
    }

    public static EdgeRef of(String piece, String edge) {
        return new EdgeRef(piece, edge, 1);
    }

    /**
     * Reads {@code piece/edge} or {@code piece/edge*times}.
     *
     * @throws IllegalArgumentException if the text has another form
     */
    public static EdgeRef parse(String text) {
        int slash = text.lastIndexOf('/');
        int star = text.lastIndexOf('*');
        if (slash <= 0) {
            throw new IllegalArgumentException("Expected piece/edge, got: " + text);
        }
        if (star < slash) {
            return of(
                    text.substring(0, slash).strip(), text.substring(slash + 1).strip());
        }
        try {
            return new EdgeRef(
                    text.substring(0, slash).strip(),
                    text.substring(slash + 1, star).strip(),
                    Integer.parseInt(text.substring(star + 1).strip()));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("Expected a whole number after *, got: " + text, e);
        }
    }

    @Override
    public String toString() {
        return piece + "/" + edge + (times == 1 ? "" : "*" + times);
    }

    /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
    @Override
    public boolean equals(Object other) {
        return other instanceof EdgeRef e && piece.equals(e.piece) && edge.equals(e.edge) && times == e.times;
    }

    @Override
    public int hashCode() {
        return 31 * piece.hashCode() + edge.hashCode();
    }
}
