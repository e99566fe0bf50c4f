package easewright.editor.model;

import easewright.editor.paint.TableScene;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Where the lines of sizes that lie over each other are told apart best: for each size a place on its line that is far
 * from those of its neighbours, and not at the same height as theirs.
 */
final class SizeTags {
    /** About as many places of an outline are looked at. */
    private static final int LOOKS = 96;

    /** So much of the best distance is as good, since most sizes run side by side over a long way. */
    private static final double AS_GOOD = 0.8;

    /** Lines nearer than this cannot be told apart by any tag, mm. */
    private static final double APART = 0.2;

    private SizeTags() {}

    /** One of the sizes. */
    record Sized(String size, Outline outline) {}

    /** A place on a line, with its direction. */
    private record Look(Point at, Point tangent) {}

    /**
     * @param nest the smallest first
     */
    static List<TableScene.SizeTag> of(List<Sized> nest) {
        List<List<Look>> lines = nest.stream().map(one -> looks(one.outline())).toList();
        List<TableScene.SizeTag> tags = new ArrayList<>();
        for (int i = 0; i < nest.size(); i++) {
            List<List<Look>> beside = new ArrayList<>();
            if (i > 0) {
                beside.add(lines.get(i - 1));
            }
            if (i < nest.size() - 1) {
                beside.add(lines.get(i + 1));
            }
            tag(nest.get(i), lines.get(i), beside, (i + 1.0) / (nest.size() + 1), tags);
        }
        return tags;
    }

    private static void tag(
            Sized one, List<Look> line, List<List<Look>> beside, double share, List<TableScene.SizeTag> tags) {
        double[] apart = line.stream()
                .mapToDouble(look -> beside.stream()
                        .mapToDouble(other -> distance(look.at(), other))
                        .min()
                        .orElse(0))
                .toArray();
        double best = Arrays.stream(apart).max().orElse(0);
        if (best < APART) {
            return;
        }
        List<Look> good = new ArrayList<>();
        for (int i = 0; i < apart.length; i++) {
            if (apart[i] >= AS_GOOD * best) {
                good.add(line.get(i));
            }
        }
        // All of them on one side of the piece, the right one where both would do.
        double middle = one.outline().box().centre().x();
        List<Look> right = good.stream().filter(l -> l.at().x() > middle).toList();
        List<Look> side = (right.isEmpty() ? good : right)
                .stream().sorted(Comparator.comparingDouble(l -> l.at().y())).toList();
        Look at = side.get((int) Math.min(side.size() - 1, Math.floor(share * side.size())));
        Point normal = at.tangent().quarterTurned();
        boolean clockwise = one.outline().signedArea() > 0;
        tags.add(new TableScene.SizeTag(one.size(), at.at(), clockwise ? normal.times(-1) : normal));
    }

    private static List<Look> looks(Outline outline) {
        List<Segment> segments = outline.segments();
        int steps = Math.max(1, LOOKS / segments.size());
        List<Look> looks = new ArrayList<>();
        for (Segment segment : segments) {
            for (int k = 0; k < steps; k++) {
                double t = (k + 0.5) / steps;
                looks.add(new Look(segment.at(t), segment.tangent(t)));
            }
        }
        return looks;
    }

    /** From a place to a line that is seen as straight from look to look. */
    private static double distance(Point p, List<Look> line) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < line.size(); i++) {
            least = Math.min(
                    least,
                    distance(
                            p, line.get(i).at(), line.get((i + 1) % line.size()).at()));
        }
        return least;
    }

    private static double distance(Point p, Point a, Point b) {
        Point way = b.minus(a);
        double length = way.dot(way);
        double t = length == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(way) / length));
        return p.distance(a.plus(way.times(t)));
    }
}
