package easewright.check;

import easewright.geom.Box;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Pieces of no size that lie on each other and are about as large: sizes of a nest, most likely, of which all would be
 * added up in one girth.
 */
final class PiecesOnEachOther implements Rule {
    /** What they have in common is at least this part of what they cover together. */
    private static final double SAME_PLACE = 0.75;

    /** A number that a drawing program or the reader gave to an element. */
    private static final Pattern NUMBERED = Pattern.compile("[A-Za-z]*[-_ #]*\\d[-_ #\\d]*");

    /** More pieces than this are not compared with each other. */
    private static final int MOST = 300;

    @Override
    public List<Finding> look(Sight sight) {
        List<Piece> pieces = sight.pattern().pieces().stream()
                .filter(p -> p.size().isEmpty() && p.side() == Side.BOTH)
                .limit(MOST)
                .toList();
        List<String> names = new ArrayList<>();
        for (Piece one : pieces) {
            boolean under =
                    pieces.stream().anyMatch(other -> other != one && mayBeOne(one, other) && inSamePlace(one, other));
            if (under) {
                names.add(one.name());
            }
        }
        return names.isEmpty()
                ? List.of()
                : List.of(Finding.of("pieces-on-each-other", Severity.CAUTION, "")
                        .with("pieces", names)
                        .with("count", names.size()));
    }

    /** A front and a back may be drafted on each other; what has only a number, or the same name, may be a size. */
    private static boolean mayBeOne(Piece one, Piece other) {
        return NUMBERED.matcher(one.name()).matches()
                || NUMBERED.matcher(other.name()).matches()
                || stem(one).equals(stem(other));
    }

    private static String stem(Piece piece) {
        return piece.name().replaceFirst("[\\s_-]*\\d+$", "");
    }

    private static boolean inSamePlace(Piece one, Piece other) {
        Box a = one.outline().box();
        Box b = other.outline().box();
        double wide = Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX());
        double tall = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
        if (wide <= 0 || tall <= 0) {
            return false;
        }
        Box both = a.union(b);
        double least = Math.min(
                Math.abs(one.outline().signedArea()), Math.abs(other.outline().signedArea()));
        double most = Math.max(
                Math.abs(one.outline().signedArea()), Math.abs(other.outline().signedArea()));
        return wide * tall >= SAME_PLACE * both.width() * both.height() && least >= SAME_PLACE * most;
    }
}
