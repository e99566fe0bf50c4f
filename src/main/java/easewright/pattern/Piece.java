package easewright.pattern;

import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.List;
import java.util.Optional;

/**
 * One flat pattern piece.
 *
 * @param id        id of the drawn element that is the outline; unique in the pattern
 * @param outline   as drawn, mm
 * @param drawn     whether the drawn outline is the stitching or the cutting line
 * @param allowance distance from stitching to cutting line where an edge does not say otherwise, mm
 * @param times     how often the shape is cut for one garment (2: a mirrored pair)
 * @param layers    how many of the cut shapes lie on each other: 2 where the piece is lined with itself, as a yoke
 * @param onFold    cut on a fold: the drawn half stands for both halves
 * @param original  the outline as it was before any recorded change, if any was made
 * @param size      the size it belongs to, where the pattern comes in several; empty: to all of them
 * @param side      the side of the garment it is cut for, where left and right differ
 */
public record Piece(
        String id,
        String name,
        Outline outline,
        LineKind drawn,
        double allowance,
        int times,
        int layers,
        boolean onFold,
        List<Edge> edges,
        List<LevelMark> levels,
        List<Dart> darts,
        List<Notch> notches,
        Optional<Grain> grain,
        List<Rider> riders,
        Optional<Outline> original,
        Optional<String> size,
        Side side) {
    /** The sine up to which a direction lies across another. */
    private static final double LYING = 0.1;

    /**
     * @throws IllegalArgumentException if a name is blank, the allowance negative or {@code times} or {@code layers} below 1
     */
    public Piece {
        Names.require(id, "piece");
        Names.require(name, "piece");
        if (!(allowance >= 0 && Double.isFinite(allowance))) {
            throw new Unfit("mark-allowance-negative", "Allowance of piece " + name + " must be 0 or more");
        }
        if (times < 1) {
            throw new IllegalArgumentException("Piece " + name + " must be cut at least once");
        }
        if (layers < 1) {
            throw new IllegalArgumentException("Piece " + name + " must lie in at least one layer");
        }
        size.ifPresent(s -> Names.require(s, "size"));
        edges = List.copyOf(edges);
        levels = List.copyOf(levels);
        darts = List.copyOf(darts);
        notches = List.copyOf(notches);
        riders = List.copyOf(riders);
    }

    /** A piece of which nothing is known but its outline, taken as a stitching line cut once. */
    public static Piece bare(String id, Outline outline) {
        return new Piece(
                id,
                id,
                outline,
                LineKind.STITCHING,
                0,
                1,
                1,
                false,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Side.BOTH);
    }

    /** Unit direction of the grain, pointing down the page where no grainline is marked. */
    public Point grainDirection() {
        return grain.map(Grain::direction).orElse(new Point(0, 1));
    }

    /**
     * Unit direction along the grain to where the wearer's feet are: towards a hem if one is marked there, else down the page,
     * or to its right where the grain lies across it.
     */
    public Point downGrain() {
        Point along = grainDirection();
        for (Edge edge : edges) {
            if (edge.role() == EdgeRole.HEM) {
                Point hem =
                        edge.from().towards(edge.to(), 0.5).minus(outline.box().centre());
                // A hem beside the middle, as of a sleeve cut across, says nothing.
                if (Math.abs(along.dot(hem)) > LYING * hem.norm()) {
                    return along.dot(hem) < 0 ? along.times(-1) : along;
                }
            }
        }
        boolean flip = Math.abs(along.y()) > LYING ? along.y() < 0 : along.x() < 0;
        return flip ? along.times(-1) : along;
    }

    /** How many of the cut shapes lie beside each other: what lies on one of them is the same place again. */
    public int shapes() {
        return Math.max(1, times / layers);
    }

    /**
     * How often what is drawn lies beside itself in the garment: what is cut on a fold is drawn by half and lies there
     * twice, and layers on each other are one.
     */
    public int timesBeside() {
        return shapes() * halves();
    }

    /** How often what is drawn is there in the garment, in whatever layer: what is cut on a fold twice. */
    public int timesThere() {
        return times * halves();
    }

    private int halves() {
        return onFold ? 2 : 1;
    }

    /**
     * How often a width on this piece counts in the girth of a level: twice on a fold, one of a pair on a limb, and of
     * layers on each other one.
     */
    public int count(Level level) {
        boolean pair = level.limb() && side == Side.BOTH;
        int beside = pair ? Math.max(1, shapes() / 2) : shapes();
        return beside * halves();
    }

    public Optional<Edge> edge(String edgeName) {
        for (Edge edge : edges) {
            if (edge.name().equals(edgeName)) {
                return Optional.of(edge);
            }
        }
        return Optional.empty();
    }

    /** Whether it is part of the girth at a level. */
    public boolean countsAt(String levelName) {
        return level(levelName).map(LevelMark::counts).orElse(false);
    }

    public Optional<LevelMark> level(String levelName) {
        for (LevelMark mark : levels) {
            if (mark.level().equals(levelName)) {
                return Optional.of(mark);
            }
        }
        return Optional.empty();
    }

    /** Whether cloth is left beyond the stitching line, on one edge or all. */
    public boolean hasAllowance() {
        return allowance > 0 || edges.stream().anyMatch(edge -> edge.allowance().orElse(0) > 0);
    }

    /**
     * The allowance on an edge, mm: 0 where the drawn line is the stitching line, and 0 on a fold unless the edge
     * itself states one, since nothing is sewn there.
     */
    public double allowanceInside(Edge edge) {
        if (drawn == LineKind.STITCHING) {
            return 0;
        }
        return edge.allowance().orElse(edge.role() == EdgeRole.FOLD ? 0 : allowance);
    }

    /** The name without its size and its side ("Front" of "Front 12 left"): what the piece is called in every size. */
    public String plainName() {
        String plain = side == Side.BOTH ? name : SizeNames.without(name, side.name());
        return size.isEmpty() ? plain : SizeNames.without(plain, size.get());
    }

    /** What it is in every size. */
    public PieceKind kind() {
        return new PieceKind(plainName(), side);
    }

    /** Whether it is meant by an id, a name or a {@link #plainName}, others perhaps too. */
    public boolean isCalled(String idOrName) {
        return id.equals(idOrName)
                || name.equals(idOrName)
                || (name.contains(idOrName) && plainName().equals(idOrName));
    }

    public Piece withName(String newName) {
        return toBuilder().name(newName).build();
    }

    public Piece withOutline(Outline changed) {
        return toBuilder().outline(changed).build();
    }

    public Piece withEdges(List<Edge> changed) {
        return toBuilder().edges(changed).build();
    }

    public Piece withLevels(List<LevelMark> changed) {
        return toBuilder().levels(changed).build();
    }

    public PieceBuilder toBuilder() {
        return new PieceBuilder(this);
    }
}
