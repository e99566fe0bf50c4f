package easewright.suggest;

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
    /** Words beside a small piece belong to it if no other is as near, mm. */
    private static final double BESIDE = 25;

    private final Map<String, List<Caption>> byPiece = new HashMap<>();
    private final List<Caption> elsewhere = new ArrayList<>();

    private PieceWords() {}

    static PieceWords of(Sheet sheet) {
        PieceWords words = new PieceWords();
        List<Caption> outside = new ArrayList<>();
        for (Caption caption : sheet.captions()) {
            Optional<Piece> piece = holding(sheet.pattern(), caption.middle());
            piece.ifPresentOrElse(p -> words.add(p, caption), () -> outside.add(caption));
        }
        for (Caption caption : outside) {
            Optional<Piece> nearest = nearest(sheet.pattern(), caption.middle());
            boolean takes = nearest.isPresent()
                    && words.on(nearest.get()).isEmpty()
                    && nearest.get().outline().nearest(caption.middle()).distance() <= BESIDE + caption.height();
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

    private static Optional<Piece> holding(Pattern pattern, Point at) {
        return pattern.pieces().stream()
                .filter(p -> p.outline().box().contains(at) && p.outline().contains(at))
                .min(Comparator.comparingDouble(p -> Math.abs(p.outline().signedArea())));
    }

    private static Optional<Piece> nearest(Pattern pattern, Point at) {
        return pattern.pieces().stream()
                .filter(p -> p.outline().box().grown(BESIDE + 20).contains(at))
                .min(Comparator.comparingDouble(p -> p.outline().nearest(at).distance()));
    }
}
