package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A run of an outline drawn anew between its ends, which stay: the cap of a dart. */
record CapStroke(String piece, List<Segment> before, List<Segment> after) implements Stroke {
    static final String WORD = "cap";

    CapStroke {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    @Override
    public Piece on(Piece on) throws Refusal {
        Outline outline = node(on, node(on, on.outline(), start()), end());
        int first = index(outline, start());
        int last = index(outline, end());
        int count = outline.segments().size();
        List<Segment> all = new ArrayList<>();
        boolean wraps = last <= first;
        for (int i = 0; i < count; i++) {
            boolean inside = wraps ? i >= first || i < last : i >= first && i < last;
            if (i == first) {
                all.addAll(joined(
                        outline.segments().get(first).start(),
                        outline.segments().get(last).start()));
            }
            if (!inside) {
                all.add(outline.segments().get(i));
            }
        }
        Piece done = on.toBuilder()
                .outline(new Outline(all))
                .original(Optional.of(on.original().orElse(on.outline())))
                .build();
        Simple.require(on.outline(), done);
        return done;
    }

    private Point start() {
        return before.get(0).start();
    }

    private Point end() {
        return before.get(before.size() - 1).end();
    }

    private static Outline node(Piece on, Outline outline, Point p) throws Refusal {
        Place place = outline.nearest(p).place();
        Point found = outline.point(place);
        if (found.distance(p) > Shift.ON_OUTLINE) {
            throw Refusal.of("truing-lost").with("piece", on.name());
        }
        Segment segment = outline.segments().get(place.segment());
        boolean corner =
                segment.start().distance(found) <= 0.01 || segment.end().distance(found) <= 0.01;
        return corner ? outline : outline.splitAt(place);
    }

    private static int index(Outline outline, Point p) {
        int best = 0;
        for (int i = 1; i < outline.segments().size(); i++) {
            if (outline.segments().get(i).start().distance(p)
                    < outline.segments().get(best).start().distance(p)) {
                best = i;
            }
        }
        return best;
    }

    /** The new run with its ends on those of the outline, which rounding may have moved. */
    private List<Segment> joined(Point from, Point to) {
        List<Segment> run = new ArrayList<>(after);
        run.set(0, Ends.startingAt(run.get(0), from));
        run.set(run.size() - 1, Ends.endingAt(run.get(run.size() - 1), to));
        return run;
    }

    @Override
    public List<Moved> moved(Piece on) {
        return List.of(new Moved(piece, new Curve(before), new Curve(after)));
    }

    @Override
    public Optional<Stroke> opposite() {
        return Optional.of(new CapStroke(piece, after, before));
    }

    @Override
    public String text() {
        return WORD + " " + StrokeText.of(before) + " " + StrokeText.of(after) + " " + piece;
    }

    static CapStroke parse(StrokeText read) throws Refusal {
        List<Segment> before = read.segments();
        List<Segment> after = read.segments();
        if (before.isEmpty() || after.isEmpty()) {
            throw read.unreadable();
        }
        return new CapStroke(read.rest(), before, after);
    }
}
