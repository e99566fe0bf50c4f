package easewright.svg;

import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The outline in loose lines of which three meet where a dart begins: legs that start at corners of an outline cut small
 * slim fields off it. If all but one field are such, the lines round the whole are the outline, and the legs lie inside.
 * Anything else that branches may be two pieces that share a line, and is left.
 */
final class OuterRing {
    /** A dart takes no more than this part of its piece. */
    private static final double DART = 0.06;

    /** Its legs and its mouth, which may have a peak. */
    private static final int MOST_SIDES = 4;

    /** Which way a line sets out is judged over this much of it, mm. */
    private static final double REACH = 2;

    private static final int CHORDS = 8;

    /** A line as it is walked along. */
    private record Way(LooseLine line, boolean forward) {
        int from() {
            return forward ? line.first : line.second;
        }

        int to() {
            return forward ? line.second : line.first;
        }

        Way back() {
            return new Way(line, !forward);
        }

        /** Places along it, its end left out. */
        List<Point> places() {
            List<Point> places = new ArrayList<>();
            for (Segment segment : line.segments) {
                for (int i = 0; i < CHORDS; i++) {
                    places.add(segment.at((double) i / CHORDS));
                }
            }
            places.add(line.end());
            if (!forward) {
                Collections.reverse(places);
            }
            return places.subList(0, places.size() - 1);
        }

        double heading() {
            Segment segment = forward ? line.segments.get(0) : line.segments.get(line.segments.size() - 1);
            double along = Math.min(REACH, segment.length() / 2);
            Point start = forward ? line.start() : line.end();
            double t = segment.parameterAtLength(forward ? along : segment.length() - along);
            Point way = segment.at(t).minus(start);
            return Math.atan2(way.y(), way.x());
        }
    }

    /** A field between lines, or what lies around all of them. */
    private record Field(List<Way> sides, double area) {
        static Field of(List<Way> sides) {
            List<Point> corners =
                    sides.stream().flatMap(way -> way.places().stream()).toList();
            double twice = 0;
            for (int i = 0; i < corners.size(); i++) {
                twice += corners.get(i).cross(corners.get((i + 1) % corners.size()));
            }
            return new Field(sides, twice / 2);
        }

        boolean isSimple() {
            Set<Integer> nodes = new HashSet<>();
            return sides.stream().allMatch(way -> nodes.add(way.from()));
        }
    }

    private OuterRing() {}

    /**
     * The lines of the outline.
     *
     * @param lines that hang together, none of them with a free end
     */
    static Optional<List<LooseLine>> of(List<LooseLine> lines) {
        List<Field> fields = fields(lines);
        fields.sort(Comparator.comparingDouble(f -> -Math.abs(f.area())));
        if (fields.size() < 3) {
            return Optional.empty();
        }
        Field around = fields.get(0);
        Field main = fields.get(1);
        boolean darts = fields.subList(2, fields.size()).stream()
                .allMatch(f -> Math.abs(f.area()) <= DART * Math.abs(main.area())
                        && f.sides().size() <= MOST_SIDES
                        && f.isSimple());
        // Seen from outside, it runs round the other way than all the fields inside.
        boolean outside = around.area() * main.area() < 0;
        return darts && outside && around.isSimple()
                ? Optional.of(around.sides().stream().map(Way::line).toList())
                : Optional.empty();
    }

    /** Every way is a side of one field: at each node the field goes on with the next line round. */
    private static List<Field> fields(List<LooseLine> lines) {
        Map<Integer, List<Way>> leaving = new HashMap<>();
        List<Way> ways = new ArrayList<>();
        for (LooseLine line : lines) {
            for (boolean forward : new boolean[] {true, false}) {
                Way way = new Way(line, forward);
                ways.add(way);
                leaving.computeIfAbsent(way.from(), node -> new ArrayList<>()).add(way);
            }
        }
        leaving.values().forEach(round -> round.sort(Comparator.comparingDouble(Way::heading)));
        Set<Way> walked = new HashSet<>();
        List<Field> fields = new ArrayList<>();
        for (Way first : ways) {
            List<Way> sides = new ArrayList<>();
            Way way = first;
            while (walked.add(way)) {
                sides.add(way);
                List<Way> round = leaving.get(way.to());
                way = round.get((round.indexOf(way.back()) + 1) % round.size());
            }
            if (!sides.isEmpty()) {
                fields.add(Field.of(sides));
            }
        }
        return fields;
    }
}
