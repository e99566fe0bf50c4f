package easewright.measure;

import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A piece that counts in a girth although another one goes round the same place: it is a layer over it by its name, or it
 * is sewn above or below it, as a band on a skirt. A girth has each place once (common practice).
 *
 * @param piece  its id
 * @param level  name of the level
 * @param others ids of the pieces that go round there
 * @param above  whether it is sewn above or below them; else it is a layer by its name
 */
public record LayerCounted(String piece, String level, List<String> others, boolean above) {
    /** What lies on a piece of the garment; not a front that is cut with its facing. */
    private static final java.util.regex.Pattern ON_OTHERS = java.util.regex.Pattern.compile(
            "(?<!\\b(with|and|plus)\\b[^,]{0,20})\\b(facing|lining|interfacing|interlining)s?\\b");

    /** Of the pieces sewn there neither lies above the other: one is in front, or beside. */
    private static final Set<EdgeRole> OVER_THE_SHOULDER =
            EnumSet.of(EdgeRole.SHOULDER, EdgeRole.CAP, EdgeRole.ARMHOLE);

    /** The cosine of the angle up to which an edge runs along a level. */
    private static final double ALONG = 0.8;

    public LayerCounted {
        others = List.copyOf(others);
    }

    /** Whether a piece is a layer on others by its name: a facing, a lining. */
    public static boolean isLayer(Piece piece) {
        return ON_OTHERS.matcher(piece.name().toLowerCase(Locale.ROOT)).find();
    }

    /** All in a pattern, in the order of its girths. */
    public static List<LayerCounted> of(Pattern pattern, GarmentMeasures measures) {
        List<LayerCounted> all = new ArrayList<>();
        for (Girth girth : measures.inEverySize().girths()) {
            List<Part> parts = new ArrayList<>();
            for (LevelWidth width : girth.parts()) {
                pattern.pieces().stream()
                        .filter(p -> p.id().equals(width.pieceId()))
                        .findFirst()
                        .ifPresent(p -> parts.add(new Part(p, width)));
            }
            List<Part> outer = parts.stream().filter(p -> !isLayer(p.piece())).toList();
            String level = girth.level().name();
            if (!outer.isEmpty()) {
                parts.stream()
                        .filter(p -> isLayer(p.piece()))
                        .forEach(p -> all.add(new LayerCounted(p.id(), level, ids(outer), false)));
            }
            for (Part part : outer) {
                List<Part> beside = outer.stream()
                        .filter(other -> other.area() > part.area())
                        .filter(other -> isSewnAlong(pattern, part, other))
                        .toList();
                if (!beside.isEmpty()) {
                    all.add(new LayerCounted(part.id(), level, ids(beside), true));
                }
            }
        }
        return List.copyOf(all);
    }

    private record Part(Piece piece, LevelWidth width) {
        String id() {
            return piece.id();
        }

        double area() {
            return Math.abs(piece.outline().signedArea());
        }

        /** Whether the level is measured along an edge or runs the same way. */
        boolean isAlong(String edgeName) {
            Optional<Edge> edge = piece.edge(edgeName).filter(e -> !OVER_THE_SHOULDER.contains(e.role()));
            if (edge.isEmpty() || width.spans().isEmpty()) {
                return false;
            }
            boolean itself = piece.level(width.level())
                    .flatMap(LevelMark::along)
                    .filter(edgeName::equals)
                    .isPresent();
            Point run = edge.get().to().minus(edge.get().from());
            Point level = width.spans()
                    .get(width.spans().size() - 1)
                    .to()
                    .minus(width.spans().get(0).from());
            return itself || Math.abs(run.dot(level)) > ALONG * run.norm() * level.norm();
        }
    }

    private static List<String> ids(List<Part> parts) {
        return parts.stream().map(Part::id).toList();
    }

    /** Whether one is sewn to the other by edges that run along the level on both: they lie above each other. */
    private static boolean isSewnAlong(Pattern pattern, Part one, Part other) {
        return pattern.mates().stream().anyMatch(m -> isSewnAlong(m, one, other) || isSewnAlong(m, other, one));
    }

    private static boolean isSewnAlong(Mate mate, Part first, Part second) {
        return isSewnAlong(mate.first(), first) && isSewnAlong(mate.second(), second);
    }

    private static boolean isSewnAlong(List<EdgeRef> edges, Part part) {
        return edges.stream().anyMatch(e -> part.piece().isCalled(e.piece()) && part.isAlong(e.edge()));
    }
}
