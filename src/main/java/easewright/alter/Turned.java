package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.Finding;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece slashed to, but not through, its far edge, and one part turned about the hinge left there.
 *
 * @param piece the changed piece
 */
record Turned(Piece piece, List<Finding> findings) {
    /** Above 5–6° a wedge is split among several slashes (docs/sources.md 4.3, common practice). */
    private static final double WIDE_WEDGE = 6;

    private static final double AT_END = 1e-6;

    /**
     * @param hinge   place on the outline that holds together
     * @param opening place on the outline at which the slash opens
     * @param gap     straight distance between the two cut corners, mm; below 0 folds a wedge of that width out of
     *                the turning part
     * @param turning a place on the outline of the part that turns; empty: the part without the centre line
     */
    static Turned of(
            Piece cloth, Point hinge, Point opening, double gap, Optional<Point> turning, boolean acceptProtected)
            throws Refusal {
        Outline outline = cloth.outline();
        Place hingePlace = SlashPlaces.hinge(cloth, hinge);
        Place openingPlace = SlashPlaces.onOutline(cloth, opening);
        Point corner = outline.point(hingePlace);
        // A cutting line is slashed to the stitching line and clipped from outside, so that the seam keeps its length.
        Point about = cloth.drawn() == LineKind.CUTTING ? HingeJoint.pivot(cloth, hingePlace) : corner;
        Point open = outline.point(openingPlace);
        if (about.distance(open) < 1) {
            throw Refusal.of("slash-without-length").with("piece", cloth.name());
        }
        Point aside = open.minus(about).unit().quarterTurned();
        SlashPlaces.requireMayOpen(cloth, openingPlace, aside, acceptProtected);
        double half = gap / (2 * about.distance(open));
        if (Math.abs(half) >= 1) {
            throw Refusal.of("gap-too-wide").with("piece", cloth.name());
        }
        double angle = 2 * Math.asin(half);
        Parting afterOpening = Parting.of(outline, openingPlace, hingePlace);
        boolean after = turning.map(afterOpening::nearerToMoving).orElseGet(() -> Centre.stays(cloth, afterOpening));
        Parting parting = after ? afterOpening : Parting.of(outline, hingePlace, openingPlace);
        // Seen from the hinge, the part after the opening lies clockwise of the slash on an outline drawn clockwise.
        boolean clockwise = after == (outline.signedArea() > 0);
        Affine map = Affine.rotation(clockwise ? angle : -angle, about);
        Parting cut = gap > 0
                ? parting
                : folded(cloth, parting, after, about, map.inverse().apply(open));
        PartMove move = new PartMove(cloth, parting, map);
        HingeJoint joint = HingeJoint.of(cut, after, corner, map);
        Outline joined = joint.parting().joined(map, outline.segments().get(0));
        if (!Simple.stays(outline, joined)) {
            throw Refusal.of("outline-crosses-itself").with("piece", cloth.name());
        }
        Piece done = joint.marked(move.done(joined));
        List<Finding> findings = new ArrayList<>(move.findings());
        findings.addAll(remarks(cloth, hingePlace, Math.toDegrees(Math.abs(angle))));
        return new Turned(done, findings);
    }

    /** The turning run loses the wedge beside the slash, so that closing takes back exactly what opening gave. */
    private static Parting folded(Piece cloth, Parting parting, boolean after, Point about, Point corner)
            throws Refusal {
        Point ray = corner.minus(about);
        List<Segment> run = parting.moves();
        // The hinge itself lies on the ray: search from the opening's end only.
        SlashPlaces.Trimmed trimmed =
                after ? SlashPlaces.trimStart(run, about, ray) : SlashPlaces.trimEnd(run, about, ray);
        PartMove.requireNothingTaken(cloth, trimmed.taken());
        return new Parting(parting.stays(), trimmed.left());
    }

    private static List<Finding> remarks(Piece cloth, Place hingePlace, double degrees) {
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.of("grain-turned", Severity.NOTE, cloth.name()).with("turn.degrees", degrees));
        Point p = cloth.outline().point(hingePlace);
        for (Edge edge : cloth.edges()) {
            boolean inside = new EdgeRun(cloth, edge).holds(hingePlace)
                    && p.distance(edge.from()) > AT_END
                    && p.distance(edge.to()) > AT_END;
            if (inside) {
                findings.add(
                        Finding.of("hinge-corner", edge.isProtected() ? Severity.CAUTION : Severity.NOTE, cloth.name())
                                .with("edge", edge.name())
                                .with("turn.degrees", degrees));
            }
        }
        if (degrees > WIDE_WEDGE) {
            findings.add(Finding.of("wedge-wide", Severity.CAUTION, cloth.name())
                    .with("turn.degrees", degrees)
                    .with("limit.degrees", WIDE_WEDGE));
        }
        return findings;
    }
}
