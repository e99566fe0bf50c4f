package easewright.alter;

import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.measure.StitchOutline;
import easewright.pattern.Edge;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Draws the line beside the outline anew at its distance: the cutting line around the stitching line, with hems mirrored
 * about the hem line, or the stitching line inside the cutting line.
 */
final class CutTruer implements Trued.Truer {
    private static final int LOOKS = 9;

    /** A line is drawn no more exactly than this where it is off by more where nothing changed, mm. */
    private static final double DRAWN = 0.5;

    /**
     * A line beside the outline, and by how much it misses its distance at most along an edge that is no longer as it was
     * drawn, mm.
     *
     * @param drawn by how much it misses it along the rest, where whoever drew both lines drew them so, mm
     */
    record Beside(Piece piece, Rider rider, Edge edge, double off, double drawn) {}

    /** For each piece that was changed, the edge along which the line beside it strays most from its allowance. */
    static List<Beside> strayed(List<Piece> pieces) {
        List<Beside> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Optional<Rider> line = line(piece);
            if (piece.original().isEmpty() || line.isEmpty() || piece.edges().isEmpty()) {
                continue;
            }
            Outline beside = new Outline(line.get().segments());
            Edge worst = piece.edges().get(0);
            double off = 0;
            double drawn = 0;
            Set<Segment> original = new HashSet<>(piece.original().get().segments());
            List<Edge> untouched = new ArrayList<>();
            for (Edge edge : piece.edges()) {
                if (original.containsAll(edge.on(piece.outline()).segments())) {
                    untouched.add(edge);
                    continue;
                }
                Off own = off(piece, edge, beside);
                worst = own.changed() > off ? edge : worst;
                off = Math.max(off, own.changed());
                drawn = Math.max(drawn, own.asDrawn());
            }
            if (off > Truing.ALLOWANCE_WITHIN) {
                // How exactly the rest was drawn matters only where something strays.
                for (Edge edge : untouched) {
                    drawn = Math.max(drawn, off(piece, edge, beside).asDrawn());
                }
            }
            double hand = drawn > DRAWN ? Math.min(drawn, Cutting.WORKS) : 0;
            all.add(new Beside(piece, line.get(), worst, off, hand));
        }
        return all;
    }

    /** The one closed line that goes along. */
    private static Optional<Rider> line(Piece piece) {
        List<Rider> lines = piece.riders().stream()
                .filter(r -> r.kind() == Rider.Kind.PARALLEL && isClosed(r.segments()))
                .toList();
        return lines.size() == 1 ? Optional.of(lines.get(0)) : Optional.empty();
    }

    static boolean isClosed(List<Segment> segments) {
        for (int i = 0; i < segments.size(); i++) {
            if (!segments.get(i)
                    .end()
                    .equals(segments.get((i + 1) % segments.size()).start())) {
                return false;
            }
        }
        return !segments.isEmpty();
    }

    /** By how much an allowance is missed at most, mm: along what was changed, and along what is as it was drawn. */
    private record Off(double changed, double asDrawn) {}

    private static Off off(Piece piece, Edge edge, Outline beside) {
        Curve run = edge.on(piece.outline());
        Outline original = piece.original().orElseThrow();
        double allowance = Around.allowance(piece, edge);
        double length = run.length();
        double changed = 0;
        double asDrawn = 0;
        // Beside a corner the nearest line is that of the next edge.
        double clear = Math.min(1.2 * Math.max(allowance, piece.allowance()), 0.3 * length);
        for (int i = 0; i < LOOKS; i++) {
            Point p = run.pointAtLength(clear + (length - 2 * clear) * i / (LOOKS - 1));
            double off = Math.abs(beside.nearest(p).distance() - allowance);
            if (off > Math.min(changed, asDrawn)) {
                boolean drawn = isAsDrawn(original, run, p);
                changed = drawn ? changed : Math.max(changed, off);
                asDrawn = drawn ? Math.max(asDrawn, off) : asDrawn;
            }
        }
        return new Off(changed, asDrawn);
    }

    /** Whether the outline lies there where it was drawn, or goes along whole with a part of the piece. */
    private static boolean isAsDrawn(Outline original, Curve run, Point p) {
        if (original.nearest(p).distance() <= Likeness.CLOSE) {
            return true;
        }
        Segment here = run.segments().get(run.nearest(p).place().segment());
        return here instanceof Cubic now
                && original.segments().stream().anyMatch(s -> s instanceof Cubic was && isCongruent(was, now));
    }

    /** Whether one curve is the other, moved, turned or mirrored. */
    private static boolean isCongruent(Cubic was, Cubic now) {
        List<Point> one = List.of(was.start(), was.control1(), was.control2(), was.end());
        List<Point> two = List.of(now.start(), now.control1(), now.control2(), now.end());
        for (int i = 0; i < one.size(); i++) {
            for (int k = i + 1; k < one.size(); k++) {
                double apart = one.get(i).distance(one.get(k)) - two.get(i).distance(two.get(k));
                if (Math.abs(apart) > Likeness.CLOSE) {
                    return false;
                }
            }
        }
        return true;
    }

    @Override
    public List<Stroke> strokes(Pattern pattern, Trued what) throws Refusal {
        String name = what.target(Trued.PIECE);
        Piece piece = Known.piece(pattern, name);
        Rider rider =
                line(piece).orElseThrow(() -> Refusal.of("line-beside-missing").with("piece", piece.name()));
        Outline drawn = piece.drawn() == LineKind.CUTTING
                ? StitchOutline.of(piece).outline()
                : Around.of(piece, true)
                        .orElseThrow(() -> Refusal.of("line-beside-missing").with("piece", piece.name()));
        List<Segment> after = begunNear(drawn, rider.segments());
        return List.of(new CutStroke(piece.id(), rider.id(), rider.segments(), after));
    }

    /** In the direction of the old line, and begun at its corner nearest to where that began. */
    private static List<Segment> begunNear(Outline line, List<Segment> old) {
        boolean same = new Outline(old).signedArea() * line.signedArea() > 0;
        List<Segment> all = (same ? line : line.reversed()).segments();
        int first = 0;
        for (int i = 1; i < all.size(); i++) {
            if (all.get(i).start().distance(old.get(0).start())
                    < all.get(first).start().distance(old.get(0).start())) {
                first = i;
            }
        }
        List<Segment> begun = new ArrayList<>(all.subList(first, all.size()));
        begun.addAll(all.subList(0, first));
        return begun;
    }
}
