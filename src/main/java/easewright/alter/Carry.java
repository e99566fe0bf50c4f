package easewright.alter;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes the marks of a piece along with a shift of its outline. */
final class Carry {
    private Carry() {}

    /** The piece with its outline shifted, and edge ends, notches, dart mouths and lines beside it with it. */
    static Piece along(Piece piece, Shift shift, double amount) {
        List<Edge> edges = new ArrayList<>();
        for (Edge e : piece.edges()) {
            edges.add(e.withEnds(shift.carry(e.from(), amount), shift.carry(e.to(), amount)));
        }
        List<Notch> notches = new ArrayList<>();
        for (Notch n : piece.notches()) {
            notches.add(new Notch(n.name(), shift.carry(n.at(), amount)));
        }
        List<Dart> darts = new ArrayList<>();
        for (Dart d : piece.darts()) {
            Point mouth1 = shift.carry(d.mouth1(), amount);
            Point mouth2 = shift.carry(d.mouth2(), amount);
            darts.add(new Dart(d.name(), mouth1, mouth2, d.point(), d.otherPoint(), d.edge()));
        }
        List<Rider> riders = new ArrayList<>();
        for (Rider r : piece.riders()) {
            riders.add(rider(r, shift, amount));
        }
        return piece.toBuilder()
                .outline(shift.at(amount))
                .edges(edges)
                .notches(notches)
                .darts(darts)
                .riders(riders)
                .original(Optional.of(piece.original().orElse(piece.outline())))
                .build();
    }

    private static Rider rider(Rider rider, Shift shift, double amount) {
        if (rider.kind() == Rider.Kind.INNER) {
            return rider;
        }
        List<Segment> segments = new ArrayList<>();
        for (Segment s : rider.segments()) {
            segments.addAll(
                    rider.kind() == Rider.Kind.PARALLEL
                            ? shift.carryBeside(s, amount)
                            : List.of(shift.carryEnds(s, amount)));
        }
        return segments.equals(rider.segments()) ? rider : rider.changed(segments);
    }
}
