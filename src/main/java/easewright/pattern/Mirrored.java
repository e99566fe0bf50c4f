package easewright.pattern;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A piece for one side laid on its twin for the other, of which it once was the mirror image, and laid back. What nothing
 * has moved meanwhile comes back as the same objects.
 */
final class Mirrored {
    /** The two pieces were mirror images once if their first outlines agree so well, mm. */
    private static final double AGREE = 1e-3;

    private final Affine toTwin;
    private final Affine back;
    private final Map<Point, Point> places = new HashMap<>();
    private final Map<Segment, Segment> lines = new IdentityHashMap<>();

    private Mirrored(Affine toTwin) {
        this.toTwin = toTwin;
        this.back = toTwin.inverse();
    }

    /** How a piece lies on its twin; empty if they were never mirror images of each other. */
    static Optional<Mirrored> on(Piece twin, Piece piece) {
        Outline one = piece.original().orElse(piece.outline());
        Outline other = twin.original().orElse(twin.outline());
        if (one.segments().size() != other.segments().size()) {
            return Optional.empty();
        }
        Affine map = map(one, other);
        for (int i = 0; i < one.segments().size(); i++) {
            Point lands = map.apply(one.segments().get(i).start());
            if (lands.distance(other.segments().get(i).start()) > AGREE) {
                return Optional.empty();
            }
        }
        return Optional.of(new Mirrored(map));
    }

    /** The mirror image that takes the start of one outline, and the corner farthest from it, to those of the other. */
    private static Affine map(Outline one, Outline other) {
        Point a = one.segments().get(0).start();
        int far = 0;
        for (int i = 0; i < one.segments().size(); i++) {
            boolean farther = a.distance(one.segments().get(i).start())
                    > a.distance(one.segments().get(far).start());
            far = farther ? i : far;
        }
        Point u = one.segments().get(far).start().minus(a).unit();
        Point b = other.segments().get(0).start();
        Point w = other.segments().get(far).start().minus(b).unit();
        Point v = u.quarterTurned();
        Point z = w.quarterTurned();
        Affine linear = new Affine(
                w.x() * u.x() - z.x() * v.x(),
                w.y() * u.x() - z.y() * v.x(),
                w.x() * u.y() - z.x() * v.y(),
                w.y() * u.y() - z.y() * v.y(),
                0,
                0);
        return Affine.translation(b).after(linear).after(Affine.translation(a.times(-1)));
    }

    Piece laid(Piece piece) {
        return new PieceCopy(this::there, this::there, true).of(piece);
    }

    Piece laidBack(Piece piece) {
        return new PieceCopy(this::back, this::back, true).of(piece);
    }

    private Point there(Point place) {
        Point laid = toTwin.apply(place);
        places.put(laid, place);
        return laid;
    }

    private Segment there(Segment line) {
        Segment laid = through(line, true);
        lines.put(laid, line);
        return laid;
    }

    private Point back(Point place) {
        Point known = places.get(place);
        return known != null ? known : back.apply(place);
    }

    Segment back(Segment line) {
        Segment known = lines.get(line);
        return known != null ? known : through(line, false);
    }

    private Segment through(Segment line, boolean there) {
        Point start = there ? there(line.start()) : back(line.start());
        Point end = there ? there(line.end()) : back(line.end());
        if (line instanceof Cubic c) {
            return new Cubic(
                    start,
                    there ? there(c.control1()) : back(c.control1()),
                    there ? there(c.control2()) : back(c.control2()),
                    end);
        }
        return new Line(start, end);
    }
}
