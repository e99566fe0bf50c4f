package easewright.measure;

import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Where a level comes to a seam from both of its pieces. The line round the body is one line only if both arrive at the
 * same place of the seam: a notch there would meet the other (common practice, as level lines are used as balance
 * marks). What is to be eased in is spread evenly along a seam that fits; not along one that ends at a crotch, where a back
 * inseam begins lower than its front and is stretched to it (common practice).
 */
public final class LevelSeams {
    /** As near to the stitching line as this the end of a width lies on it, mm. */
    private static final double ON_LINE = 0.05;

    private static final double SAME_CORNER = 1;

    private LevelSeams() {}

    /**
     * A level at a seam.
     *
     * @param seam     name of the seam
     * @param first    id of the piece of its first edge
     * @param second   id of the piece of its second edge
     * @param off      by how much farther along the seam the level lies on the second piece than on the first, with what
     *                 is to be eased in spread evenly, mm
     * @param least    what of that is left over, mm, 0 or more, wherever along the seam is eased
     * @param eased    how much is eased in, mm, 0 or more
     * @param evenly   whether that is taken to be spread evenly
     * @param onFirst  where the level would have to arrive on the first piece to meet that of the second
     * @param onSecond where it would have to arrive on the second piece to meet that of the first
     */
    public record Meeting(
            String seam,
            String level,
            String first,
            String second,
            double off,
            double least,
            double eased,
            boolean evenly,
            Point onFirst,
            Point onSecond) {
        /** Whether the lines miss each other by more than works (docs/sources.md 3) and all that is eased in. */
        public boolean isApart() {
            return least > Cutting.WORKS + eased;
        }

        /** Whether they meet as well as works, with what is eased in where it is taken to lie. */
        public boolean meets() {
            return evenly ? Math.abs(off) <= Cutting.WORKS : !isApart();
        }
    }

    /** Every straight level at every seam of two edges that it comes to on both sides. */
    public static List<Meeting> of(Pattern garment, GarmentMeasures measures) {
        return of(garment, measures, piece -> true);
    }

    /**
     * The same of some seams only.
     *
     * @param wanted takes the id of a piece: a seam is looked at if one of its two pieces is wanted
     */
    public static List<Meeting> of(Pattern garment, GarmentMeasures measures, Predicate<String> wanted) {
        List<Meeting> meetings = new ArrayList<>();
        for (Mate mate : garment.mates()) {
            boolean single = mate.first().size() == 1 && mate.second().size() == 1;
            if (single
                    && (wanted.test(mate.first().get(0).piece())
                            || wanted.test(mate.second().get(0).piece()))) {
                Optional<Seam> first = seam(garment, measures, mate.first().get(0));
                Optional<Seam> second = seam(garment, measures, mate.second().get(0));
                if (first.isPresent()
                        && second.isPresent()
                        && first.get().piece() != second.get().piece()) {
                    add(mate, first.get(), second.get(), meetings);
                }
            }
        }
        return List.copyOf(meetings);
    }

    private static void add(Mate mate, Seam first, Seam second, List<Meeting> meetings) {
        boolean alike = first.runsAs(second);
        for (LevelMark mark : first.piece().levels()) {
            String level = mark.level();
            boolean both = mark.through().isPresent()
                    && second.piece().level(level).flatMap(LevelMark::through).isPresent();
            Optional<Double> one = both ? first.along(level) : Optional.empty();
            Optional<Double> two = both ? second.along(level) : Optional.empty();
            if (one.isEmpty() || two.isEmpty()) {
                continue;
            }
            double turned = alike ? two.get() : second.length() - two.get();
            boolean evenly = isEven(mate, first, second);
            double ease = evenly ? mate.declaredEase() : 0;
            double drift = first.length() - second.length() - ease;
            // The second as it is stretched to the first, or held in to it.
            double stretch = 1 + ease / second.length();
            double off = nearer(turned * stretch - one.get(), drift);
            double above = nearer(turned + ease - one.get(), drift);
            double below = nearer(turned - one.get(), drift);
            boolean between = above * below <= 0;
            meetings.add(new Meeting(
                    mate.name(),
                    level,
                    first.piece().id(),
                    second.piece().id(),
                    off,
                    between ? 0 : Math.min(Math.abs(above), Math.abs(below)),
                    Math.abs(mate.declaredEase()),
                    evenly,
                    first.at(one.get() + off),
                    second.at(two.get() + (alike ? -off : off) / stretch)));
        }
    }

    /** Whether what is to be eased in is spread evenly; nobody knows of sides that do not fit. */
    private static boolean isEven(Mate mate, Seam first, Seam second) {
        return Cutting.same(first.length() - second.length() - mate.declaredEase())
                && !first.endsAtCrotch()
                && !second.endsAtCrotch();
    }

    /** Sides that do not fit are pinned from that end from which the level meets better. */
    private static double nearer(double fromStart, double drift) {
        double fromEnd = fromStart + drift;
        return Math.abs(fromStart) <= Math.abs(fromEnd) ? fromStart : fromEnd;
    }

    /**
     * A piece without a level that ends at its seam with a piece that has it.
     *
     * @param seam  name of the seam
     * @param has   id of the piece that has the level
     * @param lacks id of the piece that has it not
     * @param at    where it would have to arrive on that piece to meet the level of the other
     */
    record End(String seam, String level, String has, String lacks, Point at) {}

