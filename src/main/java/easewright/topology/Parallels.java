package easewright.topology;

import easewright.geom.Segment;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The parallels of the segments of an outline, those of another one taken over where segments are the same objects. */
final class Parallels {
    private final Map<Segment, Beside> own = new IdentityHashMap<>();
    private Optional<Parallels> like;

    private record Beside(double distance, List<Segment> parallel) {}

    Parallels(Optional<Parallels> like) {
        this.like = like;
    }

    /** The parallel at a distance, mm, to the clockwise (on screen) side of the direction of travel. */
    List<Segment> of(Segment segment, double distance) {
        Beside known = like.map(l -> l.own.get(segment))
                .filter(b -> b.distance() == distance)
                .orElseGet(() -> new Beside(distance, segment.parallel(distance)));
        own.put(segment, known);
        return known.parallel();
    }

    /** All are drawn: what they were taken from need not be kept. */
    void close() {
        like = Optional.empty();
    }
}
