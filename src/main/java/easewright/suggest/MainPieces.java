package easewright.suggest;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which pieces are halves of a skirt, judged beside the others on the sheet: a pocket has the form of one too, but is
 * small beside what it is sewn on. Measures are common practice.
 */
final class MainPieces {
    /** A piece of this part of the largest one's area, or more, is no small part of the garment. */
    private static final double LEAST_OF_LARGEST = 0.25;

    /** A half of a skirt is as long as this by itself, mm. */
    private static final double SKIRT_LENGTH = 280;

    /** A shorter one, as for a child, needs another beside it as long as itself. */
    private static final double SHORTEST = 120;

    private static final double LENGTHS_ALIKE = 0.15;
    private static final double AREAS_ALIKE = 1.8;

    /** A front is wider than its back by less than this, unless it is gathered or reaches over the centre. */
    private static final double WIDER = 1.3;

    /**
     * Another half beside a wide one.
     *
     * @param own  width of the wide one, mm
     * @param wide of the other, mm
     */
    record Narrower(String name, double own, double wide) {}

    private record Half(Piece piece, double length, double width, double area) {
        boolean isLikeAsLong(Half other) {
            return Math.abs(length - other.length) <= LENGTHS_ALIKE * Math.max(length, other.length);
        }

        boolean isLikeAsLarge(Half other) {
            return Math.max(area, other.area) <= AREAS_ALIKE * Math.min(area, other.area);
        }
    }

    private final Map<String, Half> halves = new LinkedHashMap<>();

    MainPieces(Pattern pattern) {
        double largest =
                pattern.pieces().stream().mapToDouble(MainPieces::area).max().orElse(0);
        for (Piece piece : pattern.pieces()) {
            if (area(piece) >= LEAST_OF_LARGEST * largest) {
                half(piece).ifPresent(half -> halves.put(piece.id(), half));
            }
        }
    }

    private static double area(Piece piece) {
        return Math.abs(piece.outline().signedArea());
    }

    private static Optional<Half> half(Piece piece) {
        return RunsOfPiece.of(piece)
                .map(RunsOfPiece::form)
                .filter(form -> SkirtHalf.of(form).isPresent())
                .map(form -> new Half(piece, form.length(), form.width(), area(piece)));
    }

    boolean isSkirtHalf(Piece piece) {
        Half half = halves.get(piece.id());
        if (half == null || half.length() < SHORTEST) {
            return false;
        }
        return half.length() >= SKIRT_LENGTH
                || halves.values().stream().anyMatch(o -> o != half && half.isLikeAsLong(o) && half.isLikeAsLarge(o));
    }

    /** The widest of other halves as long as this one, if all of them are much narrower. */
    Optional<Narrower> narrower(Piece piece) {
        Half half = halves.get(piece.id());
        if (half == null) {
            return Optional.empty();
        }
        return halves.values().stream()
                .filter(o -> o != half && half.isLikeAsLong(o))
                .max((a, b) -> Double.compare(a.width(), b.width()))
                .filter(o -> half.width() > WIDER * o.width())
                .map(o -> new Narrower(o.piece().name(), half.width(), o.width()));
    }
}