    /** Every end of a straight level that counts at a side seam of two edges beyond which the level is not marked. */
    static List<End> ends(Pattern garment, GarmentMeasures measures) {
        List<End> ends = new ArrayList<>();
        for (Mate mate : garment.mates()) {
            boolean single = mate.first().size() == 1 && mate.second().size() == 1;
            Optional<Seam> first = single ? seam(garment, measures, mate.first().get(0)) : Optional.empty();
            Optional<Seam> second =
                    single ? seam(garment, measures, mate.second().get(0)) : Optional.empty();
            if (first.isPresent()
                    && second.isPresent()
                    && first.get().piece() != second.get().piece()
                    && first.get().edge().role() == EdgeRole.SEAM
                    && second.get().edge().role() == EdgeRole.SEAM) {
                double ease = isEven(mate, first.get(), second.get()) ? mate.declaredEase() : 0;
                double stretch = 1 + ease / second.get().length();
                addEnds(mate, first.get(), second.get(), 1 / stretch, ends);
                addEnds(mate, second.get(), first.get(), stretch, ends);
            }
        }
        return ends;
    }

    /**
     * @param stretch how long what is sewn to a length of the one that has the level is on the other
     */
    private static void addEnds(Mate mate, Seam has, Seam lacks, double stretch, List<End> ends) {
        for (LevelMark mark : has.piece().levels()) {
            String level = mark.level();
            boolean open = mark.counts()
                    && mark.through().isPresent()
                    && lacks.piece().level(level).isEmpty();
            Optional<Double> along = open ? has.along(level) : Optional.empty();
            if (along.isPresent()) {
                // Where they differ in length, seams are pinned from their upper end.
                double below = has.down() > 0 ? along.get() : has.length() - along.get();
                double there = lacks.down() > 0 ? below * stretch : lacks.length() - below * stretch;
                ends.add(new End(
                        mate.name(), level, has.piece().id(), lacks.piece().id(), lacks.at(there)));
            }
        }
    }

    private static Optional<Seam> seam(Pattern garment, GarmentMeasures measures, EdgeRef ref) {
        Optional<PieceMeasures> measured = garment.piece(ref.piece()).flatMap(p -> measures.piece(p.id()));
        Optional<Edge> edge = garment.edge(ref);
        return measured.isPresent() && edge.isPresent()
                ? Optional.of(new Seam(measured.get(), edge.get()))
                : Optional.empty();
    }

    /** One side of a seam: an edge of a piece as it is sewn. */
    private record Seam(PieceMeasures measured, Edge edge) {
        Piece piece() {
            return measured.stitch().piece();
        }

        private Place from() {
            return measured.stitch().place(edge.from());
        }

        private double to(Place at) {
            return from().equals(at) ? 0 : measured.stitch().outline().length(from(), at);
        }

        double length() {
            return to(measured.stitch().place(edge.to()));
        }

        /** The place that far along the edge. */
        Point at(double mm) {
            return measured.stitch().edge(edge).pointAtLength(Math.max(0, Math.min(mm, length())));
        }

        /** How far along the edge a level arrives; empty where it does not. */
        Optional<Double> along(String level) {
            Place to = measured.stitch().place(edge.to());
            return measured.level(level).stream()
                    .flatMap(w -> w.spans().stream())
                    .flatMap(s -> Stream.of(s.from(), s.to()))
                    .map(p -> measured.stitch().outline().nearest(p))
                    .filter(n -> n.distance() <= ON_LINE && Places.between(from(), n.place(), to))
                    .map(n -> to(n.place()))
                    .findFirst();
        }

        /** Whether both are sewn from start to start: what lies beside their ends tells, or else how their cloth runs. */
        boolean runsAs(Seam other) {
            int alike = same(beside(edge.from()), other.beside(other.edge.from()))
                    + same(beside(edge.to()), other.beside(other.edge.to()));
            int across = same(beside(edge.from()), other.beside(other.edge.to()))
                    + same(beside(edge.to()), other.beside(other.edge.from()));
            return alike == across ? down() * other.down() > 0 : alike > across;
        }

        boolean endsAtCrotch() {
            return same(beside(edge.from()), Optional.of(EdgeRole.CROTCH))
                            + same(beside(edge.to()), Optional.of(EdgeRole.CROTCH))
                    > 0;
        }

        private static int same(Optional<EdgeRole> one, Optional<EdgeRole> other) {
            return one.isPresent() && one.equals(other) ? 1 : 0;
        }

        /** What the edge that meets this one at a corner is. */
        private Optional<EdgeRole> beside(Point corner) {
            return piece().edges().stream()
                    .filter(e -> !e.name().equals(edge.name()))
                    .filter(e -> e.from().distance(corner) < SAME_CORNER || e.to().distance(corner) < SAME_CORNER)
                    .map(Edge::role)
                    .findFirst();
        }

        /** How far the edge goes down the grain, the page showing which way that is, mm. */
        private double down() {
            Point grain = piece().grainDirection();
            boolean flip = Math.abs(grain.y()) > 0.1 ? grain.y() < 0 : grain.x() < 0;
            return edge.to().minus(edge.from()).dot(grain) * (flip ? -1 : 1);
        }
    }
}
