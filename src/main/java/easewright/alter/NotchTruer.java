package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Nearest;
import easewright.geom.Point;
import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.measure.NotchMeeting;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Moves a notch so that it meets its partner, counted from that end of the seam which is protected, or else the one that
 * is not at the hem (docs/sources.md 4.5).
 */
final class NotchTruer implements Trued.Truer {
    /** How near its edge a notch must lie to belong to it, mm. */
    private static final double ON_EDGE = 1;

    /**
     * Two notches that do not meet.
     *
     * @param moves  the piece whose notch is to move
     * @param other  the piece whose notch stays
     * @param apart  by how much they miss each other, mm
     * @param to     where the notch is to lie
     */
    record Apart(Mate mate, String notch, Piece moves, Piece other, double apart, Point from, Point to) {}

    /** The notches of mates without ease between them that miss their partners. */
    static List<Apart> apart(Pattern pattern, GarmentMeasures measures, List<Mate> mates, SewnPieces sewn) {
        Set<Mate> wanted = Collections.newSetFromMap(new IdentityHashMap<>());
        wanted.addAll(mates);
        List<Apart> all = new ArrayList<>();
        for (MateWalk walk : measures.mates()) {
            Mate mate = walk.mate();
            if (!wanted.contains(mate)) {
                continue;
            }
            boolean plain = mate.declaredEase() == 0
                    && mate.first().size() == 1
                    && mate.second().size() == 1
                    && !walk.notches().isEmpty();
            if (!plain) {
                continue;
            }
            Optional<Boolean> crossed = crossed(pattern, sewn, walk);
            if (crossed.isEmpty()) {
                continue;
            }
            for (NotchMeeting meeting : walk.notches()) {
                Optional<Apart> apart = apart(pattern, sewn, walk, meeting, crossed.get());
                if (apart.isPresent()) {
                    all.add(apart.get());
                }
            }
        }
        return all;
    }

    /** Whether the second seam is walked against its drawn direction; empty where no notch tells. */
    static Optional<Boolean> crossed(Pattern pattern, SewnPieces pieces, MateWalk walk) {
        EdgeRef ref = walk.mate().second().get(0);
        for (NotchMeeting meeting : walk.notches()) {
            Optional<Sewn> second = sewn(pattern, pieces, ref, meeting.notch());
            if (second.isPresent()) {
                double drawn = second.get().at();
                double length = second.get().line().length();
                return Optional.of(Math.abs(drawn - meeting.second()) > Math.abs(length - drawn - meeting.second()));
            }
        }
        return Optional.empty();
    }

    /** A notch on a sewn edge: how far along the line, in the drawn direction, it lies. */
    private record Sewn(Piece piece, Edge edge, Notch notch, Curve line, double at) {}

    private static Optional<Sewn> sewn(Pattern pattern, SewnPieces pieces, EdgeRef ref, String name) {
        Optional<Piece> piece = pattern.piece(ref.piece());
        Optional<Edge> edge = pattern.edge(ref);
        if (piece.isEmpty() || edge.isEmpty()) {
            return Optional.empty();
        }
        SewnPiece sewn = pieces.of(piece.get());
        Curve line = sewn.stitch().edge(edge.get());
        for (Notch notch : piece.get().notches()) {
            if (notch.name().equals(name)) {
                Nearest near = line.nearest(sewn.stitch().point(notch.at()));
                if (near.distance() <= ON_EDGE) {
                    return Optional.of(new Sewn(piece.get(), edge.get(), notch, line, line.lengthTo(near.place())));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Apart> apart(
            Pattern pattern, SewnPieces pieces, MateWalk walk, NotchMeeting meeting, boolean crossed) {
        Optional<Sewn> first = sewn(pattern, pieces, walk.mate().first().get(0), meeting.notch());
        Optional<Sewn> second = sewn(pattern, pieces, walk.mate().second().get(0), meeting.notch());
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        boolean fromEnd = countsFromEnd(pieces, first.get());
        boolean secondMoves =
                !second.get().edge().isProtected() || first.get().edge().isProtected();
        Sewn moves = secondMoves ? second.get() : first.get();
        Sewn stays = secondMoves ? first.get() : second.get();
        double wanted = distance(stays, fromEnd != (crossed && !secondMoves));
        double is = distance(moves, fromEnd != (crossed && secondMoves));
        boolean movesFromEnd = fromEnd != (crossed && secondMoves);
        double along = movesFromEnd ? moves.line().length() - wanted : wanted;
        if (along < 0 || along > moves.line().length()) {
            return Optional.empty();
        }
        SewnPiece sewn = pieces.of(moves.piece());
        Point to = sewn.sewnAt(moves.line().pointAtLength(along)).before();
        return Optional.of(new Apart(
                walk.mate(),
                meeting.notch(),
                moves.piece(),
                stays.piece(),
                Math.abs(wanted - is),
                moves.notch().at(),
                to));
    }

    private static double distance(Sewn sewn, boolean fromEnd) {
        return fromEnd ? sewn.line().length() - sewn.at() : sewn.at();
    }

    private static boolean countsFromEnd(SewnPieces pieces, Sewn first) {
        SewnPiece sewn = pieces.of(first.piece());
        Optional<SewnCorner> atStart = SewnCorner.of(sewn, first.edge(), false);
        Optional<SewnCorner> atEnd = SewnCorner.of(sewn, first.edge(), true);
        boolean startKept = atStart.isPresent() && atStart.get().edge().isProtected();
        boolean endKept = atEnd.isPresent() && atEnd.get().edge().isProtected();
        if (startKept != endKept) {
            return endKept;
        }
        return atStart.isPresent() && atStart.get().edge().role() == EdgeRole.HEM;
    }

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        String mate = what.target(Trued.MATE);
        String notch = what.target(Trued.NOTCH);
        String piece = what.target(Trued.PIECE);
        GarmentMeasures measures = Measures.of(pattern);
        Apart apart = apart(pattern, measures, pattern.mates(), new SewnPieces(pattern, measures)).stream()
                .filter(a -> a.mate().name().equals(mate)
                        && a.notch().equals(notch)
                        && a.moves().id().equals(piece))
                .findFirst()
                .orElseThrow(
                        () -> Refusal.of("notch-unpaired").with("notch", notch).with("mate", mate));
        return apart.apart() < 1e-9 ? List.of() : List.of(new NotchStroke(piece, notch, apart.from(), apart.to()));
    }
}
