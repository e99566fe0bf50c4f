package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A closed line that lay on another, laid on that one's new course. */
final class Spliced {
    /** A drawn line lies on a computed one within this, mm. */
    private static final double LIES_ON = 0.05;

    private static final int LOOKS = 4;

    private Spliced() {}

    /**
     * The line with the stretches where {@code is} differs from {@code was} taken from {@code is}, the rest untouched;
     * empty where it does not lie on {@code was} there.
     */
    static Optional<List<Segment>> along(List<Segment> line, Outline was, Outline is, List<Stretch> stretches) {
        Outline now = new Outline(line);
        for (Stretch stretch : stretches) {
            Place from = now.nearest(stretch.from()).place();
            Place to = now.nearest(stretch.to()).place();
            Outline old = was;
            boolean lies = now.point(from).distance(stretch.from()) <= LIES_ON
                    && now.point(to).distance(stretch.to()) <= LIES_ON
                    && now.run(from, to).segments().stream().allMatch(s -> liesOn(old, s));
            if (!lies) {
                return Optional.empty();
            }
            now = replaced(now, from, to, Redraw.run(is, stretch).segments());
        }
        return Optional.of(now.segments());
    }

    private static boolean liesOn(Outline was, Segment segment) {
        for (int k = 0; k <= LOOKS; k++) {
            if (was.nearest(segment.at(k / (double) LOOKS)).distance() > LIES_ON) {
                return false;
            }
        }
        return true;
    }

    /** The outline with a run replaced, begun where it was begun if that place is left. */
    private static Outline replaced(Outline outline, Place from, Place to, List<Segment> run) {
        Point begin = outline.segments().get(0).start();
        List<Segment> rest = new ArrayList<>(outline.run(to, from).segments());
        Point start = rest.get(rest.size() - 1).end();
        Point end = rest.get(0).start();
        List<Segment> all = new ArrayList<>(run);
        all.set(0, Ends.startingAt(all.get(0), start));
        all.set(all.size() - 1, Ends.endingAt(all.get(all.size() - 1), end));
        all.addAll(rest);
        int first = 0;
        for (int i = 1; i < all.size(); i++) {
            if (all.get(i).start().distance(begin) < all.get(first).start().distance(begin)) {
                first = i;
            }
        }
        List<Segment> begun = new ArrayList<>(all.subList(first, all.size()));
        begun.addAll(all.subList(0, first));
        return new Outline(begun);
    }
}
