package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.pattern.SizeNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** A piece with more lines inside is hatched or traced, and marks that name each of them would swamp the file. */
    private static final int MOST_RIDERS = 5000;

    private static final int MOST_PIECES = 2000;

    /** How near a rectangle must come to the page to be its frame, mm. */
    private static final double FRAME = 1;

    /** A line that begins so near to an outline begins on it, mm. */
    private static final double ON_OUTLINE = 1.5;

    /** A shape inside a rectangle takes at least this part of it if the rectangle is the sheet it lies on. */
    private static final double LEAST_OF_A_SHEET = 0.02;

    public BarePattern {
        findings = List.copyOf(findings);
    }

    /**
     * An outline that may be a piece.
     *
     * @param order   number of the shape that is drawn first
     * @param joined  the lines that draw it; empty for the sub-path of one shape
     * @param subPath number of that sub-path
     */
    private record Candidate(
            Area area, int order, Optional<JoinedOutline> joined, int subPath, String id, String name) {}

    public static BarePattern of(Drawing drawing) {
        List<Finding> findings = new ArrayList<>();
        List<Candidate> pieces = new ArrayList<>();
        int leftOut = 0;
        for (Candidate candidate : candidates(drawing, findings)) {
            SubPath line = new SubPath(candidate.area().outline());
            boolean inside = pieces.stream().anyMatch(piece -> piece.area().holds(line));
            if (!inside && pieces.size() < MOST_PIECES) {
                pieces.add(candidate);
            } else if (!inside) {
                leftOut++;
            }
        }
        if (leftOut > 0) {
            findings.add(Finding.of("pieces-left-out", Severity.FAULT, "")
                    .with("most", MOST_PIECES)
                    .with("count", leftOut));
        }
        tellDrawn(drawing, pieces, findings);
        Map<Candidate, List<Rider>> riders = riders(drawing, pieces);
        for (Candidate piece : pieces) {
            if (riders.get(piece).size() > MOST_RIDERS) {
                findings.add(Finding.of("inner-lines-many", Severity.CAUTION, piece.name())
                        .with("count", riders.get(piece).size()));
                riders.put(piece, List.of());
            }
        }
        pieces.sort(Comparator.comparingInt(Candidate::order));
        Set<String> names = new HashSet<>();
        List<Piece> made = new ArrayList<>();
        for (Candidate piece : pieces) {
            made.add(Piece.bare(piece.id(), piece.area().outline()).toBuilder()
                    .name(unique(SizeNames.withoutRun(piece.name()), names))
                    .riders(riders.get(piece))
                    .build());
        }
        if (drawing.captions().isEmpty()
                && drawing.all().stream().anyMatch(shape -> shape.shown() && Ring.looksLikeLettering(shape))) {
            findings.add(Finding.of("words-as-shapes", Severity.NOTE, ""));
        }
        if (made.isEmpty() && drawing.all().stream().anyMatch(DrawnShape::shown)) {
            findings.add(Finding.of("no-pieces", Severity.FAULT, ""));
        }
        return new BarePattern(Pattern.bare(made, drawing.scale()), findings);
    }

    /** Says which outlines are not simply closed lines, and where loose lines could not be put together. */
    private static void tellDrawn(Drawing drawing, List<Candidate> pieces, List<Finding> findings) {
        for (Candidate piece : pieces) {
            if (piece.joined().isEmpty()) {
                PenStroke.width(drawing.all().get(piece.order()), piece.area())
                        .ifPresent(width -> findings.add(Finding.of("outline-of-a-pen", Severity.CAUTION, piece.name())
                                .with("pen", width)
                                .with("outside", width / 2)));
            } else {
                JoinedOutline joined = piece.joined().get();
                Severity severity = joined.gap() > Closing.MEET ? Severity.CAUTION : Severity.NOTE;
                String code = joined.gap() < Closing.TOLD ? "outline-joined" : "outline-joined-over-gaps";
                findings.add(Finding.of(code, severity, piece.name())
                        .with("count", joined.parts().size())
                        .with("gap", joined.gap()));
                if (joined.doubled() > 0) {
                    findings.add(Finding.of("line-doubled", Severity.NOTE, piece.name())
                            .with("count", joined.doubled()));
                }
            }
        }
        if (drawing.joined().givenUp()) {
            findings.add(Finding.of("loose-lines-many", Severity.CAUTION, ""));
        }
        for (JoinedLines.Tangle tangle : drawing.joined().tangles()) {
            DrawnShape shape = drawing.all().get(tangle.shape());
            SubPath line = shape.subPaths().get(tangle.subPath());
            if (pieces.stream().noneMatch(piece -> piece.area().holds(line))) {
                String code = tangle.branches() ? "outline-branches" : "outline-many-parts";
                findings.add(Finding.of(code, Severity.CAUTION, name(shape)).with("count", tangle.count()));
            }
        }
    }

    /** Largest first; of equals, the one drawn first. */
    private static List<Candidate> candidates(Drawing drawing, List<Finding> findings) {
        List<DrawnShape> all = drawing.all();
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            DrawnShape shape = all.get(i);
            if (shape.shown()) {
                int order = i;
                for (Ring ring : Ring.ofPieces(shape)) {
                    Area area = Area.of(ring.outline(), order, ring.subPath());
                    candidates.add(
                            new Candidate(area, order, Optional.empty(), ring.subPath(), ring.ref(shape), name(shape)));
                }
            }
        }
        for (JoinedOutline joined : drawing.joined().outlines()) {
            int first = joined.parts().get(0).shape();
            Outline outline = joined.outline();
            Area area = Area.of(outline, first, 0);
            if (area.area() >= LEAST_AREA) {
                String name = joined.label().isEmpty() ? name(all.get(first)) : joined.label();
                candidates.add(new Candidate(area, first, Optional.of(joined), 0, joined.ref(all), name));
            }
        }
        candidates.sort(Comparator.comparingDouble((Candidate c) -> c.area().area())
                .reversed()
                .thenComparingInt(Candidate::order));
        List<Area> areas = candidates.stream().map(Candidate::area).toList();
        candidates.removeIf(candidate -> {
            Area area = candidate.area();
            boolean frame = areas.size() > 1
                    && isRectangle(area)
                    && (drawing.page()
                                    .filter(page -> liesRound(area.box(), page))
                                    .isPresent()
                            || holdsAllOthers(area, areas));
            if (frame) {
                findings.add(Finding.of("page-frame-left-out", Severity.NOTE, candidate.name()));
            }
            return frame;
        });
        return candidates;
    }

    private static boolean isRectangle(Area area) {
        return area.area() > 0.999 * area.box().width() * area.box().height();
    }

    /** A rectangle that goes round the whole page is its background or border. */
    static boolean liesRound(Box box, Box page) {
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

    /** Other lines of a piece's own shape ride along wherever they lie; the rest with the largest piece around them. */
    private static Map<Candidate, List<Rider>> riders(Drawing drawing, List<Candidate> pieces) {
        Map<Candidate, List<Rider>> riders = new IdentityHashMap<>();
        pieces.forEach(piece -> riders.put(piece, new ArrayList<>()));
        Map<Integer, List<Candidate>> owners = new HashMap<>();
        Set<List<Integer>> drawn = new HashSet<>();
        for (Candidate piece : pieces) {
            if (piece.joined().isEmpty()) {
                owners.computeIfAbsent(piece.order(), o -> new ArrayList<>()).add(piece);
            }
            piece.joined()
                    .ifPresent(joined ->
                            joined.parts().forEach(part -> drawn.add(List.of(part.shape(), part.subPath()))));
        }
        for (int i = 0; i < drawing.all().size(); i++) {
            DrawnShape shape = drawing.all().get(i);
            List<Candidate> own = owners.getOrDefault(i, List.of());
            for (int k = 0; shape.shown() && k < shape.subPaths().size(); k++) {
                SubPath line = shape.subPaths().get(k);
                int stroke = k;
                if (own.stream().anyMatch(piece -> piece.subPath() == stroke)) {
                    continue;
                }
                if (!own.isEmpty()) {
                    Candidate owner = own.stream()
                            .filter(piece -> piece.area().holds(line))
                            .findFirst()
                            .orElse(own.get(0));
                    riders.get(owner).add(rider(shape, k));
                } else if (!drawn.contains(List.of(i, k))) {
                    Rider rider = rider(shape, k);
                    around(drawing, pieces, shape, line)
                            .ifPresent(piece -> riders.get(piece).add(rider));
                }
            }
        }
        return riders;
    }

    /** The piece around a line: one of its own layer before others, since sizes lie on each other. */
    private static Optional<Candidate> around(Drawing drawing, List<Candidate> pieces, DrawnShape shape, SubPath line) {
        List<Candidate> around = new ArrayList<>(
                pieces.stream().filter(piece -> piece.area().holds(line)).toList());
        pieces.stream()
                .filter(piece -> !around.contains(piece) && piece.area().holdsMost(line))
                .forEach(around::add);
        if (around.size() < 2) {
            return around.stream().findFirst();
        }
        Optional<Candidate> same = around.stream()
                .filter(piece -> sharesLayer(drawing.all().get(piece.order()), shape))
                .findFirst();
        // A dart begins on the outline of its own size.
        return same.or(() -> around.stream()
                        .filter(piece -> away(line, piece) <= ON_OUTLINE)
                        .min(Comparator.comparingDouble(piece -> away(line, piece))))
                .or(() -> around.stream().findFirst());
    }

    /** How far an end of an open line lies from the outline, mm; the nearer of both. */
    private static double away(SubPath line, Candidate piece) {
        if (line.closed()) {
            return Double.POSITIVE_INFINITY;
        }
        Outline outline = piece.area().outline();
        List<Segment> segments = line.segments();
        return Math.min(
                outline.nearest(segments.get(0).start()).distance(),
                outline.nearest(segments.get(segments.size() - 1).end()).distance());
    }

    private static boolean sharesLayer(DrawnShape one, DrawnShape other) {
        return !one.groups().isEmpty()
                && !other.groups().isEmpty()
                && one.groups().get(0).equals(other.groups().get(0));
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
        if (numbered && !shape.groups().isEmpty()) {
            return shape.groups().get(shape.groups().size() - 1).name();
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
