package easewright.alter;

import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A truing worked out on stitching lines, by whatever lines the pieces are drawn.
 *
 * @param was the pattern as it is sewn, before it
 * @param is  the same after it
 */
record SewnDrawing(Pattern was, Pattern is) {
    static SewnDrawing of(Pattern pattern, Trued what, Trued.Truer truer) throws Refusal {
        Pattern was = SewnCopy.of(pattern, Measures.of(pattern));
        Pattern is = was;
        try {
            for (Stroke stroke : truer.strokes(was, what)) {
                is = made(is, stroke);
            }
        } catch (IllegalArgumentException tornApart) {
            throw Refusal.of("truing-not-exact");
        }
        return new SewnDrawing(was, is);
    }

    private static Pattern made(Pattern pattern, Stroke stroke) throws Refusal {
        return pattern.withPiece(stroke.on(pattern.piece(stroke.piece()).orElseThrow()));
    }

    /** What is told of how it is drawn: where in one smooth curve, and by how much that lies off what was there. */
    List<Finding> findings() {
        List<Finding> told = new ArrayList<>();
        for (Piece before : was.pieces()) {
            Piece after = is.piece(before.id()).orElseThrow();
            if (before != after) {
                OneCurve.farthest(before, after)
                        .ifPresent(most -> told.add(Finding.of("trued-in-one-curve", Severity.NOTE, before.name())
                                .with("most", most)));
            }
        }
        return told;
    }

    /** Whether a curve lies too far from what was there. */
    boolean strays() {
        return was.pieces().stream()
                .anyMatch(before -> is.piece(before.id())
                        .filter(after -> after != before && OneCurve.strays(before, after))
                        .isPresent());
    }

    /** What draws it by the lines of the pieces. */
    List<Stroke> strokes(Pattern pattern) throws Refusal {
        List<Stroke> strokes = new ArrayList<>();
        try {
            for (Piece drawn : pattern.pieces()) {
                Piece before = was.piece(drawn.id()).orElseThrow();
                Piece after = is.piece(drawn.id()).orElseThrow();
                if (before != after) {
                    strokes.addAll(Redraw.strokes(drawn, before, after));
                }
            }
        } catch (IllegalArgumentException tornApart) {
            throw Refusal.of("truing-not-exact");
        }
        return strokes;
    }
}
