package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which part of a slashed piece stays: the one that holds the centre line and with it the grain (docs/sources.md 4.5). */
final class Centre {
    private Centre() {}

    /** Whether the centre of the piece lies in the staying part: its fold or centre line, else its grain, else most cloth. */
    static boolean stays(Piece piece, Parting parting) {
        Optional<Point> line = line(piece);
        if (line.isPresent()) {
            return !parting.nearerToMoving(line.get());
        }
        Optional<Grain> grain = piece.grain();
        if (grain.isPresent()) {
            return !parting.movesWith(grain.get().from().towards(grain.get().to(), 0.5));
        }
        return area(parting.stays()) >= area(parting.moves());
    }

    private static Optional<Point> line(Piece piece) {
        for (EdgeRole role : List.of(EdgeRole.FOLD, EdgeRole.CENTRE)) {
            for (Edge edge : piece.edges()) {
                if (edge.role() == role) {
                    Curve run = edge.on(piece.outline());
                    return Optional.of(run.pointAtLength(run.length() / 2));
                }
            }
        }
        return Optional.empty();
    }

    private static double area(List<Segment> run) {
        List<Segment> closed = new ArrayList<>(run);
        closed.add(new Line(run.get(run.size() - 1).end(), run.get(0).start()));
        return Math.abs(new Outline(closed).signedArea());
    }
}
