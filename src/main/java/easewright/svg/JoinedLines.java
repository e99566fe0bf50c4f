package easewright.svg;

import java.util.List;

/**
 * What loose lines draw together.
 *
 * @param outlines those that could be told for certain
 * @param tangles  sets of lines that may hold outlines which could not
 * @param givenUp  whether there were so many lines that none was looked at
 */
public record JoinedLines(List<JoinedOutline> outlines, List<Tangle> tangles, boolean givenUp) {
    public JoinedLines {
        outlines = List.copyOf(outlines);
        tangles = List.copyOf(tangles);
    }

    /**
     * Lines that hang together.
     *
     * @param shape    number of the shape of one of them
     * @param subPath  its sub-path
     * @param count    how many lines there are
     * @param branches whether three or more meet at some place; else they are merely too many
     */
    public record Tangle(int shape, int subPath, int count, boolean branches) {}

    JoinedLines withOutlines(List<JoinedOutline> named) {
        return new JoinedLines(named, tangles, givenUp);
    }
}
