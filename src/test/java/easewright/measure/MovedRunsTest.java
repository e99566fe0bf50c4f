package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MovedRunsTest {
    private static final double SEEN = 0.02;

    private final Random random = new Random(77);

    @Test
    void whatIsToldAsMovedIsWhatLiesOffTheOldLineWhereItIsLookedAt() {
        int all = 0;
        int some = 0;
        for (int round = 0; round < 200; round++) {
            Outline before = Sketch.randomBlob(random, 5 + random.nextInt(80), 300);
            Outline after = changed(before);
            Set<Segment> old = new HashSet<>(before.segments());
            List<Segment> expected = new ArrayList<>();
            for (Segment segment : after.segments()) {
                if (!old.contains(segment)) {
                    addOneByOne(segment, before, expected);
                }
            }
            assertThat(MovedRuns.between(before, after, SEEN)).isEqualTo(expected);
            all += after.segments().size();
            some += expected.size();
        }
        assertThat(some).isBetween(all / 20, all - all / 20);
    }

    /** A stretch of it pulled aside, or a corner split into its line, or the whole moved along by a little. */
    private Outline changed(Outline before) {
        int count = before.segments().size();
        Outline after = before;
        for (int i = 0; i < 3; i++) {
            after = after.splitAt(new Place(random.nextInt(count), random.nextDouble()));
        }
        if (random.nextInt(3) == 0) {
            double by = random.nextDouble() * 0.05;
            return after.transformed(Affine.translation(by, -by));
        }
        List<Segment> parts = new ArrayList<>(after.segments());
        int at = random.nextInt(parts.size() - 1);
        Point middle = parts.get(at).end().plus(new Point(random.nextGaussian(), random.nextGaussian()));
        for (int i = at; i <= at + 1; i++) {
            Segment was = parts.get(i);
            Point start = i == at ? was.start() : middle;
            Point end = i == at ? middle : was.end();
            parts.set(
                    i,
                    was instanceof Cubic c ? new Cubic(start, c.control1(), c.control2(), end) : new Line(start, end));
        }
        return new Outline(parts);
    }

    /** As it is said to be done, with the nearest place of the whole line at every look. */
    private static void addOneByOne(Segment segment, Outline line, List<Segment> moved) {
        int looks = (int) Math.max(1, Math.min(16, Math.ceil(segment.start().distance(segment.end()) / 3)));
        Boolean[] off = new Boolean[looks + 1];
        look(segment, line, off, 0, looks);
        double from = -1;
        for (int i = 1; i <= looks; i++) {
            if ((off[i - 1] || off[i]) && from < 0) {
                from = off[i - 1] ? (i - 1) / (double) looks : edge(segment, line, i - 1, i, looks);
            } else if (!off[i - 1] && !off[i] && from >= 0) {
                moved.add(segment.between(from, edge(segment, line, i - 1, i - 2, looks)));
                from = -1;
            }
        }
        if (from >= 0) {
            moved.add(segment.between(from, off[looks] ? 1 : edge(segment, line, looks, looks - 1, looks)));
        }
    }

    private static double edge(Segment segment, Outline line, int on, int off, int looks) {
        double lies = on / (double) looks;
        double leaves = off / (double) looks;
        for (double apart = segment.at(lies).distance(segment.at(leaves)); apart > 0.5; apart /= 2) {
            double middle = (lies + leaves) / 2;
            if (line.nearest(segment.at(middle)).distance() > SEEN) {
                leaves = middle;
            } else {
                lies = middle;
            }
        }
        return lies;
    }

    /** However long a hem is, what was added at its end has moved, and no more of it. */
    @Test
    void aLengthenedHemHasMovedWhereItIsNew() {
        for (double hem : new double[] {40, 120, 280, 900}) {
            for (double by : new double[] {2, 7.5, 30}) {
                Outline before = Outline.polygon(
                        List.of(new Point(0, 0), new Point(hem, 0), new Point(hem, 600), new Point(0, 600)));
                Outline after = Outline.polygon(
                        List.of(new Point(0, 0), new Point(hem, 0), new Point(hem + by, 600), new Point(0, 600)));
                double moved = MovedRuns.between(before, after, SEEN).stream()
                        .filter(s -> s.start().y() == 600 && s.end().y() == 600)
                        .mapToDouble(Segment::length)
                        .sum();
                assertThat(moved).as("%s by %s", hem, by).isBetween(by - SEEN, by + 0.5);
            }
        }
    }

    private static void look(Segment segment, Outline line, Boolean[] off, int from, int to) {
        for (int i : new int[] {from, to}) {
            off[i] = line.nearest(segment.at(i / (double) (off.length - 1))).distance() > SEEN;
        }
        if (off[from].equals(off[to]) && to - from <= (off.length - 1) / 4) {
            for (int i = from + 1; i < to; i++) {
                off[i] = off[from];
            }
        } else if (to - from > 1) {
            look(segment, line, off, from, (from + to) / 2);
            look(segment, line, off, (from + to) / 2, to);
        }
    }
}
