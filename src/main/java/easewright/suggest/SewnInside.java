package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A stitching line inside an outline that is cut, in whatever way it is drawn: as one closed line; open, with both ends on
 * the outline where there is no allowance, as at a fold; or every edge of it as a line of its own.
 *
 * @param riders  the lines that draw it
 * @param outline closed along the outline of the piece where it is open
 * @param open    whether it is
 */
record SewnInside(List<Rider> riders, Outline outline, boolean open) {
    /** Ends this near to each other are one corner, mm. */
    private static final double ONE = 0.6;

    /** An end this near to the outline lies on it, mm. */
    private static final double ON_OUTLINE = 1.5;

    /** No edge is sewn farther inside than this, mm; what goes farther is a dart, a level or a grainline. */
    private static final double FARTHEST = 70;

    /** More lines inside are hatching. */
    private static final int MOST = 400;

    SewnInside {
        riders = List.copyOf(riders);
    }

    double area() {
        return Math.abs(outline.signedArea());
    }

    /** That of a piece drawn by its cutting line, where the lines that go along with it are known. */
    static Optional<Outline> known(Piece piece) {
        return piece.drawn() == LineKind.STITCHING
                ? Optional.empty()
                : in(piece, Rider.Kind.PARALLEL).stream().findFirst().map(SewnInside::outline);
    }

    /** All that may be one among the lines of a kind, the closed ones first. */
    static List<SewnInside> in(Piece piece, Rider.Kind kind) {
        List<SewnInside> found = new ArrayList<>();
        List<Stroke> open = new ArrayList<>();
        for (Rider rider : piece.riders()) {
            List<Pen> pens = rider.kind() == kind ? Pen.of(rider) : List.of();
            if (pens.size() == 1 && pens.get(0).closed()) {
                found.add(new SewnInside(List.of(rider), new Outline(rider.segments()), false));
            } else if (pens.size() == 1) {
                open.add(new Stroke(rider));
            }
        }
        if (open.size() <= MOST) {
            List<SewnInside> chains = new Chains(piece.outline(), open).found();
            found.addAll(chains.isEmpty() ? new Chains(piece.outline(), near(open, piece.outline())).found() : chains);
        }
        return found;
    }

    /** The one that an open line makes by itself. */
    static Optional<SewnInside> of(Piece piece, Rider rider) {
        List<Pen> pens = Pen.of(rider);
        return pens.size() == 1 && !pens.get(0).closed()
                ? new Chains(piece.outline(), List.of(new Stroke(rider)))
                        .found().stream().findFirst()
                : Optional.empty();
    }

    private static List<Stroke> near(List<Stroke> strokes, Outline outline) {
        return strokes.stream()
                .filter(s -> s.rider().segments().stream().allMatch(g -> outline.comesWithin(g.at(0.5), FARTHEST)))
                .toList();
    }

    private record Stroke(Rider rider) {
        Point start() {
            return rider.segments().get(0).start();
        }

        Point end() {
            return rider.segments().get(rider.segments().size() - 1).end();
        }

        List<Segment> from(boolean start) {
            if (start) {
                return rider.segments();
            }
            List<Segment> turned = new ArrayList<>();
            rider.segments().forEach(s -> turned.add(0, s.reversed()));
            return turned;
        }
    }

    /** Lines put together where their ends meet. */
    private static final class Chains {
        private final Outline outline;
        private final List<Stroke> strokes;
        private final List<Point> places = new ArrayList<>();
        private final Map<Stroke, int[]> ends = new HashMap<>();

        Chains(Outline outline, List<Stroke> strokes) {
            this.outline = outline;
            this.strokes = new ArrayList<>(strokes);
            strokes.forEach(s -> ends.put(s, new int[] {place(s.start()), place(s.end())}));
        }

        private int place(Point p) {
            for (int i = 0; i < places.size(); i++) {
                if (places.get(i).distance(p) <= ONE) {
                    return i;
                }
            }
            places.add(p);
            return places.size() - 1;
        }

        private List<Stroke> at(int place) {
            return strokes.stream()
                    .filter(s -> ends.get(s)[0] == place || ends.get(s)[1] == place)
                    .toList();
        }

        private boolean onOutline(int place) {
            return outline.comesWithin(places.get(place), ON_OUTLINE);
        }

        List<SewnInside> found() {
            Predicate<Stroke> free = s -> isFree(ends.get(s)[0]) || isFree(ends.get(s)[1]);
            while (strokes.removeIf(free)) {
                // What ended at a line that has gone may be free now.
            }
            List<SewnInside> found = new ArrayList<>();
            List<Stroke> left = new ArrayList<>(strokes);
            while (!left.isEmpty()) {
                List<Stroke> chain = chain(left);
                left.removeAll(chain);
                closed(chain).ifPresent(found::add);
            }
            return found;
        }

        private boolean isFree(int place) {
            return at(place).size() == 1 && !onOutline(place);
        }

        /** All lines that hang together, the first of them one that ends on the outline if any does. */
        private List<Stroke> chain(Collection<Stroke> left) {
            List<Stroke> chain = new ArrayList<>();
            chain.add(left.stream()
                    .filter(s ->
                            at(ends.get(s)[0]).size() == 1 || at(ends.get(s)[1]).size() == 1)
                    .findFirst()
                    .orElseGet(() -> left.iterator().next()));
            for (int i = 0; i < chain.size(); i++) {
                for (int place : ends.get(chain.get(i))) {
                    at(place).stream().filter(s -> !chain.contains(s)).forEach(chain::add);
                }
            }
            return chain;
        }

        /** The outline that they draw, if no more than two of them meet anywhere. */
        private Optional<SewnInside> closed(List<Stroke> chain) {
            Stroke first = chain.get(0);
            boolean forwards =
                    at(ends.get(first)[0]).size() == 1 || at(ends.get(first)[1]).size() != 1;
            List<Segment> drawn = new ArrayList<>();
            List<Rider> riders = new ArrayList<>();
            int begin = ends.get(first)[forwards ? 0 : 1];
            int now = begin;
            Optional<Stroke> next = Optional.of(first);
            while (next.isPresent()) {
                Stroke stroke = next.get();
                boolean from = ends.get(stroke)[0] == now;
                stroke.from(from).forEach(s -> add(drawn, s));
                riders.add(stroke.rider());
                now = ends.get(stroke)[from ? 1 : 0];
                List<Stroke> here = at(now);
                next = here.size() > 2 || now == begin
                        ? Optional.empty()
                        : here.stream().filter(s -> s != stroke).findFirst();
            }
            boolean open = now != begin;
            Line closing =
                    new Line(drawn.get(drawn.size() - 1).end(), drawn.get(0).start());
            boolean along = onOutline(now)
                    && onOutline(begin)
                    && List.of(0.2, 0.4, 0.6, 0.8).stream()
                            .allMatch(t -> outline.comesWithin(closing.at(t), ON_OUTLINE));
            if (riders.size() < chain.size() || open && !along || !open && riders.size() < 2) {
                return Optional.empty();
            }
            if (closing.length() > 0) {
                drawn.add(closing);
            }
            return drawn.size() < 3 ? Optional.empty() : Optional.of(new SewnInside(riders, new Outline(drawn), open));
        }

        /** Ends that nearly meet are joined. */
        private static void add(List<Segment> drawn, Segment segment) {
            if (!drawn.isEmpty()) {
                Point end = drawn.get(drawn.size() - 1).end();
                if (!end.equals(segment.start())) {
                    drawn.add(new Line(end, segment.start()));
                }
            }
            drawn.add(segment);
        }
    }
}
