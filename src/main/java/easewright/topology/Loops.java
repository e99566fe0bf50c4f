package easewright.topology;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Cuts the loops off a closed line that crosses itself: keeps the runs that have the outside (winding number 0) on
 * one side and the inside on the other, and of the outlines that these make the largest.
 */
final class Loops {
    private static final double BESIDE = 1e-6;

    private final List<Part> raw;
    private final Outline line;
    private final double side;
    private final List<Point> nodes = new ArrayList<>();

    private Loops(List<Part> raw, double side) {
        this.raw = raw;
        this.line = new Outline(raw.stream().map(Part::segment).toList());
        this.side = side;
    }

    /**
     * @param side +1 where the inside must lie clockwise of the direction of travel, −1 otherwise
     * @return empty where nothing is left that goes the right way round
     */
    static Optional<List<Part>> cut(List<Part> raw, double side) {
        List<Meeting> meetings =
                Validity.meetings(raw.stream().map(Part::segment).toList());
        if (meetings.isEmpty()) {
            return area(raw) * side > 0 ? Optional.of(raw) : Optional.empty();
        }
        return new Loops(raw, side).cut(meetings);
    }

    private static double area(List<Part> parts) {
        // Measured from a corner, not from the far origin, to keep the digits.
        Point home = parts.get(0).segment().start();
        double sum = 0;
        for (Part part : parts) {
            sum += part.segment().sweptArea(home);
        }
        return sum;
    }

    /** A stretch from one node to the next. */
    private record Arc(int from, int to, List<Part> parts) {}

    private record Cut(Place place, int node) {}

    private Optional<List<Part>> cut(List<Meeting> meetings) {
        List<Cut> cuts = new ArrayList<>();
        for (Meeting meeting : meetings) {
            int node = node(meeting.point());
            cuts.add(new Cut(normal(meeting.first()), node));
            cuts.add(new Cut(normal(meeting.second()), node));
        }
        cuts.sort(Comparator.comparing(Cut::place));
        List<Arc> kept = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            Cut from = cuts.get(i);
            Cut to = cuts.get((i + 1) % cuts.size());
            if (!from.place().equals(to.place())) {
                Arc arc = arc(from, to);
                if (bounds(arc)) {
                    kept.add(arc);
                }
            }
        }
        return closed(kept).stream()
                .filter(loop -> area(loop) * side > 0)
                .max(Comparator.comparingDouble(loop -> Math.abs(area(loop))));
    }

    private int node(Point p) {
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).distance(p) < 1e-7) {
                return i;
            }
        }
        nodes.add(p);
        return nodes.size() - 1;
    }

    private Place normal(Place place) {
        if (place.t() > 1 - 1e-12) {
            return new Place((place.segment() + 1) % raw.size(), 0);
        }
        return place.t() < 1e-12 ? new Place(place.segment(), 0) : place;
    }

    private Arc arc(Cut from, Cut to) {
        List<Part> parts = new ArrayList<>();
        int i = from.place().segment();
        double t = from.place().t();
        boolean wraps = from.place().compareTo(to.place()) > 0;
        while (wraps || i < to.place().segment()) {
            add(parts, i, t, 1);
            t = 0;
            if (++i == raw.size()) {
                i = 0;
                wraps = false;
            }
        }
        if (to.place().t() > t) {
            add(parts, i, t, to.place().t());
        }
        int last = parts.size() - 1;
        parts.set(
                0,
                parts.get(0)
                        .withEnds(nodes.get(from.node()), parts.get(0).segment().end()));
        parts.set(last, parts.get(last).withEnds(parts.get(last).segment().start(), nodes.get(to.node())));
        return new Arc(from.node(), to.node(), parts);
    }

    private void add(List<Part> parts, int i, double from, double to) {
        Part part = raw.get(i);
        parts.add(new Part(part.segment().between(from, to), part.source()));
    }

    private boolean bounds(Arc arc) {
        Segment longest = arc.parts().get(0).segment();
        for (Part part : arc.parts()) {
            if (chord(part.segment()) > chord(longest)) {
                longest = part.segment();
            }
        }
        if (chord(longest) <= StrandMeetings.SAME) {
            return false;
        }
        Point middle = longest.at(0.5);
        Point inward = longest.tangent(0.5).quarterTurned().times(side * BESIDE);
        return side * winding(middle.plus(inward)) >= 1 && side * winding(middle.minus(inward)) <= 0;
    }

    private static double chord(Segment segment) {
        return segment.start().distance(segment.at(0.5));
    }

    /** How often the raw line goes round the point, positive clockwise on screen. */
    private int winding(Point p) {
        Point across = new Point(1, 0);
        int[] sum = {0};
        line.boxes().along(p, across, BESIDE, i -> {
            Segment segment = line.segments().get(i);
            boolean below = segment.start().y() >= p.y();
            for (double t : segment.passages(p, across, true)) {
                if (segment.at(t).x() > p.x()) {
                    sum[0] += below ? -1 : 1;
                }
                below = !below;
            }
        });
        return sum[0];
    }

    private static List<List<Part>> closed(List<Arc> kept) {
        List<Arc> left = new ArrayList<>(kept);
        List<List<Part>> loops = new ArrayList<>();
        while (!left.isEmpty()) {
            Arc first = left.remove(0);
            List<Part> loop = new ArrayList<>(first.parts());
            int at = first.to();
            while (at != first.from()) {
                int here = at;
                Optional<Arc> next = left.stream().filter(a -> a.from() == here).findFirst();
                if (next.isEmpty()) {
                    break;
                }
                left.remove(next.get());
                loop.addAll(next.get().parts());
                at = next.get().to();
            }
            if (at == first.from()) {
                loops.add(loop);
            }
        }
        return loops;
    }
}
