package easewright.suggest;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which words are written on which piece. */
final class PieceWords {
    /**
     * Words beside a piece belong to it if no other is as near: so far away at most, as a part of the way across all that is
     * drawn. In mm a piece would lose its name when the scale is set.
     */
    private static final double BESIDE = 0.03;

    /** The largest size of a piece has at most so many times the area of the smallest. */
    private static final double MOST_GRADED = 2.5;

    private final Map<String, List<Caption>> byPiece = new HashMap<>();
    private final List<Caption> elsewhere = new ArrayList<>();

    private PieceWords() {}

    static PieceWords of(Sheet sheet) {
        PieceWords words = new PieceWords();
        List<Caption> outside = new ArrayList<>();
        Map<String, String> sizes = PieceSize.ofNest(sheet);
        for (Caption caption : sheet.captions()) {
            List<Piece> holding = holding(sheet.pattern(), sizes, caption.middle());
            holding.forEach(p -> words.add(p, caption));
            if (holding.isEmpty()) {
                outside.add(caption);
            }
        }
        double beside = BESIDE * across(sheet.pattern());
        for (Caption caption : outside) {
            Optional<Piece> nearest = nearest(sheet.pattern(), caption.middle());
            boolean takes = nearest.isPresent()
                    && words.on(nearest.get()).isEmpty()
                    && nearest.get().outline().nearest(caption.middle()).distance() <= beside + caption.height();
            if (takes) {
                words.add(nearest.get(), caption);
            } else {
                words.elsewhere.add(caption);
            }
        }
        return words;
    }

    private void add(Piece piece, Caption caption) {
        byPiece.computeIfAbsent(piece.id(), id -> new ArrayList<>()).add(caption);
    }

    List<Caption> on(Piece piece) {
        return byPiece.getOrDefault(piece.id(), List.of());
    }

    /** Words on no piece, such as the garment's name. */
    List<Caption> elsewhere() {
        return elsewhere;
    }

    /** The smallest piece around the words, and with it other sizes of it that lie on it. */
    private static List<Piece> holding(Pattern pattern, Map<String, String> sizes, Point at) {
        List<Piece> all = pattern.pieces().stream()
                .filter(p -> p.outline().box().contains(at) && p.outline().contains(at))
                .sorted(Comparator.comparingDouble(PieceWords::area))
                .toList();
        if (all.size() < 2) {
            return all;
        }
        Piece first = all.get(0);
        return all.stream()
                .filter(p -> p == first
                        || sizes.containsKey(p.id())
                                && sizes.containsKey(first.id())
                                && !sizes.get(p.id()).equals(sizes.get(first.id()))
                                && area(p) <= MOST_GRADED * area(first))
                .toList();
    }

    private static double area(Piece piece) {
        return Math.abs(piece.outline().signedArea());
    }

    private static Optional<Piece> nearest(Pattern pattern, Point at) {
        return pattern.pieces().stream()
                .min(Comparator.comparingDouble(p -> p.outline().nearest(at).distance()));
    }

    private static double across(Pattern pattern) {
        return pattern.pieces().stream()
                .map(p -> p.outline().box())
                .reduce(Box::union)
                .map(box -> Math.hypot(box.width(), box.height()))
                .orElse(0.0);
    }

    /** What is written beside the pieces, in one: what the garment is called may be among it. */
    String beside() {
        return String.join(" ", elsewhere().stream().map(Caption::words).toList());
    }
}
