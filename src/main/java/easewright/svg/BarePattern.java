package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a drawing without marks probably holds: every closed shape of at least 4 cm² that is not inside a bigger one
 * is a piece, and the lines inside it ride along.
 *
 * @param findings what was left out
 */
public record BarePattern(Pattern pattern, List<Finding> findings) {
    /** Smallest area of a piece, mm² (4 cm²). */
    public static final double LEAST_AREA = 400;

    private static final int MOST_PIECES = 2000;

    /** How near a rectangle must come to the page to be its frame, mm. */
    private static final double FRAME = 1;

    /** A shape inside a rectangle takes at least this part of it if the rectangle is the sheet it lies on. */
    private static final double LEAST_OF_A_SHEET = 0.02;

    public BarePattern {
        findings = List.copyOf(findings);
    }

    public static BarePattern of(Drawing drawing) {
        List<Finding> findings = new ArrayList<>();
        List<Area> candidates = candidates(drawing, findings);
        List<Area> pieces = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        Map<Area, List<Rider>> riders = new IdentityHashMap<>();
        for (Area candidate : candidates) {
            SubPath outline = drawing.shapes().get(candidate.index()).subPaths().get(candidate.subPath());
            boolean inside = pieces.stream().anyMatch(piece -> piece.holds(outline));
            if (!inside && pieces.size() < MOST_PIECES) {
                pieces.add(candidate);
                taken.add(candidate.index());
                riders.put(candidate, ownRiders(drawing.shapes().get(candidate.index()), candidate.subPath()));
            }
        }
        for (int i = 0; i < drawing.shapes().size(); i++) {
            if (!taken.contains(i)) {
                addRiders(drawing.shapes().get(i), pieces, riders);
            }
        }
        pieces.sort(Comparator.comparingInt(Area::index));
        Set<String> names = new HashSet<>();
        List<Piece> made = new ArrayList<>();
        for (Area area : pieces) {
            DrawnShape shape = drawing.shapes().get(area.index());
            made.add(Piece.bare(shape.id(), area.outline()).toBuilder()
                    .name(unique(name(shape), names))
                    .riders(riders.get(area))
                    .build());
        }
        if (made.isEmpty() && !drawing.shapes().isEmpty()) {
            findings.add(Finding.of("no-pieces", Severity.FAULT, ""));
        }
        return new BarePattern(Pattern.bare(made, drawing.scale()), findings);
    }

    /** Largest first; of equals, the one drawn first. */
    private static List<Area> candidates(Drawing drawing, List<Finding> findings) {
        List<Area> candidates = new ArrayList<>();
        for (int i = 0; i < drawing.shapes().size(); i++) {
            Area.largest(drawing.shapes().get(i), i)
                    .filter(area -> area.area() >= LEAST_AREA)
                    .ifPresent(candidates::add);
        }
        candidates.sort(Comparator.comparingDouble(Area::area).reversed().thenComparingInt(Area::index));
        List<Area> all = List.copyOf(candidates);
        candidates.removeIf(area -> {
            boolean frame = all.size() > 1
                    && isRectangle(area)
                    && (drawing.page()
                                    .filter(page -> liesRound(area.box(), page))
                                    .isPresent()
                            || holdsAllOthers(area, all));
            if (frame) {
                findings.add(Finding.of(
                        "page-frame-left-out",
                        Severity.NOTE,
                        name(drawing.shapes().get(area.index()))));
            }
            return frame;
        });
        return candidates;
    }

    private static boolean isRectangle(Area area) {
        return area.area() > 0.999 * area.box().width() * area.box().height();
    }

    /** A rectangle that goes round the whole page is its background or border. */
    private static boolean liesRound(Box box, Box page) {
        return Math.abs(box.minX() - page.minX()) < FRAME
                && Math.abs(box.minY() - page.minY()) < FRAME
                && Math.abs(box.maxX() - page.maxX()) < FRAME
                && Math.abs(box.maxY() - page.maxY()) < FRAME;
    }

    /** So is one that holds everything else, if that is more than one shape with lines inside it. */
    private static boolean holdsAllOthers(Area frame, List<Area> all) {
        List<Box> apart = new ArrayList<>();
        for (Area area : all) {
            if (area != frame) {
                Box box = area.box();
                if (!frame.box().grown(FRAME).contains(new Point(box.minX(), box.minY()))
                        || !frame.box().grown(FRAME).contains(new Point(box.maxX(), box.maxY()))) {
                    return false;
                }
                boolean large = area.area() >= LEAST_OF_A_SHEET * frame.area();
                if (large && apart.stream().allMatch(other -> areApart(other, box))) {
                    apart.add(box);
                }
            }
        }
        return apart.size() > 1;
    }

    private static boolean areApart(Box a, Box b) {
        return a.maxX() < b.minX() || b.maxX() < a.minX() || a.maxY() < b.minY() || b.maxY() < a.minY();
    }

    private static List<Rider> ownRiders(DrawnShape shape, int outline) {
        List<Rider> own = new ArrayList<>();
        for (int k = 0; k < shape.subPaths().size(); k++) {
            if (k != outline) {
                own.add(rider(shape, k));
            }
        }
        return own;
    }

    private static void addRiders(DrawnShape shape, List<Area> pieces, Map<Area, List<Rider>> riders) {
        for (int k = 0; k < shape.subPaths().size(); k++) {
            for (Area piece : pieces) {
                if (piece.holds(shape.subPaths().get(k))) {
                    riders.get(piece).add(rider(shape, k));
                    break;
                }
            }
        }
    }

    private static Rider rider(DrawnShape shape, int subPath) {
        String id = shape.subPaths().size() == 1 ? shape.id() : shape.id() + "#" + subPath;
        return new Rider(id, Rider.Kind.INNER, shape.subPaths().get(subPath).segments());
    }

    private static String name(DrawnShape shape) {
        if (!shape.label().isEmpty()) {
            return shape.label();
        }
        // Numbered ids are an editor's, not a person's: a layer's name says more.
        boolean numbered = !shape.idGiven()
                || shape.id()
                        .matches(
                                "(?i)(path|polygon|polyline|rect|circle|ellipse|shape|g|svg|use|copy)?[-_]?\\d[-_\\d]*");
        if (numbered && !shape.layers().isEmpty()) {
            return shape.layers().get(shape.layers().size() - 1);
        }
        String id = ShapeNames.readable(shape.id());
        return id.isEmpty() ? "shape-" + shape.element() : id;
    }

    private static String unique(String wanted, Set<String> names) {
        String name = wanted;
        for (int i = 2; !names.add(name); i++) {
            name = wanted + " " + i;
        }
        return name;
    }
}
