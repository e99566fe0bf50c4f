package easewright.alter;

import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes a line that goes on across a seam smooth: each piece bends its own part. */
final class JoinTruer implements Trued.Truer {
    /** Lines that a garment has in one, whatever seams cross them. */
    private static final Set<EdgeRole> GO_ON =
            EnumSet.of(EdgeRole.WAIST, EdgeRole.HEM, EdgeRole.NECK, EdgeRole.ARMHOLE, EdgeRole.CAP, EdgeRole.CROTCH);

    private final boolean inOneCurve;

    /**
     * @param inOneCurve as in {@link CornerBend}
     */
    JoinTruer(boolean inOneCurve) {
        this.inOneCurve = inOneCurve;
    }

    /**
     * Two corners that are sewn onto one another.
     *
     * @param bends by how much the joined line misses a straight angle, radians; above 0 it has a dip
     */
    record Joint(Mate mate, boolean atEnd, SewnCorner first, SewnCorner second) {
        double missing() {
            return Math.PI - first.angle() - second.angle();
        }

        /**
         * What the first line bends by, radians: half of what is missing. In the middle of the body each half is to be
         * square as at a fold, so that there the one that is not makes good what is missing, or each its own part.
         */
        double ofFirst() {
            boolean inMiddle =
                    first.guide().role() == EdgeRole.CENTRE && second.guide().role() == EdgeRole.CENTRE;
            if (!inMiddle) {
                return missing() / 2;
            }
            double one = Math.PI / 2 - first.angle();
            double other = Math.PI / 2 - second.angle();
            if (one * other > 0) {
                return one;
            }
            return Math.abs(one) > Math.abs(other) ? missing() : 0;
        }
    }

    /** The joints of a pattern whose mates are one edge on either side. */
    static List<Joint> joints(Pattern pattern, GarmentMeasures measures, List<Mate> mates, SewnPieces sewn) {
        List<Joint> joints = new ArrayList<>();
        for (Mate mate : mates) {
            for (boolean atEnd : new boolean[] {false, true}) {
                joint(pattern, measures, sewn, mate, atEnd).ifPresent(joints::add);
            }
        }
        return joints;
    }

    private static Optional<Joint> joint(
            Pattern pattern, GarmentMeasures measures, SewnPieces sewn, Mate mate, boolean atEnd) {
        if (mate.first().size() != 1 || mate.second().size() != 1) {
            return Optional.empty();
        }
        Optional<SewnCorner> first = corner(pattern, sewn, mate.first().get(0), atEnd);
        Optional<Boolean> crossed = crossed(pattern, measures, sewn, mate);
        Optional<SewnCorner> second =
                crossed.flatMap(c -> corner(pattern, sewn, mate.second().get(0), atEnd != c));
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        EdgeRole role = first.get().edge().role();
        boolean goesOn = GO_ON.contains(role) && role == second.get().edge().role();
        return goesOn ? Optional.of(new Joint(mate, atEnd, first.get(), second.get())) : Optional.empty();
    }

    private static Optional<SewnCorner> corner(Pattern pattern, SewnPieces sewn, EdgeRef ref, boolean atEnd) {
        Optional<Piece> piece = pattern.piece(ref.piece());
        Optional<Edge> edge = pattern.edge(ref);
        return piece.isEmpty() || edge.isEmpty()
                ? Optional.empty()
                : SewnCorner.of(sewn.of(piece.get()), edge.get(), atEnd);
    }

    /** Whether the seams are drawn in opposite directions: told by what lies beside their ends, else by their notches. */
    private static Optional<Boolean> crossed(Pattern pattern, GarmentMeasures measures, SewnPieces sewn, Mate mate) {
        List<Optional<EdgeRole>> roles = new ArrayList<>();
        for (EdgeRef ref : List.of(mate.first().get(0), mate.second().get(0))) {
            for (boolean atEnd : new boolean[] {false, true}) {
                roles.add(corner(pattern, sewn, ref, atEnd).map(c -> c.edge().role()));
            }
        }
        boolean straight = roles.get(0).equals(roles.get(2)) && roles.get(1).equals(roles.get(3));
        boolean across = roles.get(0).equals(roles.get(3)) && roles.get(1).equals(roles.get(2));
        if (straight != across) {
            return Optional.of(across);
        }
        if (!straight) {
            return Optional.empty();
        }
        Optional<MateWalk> walk = measures.mate(mate.name());
        return walk.filter(w -> !w.notches().isEmpty()).flatMap(w -> NotchTruer.crossed(pattern, sewn, w));
    }

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        Joint joint = joint(pattern, what);
        double first = joint.ofFirst();
        List<Stroke> strokes = new ArrayList<>();
        Pattern now = pattern;
        for (SewnCorner corner : List.of(joint.first(), joint.second())) {
            requireMayChange(corner, what.acceptProtected());
            // Both corners may be of one piece, such as a sleeve: the second is seen on what the first has left.
            Piece piece = now.piece(corner.piece().id()).orElseThrow();
            SewnPiece sewn = new SewnPiece(piece, pattern.levels());
            SewnCorner there = SewnCorner.of(
                            sewn, piece.edge(corner.guide().name()).orElseThrow(), corner.guideAtEnd())
                    .orElseThrow(() -> Refusal.of("truing-not-exact"));
            double own = corner == joint.first() ? first : joint.missing() - first;
            if (own == 0) {
                continue;
            }
            for (Stroke stroke : new CornerBend(there, own, inOneCurve).strokes()) {
                now = now.withPiece(stroke.on(now.piece(piece.id()).orElseThrow()));
                strokes.add(stroke);
            }
        }
        return strokes;
    }

    /** The joint that is meant, of a pattern drawn by its stitching lines. */
    static Joint joint(Pattern pattern, Trued what) throws Refusal {
        String name = what.target(Trued.MATE);
        boolean atEnd = what.target(Trued.END).equals("end");
        Mate mate = pattern.mates().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow(() -> Refusal.of("mate-unknown").with("mate", name));
        GarmentMeasures measures = Measures.of(pattern);
        return joint(pattern, measures, new SewnPieces(pattern, measures), mate, atEnd)
                .orElseThrow(() -> Refusal.of("joint-unknown").with("mate", name));
    }

    static void requireMayChange(SewnCorner corner, boolean acceptProtected) throws Refusal {
        if (corner.edge().isProtected() && !acceptProtected) {
            throw Refusal.of("edge-protected")
                    .with("piece", corner.piece().name())
                    .with("edge", corner.edge().name());
        }
    }
}
