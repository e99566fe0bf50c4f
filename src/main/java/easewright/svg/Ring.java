package easewright.svg;

import easewright.geom.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A closed sub-path of a shape.
 *
 * @param subPath its number in the shape
 * @param area    mm²
 */
record Ring(int subPath, Outline outline, double area) {
    /** A ring beside a larger one in the same shape is a piece of its own from here, mm²: no large letter is. */
    private static final double LEAST_BESIDE = 2500;

    private static final int LEAST_LETTERS = 4;

    /** A ring beside the largest could become the largest by an alteration if it has this part of its area. */
    private static final double NEARLY = 0.3;

    /** Shapes of more rings are pictures, of which the largest rings are enough. */
    private static final int MOST = 200;

    /** The one of largest area, if any is closed and encloses anything. */
    static Optional<Ring> largest(DrawnShape shape) {
        Ring best = null;
        List<SubPath> subPaths = shape.subPaths();
        for (int k = 0; k < subPaths.size(); k++) {
            Optional<Ring> ring = of(shape, k);
            if (ring.isPresent() && ring.get().area() > (best == null ? 0 : best.area())) {
                best = ring.get();
            }
        }
        return Optional.ofNullable(best);
    }

    /** That of one sub-path, if it is closed. */
    static Optional<Ring> of(DrawnShape shape, int subPath) {
        return shape.subPaths()
                .get(subPath)
                .outline()
                .map(outline -> new Ring(subPath, outline, Math.abs(outline.signedArea())));
    }

    /** Those that may be pieces, the largest first: it, and others beside it that are no mere signs. */
    static List<Ring> ofPieces(DrawnShape shape) {
        if (shape.subPaths().size() == 1) {
            return of(shape, 0).filter(Ring::forPiece).map(List::of).orElse(List.of());
        }
        List<Ring> outer = outer(shape);
        if (outer.size() >= LEAST_LETTERS && looksLikeLettering(shape)) {
            return List.of();
        }
        return outer.stream()
                .filter(ring -> ring == outer.get(0) ? ring.forPiece() : ring.area() >= LEAST_BESIDE)
                .toList();
    }

    /** Several small rings in one shape are words that were turned into a shape. */
    static boolean looksLikeLettering(DrawnShape shape) {
        int closed = 0;
        for (int k = 0; k < shape.subPaths().size(); k++) {
            Optional<Ring> ring = of(shape, k);
            if (ring.isPresent() && ring.get().area() >= LEAST_BESIDE) {
                return false;
            }
            closed += ring.isPresent() ? 1 : 0;
        }
        return closed >= LEAST_LETTERS;
    }

    /**
     * The id by which a piece refers to this ring: that of the shape, or with the number of the sub-path where another
     * ring beside it might be taken for it as soon as one of them is altered.
     */
    String ref(DrawnShape shape) {
        List<Ring> outer = outer(shape);
        double most = outer.get(0).area();
        boolean alone = outer.stream().filter(r -> r.area() >= NEARLY * most).count() < 2;
        return alone && subPath == outer.get(0).subPath() ? shape.id() : shape.id() + "#" + subPath;
    }

    /** Rings in no other ring of the shape, the largest first. */
    private static List<Ring> outer(DrawnShape shape) {
        List<Ring> rings = new ArrayList<>();
        for (int k = 0; k < shape.subPaths().size(); k++) {
            of(shape, k).filter(Ring::forPiece).ifPresent(rings::add);
        }
        if (rings.size() < 2) {
            return rings.isEmpty() ? largest(shape).map(List::of).orElse(List.of()) : rings;
        }
        rings.sort(Comparator.comparingDouble(Ring::area).reversed());
        List<Ring> outer = new ArrayList<>();
        List<Area> around = new ArrayList<>();
        for (Ring ring : rings.subList(0, Math.min(MOST, rings.size()))) {
            SubPath line = new SubPath(ring.outline());
            if (around.stream().noneMatch(area -> area.holds(line))) {
                outer.add(ring);
                around.add(Area.of(ring.outline(), 0, ring.subPath()));
            }
        }
        return outer;
    }

    /** Whether it is large enough to be the outline of a piece. */
    boolean forPiece() {
        return area >= BarePattern.LEAST_AREA;
    }
}
