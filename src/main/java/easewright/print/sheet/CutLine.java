package easewright.print.sheet;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.topology.Allowance;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The line along which a piece is cut out.
 *
 * @param outline  the line
 * @param drawn    whether the drawing itself holds it, so that it need not be added
 * @param stitched whether a stitching line lies inside it
 */
record CutLine(Outline outline, boolean drawn, boolean stitched) {
    static CutLine of(Piece piece) {
        if (piece.drawn() == LineKind.CUTTING) {
            return new CutLine(piece.outline(), true, piece.hasAllowance());
        }
        Optional<Outline> around = piece.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                .flatMap(r -> closed(r).stream())
                .filter(o -> Math.abs(o.signedArea()) > Math.abs(piece.outline().signedArea()))
                .findFirst();
        return around.map(o -> new CutLine(o, true, true)).orElseGet(() -> widened(piece));
    }

    private static Optional<Outline> closed(Rider rider) {
        try {
            return Optional.of(new Outline(rider.segments()));
        } catch (IllegalArgumentException open) {
            return Optional.empty();
        }
    }

    /** The stitching line with its allowances added. */
    private static CutLine widened(Piece piece) {
        List<Segment> segments =
                piece.outline().segments().stream().filter(s -> s.length() > 0).toList();
        Outline outline = new Outline(segments);
        for (Edge edge : piece.edges()) {
            outline = outline.splitAt(outline.nearest(edge.from()).place());
            outline = outline.splitAt(outline.nearest(edge.to()).place());
        }
        double[] outwards = new double[outline.segments().size()];
        Arrays.fill(outwards, -piece.allowance());
        for (int k = piece.edges().size() - 1; k >= 0; k--) {
            Edge edge = piece.edges().get(k);
            double own = edge.allowance().orElse(edge.role() == EdgeRole.FOLD ? 0 : piece.allowance());
            Place from = outline.nearest(edge.from()).place();
            Place to = outline.nearest(edge.to()).place();
            for (int i = 0; i < outwards.length; i++) {
                if (from.equals(to) || within(from, new Place(i, 0.5), to)) {
                    outwards[i] = -own;
                }
            }
        }
        if (Arrays.stream(outwards).allMatch(d -> d == 0)) {
            return new CutLine(piece.outline(), true, false);
        }
        return Allowance.of(outline, outwards)
                .map(a -> new CutLine(a.outline(), false, true))
                .orElse(new CutLine(piece.outline(), true, false));
    }

    /** Whether going round from one place one meets {@code place} no later than {@code to}. */
    private static boolean within(Place from, Place place, Place to) {
        boolean after = from.compareTo(place) <= 0;
        boolean before = place.compareTo(to) <= 0;
        return from.compareTo(to) <= 0 ? after && before : after || before;
    }
}
