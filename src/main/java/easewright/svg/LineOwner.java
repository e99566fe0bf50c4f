package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which of several pieces that lie on each other a line belongs to, as where the sizes of a nest are drawn on no layers
 * of their own: that of its own layer, else the one whose outline it touches, as a dart does; else, where as many lines
 * of one form lie there as pieces, each to the piece of its rank; else the largest.
 */
final class LineOwner {
    /** A line that begins so near to an outline begins on it, mm. */
    private static final double ON_OUTLINE = 1.5;

    /** A closed line with more corners than this is no dart. */
    private static final int MOST_CORNERS = 8;

    /** Lines of one form in several sizes: how far apart their middles may lie, mm, and how unlike in length they are. */
    private static final double APART = 60;

    private static final double UNLIKE = 0.25;

    /** Shorter lines are dots and signs that have no size of their own, mm. */
    private static final double LEAST_LENGTH = 60;

    /** An outline inside others has at least this part of the area of the one that it belongs to. */
    private static final double OUTLINE = 0.6;

    /** Lines nearer to each other than this have no order, mm. */
    private static final double STILL = 0.3;

    private final Drawing drawing;
    private final List<PieceOutline> pieces;
    private final Free free;

    /** What was found of lines already: those of one form are asked for again and again. */
    private final Map<SubPath, Lies> known = new IdentityHashMap<>();

    /**
     * Where a line lies.
     *
     * @param around  the pieces that hold it, the largest first, and after them those that hold most of it
     * @param touched the one whose outline it touches
     */
    private record Lies(List<PieceOutline> around, Optional<PieceOutline> touched) {}

    /** Whether a line is no outline. */
    interface Free {
        boolean is(int shape, int subPath);
    }

    /**
     * @param pieces the largest first
     */
    LineOwner(Drawing drawing, List<PieceOutline> pieces, Free free) {
        this.drawing = drawing;
        this.pieces = pieces;
        this.free = free;
    }

    Optional<PieceOutline> of(int shape, int subPath) {
        DrawnShape drawn = drawing.all().get(shape);
        SubPath line = drawn.subPaths().get(subPath);
        Optional<PieceOutline> own = pieces.stream()
                .filter(piece -> sharesLayer(drawing.all().get(piece.order()), drawn)
                        && piece.area().holds(line))
                .findFirst();
        if (own.isPresent()) {
            return own;
        }
        Lies lies = lies(line);
        List<PieceOutline> around = lies.around();
        if (around.size() < 2) {
            return around.stream().findFirst();
        }
        return around.stream()
                .filter(piece -> sharesLayer(drawing.all().get(piece.order()), drawn))
                .findFirst()
                .or(() -> inner(line, around))
                .or(lies::touched)
                .or(() -> ofItsRank(line, around))
                .or(() -> Optional.of(around.get(0)));
    }

    private Lies lies(SubPath line) {
        Lies lies = known.get(line);
        if (lies == null) {
            List<PieceOutline> around = around(line);
            lies = new Lies(around, around.size() < 2 ? Optional.empty() : touched(line, around));
            known.put(line, lies);
        }
        return lies;
    }

    private List<PieceOutline> around(SubPath line) {
        List<PieceOutline> around = new ArrayList<>(
                pieces.stream().filter(piece -> piece.area().holds(line)).toList());
        for (PieceOutline piece : pieces) {
            boolean other = around.stream().noneMatch(known -> known == piece);
            if (other && piece.area().holdsMost(line)) {
                around.add(piece);
            }
        }
        return around;
    }

    private static boolean sharesLayer(DrawnShape one, DrawnShape other) {
        return !one.groups().isEmpty()
                && !other.groups().isEmpty()
                && one.groups().get(0).equals(other.groups().get(0));
    }

    /** A stitching line goes with the smallest cutting line around it. */
    private static Optional<PieceOutline> inner(SubPath line, List<PieceOutline> around) {
        double area = line.outline().map(o -> Math.abs(o.signedArea())).orElse(0.0);
        return around.stream()
                .filter(piece -> area >= OUTLINE * piece.area().area())
                .min(Comparator.comparingDouble(piece -> piece.area().area()));
    }

