package easewright.alter;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The way back by going forward from what was drawn. The outlines from before the first change are kept; the marks on
 * them are not, and an opposite does not bring every mark back exactly. So the changes are made again, and each mark is
 * moved by what it then lies off, until all together come to what is now: in a few rounds, or not at all.
 */
final class MadeAnew {
    private static final int ROUNDS = 6;

    /** Where an outline turns by more than this it has a corner, radians. */
    private static final double BENDS = Math.toRadians(10);

    /** Lines beside the outline, which are led along with it, come back as near as this, mm. */
    private static final double BESIDE = 0.3;

    private static final double NEAR_EDGE_END = 20;
    private static final double NEAR_DART = 2;

    /** Ways that cut a piece and what is drawn beside it. */
    private static final Set<String> CUTS =
            Set.of(SpreadSlashes.METHOD, HingedSlash.METHOD, ParallelSlash.METHOD, Lengthen.METHOD, EdgeLength.METHOD);

    private final Pattern now;
    private final LevelsSince since;
    private final Set<List<String>> drawnOver;

    MadeAnew(Pattern now) {
        this(now, LevelsSince.START);
    }

    /**
     * @param since which levels the changes did not know of
     */
    MadeAnew(Pattern now, LevelsSince since) {
        this.now = now;
        this.since = since;
        this.drawnOver = drawnOver(now.changes());
    }

    /**
     * The pattern with only its first changes made; empty where that does not lead to what is now. What is noted of a
     * line as drawn may be what an earlier change had made of it, where that was not kept or the line came to the piece
     * later: then it is looked for as marks are.
     */
    Optional<Pattern> to(int kept) {
        return fromDrawn(kept).or(() -> {
            Pattern unknown = Retrace.linesUnknown(now);
            return unknown.equals(now) ? Optional.empty() : new MadeAnew(unknown, since).fromDrawn(kept);
        });
    }

    private Optional<Pattern> fromDrawn(int kept) {
        Pattern drawn = Retrace.roughly(now, since);
        return to(
                        kept,
                        drawn.withPieces(
                                drawn.pieces().stream().map(MadeAnew::inCorners).toList()))
                .or(() -> to(kept, drawn));
    }

    private Optional<Pattern> to(int kept, Pattern guess) {
        List<ChangeNote> changes = now.changes();
        Pattern drawn = guess;
        try {
            for (int i = 0; i < ROUNDS; i++) {
                Pattern first = since.forward(drawn, changes, 0, kept);
                Pattern again = since.forward(first, changes, kept, changes.size());
                if (!sameIds(again)) {
                    return Optional.empty();
                }
                if (same(again)) {
                    return Optional.of(first.withChanges(changes.subList(0, kept)));
                }
                drawn = corrected(drawn, again);
            }
        } catch (Refusal | IllegalArgumentException doesNotLeadThere) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /** Edges mostly end in corners: with their ends, and the mouths of darts, in those that are near. */
    private static Piece inCorners(Piece piece) {
        List<Point> corners = new ArrayList<>();
        List<Segment> segments =
                piece.outline().segments().stream().filter(Segment::hasLength).toList();
        for (int i = 0; i < segments.size(); i++) {
            Point in = segments.get((i + segments.size() - 1) % segments.size()).tangent(1);
            Point out = segments.get(i).tangent(0);
            if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) > BENDS) {
                corners.add(segments.get(i).start());
            }
        }
        return piece.toBuilder()
                .edges(piece.edges().stream()
                        .map(e -> e.withEnds(
                                nearest(corners, e.from(), NEAR_EDGE_END), nearest(corners, e.to(), NEAR_EDGE_END)))
                        .toList())
                .darts(piece.darts().stream()
                        .map(d -> d.mapped(p -> nearest(corners, p, NEAR_DART)))
                        .toList())
                .build();
    }

    private static Point nearest(List<Point> corners, Point mark, double within) {
        return corners.stream()
                .filter(c -> c.distance(mark) <= within)
                .min(Comparator.comparingDouble(c -> c.distance(mark)))
                .orElse(mark);
    }

    static Pattern forward(Pattern then, List<ChangeNote> changes) throws Refusal {
        Pattern again = then;
        for (ChangeNote note : changes) {
            again = Ways.from(note).apply(again).pattern();
        }
        return again;
    }

    boolean sameIds(Pattern again) {
        return again.pieces().stream()
                .map(Piece::id)
                .toList()
                .equals(now.pieces().stream().map(Piece::id).toList());
    }

    /**
     * Whether the pattern is what is now, but for rounding. In a file from before lines were drawn anew by a truing that is
     * made again, a cutting line may lie where it lay when the truing was made first: how it was drawn is known, and is
     * what counts.
     */
    boolean same(Pattern again) {
        for (int i = 0; i < now.pieces().size(); i++) {
            Piece one = again.pieces().get(i);
            Piece other = now.pieces().get(i);
            if (!Likeness.same(one, other) || !Likeness.sameLines(held(one), held(other), BESIDE)) {
                return false;
            }
        }
        return true;
    }

    /** The lines of a piece but for those known as drawn that a truing has drawn over. */
    private List<Rider> held(Piece piece) {
        Piece here = now.piece(piece.id()).orElse(piece);
        Set<String> over = here.riders().stream()
                .filter(r -> r.original().isPresent() && drawnOver.contains(List.of(piece.id(), r.id())))
                .map(Rider::id)
                .collect(Collectors.toSet());
        return piece.riders().stream().filter(r -> !over.contains(r.id())).toList();
    }

    /** Pieces and lines that truings have drawn over, by their ids. */
    private static Set<List<String>> drawnOver(List<ChangeNote> changes) {
        Set<List<String>> over = new HashSet<>();
        for (ChangeNote note : changes) {
            if (note.method().equals(Trued.METHOD)) {
                try {
                    for (String text : Trued.from(note).made()) {
                        if (Stroke.parse(text) instanceof CutStroke cut) {
                            over.add(List.of(cut.piece(), cut.rider()));
                        }
                    }
                } catch (Refusal unreadable) {
                    // It cannot be made again either, which is told there.
                    continue;
                }
            }
        }
        return over;
    }

    private Pattern corrected(Pattern drawn, Pattern again) {
        boolean cuts = now.changes().stream().map(ChangeNote::method).anyMatch(CUTS::contains);
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : drawn.pieces()) {
            Optional<Piece> is = again.piece(piece.id());
            Optional<Piece> wanted = now.piece(piece.id());
            pieces.add(
                    is.isPresent() && wanted.isPresent()
                            ? new Correction(piece, is.get(), wanted.get(), cuts).made()
                            : piece);
        }
        return drawn.withPieces(pieces);
    }
}
