package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of the page of a drawing. Once a line of known length has proved the scale, it states its size in units of
 * paper ({@link TrueSize}). And when copies for the other side are drawn in it or taken out, it holds them, and is as it was
 * before when none needs more.
 *
 * @param now    as it is in the file
 * @param base   without room for copies, but of a true size
 * @param wanted as it is to be
 * @param mark   what it was before any copies, where it is larger than that
 * @param beyond names of copies that it does not hold
 * @param size   what becomes of the size that it states
 */
record PageChange(
        RootPage now, RootPage base, RootPage wanted, Optional<PageMark> mark, List<String> beyond, Size size) {
    /** Told where the scale is proved and the page cannot state its size. */
    static final Finding NOT_SIZED = Finding.of("page-not-sized", Severity.CAUTION, "");

    /** What becomes of the size that the page states. */
    enum Size {
        /** It stays: it is true, or nobody knows better. */
        KEPT,
        /** It is stated now. */
        STATED,
        /** It cannot be stated without moving anything. */
        UNTRUE
    }

    /** Empty if the page of the file cannot be told from its text. */
    static Optional<PageChange> of(Opening opening, Pattern changed) {
        return RootPage.of(opening.source().tag(0)).map(now -> of(now, opening, changed));
    }

    private static PageChange of(RootPage now, Opening opening, Pattern changed) {
        RootPage stood = opening.marks().page().flatMap(m -> m.before(now)).orElse(now);
        Optional<RootPage> sized = sized(stood, opening, changed);
        RootPage before = sized.orElse(stood);
        Size size = size(stood, sized);
        List<String> beyond = beyond(before, opening, changed);
        if (beyond.isEmpty()) {
            return new PageChange(now, before, before, Optional.empty(), beyond, size);
        }
        double right = 0;
        double below = 0;
        for (Piece copy : copies(changed)) {
            Point end = end(copy, before, opening);
            right = Math.max(right, end.x());
            below = Math.max(below, end.y());
        }
        Optional<RootPage> grown = before.holding(right, below);
        return grown.isEmpty()
                ? alone(now, opening, changed)
                : new PageChange(
                        now, before, grown.get(), Optional.of(PageMark.of(before, grown.get())), List.of(), size);
    }

    /** With a true size, where somebody proved what it is; empty if it cannot be stated. */
    private static Optional<RootPage> sized(RootPage page, Opening opening, Pattern changed) {
        if (changed.scale().proof() != Scale.Proof.KNOWN_LINE) {
            return Optional.of(page);
        }
        Optional<Box> drawn = opening.drawing().shapes().stream()
                .flatMap(shape -> shape.subPaths().stream())
                .flatMap(path -> path.segments().stream())
                .map(Segment::box)
                .reduce(Box::union);
        return TrueSize.of(page, changed.scale().mmPerUnitX(), drawn);
    }

    private static Size size(RootPage was, Optional<RootPage> sized) {
        return sized.isEmpty() ? Size.UNTRUE : sized.get().equals(was) ? Size.KEPT : Size.STATED;
    }

    /** The page as it is in the file with nothing but its size stated. */
    private static PageChange alone(RootPage now, Opening opening, Pattern changed) {
        Optional<RootPage> sized = sized(now, opening, changed);
        Size size = size(now, sized);
        RootPage wanted = sized.orElse(now);
        // What the page was is known by the size that it had then.
        Optional<PageMark> mark =
                size == Size.STATED ? Optional.empty() : opening.marks().page();
        return new PageChange(now, wanted, wanted, mark, beyond(wanted, opening, changed), size);
    }

    /** Names of the copies that a page does not hold. */
    private static List<String> beyond(RootPage page, Opening opening, Pattern changed) {
        return copies(changed).stream()
                .filter(copy -> {
                    Point end = end(copy, page, opening);
                    return page.lacks(end.x(), end.y());
                })
                .map(Piece::name)
                .toList();
    }

    /** How far right and down a piece reaches, mm as the page states them. */
    private static Point end(Piece piece, RootPage page, Opening opening) {
        Box room = room(piece);
        return page.read()
                .toMm()
                .apply(opening.drawing().rootToMm().inverse().apply(new Point(room.maxX(), room.maxY())));
    }

    private static List<Piece> copies(Pattern pattern) {
        return pattern.pieces().stream().filter(p -> isCopy(p, pattern)).toList();
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

    /**
     * Less of it, since something drawn would change with it: first without room for copies, then without a size stated.
     * Empty where nothing is left to be left out.
     */
    Optional<PageChange> less(Opening opening, Pattern changed) {
        if (isNone()) {
            return Optional.empty();
        }
        PageChange sizedOnly = alone(now, opening, changed);
        if (size == Size.STATED && !sizedOnly.wanted.equals(wanted)) {
            return Optional.of(sizedOnly);
        }
        Size unsized = size == Size.STATED ? Size.UNTRUE : size;
        return Optional.of(
                new PageChange(now, now, now, opening.marks().page(), beyond(now, opening, changed), unsized));
    }

    List<Edit> edits(Tag root) {
        return now.edits(root, wanted);
    }

    List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        if (size == Size.STATED) {
            found.add(Finding.of("page-sized", Severity.NOTE, ""));
        } else if (size == Size.UNTRUE) {
            found.add(NOT_SIZED);
        }
        if (!beyond.isEmpty()) {
            found.add(Finding.of("page-not-grown", Severity.CAUTION, "").with("pieces", List.copyOf(beyond)));
        } else if (wanted.reachesBeyond(size == Size.STATED ? base : now)) {
            // Where copies came nearer since, it becomes smaller again.
            found.add(Finding.of("page-grown", Severity.NOTE, ""));
        }
        return found;
    }
}
