package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One sub-path that changed, while its path data is rewritten. */
final class SubPathRewriter {
    private final PathRewriter path;
    private final int first;
    private final int last;
    private final Affine toMm;
    private final Landing landing;

    /** The new segments, mm. */
    private final List<Segment> changed;

    /** For each old segment its index among the new ones, or -1. */
    private final int[] kept;

    /** For each new segment its index among the old ones, or -1. */
    private final int[] before;

    /** For each command its first old segment; one more entry at the end. */
    private final int[] firstSegment;

    /** The old segments in the element's units. */
    private final List<Segment> units = new ArrayList<>();

    /** Whether an open line is to become an outline. */
    private final boolean closes;

    private final Point startUnits;
    private final boolean startMoved;
    private final String startText;

    /** How many of the new segments are written or kept so far. */
    private int done;

    /**
     * @param first  index of the sub-path's first command, moves included
     * @param last   just after its last one
     * @param drawn  as it was read, mm
     * @param owners for each of its segments the command that drew it
     */
    SubPathRewriter(
            PathRewriter path,
            int first,
            int last,
            SubPath drawn,
            List<Integer> owners,
            Affine toMm,
            List<Segment> target) {
        this.path = path;
        this.first = first;
        this.last = last;
        this.toMm = toMm;
        this.landing = new Landing(toMm);
        Alignment<Segment> alignment = Alignment.of(drawn.segments(), target, drawn.closed());
        this.changed = alignment.changed();
        this.kept = alignment.kept();
        this.closes = !drawn.closed() && closed(changed);
        this.before = new int[changed.size()];
        Arrays.fill(before, -1);
        for (int i = 0; i < kept.length; i++) {
            if (kept[i] >= 0) {
                before[kept[i]] = i;
            }
        }
        this.firstSegment = new int[last - first + 1];
        int at = 0;
        for (int c = first; c < last; c++) {
            firstSegment[c - first] = at;
            while (at < owners.size() && owners.get(at) == c) {
                at++;
            }
            for (Segment segment : path.command(c).segments()) {
                landing.know(segment);
                if (segment.transformed(toMm).hasLength()) {
                    units.add(segment);
                }
            }
        }
        firstSegment[last - first] = at;
        startUnits = units.get(0).start();
        Point start = changed.get(0).start();
        startMoved = !toMm.apply(startUnits).equals(start);
        startText = startMoved ? landing.pair(start) : Landing.exactPair(startUnits);
    }

    void write() {
        boolean started = false;
        boolean ended = false;
        for (int c = first; c < last; c++) {
            char letter = Character.toUpperCase(path.command(c).letter());
            if (letter == 'M') {
                boolean begins = path.command(c).end().equals(startUnits) && !moveFollows(c);
                if (begins && startMoved) {
                    path.replaceMove(c, startText);
                } else {
                    path.keep(c);
                }
                started |= begins;
                continue;
            }
            if (!started) {
                begin(c);
                started = true;
            }
            if (letter == 'Z') {
                close(c);
                ended = true;
            } else {
                draw(c, letter == 'S' || letter == 'T');
            }
        }
        if (!ended) {
            finish();
        }
    }

    private boolean moveFollows(int c) {
        return c + 1 < last && Character.toUpperCase(path.command(c + 1).letter()) == 'M';
    }

    /** A sub-path that goes on after a Z has no move of its own. */
    private void begin(int c) {
        if (startMoved || path.penMoved()) {
            path.putIn(c, "M" + startText);
            path.setPenMoved(false);
        }
    }

    private void draw(int c, boolean mirrors) {
        int from = firstSegment[c - first];
        int to = firstSegment[c - first + 1];
        boolean undisturbed = path.undisturbed();
        if (from == to) {
            // It draws nothing: harmless where the pen has not moved, to be taken out elsewhere.
            if (undisturbed) {
                path.keepText(c);
            } else {
                path.takeOut(c);
            }
            return;
        }
        boolean still = allKept(from, to) && !(mirrors && !(undisturbed && kept[from] == done));
        if (!still) {
            path.takeOut(c);
            return;
        }
        String missing = run(kept[from], Landing.exactPair(path.command(c).start()));
        if (missing.isEmpty()) {
            path.leaveOut();
        } else {
            path.putIn(c, missing);
        }
        path.keepText(c);
        done = kept[to - 1] + 1;
    }

    private boolean allKept(int from, int to) {
        for (int i = from; i < to; i++) {
            if (kept[i] < 0 || kept[i] != kept[from] + i - from) {
                return false;
            }
        }
        return true;
    }

    private void close(int c) {
        int own = firstSegment[c - first];
        boolean drew = firstSegment[c - first + 1] > own;
        int end = changed.size();
        String missing;
        if (drew && kept[own] == end - 1) {
            missing = run(end - 1, Landing.exactPair(path.command(c).start()));
        } else if (drew && changed.get(end - 1) instanceof Line) {
            missing = run(end - 1, null);
        } else {
            missing = run(end, startText);
        }
        if (missing.isEmpty()) {
            path.leaveOut();
        } else {
            path.putIn(c, missing);
        }
        path.keepText(c);
        path.setPenMoved(startMoved);
    }

    static boolean closed(List<Segment> segments) {
        return segments.size() > 1
                && segments.get(segments.size() - 1)
                        .end()
                        .equals(segments.get(0).start());
    }

    private void finish() {
        if (closes) {
            boolean straight = changed.get(changed.size() - 1) instanceof Line;
            path.putInAfter(last - 1, run(straight ? changed.size() - 1 : changed.size(), null) + "Z");
            path.setPenMoved(true);
            return;
        }
        Point oldEnd = path.command(last - 1).end();
        boolean endMoved =
                !toMm.apply(oldEnd).equals(changed.get(changed.size() - 1).end());
        String missing = run(changed.size(), endMoved ? null : Landing.exactPair(oldEnd));
        if (missing.isEmpty()) {
            path.leaveOut();
        } else {
            path.putInAfter(last - 1, missing);
        }
        path.setPenMoved(endMoved && !missing.isEmpty());
    }

    /** New segments from where we are to before {@code upTo}; the end of the last one as given, if given. */
    private String run(int upTo, String end) {
        List<String> out = new ArrayList<>();
        for (int j = done; j < upTo; j++) {
            boolean named = j == upTo - 1 && end != null;
            Segment old = before[j] < 0 ? null : units.get(before[j]);
            if (old != null && (!named || Landing.exactPair(old.end()).equals(end))) {
                out.add(Landing.exactCommand(old));
            } else if (named) {
                out.add(landing.command(changed.get(j), end));
            } else {
                out.add(landing.command(changed.get(j)));
            }
        }
        done = Math.max(done, upTo);
        return String.join(" ", out);
    }
}
