package easewright.measure;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The drawn line of a piece with the allowance on each of its segments. Notches that are cut into it are closed over.
 *
 * @param outline split at the ends of the edges, so that one allowance holds for each segment
 * @param widths  allowance on each segment, mm
 * @param notches the notches that were closed over
 */
record CuttingLine(Outline outline, double[] widths, List<NotchCuts.Cut> notches) {
    /** How far beyond the place across, as a share of the allowance: the line may turn there by up to 28°. */
    private static final double CLEAR = 0.25;

    /** A corner as near as this to the end of what is kept is one that a change made there, mm. */
    private static final double OWN_NODE = 0.01;

    /** Less is the corner of a curve drawn in short lines. */
    private static final double SLIGHT = Math.toRadians(8);

    /** More is the corner between two edges. */
    private static final double SHARP = Math.toRadians(60);

    static CuttingLine of(Piece piece, Outline closed) {
        if (!hasAllowance(piece)) {
            return new CuttingLine(closed, new double[0], List.of());
        }
        List<Segment> drawn = new ArrayList<>(closed.segments());
        boolean places = drawn.removeIf(segment -> !segment.hasLength());
        Outline outline = places ? new Outline(drawn) : closed;
        for (Edge edge : piece.edges()) {
            outline = outline.splitAt(Places.corner(outline, edge.from()));
            outline = outline.splitAt(Places.corner(outline, edge.to()));
        }
        double[] widths = new double[outline.segments().size()];
        Arrays.fill(widths, piece.allowance());
        for (int k = piece.edges().size() - 1; k >= 0; k--) {
            Edge edge = piece.edges().get(k);
            Place from = Places.corner(outline, edge.from());
            Place to = Places.corner(outline, edge.to());
            for (int i = 0; i < widths.length; i++) {
                if (from.equals(to) || Places.between(from, new Place(i, 0.5), to)) {
                    widths[i] = piece.allowanceInside(edge);
                }
            }
        }
        return NotchCuts.closedOver(outline, widths);
    }

    private static boolean hasAllowance(Piece piece) {
        boolean any = piece.allowance() != 0;
        for (Edge edge : piece.edges()) {
            any |= piece.allowanceInside(edge) != 0;
        }
        return any && piece.drawn() == LineKind.CUTTING;
    }

    boolean hasAllowance() {
        return widths.length > 0;
    }

    double widest() {
        double widest = 0;
        for (double width : widths) {
            widest = Math.max(widest, width);
        }
        return widest;
    }

    /**
     * How far along the line its shape must be kept so that a place of the stitching line stays where it is, whatever
     * the line does beyond: a share of the allowance, and as much again after each corner whose cut-off reaches so far.
     * In the mouth of a notch the line is not drawn: from there it is the end of the mouth.
     *
     * @param from  the place across from the sewn one
     * @param width the allowance there, mm
     * @param back  against the drawn direction
     */
    Point kept(Place from, double width, boolean back) {
        int count = outline.segments().size();
        int i = from.segment();
        Segment segment = outline.segments().get(i);
        double fromStart = segment.lengthTo(from.t());
        double here = back ? fromStart - segment.length() : -fromStart;
        double end = CLEAR * width;
        for (int k = 0; k < count; k++) {
            double corner = here + segment.length();
            if (corner >= end - OWN_NODE && corner <= end + OWN_NODE) {
                return back ? segment.start() : segment.end();
            }
            double cutOff = cutOff(segment, outline.segments().get(Math.floorMod(back ? i - 1 : i + 1, count)), back);
            if (corner - width * cutOff < end && cutOff > 0) {
                end = Math.max(corner, 0) + width * (cutOff + CLEAR);
            }
            if (corner > end) {
                break;
            }
            here = corner;
            i = Math.floorMod(back ? i - 1 : i + 1, count);
            segment = outline.segments().get(i);
        }
        if (isBridge(i)) {
            return back ? segment.start() : segment.end();
        }
        double at = end - here;
        return segment.at(segment.parameterAtLength(back ? segment.length() - at : at));
    }

    /** By how many allowances a corner shortens its sides; 0 for hollow, slight and very sharp ones. */
    private double cutOff(Segment segment, Segment next, boolean back) {
        Point on = back ? segment.tangent(0).times(-1) : segment.tangent(1);
        Point off = back ? next.tangent(1).times(-1) : next.tangent(0);
        boolean clockwise = (outline.signedArea() > 0) != back;
        double turn = Math.atan2(on.cross(off), on.dot(off)) * (clockwise ? 1 : -1);
        return turn > SLIGHT && turn < SHARP ? Math.tan(turn / 2) : 0;
    }

    private boolean isBridge(int segment) {
        for (NotchCuts.Cut notch : notches) {
            if (notch.bridge().isPresent() && notch.bridge().getAsInt() == segment) {
                return true;
            }
        }
        return false;
    }
}
