package easewright.alter;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A run of an outline drawn anew between its ends, which stay, with the marks on it. Taken back, the run is the very one
 * that it was.
 *
 * @param marks where marks on the run go: ends of edges, notches, dart mouths
 */
record RunStroke(String piece, List<Segment> before, List<Segment> after, List<Mark> marks) implements Stroke {
    /** How it is written where no mark moves. */
    static final String BARE = "cap";

    static final String WORD = "run";

    /** Marks are found again within this after rounding, mm. */
    private static final double SAME_MARK = 0.02;

    /** A mark that moves. */
    record Mark(Point from, Point to) {}

    RunStroke {
        before = List.copyOf(before);
        after = List.copyOf(after);
        marks = List.copyOf(marks);
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
        Piece done = marked(on).toBuilder()
                .outline(new Outline(all))
                .original(Optional.of(on.original().orElse(on.outline())))
                .build();
        Simple.require(on.outline(), done);
        return done;
    }

    @Override
    public boolean continues(Piece on) {
        Curve was = new Curve(before);
        Curve is = on.outline()
                .run(
                        on.outline().nearest(start()).place(),
                        on.outline().nearest(end()).place());
        return is.start().distance(start()) <= SAME_MARK
                && is.end().distance(end()) <= SAME_MARK
                && Apart.farthest(was, is) <= SAME_MARK;
    }

    private Piece marked(Piece on) {
        if (marks.isEmpty()) {
            return on;
        }
        List<Edge> edges = new ArrayList<>();
        for (Edge e : on.edges()) {
            edges.add(e.withEnds(carried(e.from()), carried(e.to())));
        }
        List<Notch> notches = new ArrayList<>();
        for (Notch n : on.notches()) {
            notches.add(new Notch(n.name(), carried(n.at())));
        }
        List<Dart> darts = new ArrayList<>();
        for (Dart d : on.darts()) {
            darts.add(
                    new Dart(d.name(), carried(d.mouth1()), carried(d.mouth2()), d.point(), d.otherPoint(), d.edge()));
        }
        return on.toBuilder().edges(edges).notches(notches).darts(darts).build();
    }

    private Point carried(Point p) {
        Mark best = null;
        for (Mark mark : marks) {
            double away = mark.from().distance(p);
            if (away <= SAME_MARK && (best == null || away < best.from().distance(p))) {
                best = mark;
            }
        }
        return best == null ? p : best.to();
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
        List<Mark> back = marks.stream().map(m -> new Mark(m.to(), m.from())).toList();
        return Optional.of(new RunStroke(piece, after, before, back));
    }

    @Override
    public String text() {
        StringBuilder text = new StringBuilder(marks.isEmpty() ? BARE : WORD)
                .append(' ')
                .append(StrokeText.of(before))
                .append(' ')
                .append(StrokeText.of(after));
        if (!marks.isEmpty()) {
            text.append(' ').append(marks.size());
            marks.forEach(m ->
                    text.append(' ').append(StrokeText.of(m.from())).append(' ').append(StrokeText.of(m.to())));
        }
        return text.append(' ').append(piece).toString();
    }

    static RunStroke parse(StrokeText read, boolean bare) throws Refusal {
        List<Segment> before = read.segments();
        List<Segment> after = read.segments();
        if (before.isEmpty() || after.isEmpty()) {
            throw read.unreadable();
        }
        List<Mark> marks = new ArrayList<>();
        int count = bare ? 0 : read.count();
        for (int i = 0; i < count; i++) {
            Point from = read.point();
            marks.add(new Mark(from, read.point()));
        }
        return new RunStroke(read.rest(), before, after, marks);
    }
}
