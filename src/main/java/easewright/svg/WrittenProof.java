package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The proof that a new content draws what it was to draw, before anybody gets to see it.
 *
 * @param name    of the file
 * @param source  the file as it was
 * @param drawing what it drew
 * @param changed the pattern that is to be drawn
 * @param page    what becomes of the page
 */
record WrittenProof(
        String name,
        SourceText source,
        Drawing drawing,
        Pattern changed,
        Targets targets,
        SpareCopies spare,
        Optional<PageChange> page) {
    /** How far a moved place may land from where it was to go, mm. */
    static final double TOLERANCE = 1e-6;

    /** How far the page may end from where it was to end, mm. */
    private static final double PAGE_NEAR = 1e-3;

    /** Reads the new content as if it were somebody else's and compares every shape. */
    void of(byte[] written) throws SvgProblem {
        SvgFile again = SvgFile.proving(written, name);
        List<DrawnShape> now = again.drawing().all();
        if (!again.marked()
                || now.size()
                        != drawing.all().size()
                                + targets.copies().size()
                                - spare.shapes().size()) {
            throw unproved("", "marks");
        }
        int at = 0;
        for (int i = 0; i < drawing.all().size(); i++) {
            if (spare.has(i)) {
                continue;
            }
            DrawnShape is = now.get(at++);
            DrawnShape before = drawing.all().get(i);
            Map<Integer, List<Segment>> wanted = targets.geometry().getOrDefault(i, Map.of());
            boolean right = is.subPaths().size() == before.subPaths().size();
            if (goesByThePage(i, before)) {
                continue;
            }
            for (int k = 0; right && k < before.subPaths().size(); k++) {
                SubPath drawn = is.subPaths().get(k);
                SubPath old = before.subPaths().get(k);
                right = wanted.containsKey(k)
                        ? lands(drawn.segments(), wanted.get(k))
                                && drawn.closed() == (old.closed() || SubPathRewriter.closed(wanted.get(k)))
                        : drawn.equals(old);
            }
            if (!right) {
                throw unproved(targets.pieces().getOrDefault(i, ""), before.id());
            }
            for (DrawnCopy copy : targets.copies().values()) {
                if (copy.shape() == i && !isThere(copy, now.get(at++))) {
                    throw unproved(copy.piece(), copy.id());
                }
            }
        }
        if (!isTheWantedPage(again.drawing())) {
            throw unproved("", "page");
        }
        for (Piece piece : changed.pieces()) {
            // Of several outlines in one path another may be the largest now, and would be read as the piece.
            Optional<Outline> read =
                    again.drawn().piece(piece.id()).flatMap(p -> again.drawn().outline(piece.id()));
            boolean same = read.isEmpty()
                    || lands(read.get().segments(), piece.outline().segments());
            if (!same) {
                throw unproved(piece.name(), piece.id());
            }
        }
    }

    /** Such as a ground that fills the page: it may become as large as that, if it is part of no piece. */
    private boolean goesByThePage(int index, DrawnShape shape) {
        return page.filter(p -> !p.isNone()).isPresent()
                && !targets.used().contains(index)
                && source.tag(shape.element()).attributes().stream()
                        .anyMatch(a -> a.raw().strip().endsWith("%"));
    }

    /** The page is what it was to become, and nothing but the page moved with it. */
    private boolean isTheWantedPage(Drawing again) {
        if (page.isEmpty() || page.get().isNone()) {
            return true;
        }
        boolean same = again.rootToMm().equals(drawing.rootToMm())
                && again.captions().equals(drawing.captions())
                && again.pictures().stream()
                        .map(Picture::toMm)
                        .toList()
                        .equals(drawing.pictures().stream().map(Picture::toMm).toList());
        Optional<Box> wanted = page.get().wanted().read().page();
        double calibrated =
                again.scale().mmPerUnitX() / page.get().wanted().read().scale().mmPerUnitX();
        return same
                && wanted.isPresent() == again.page().isPresent()
                && (wanted.isEmpty()
                        || Math.abs(again.page().get().maxX() - wanted.get().maxX() * calibrated) <= PAGE_NEAR
                                && Math.abs(again.page().get().maxY()
                                                - wanted.get().maxY() * calibrated)
                                        <= PAGE_NEAR);
    }

    private static boolean isThere(DrawnCopy copy, DrawnShape drawn) {
        boolean right = drawn.id().equals(copy.id())
                && drawn.idGiven()
                && drawn.subPaths().size() == copy.strokes().size();
        for (int k = 0; right && k < copy.strokes().size(); k++) {
            List<Segment> stroke = copy.strokes().get(k);
            right = lands(drawn.subPaths().get(k).segments(), stroke)
                    && drawn.subPaths().get(k).closed() == DrawnCopy.closed(stroke);
        }
        return right;
    }

    private SvgProblem unproved(String piece, String id) {
        return new SvgProblem("write-unproved", Map.of("file", name, "piece", piece, "id", id));
    }

    /** Whether the segments are the wanted ones within tolerance, from whichever corner a closed line begins. */
    private static boolean lands(List<Segment> drawnAll, List<Segment> wantedAll) {
        List<Segment> drawn = withoutSpecks(drawnAll);
        List<Segment> wanted = withoutSpecks(wantedAll);
        int n = wanted.size();
        if (drawn.size() != n) {
            return false;
        }
        for (int turn = 0; turn < n; turn++) {
            int i = 0;
            while (i < n && near(drawn.get(i), wanted.get((i + turn) % n))) {
                i++;
            }
            if (i == n) {
                return true;
            }
        }
        return false;
    }

    /** What is smaller than the rounding may be gone after it, and nobody could tell. */
    private static List<Segment> withoutSpecks(List<Segment> all) {
        List<Segment> large = all.stream().filter(s -> !isSpeck(s)).toList();
        return large.isEmpty() ? all : large;
    }

    private static boolean isSpeck(Segment s) {
        boolean ends = s.start().distance(s.end()) <= 2 * TOLERANCE;
        return s instanceof Cubic c
                ? ends
                        && c.control1().distance(c.start()) <= 2 * TOLERANCE
                        && c.control2().distance(c.start()) <= 2 * TOLERANCE
                : ends;
    }

    private static boolean near(Segment a, Segment b) {
        boolean ends = a.start().distance(b.start()) <= TOLERANCE && a.end().distance(b.end()) <= TOLERANCE;
        if (a instanceof Cubic p && b instanceof Cubic q) {
            return ends
                    && p.control1().distance(q.control1()) <= TOLERANCE
                    && p.control2().distance(q.control2()) <= TOLERANCE;
        }
        return ends && a.getClass() == b.getClass();
    }
}
