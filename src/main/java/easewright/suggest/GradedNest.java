package easewright.suggest;

import easewright.geom.Box;
import easewright.geom.Spacing;
import easewright.pattern.NumberedNames;
import easewright.pattern.Piece;
import easewright.pattern.SizeNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Pieces that lie on each other as sizes do, where neither layers nor words on them say so: numbered from the smallest, or
 * called by as many sizes as stand elsewhere on the sheet.
 *
 * @param sizes by the ids of the pieces
 */
record GradedNest(Map<String, String> sizes, Reason reason) {
    static final GradedNest NONE = new GradedNest(Map.of(), Reason.of("graded-nest", 0));

    /** What two sizes have in common is at least this part of what they cover together. */
    private static final double SAME_PLACE = 0.6;

    private static final double LEAST_OF_AREA = 0.7;

    /** With more pieces than this on a sheet each is not compared with each. */
    private static final int MOST = 120;

    GradedNest {
        sizes = Map.copyOf(sizes);
    }

    /**
     * Whether it says the size of a piece.
     *
     * @param named the size in the piece's name; null where it has none
     */
    boolean calls(Piece piece, String named) {
        String size = sizes.get(piece.id());
        return size != null && (named == null || named.equals(size));
    }

    static GradedNest on(Sheet sheet) {
        List<Piece> pieces = sheet.pattern().pieces();
        if (pieces.size() > MOST || pieces.stream().anyMatch(p -> !p.edges().isEmpty())) {
            return NONE;
        }
        List<List<Piece>> nests = nests(pieces);
        Set<Integer> counts = new HashSet<>();
        nests.forEach(n -> counts.add(n.size()));
        if (counts.size() != 1) {
            return NONE;
        }
        int count = nests.get(0).size();
        Optional<List<String>> run = run(sheet, count);
        if (run.isEmpty() && namesOtherwise(sheet)) {
            return NONE;
        }
        Map<String, String> sizes = new HashMap<>();
        for (List<Piece> nest : nests) {
            for (int i = 0; i < count; i++) {
                sizes.put(nest.get(i).id(), run.isPresent() ? run.get().get(i) : String.valueOf(i + 1));
            }
        }
        return new GradedNest(
                sizes, run.isPresent() ? Reason.of("graded-nest-named", 0.6) : Reason.of("graded-nest", 0.45));
    }

    /** Pieces that lie on each other, the smallest first; those that lie on no other are in none. */
    private static List<List<Piece>> nests(List<Piece> pieces) {
        List<Piece> rising = new ArrayList<>(pieces);
        rising.sort(Comparator.comparingDouble(GradedNest::area));
        List<List<Piece>> nests = new ArrayList<>();
        for (Piece piece : rising) {
            nests.stream()
                    .filter(n -> lieOnEachOther(n.get(n.size() - 1), piece))
                    .findFirst()
                    .ifPresentOrElse(n -> n.add(piece), () -> nests.add(new ArrayList<>(List.of(piece))));
        }
        nests.removeIf(n -> n.size() < 2);
        return nests;
    }

    private static boolean lieOnEachOther(Piece smaller, Piece larger) {
        Box a = smaller.outline().box();
        Box b = larger.outline().box();
        Box both = a.union(b);
        Optional<Box> shared = a.shared(b);
        return shared.isPresent()
                && shared.get().width() * shared.get().height() >= SAME_PLACE * both.width() * both.height()
                && area(smaller) >= LEAST_OF_AREA * area(larger)
                && mayBeCalledAlike(smaller, larger)
                && areNear(smaller, larger);
    }

    /** What the file calls by two names are two things: a front and its lining. */
    private static boolean mayBeCalledAlike(Piece one, Piece other) {
        return NumberedNames.isNumbered(one.name())
                || NumberedNames.isNumbered(other.name())
                || stem(one).equals(stem(other));
    }

    private static String stem(Piece piece) {
        return piece.name()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}]+", " ")
                .strip();
    }

    private static boolean areNear(Piece smaller, Piece larger) {
        Spacing spacing = Spacing.of(smaller.outline(), larger.outline());
        return spacing.most() <= Grading.FARTHEST && !spacing.isOneLine();
    }

    private static double area(Piece piece) {
        return Math.abs(piece.outline().signedArea());
    }

    /** As many sizes as some words on the sheet name. */
    private static Optional<List<String>> run(Sheet sheet, int count) {
        return sheet.captions().stream()
                .flatMap(c -> c.lines().stream())
                .map(SizeNames::run)
                .filter(run -> run.size() == count)
                .findFirst();
    }

    /** Whether words name another number of sizes: then what lies there is something else. */
    private static boolean namesOtherwise(Sheet sheet) {
        return sheet.captions().stream()
                .flatMap(c -> c.lines().stream())
                .anyMatch(line -> SizeNames.run(line).size() > 1);
    }
}
