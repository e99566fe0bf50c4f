package easewright.editor.mark;

import easewright.alter.Renaming;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * What can be done to the edges of a piece. Everything that speaks of an edge, such as seams sewn together, goes along.
 */
public final class EdgeEdits {
    /** Places on an outline nearer to each other than this are one, mm. */
    private static final double SAME = 0.5;

    private EdgeEdits() {}

    /**
     * The edge at a place becomes two; where there is none yet, the stretch without one becomes edges that end there.
     *
     * @throws MarkRefused {@code edge-ends-there}, {@code edge-in-changes}, {@code edge-has-level}
     */
    public static Pattern split(Pattern pattern, String pieceId, Point at) throws MarkRefused {
        Piece piece = piece(pattern, pieceId);
        Outline outline = piece.outline();
        Point p = outline.nearest(at).point();
        for (Edge edge : piece.edges()) {
            if (edge.from().distance(p) < SAME || edge.to().distance(p) < SAME) {
                throw new MarkRefused("edge-ends-there", Map.of("piece", piece.name()));
            }
        }
        List<Edge> edges = new ArrayList<>(piece.edges());
        if (edges.isEmpty()) {
            edges.add(Edge.of("edge 1", EdgeRole.SEAM, p, p));
            return pattern.withPiece(piece.withEdges(edges));
        }
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            if (holds(outline, edge, p)) {
                requireUnchanged(pattern, piece, edge.name());
                requireNoLevel(piece, edge.name());
                Edge second = new Edge(
                        unique(piece, edge.name()), edge.role(), p, edge.to(), edge.isProtected(), edge.allowance());
                edges.set(i, edge.withEnds(edge.from(), p));
                edges.add(i + 1, second);
                Piece parted = dartsOn(piece.withEdges(edges), edge.name(), second.name());
                return EdgeRefs.parted(pattern.withPiece(parted), piece, edge.name(), second.name());
            }
        }
        return pattern.withPiece(piece.withEdges(filled(piece, p)));
    }

    /** Half an edge would give half the girth, without a word. */
    private static void requireNoLevel(Piece piece, String edge) throws MarkRefused {
        for (LevelMark mark : piece.levels()) {
            if (mark.along().equals(Optional.of(edge))) {
                throw new MarkRefused("edge-has-level", Map.of("edge", edge, "level", mark.level()));
            }
        }
    }

    /** Darts of the first part whose mouth lies on the second now belong to that. */
    private static Piece dartsOn(Piece piece, String first, String second) {
        List<Dart> darts = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            Point middle = dart.mouth1().towards(dart.mouth2(), 0.5);
            boolean moves = dart.edge().equals(Optional.of(first))
                    && at(piece, piece.outline().nearest(middle).point())
                            .map(e -> e.name().equals(second))
                            .orElse(false);
            darts.add(moves ? EdgeRefs.on(dart, second) : dart);
        }
        return piece.toBuilder().darts(darts).build();
    }

    /** The stretch without edges around a place becomes two of them. */
    private static List<Edge> filled(Piece piece, Point p) {
        Outline outline = piece.outline();
        Place here = outline.nearest(p).place();
        Edge before = null;
        Edge after = null;
        double beforeWay = Double.POSITIVE_INFINITY;
        double afterWay = Double.POSITIVE_INFINITY;
        for (Edge edge : piece.edges()) {
            double back = outline.run(outline.nearest(edge.to()).place(), here).length();
            double on = outline.run(here, outline.nearest(edge.from()).place()).length();
            if (back < beforeWay) {
                beforeWay = back;
                before = edge;
            }
            if (on < afterWay) {
                afterWay = on;
                after = edge;
            }
        }
        List<Edge> edges = new ArrayList<>(piece.edges());
        if (before != null && after != null) {
            Edge first = Edge.of(unique(piece, "edge"), EdgeRole.SEAM, before.to(), p);
            edges.add(first);
            edges.add(Edge.of(unique(piece.withEdges(edges), "edge"), EdgeRole.SEAM, p, after.from()));
        }
        return edges;
    }

    private static boolean holds(Outline outline, Edge edge, Point p) {
        Place from = outline.nearest(edge.from()).place();
        Place to = outline.nearest(edge.to()).place();
        Place at = outline.nearest(p).place();
        return from.compareTo(to) < 0
                ? from.compareTo(at) <= 0 && at.compareTo(to) <= 0
                : from.compareTo(at) <= 0 || at.compareTo(to) <= 0;
    }

    /** A name like the one given that no edge of the piece has. */
    private static String unique(Piece piece, String like) {
        String stem = like.replaceAll(" \\d+$", "");
        int number = 2;
        while (piece.edge(stem + " " + number).isPresent()) {
            number++;
        }
        return stem + " " + number;
    }

    /**
     * The edge and the one that follows it become one, named and used as the first.
     *
     * @throws MarkRefused {@code no-edge-follows}, {@code edge-in-changes}
     */
    public static Pattern merge(Pattern pattern, String pieceId, String name) throws MarkRefused {
        Piece piece = piece(pattern, pieceId);
        Edge first = edge(piece, name);
        Edge second = piece.edges().stream()
                .filter(e -> e != first && e.from().distance(first.to()) < SAME)
                .findFirst()
                .orElseThrow(() -> new MarkRefused("no-edge-follows", Map.of("edge", name)));
        requireUnchanged(pattern, piece, first.name());
        requireUnchanged(pattern, piece, second.name());
        List<Edge> edges = new ArrayList<>(piece.edges());
        edges.set(edges.indexOf(first), first.withEnds(first.from(), second.to()));
        edges.remove(second);
        return EdgeRefs.renamed(pattern.withPiece(piece.withEdges(edges)), piece, second.name(), first.name());
    }

    /**
     * With its name in the record of changes, and on the copy of the piece for the other side, if there is one.
     *
     * @throws MarkRefused {@code name-empty}, {@code name-taken}
     */
    public static Pattern rename(Pattern pattern, String pieceId, String name, String newName) throws MarkRefused {
        Piece piece = piece(pattern, pieceId);
        String wanted = newName.strip();
        if (wanted.equals(name)) {
            return pattern;
        }
        if (wanted.isEmpty()) {
            throw new MarkRefused("name-empty", Map.of());
        }
        if (piece.edge(wanted).isPresent()) {
            throw new MarkRefused("name-taken", Map.of("name", wanted));
        }
        return Renaming.edge(pattern, piece, name, wanted);
    }

    /** An edge at which something was changed must stay what it was, or the change could not be repeated. */
    private static void requireUnchanged(Pattern pattern, Piece piece, String edge) throws MarkRefused {
        for (ChangeNote note : pattern.changes()) {
            boolean named = note.settings().values().stream()
                    .map(v -> v.replaceFirst("\\*\\d+$", ""))
                    .anyMatch(v -> v.equals(piece.id() + "/" + edge) || v.equals(piece.name() + "/" + edge));
            if (named) {
                throw new MarkRefused("edge-in-changes", Map.of("edge", edge));
            }
        }
    }

    /** Another role; whether the edge is protected follows it. */
    public static Pattern role(Pattern pattern, String pieceId, String name, EdgeRole role) {
        return changed(
                pattern,
                pieceId,
                name,
                e -> new Edge(e.name(), role, e.from(), e.to(), role.protectedByDefault(), e.allowance()));
    }

    public static Pattern protect(Pattern pattern, String pieceId, String name, boolean keep) {
        return changed(pattern, pieceId, name, e -> e.withProtected(keep));
    }

    /**
     * @param mm empty: the piece's own
     * @throws IllegalArgumentException if it is below 0
     */
    public static Pattern allowance(Pattern pattern, String pieceId, String name, OptionalDouble mm) {
        return changed(
                pattern, pieceId, name, e -> new Edge(e.name(), e.role(), e.from(), e.to(), e.isProtected(), mm));
    }

    /**
     * Without the edge and all that speaks of it.
     *
     * @throws MarkRefused {@code edge-in-changes}
     */
    public static Pattern remove(Pattern pattern, String pieceId, String name) throws MarkRefused {
        Piece piece = piece(pattern, pieceId);
        requireUnchanged(pattern, piece, name);
        Piece without = piece.toBuilder()
                .edges(piece.edges().stream()
                        .filter(e -> !e.name().equals(name))
                        .toList())
                .levels(piece.levels().stream()
                        .filter(l -> !l.along().equals(Optional.of(name)))
                        .toList())
                .darts(piece.darts().stream().map(d -> unbound(d, name)).toList())
                .build();
        return EdgeRefs.removed(pattern.withPiece(without), piece, name);
    }

    private static Dart unbound(Dart dart, String edge) {
        return dart.edge().equals(Optional.of(edge))
                ? new Dart(dart.name(), dart.mouth1(), dart.mouth2(), dart.point(), dart.otherPoint(), Optional.empty())
                : dart;
    }

    private static Pattern changed(Pattern pattern, String pieceId, String name, UnaryOperator<Edge> change) {
        Piece piece = piece(pattern, pieceId);
        Edge old = edge(piece, name);
        return replaced(pattern, piece, old, change.apply(old));
    }

    private static Pattern replaced(Pattern pattern, Piece piece, Edge old, Edge now) {
        return pattern.withPiece(piece.withEdges(
                piece.edges().stream().map(e -> e == old ? now : e).toList()));
    }

    static Piece piece(Pattern pattern, String id) {
        return pattern.pieces().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No piece " + id));
    }

    static Edge edge(Piece piece, String name) {
        return piece.edge(name).orElseThrow(() -> new IllegalArgumentException("No edge " + name));
    }

    /** The edge that holds a place of the outline; of two that meet there, the one that begins. */
    static Optional<Edge> at(Piece piece, Point p) {
        return piece.edges().stream()
                .filter(e -> e.to().distance(p) >= SAME)
                .filter(e -> holds(piece.outline(), e, p))
                .findFirst();
    }

    /** The piece with the mark of a level changed. */
    static Piece withLevel(Piece piece, LevelMark mark) {
        List<LevelMark> levels = new ArrayList<>(piece.levels());
        levels.removeIf(l -> l.level().equals(mark.level()));
        levels.add(mark);
        return piece.withLevels(levels);
    }
}
