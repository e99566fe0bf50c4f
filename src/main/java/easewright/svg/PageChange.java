package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of the page of a drawing when copies for the other side are drawn in it or taken out: it holds them, and is
 * as it was before when none needs more.
 *
 * @param now    as it is in the file
 * @param wanted as it is to be
 * @param mark   what it was before any copies, where it is larger than that
 * @param beyond names of copies that it does not hold
 */
record PageChange(RootPage now, RootPage wanted, Optional<PageMark> mark, List<String> beyond) {
    /** Empty if the page of the file cannot be told from its text. */
    static Optional<PageChange> of(Opening opening, Pattern changed) {
        return RootPage.of(opening.source().tag(0)).map(now -> of(now, opening, changed));
    }

    private static PageChange of(RootPage now, Opening opening, Pattern changed) {
        RootPage before = opening.marks().page().flatMap(m -> m.before(now)).orElse(now);
        double right = 0;
        double below = 0;
        List<String> beyond = new ArrayList<>();
        for (Piece copy : changed.pieces()) {
            if (isCopy(copy, changed)) {
                Box box = room(copy);
                Point end = before.read()
                        .toMm()
                        .apply(opening.drawing().rootToMm().inverse().apply(new Point(box.maxX(), box.maxY())));
                if (before.lacks(end.x(), end.y())) {
                    beyond.add(copy.name());
                }
                right = Math.max(right, end.x());
                below = Math.max(below, end.y());
            }
        }
        if (beyond.isEmpty()) {
            return new PageChange(now, before, Optional.empty(), beyond);
        }
        Optional<RootPage> grown = before.holding(right, below);
        return grown.isEmpty()
                ? new PageChange(now, now, opening.marks().page(), beyond)
                : new PageChange(now, grown.get(), Optional.of(PageMark.of(before, grown.get())), List.of());
    }

    private static boolean isCopy(Piece piece, Pattern pattern) {
        String ending = PieceCopy.ending(piece.side());
        return piece.side() != Side.BOTH
                && pattern.pieces().stream()
                        .anyMatch(p -> p.side() == piece.side().other()
                                && PieceCopy.id(p.id(), ending).equals(piece.id()));
    }

    private static Box room(Piece piece) {
        Box room = piece.outline().box();
        for (Rider rider : piece.riders()) {
            for (Segment segment : rider.segments()) {
                room = room.union(segment.box());
            }
        }
        return room;
    }

    boolean isNone() {
        return now.equals(wanted);
    }

    /** The page left as it is, since something drawn would change with it. */
    PageChange leftAlone(Opening opening, Pattern changed) {
        return new PageChange(
                now,
                now,
                opening.marks().page(),
                changed.pieces().stream()
                        .filter(p -> isCopy(p, changed))
                        .map(Piece::name)
                        .toList());
    }

    List<Edit> edits(Tag root) {
        return now.edits(root, wanted);
    }

    List<Finding> findings() {
        if (!beyond.isEmpty()) {
            return List.of(Finding.of("page-not-grown", Severity.CAUTION, "").with("pieces", List.copyOf(beyond)));
        }
        // Where copies came nearer since, it becomes smaller again.
        return wanted.reachesBeyond(now) ? List.of(Finding.of("page-grown", Severity.NOTE, "")) : List.of();
    }
}
