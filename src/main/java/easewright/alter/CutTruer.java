package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.StitchOutline;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Draws the line beside the outline anew at its distance: the cutting line around the stitching line, with hems mirrored
 * about the hem line, or the stitching line inside the cutting line.
 */
final class CutTruer implements Trued.Truer {
    /** A line is drawn no more exactly than this where it is off by more where nothing changed, mm. */
    private static final double DRAWN = 0.5;

    /** It is drawn in few curves, that stay this near to the line at its distance, mm. */
    private static final double NODES = 0.01;

    /**
     * A line beside the outline, and by how much it misses its distance at most along an edge that is no longer as it was
     * drawn, mm.
     *
     * @param drawn by how much it misses it along the rest, where whoever drew both lines drew them so, mm
     * @param at    the place of the outline beside which it is off most
     */
    record Beside(Piece piece, Rider rider, Edge edge, double off, double drawn, Point at) {}

    /** For each piece that was changed, the edge along which the line beside it strays most from its allowance. */
    static List<Beside> strayed(List<Piece> pieces) {
        List<Beside> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Optional<Rider> line = line(piece);
            if (piece.original().isEmpty() || line.isEmpty() || piece.edges().isEmpty()) {
                continue;
            }
            BesideOff look = new BesideOff(piece, line.get());
            Set<Segment> original = new HashSet<>(piece.original().get().segments());
            List<Edge> untouched = new ArrayList<>();
            Edge worst = piece.edges().get(0);
            BesideOff.Off most = BesideOff.Off.NONE;
            double drawn = 0;
            for (Edge edge : piece.edges()) {
                if (!look.isRedrawn()
                        && original.containsAll(edge.on(piece.outline()).segments())) {
                    untouched.add(edge);
                    continue;
                }
                BesideOff.Off own = look.along(edge);
                drawn = Math.max(drawn, own.asDrawn());
                if (own.changed() > most.changed()) {
                    worst = edge;
                    most = own;
                }
            }
            if (most.changed() > Truing.ALLOWANCE_WITHIN) {
                // How exactly the rest was drawn matters only where something strays.
                for (Edge edge : untouched) {
                    drawn = Math.max(drawn, look.along(edge).asDrawn());
                }
            }
            double hand = drawn > DRAWN ? Math.min(drawn, Cutting.WORKS) : 0;
            all.add(new Beside(piece, line.get(), worst, most.changed(), hand, most.at()));
        }
        return all;
    }

    /** The one closed line that goes along. */
    private static Optional<Rider> line(Piece piece) {
        List<Rider> lines = piece.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL && isClosed(r.segments()))
                .toList();
        return lines.size() == 1 ? Optional.of(lines.get(0)) : Optional.empty();
    }

    static boolean isClosed(List<Segment> segments) {
        for (int i = 0; i < segments.size(); i++) {
            if (!segments.get(i)
                    .end()
                    .equals(segments.get((i + 1) % segments.size()).start())) {
                return false;
            }
        }
        return !segments.isEmpty();
    }

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        String name = what.target(Trued.PIECE);
        Piece piece = Known.piece(pattern, name);
        Rider rider =
                line(piece).orElseThrow(() -> Refusal.of("line-beside-missing").with("piece", piece.name()));
        Outline drawn = around(piece, new Outline(rider.segments()))
                .orElseThrow(() -> Refusal.of("line-beside-missing").with("piece", piece.name()));
        List<Segment> after = begunNear(drawn, rider.segments());
        return List.of(new CutStroke(piece.id(), rider.id(), rider.segments(), after));
    }

    /**
     * The line as it should be: of the lines that can be drawn around a stitching line, with hems turned up or with
     * corners drawn out, the one that the old line is more like.
     */
    static Optional<Outline> around(Piece piece, Outline old) {
        if (piece.drawn() == LineKind.CUTTING) {
            return Optional.of(StitchOutline.of(piece).outline());
        }
        Piece folded = piece.withOutline(Crumbs.swept(FoldedOver.outline(piece)));
        boolean hems = piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.HEM);
        return Around.of(folded)
                .map(lines -> hems ? moreLike(lines.turnedUp(), lines.straight(), old) : lines.straight());
    }

    private static Outline moreLike(Outline turnedUp, Outline straight, Outline old) {
        Set<Point> one = corners(turnedUp);
        Set<Point> other = corners(straight);
        // Where both go through the same corners, neither is nearer.
        return apart(one, other, old) <= apart(other, one, old) ? turnedUp : straight;
    }

    private static Set<Point> corners(Outline line) {
        Set<Point> corners = new HashSet<>();
        line.segments().forEach(s -> corners.add(s.start()));
        return corners;
    }

    /** How far those corners that the other line has not lie from the old one, added up, mm. */
    private static double apart(Set<Point> corners, Set<Point> others, Outline old) {
        double apart = 0;
        for (Point corner : corners) {
            if (!others.contains(corner)) {
                apart += old.nearest(corner).distance();
            }
        }
        return apart;
    }

    /** In the direction of the old line, and begun at its corner nearest to where that began. */
    private static List<Segment> begunNear(Outline line, List<Segment> old) {
        boolean same = new Outline(old).signedArea() * line.signedArea() > 0;
        List<Segment> all = (same ? line : line.reversed()).segments();
        int first = 0;
        for (int i = 1; i < all.size(); i++) {
            if (all.get(i).start().distance(old.get(0).start())
                    < all.get(first).start().distance(old.get(0).start())) {
                first = i;
            }
        }
        List<Segment> begun = new ArrayList<>(all.subList(first, all.size()));
        begun.addAll(all.subList(0, first));
        return Fewer.of(begun, NODES);
    }
}
