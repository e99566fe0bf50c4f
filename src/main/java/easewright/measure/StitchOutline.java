package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import easewright.topology.Allowance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The stitching line of a piece: the drawn outline with cut-out darts closed by their mouth lines and the allowance
 * taken off. Where the drawn line is the stitching line and has no cut-out dart, it is that very outline.
 */
public final class StitchOutline {
    private final Piece piece;
    private final DartCuts cuts;
    private final CuttingLine cutting;
    private final Optional<Allowance> inset;
    private final Outline outline;
    private final List<ClosedDart> darts;

    private StitchOutline(Piece piece) {
        this.piece = piece;
        cuts = DartCuts.of(piece.outline(), piece.darts());
        cutting = CuttingLine.of(piece, cuts.closed());
        inset = cutting.hasAllowance() ? Allowance.of(cutting.outline(), cutting.widths()) : Optional.empty();
        outline = inset.isPresent() ? inset.get().outline() : cuts.closed();
        List<ClosedDart> found = new ArrayList<>();
        for (int i = 0; i < piece.darts().size(); i++) {
            Optional<Curve> cut = Optional.ofNullable(cuts.cut().get(i));
            found.add(ClosedDart.on(outline, piece.darts().get(i), cut, cutting.widest()));
        }
        darts = List.copyOf(found);
    }

    public static StitchOutline of(Piece piece) {
        return new StitchOutline(piece);
    }

    /** The piece as it was measured. */
    public Piece piece() {
        return piece;
    }

    /** The closed stitching line, in the drawn direction; the drawn line where the allowance leaves nothing of it. */
    public Outline outline() {
        return outline;
    }

    /** Whether the allowance is so wide that no stitching line fits inside the cutting line. */
    public boolean allowanceTooWide() {
        return cutting.hasAllowance() && inset.isEmpty();
    }

    /** Where on the stitching line a place marked on the drawn outline is sewn. */
    public Place place(Point drawn) {
        if (inset.isEmpty()) {
            return outline.nearest(drawn).place();
        }
        return inset.get().place(cutting.outline().nearest(drawn).place());
    }

    /** The point of {@link #place(Point)}. */
    public Point point(Point drawn) {
        return outline.point(place(drawn));
    }

    /** The run of an edge on the stitching line; dart mouths on it are still part of it. */
    public Curve edge(Edge edge) {
        return isDartLeg(edge) ? edge.on(piece.outline()) : outline.run(place(edge.from()), place(edge.to()));
    }

    /** The dart mouths that lie on an edge. */
    List<ClosedDart> dartsOn(Edge edge) {
        if (darts.isEmpty() || isDartLeg(edge)) {
            return List.of();
        }
        Place from = place(edge.from());
        Place to = place(edge.to());
        boolean whole = from.equals(to);
        List<ClosedDart> found = new ArrayList<>();
        for (ClosedDart dart : darts) {
            Optional<ClosedDart.Mouth> mouth = dart.mouth();
            boolean elsewhere = !dart.dart().edge().orElse(edge.name()).equals(edge.name());
            if (mouth.isPresent() && !elsewhere && (whole || liesOn(mouth.get(), from, to))) {
                found.add(dart);
            }
        }
        return found;
    }

    private static boolean liesOn(ClosedDart.Mouth mouth, Place from, Place to) {
        return Places.between(from, mouth.from(), to)
                && Places.between(from, mouth.to(), to)
                && Places.between(from, mouth.from(), mouth.to());
    }

    /** All darts of the piece, in its order. */
    List<ClosedDart> darts() {
        return darts;
    }

    /** An edge that ends at the point of a cut-out dart is one of its legs and does not vanish with it. */
    private boolean isDartLeg(Edge edge) {
        for (int i : cuts.cut().keySet()) {
            Dart dart = piece.darts().get(i);
            if (dart.point().distance(edge.from()) <= ClosedDart.ON_LINE
                    || dart.point().distance(edge.to()) <= ClosedDart.ON_LINE) {
                return true;
            }
        }
        return false;
    }
}
