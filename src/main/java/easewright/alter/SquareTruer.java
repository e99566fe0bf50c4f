package easewright.alter;

import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes waist, neck and hem leave a fold or centre line square, so that both halves join in a smooth line. */
final class SquareTruer implements Trued.Truer {
    private static final Set<EdgeRole> LEAVE_SQUARE = EnumSet.of(EdgeRole.WAIST, EdgeRole.NECK, EdgeRole.HEM);
    private static final Set<EdgeRole> MIDDLE = EnumSet.of(EdgeRole.FOLD, EdgeRole.CENTRE);

    private final boolean inOneCurve;

    /**
     * @param inOneCurve as in {@link CornerBend}
     */
    SquareTruer(boolean inOneCurve) {
        this.inOneCurve = inOneCurve;
    }

    /** All corners at folds and centre lines. */
    static List<SewnCorner> corners(List<Piece> pieces, SewnPieces sewn) {
        List<SewnCorner> corners = new ArrayList<>();
        for (Piece piece : pieces) {
            for (Edge guide : piece.edges()) {
                if (MIDDLE.contains(guide.role())) {
                    for (boolean atEnd : new boolean[] {false, true}) {
                        SewnCorner.of(sewn.of(piece), guide, atEnd)
                                .filter(c -> LEAVE_SQUARE.contains(c.edge().role()))
                                .ifPresent(corners::add);
                    }
                }
            }
        }
        return corners;
    }

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        EdgeRef ref = ref(what.target(Trued.EDGE));
        // The corner is told by the edge that bends; its own end there is the other way round from the guide's.
        boolean guideAtEnd = what.target(Trued.END).equals("start");
        Piece piece = Known.piece(pattern, ref.piece());
        Optional<SewnCorner> corner = corners(pattern.pieces(), new SewnPieces(pattern, Measures.of(pattern))).stream()
                .filter(c -> c.piece().id().equals(piece.id())
                        && c.edge().name().equals(ref.edge())
                        && c.guideAtEnd() == guideAtEnd)
                .findFirst();
        SewnCorner there = corner.orElseThrow(
                () -> Refusal.of("corner-unknown").with("piece", piece.name()).with("edge", ref.edge()));
        JoinTruer.requireMayChange(there, what.acceptProtected());
        CornerBend bend = bend(there, inOneCurve);
        if (there.guide().isProtected() && !what.acceptProtected() && bend.movesGuide()) {
            throw Refusal.of("edge-protected")
                    .with("piece", piece.name())
                    .with("edge", there.guide().name());
        }
        return bend.strokes();
    }

    private static CornerBend bend(SewnCorner corner, boolean inOneCurve) {
        return new CornerBend(corner, Math.PI / 2 - corner.angle(), inOneCurve);
    }

    /** Whether the corner has to move along the fold or centre line, because the edge must keep its length. */
    static boolean movesGuide(SewnCorner corner) {
        try {
            return bend(corner, false).movesGuide();
        } catch (Refusal cannot) {
            return false;
        }
    }

    static EdgeRef ref(String text) throws Refusal {
        try {
            return EdgeRef.parse(text);
        } catch (IllegalArgumentException malformed) {
            throw Refusal.of("note-setting-unreadable").with("setting", "edge").with("text", text);
        }
    }
}