    /**
     * How a line touches an outline.
     *
     * @param places of its ends, or its corners, how many do so: two at most
     * @param away   how far those lie from it, mm
     */
    private record Touch(PieceOutline piece, int places, double away) {
        static Touch of(SubPath line, PieceOutline piece) {
            List<Point> ends = new ArrayList<>();
            List<Segment> segments = line.segments();
            if (!line.closed()) {
                ends.add(segments.get(0).start());
                ends.add(segments.get(segments.size() - 1).end());
            } else if (segments.size() <= MOST_CORNERS && length(line) >= LEAST_LENGTH) {
                segments.forEach(s -> ends.add(s.start()));
            }
            Outline outline = piece.area().outline();
            double[] near = ends.stream()
                    .filter(p -> outline.comesWithin(p, ON_OUTLINE))
                    .mapToDouble(p -> outline.nearest(p).distance())
                    .sorted()
                    .limit(2)
                    .toArray();
            double away = 0;
            for (double d : near) {
                away += d;
            }
            return new Touch(piece, near.length, away);
        }
    }

    /** A dart begins and ends on the outline of its own size; where outlines cross, one end may lie on another's. */
    private static Optional<PieceOutline> touched(SubPath line, List<PieceOutline> around) {
        return around.stream()
                .map(piece -> Touch.of(line, piece))
                .filter(touch -> touch.places() > 0)
                .min(Comparator.comparingInt((Touch t) -> -t.places()).thenComparingDouble(Touch::away))
                .map(Touch::piece);
    }

    /** Lines inside all sizes, such as darts closed at both ends: they move outwards with the sizes, or grow with them. */
    private Optional<PieceOutline> ofItsRank(SubPath line, List<PieceOutline> around) {
        List<SubPath> family = length(line) < LEAST_LENGTH ? List.of() : family(line, around);
        if (family.size() != around.size()) {
            return Optional.empty();
        }
        List<PieceOutline> rising = new ArrayList<>(around);
        rising.sort(Comparator.comparingDouble(piece -> piece.area().area()));
        Point outwards = rising.get(rising.size() - 1)
                .area()
                .box()
                .centre()
                .minus(rising.get(0).area().box().centre());
        double[] places = family.stream()
                .mapToDouble(l -> l.chain().box().centre().dot(outwards))
                .toArray();
        double[] lengths = family.stream().mapToDouble(LineOwner::length).toArray();
        double norm = outwards.norm();
        boolean moves = norm > STILL && haveOrder(places, STILL * norm);
        if (!moves && !haveOrder(lengths, STILL)) {
            return Optional.empty();
        }
        double[] order = moves ? places : lengths;
        double own = order[family.indexOf(line)];
        int rank = 0;
        for (double other : order) {
            rank += other < own ? 1 : 0;
        }
        return Optional.of(rising.get(rank));
    }

    /** Whether no two values are nearer to each other than so. */
    private static boolean haveOrder(double[] values, double least) {
        double[] rising = values.clone();
        Arrays.sort(rising);
        for (int i = 1; i < rising.length; i++) {
            if (rising[i] - rising[i - 1] < least) {
                return false;
            }
        }
        return true;
    }

    /** The lines of one form with it, itself among them, that lie in the same pieces and touch none of them. */
    private List<SubPath> family(SubPath line, List<PieceOutline> around) {
        Box near = line.chain().box().grown(APART);
        Point middle = line.chain().box().centre();
        double length = length(line);
        List<SubPath> family = new ArrayList<>();
        for (int i = 0; i < drawing.all().size() && family.size() <= around.size(); i++) {
            DrawnShape shape = drawing.all().get(i);
            for (int k = 0; shape.shown() && k < shape.subPaths().size(); k++) {
                SubPath other = shape.subPaths().get(k);
                boolean alike = other.closed() == line.closed()
                        && other.segments().size() == line.segments().size()
                        && near.contains(other.segments().get(0).start())
                        && other.chain().box().centre().distance(middle) <= APART
                        && Math.abs(length(other) - length) <= UNLIKE * length
                        && free.is(i, k);
                if (alike
                        && lies(other).touched().isEmpty()
                        && lies(other).around().equals(around)) {
                    family.add(other);
                }
            }
        }
        return family;
    }

    private static double length(SubPath line) {
        return line.segments().stream().mapToDouble(Segment::length).sum();
    }
}
