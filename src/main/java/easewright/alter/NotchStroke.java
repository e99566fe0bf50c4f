package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A notch moved along its edge, and the tick drawn at it with it. */
record NotchStroke(String piece, String notch, Point from, Point to) implements Stroke {
    static final String WORD = "notch";

    @Override
    public Piece on(Piece on) throws Refusal {
        List<Notch> notches = new ArrayList<>();
        boolean found = false;
        for (Notch each : on.notches()) {
            boolean meant = each.name().equals(notch) && each.at().distance(from) <= Shift.ON_OUTLINE;
            found |= meant;
            notches.add(meant ? new Notch(notch, to) : each);
        }
        if (!found) {
            throw Refusal.of("truing-lost").with("piece", on.name());
        }
        List<Rider> riders = new ArrayList<>();
        for (Rider rider : on.riders()) {
            riders.add(rider.kind() == Rider.Kind.ATTACHED && isTick(rider) ? along(rider, on.outline()) : rider);
        }
        return on.toBuilder().notches(notches).riders(riders).build();
    }

    /** A tick is short and has one end at the notch. */
    private boolean isTick(Rider rider) {
        for (Segment segment : rider.segments()) {
            boolean near = segment.start().distance(from) <= 1 || segment.end().distance(from) <= 1;
            if (near && segment.length() < 20) {
                return true;
            }
        }
        return false;
    }

    private Rider along(Rider rider, Outline outline) {
        Point was = tangent(outline, from);
        Point is = tangent(outline, to);
        Affine map =
                Affine.translation(to.minus(from)).after(Affine.rotation(Math.atan2(was.cross(is), was.dot(is)), from));
        return rider.changed(
                rider.segments().stream().map(s -> s.transformed(map)).toList());
    }

    private static Point tangent(Outline outline, Point p) {
        Nearest near = outline.nearest(p);
        return outline.segments()
                .get(near.place().segment())
                .tangent(near.place().t());
    }

    @Override
    public List<Moved> moved(Piece on) {
        return List.of();
    }

    @Override
    public Optional<Stroke> opposite() {
        return Optional.of(new NotchStroke(piece, notch, to, from));
    }

    @Override
    public String text() {
        return WORD + " " + StrokeText.of(from) + " " + StrokeText.of(to) + " " + piece.length() + " " + piece + " "
                + notch;
    }

    static NotchStroke parse(StrokeText read) throws Refusal {
        Point from = read.point();
        Point to = read.point();
        int length = read.count();
        String rest = read.rest();
        if (rest.length() <= length + 1) {
            throw read.unreadable();
        }
        return new NotchStroke(rest.substring(0, length), rest.substring(length + 1), from, to);
    }
}
