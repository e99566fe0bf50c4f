package easewright.check;

import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.suggest.TwoLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A closed line beside the outline of a piece of which nobody said what it is stays where it is when the piece changes,
 * and an allowance drawn by hand then shrinks without a word.
 */
public final class LinesSaid implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (Piece piece : sight.pieces()) {
            if (mayHaveOne(piece)) {
                piece.riders().stream()
                        .filter(r -> r.kind() == Rider.Kind.INNER)
                        .flatMap(
                                r -> beside(piece, r)
                                        .filter(TwoLines.Beside::even)
                                        .map(beside -> finding(piece, r, beside))
                                        .stream())
                        .findFirst()
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    /**
     * The same for lines that belong to no piece.
     *
     * @param loose closed lines of the drawing, at the scale of the pattern
     */
    public static List<Finding> around(Pattern pattern, List<Rider> loose) {
        List<Finding> findings = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (mayHaveOne(piece)) {
                loose.stream()
                        .flatMap(r -> beside(piece, r).map(beside -> finding(piece, r, beside)).stream())
                        .findFirst()
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static boolean mayHaveOne(Piece piece) {
        return piece.riders().stream().noneMatch(r -> r.kind() == Rider.Kind.PARALLEL);
    }

    private static Optional<TwoLines.Beside> beside(Piece piece, Rider rider) {
        List<Segment> line = rider.segments();
        boolean closed = line.size() > 1
                && line.get(line.size() - 1).end().equals(line.get(0).start())
                && joined(line);
        return closed ? TwoLines.beside(piece, new Outline(line)) : Optional.empty();
    }

    private static boolean joined(List<Segment> line) {
        for (int i = 1; i < line.size(); i++) {
            if (!line.get(i - 1).end().equals(line.get(i).start())) {
                return false;
            }
        }
        return true;
    }

    private static Finding finding(Piece piece, Rider line, TwoLines.Beside beside) {
        return Finding.of(beside.around() ? "line-around-unsaid" : "line-inside-unsaid", Severity.CAUTION, piece.name())
                .with("line", line.id())
                .with("usual", beside.usual());
    }
}
