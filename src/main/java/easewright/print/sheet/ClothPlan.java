package easewright.print.sheet;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.Nest.Layout;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The pieces of one garment laid on cloth, grain along its length: on cloth folded lengthwise if all fit (fold pieces at
 * the fold, one of each pair on both layers), else on the open cloth, every piece by itself.
 *
 * @param width   of the whole cloth, mm
 * @param folded  laid on folded cloth: then what is drawn is half as wide
 * @param foldable all pieces would fit on the folded cloth
 * @param length  needed, mm, before shrinkage is added
 * @param oneWay  all pieces lie the same way up, as for cloth with a nap or a print
 * @param pieces  in order of laying
 */
public record ClothPlan(
        double width, boolean folded, boolean foldable, double length, boolean oneWay, List<OnCloth> pieces) {
    /** Folded cloth is easier to cut: it is opened only to save more than this, mm. */
    private static final double WORTH_OPENING = 50;

    private static final Affine ASIDE = new Affine(-1, 0, 0, 1, 0, 0);

    public ClothPlan {
        pieces = List.copyOf(pieces);
    }

    /** A piece on the cloth: x across from the fold or one selvedge, y along. */
    public record OnCloth(String name, Outline outline) {}

    /** One shape to be laid, with its outline and name. */
    private record Shape(String name, Outline outline, Cutout cutout) {}

    /** Width of what is drawn, mm. */
    public double drawnWidth() {
        return folded ? width / 2 : width;
    }

    /** Pieces of which no allowance is known, so that cloth is counted for their stitching line alone; by name. */
    public static List<String> withoutAllowance(Pattern pattern) {
        return pattern.pieces().stream()
                .filter(p -> !CutLine.of(p).stitched())
                .map(Piece::name)
                .distinct()
                .toList();
    }

    /** The plan for all pieces of a pattern; empty where a piece is too wide even for the open cloth. */
    public static Optional<ClothPlan> of(Pattern pattern, double width, boolean oneWay) {
        Optional<ClothPlan> folded = onFold(pattern, oneWay).flatMap(shapes -> laid(shapes, width, true, oneWay));
        Optional<ClothPlan> open = laid(onOpen(pattern, oneWay), width, false, oneWay)
                .map(p -> new ClothPlan(width, false, folded.isPresent(), p.length(), oneWay, p.pieces()));
        boolean saves = folded.isEmpty()
                || open.filter(p -> p.length() < folded.get().length() - WORTH_OPENING)
                        .isPresent();
        return saves ? open : folded;
    }

    private static Optional<ClothPlan> laid(List<Shape> shapes, double width, boolean folded, boolean oneWay) {
        Layout layout = new Nest(
                        shapes.stream().map(Shape::cutout).toList(), folded ? width / 2 : width, 100_000, Job.GAP)
                .shortest();
        if (!layout.left().isEmpty()) {
            return Optional.empty();
        }
        List<OnCloth> pieces = new ArrayList<>();
        for (Laid laid : layout.laid()) {
            Shape shape = shapes.get(laid.shape());
            pieces.add(new OnCloth(shape.name(), shape.outline().transformed(laid.place())));
        }
        return Optional.of(new ClothPlan(width, folded, folded, layout.length(), oneWay, pieces));
    }

    /** Empty where a piece on the fold has no straight fold edge along its grain to lay there. */
    private static Optional<List<Shape>> onFold(Pattern pattern, boolean oneWay) {
        List<Shape> shapes = new ArrayList<>();
        List<Piece> single = new ArrayList<>(pattern.pieces());
        single.removeAll(addJoined(pattern, oneWay, shapes));
        for (Piece piece : single) {
            Outline cut = CutLine.of(piece).outline().transformed(PaperPiece.upright(piece));
            if (piece.onFold()) {
                Optional<Outline> left = foldAtLeft(piece, cut, fold(piece));
                if (left.isEmpty()) {
                    return Optional.empty();
                }
                add(shapes, piece, left.get(), piece.times(), ways(oneWay, new Affine(1, 0, 0, -1, 0, 0)), true);
            } else {
                // Paper may lie on either side where both layers are cut at once.
                List<Affine> ways = new ArrayList<>(ways(oneWay, Cutout.UPSIDE_DOWN));
                ways.addAll(ways.stream().map(ASIDE::after).toList());
                add(shapes, piece, cut, (piece.times() + 1) / 2, ways, false);
            }
        }
        return Optional.of(shapes);
    }

    private static List<Shape> onOpen(Pattern pattern, boolean oneWay) {
        List<Shape> shapes = new ArrayList<>();
        List<Piece> single = new ArrayList<>(pattern.pieces());
        single.removeAll(addJoined(pattern, oneWay, shapes));
        for (Piece piece : single) {
            Outline cut = CutLine.of(piece).outline().transformed(PaperPiece.upright(piece));
            Optional<Outline> left = piece.onFold() ? foldAtLeft(piece, cut, fold(piece)) : Optional.empty();
            Outline whole = left.map(half -> joined(half, half)).orElse(cut);
            List<Affine> ways = ways(oneWay, Cutout.UPSIDE_DOWN);
            for (int i = 0; i < piece.times(); i++) {
                // Every other one of a pair is cut with the paper turned over.
                Outline side = i % 2 == 0 ? whole : whole.transformed(ASIDE);
                add(shapes, piece, side, 1, ways, false);
            }
        }
        return shapes;
    }

    /** Adds the halves of pieces that were on the fold, each two as the one that they are cut as; gives those laid. */
    private static List<Piece> addJoined(Pattern pattern, boolean oneWay, List<Shape> shapes) {
        List<Piece> laid = new ArrayList<>();
        for (SidePair pair : SidePair.of(pattern)) {
            if (pair.halves()) {
                Optional<Outline> drawn = halfAtLeft(pair.drawn(), pair.folds().get(0));
                Optional<Outline> copy = halfAtLeft(pair.copy(), pair.folds().get(0));
                if (drawn.isPresent() && copy.isPresent()) {
                    Outline whole = joined(drawn.get(), copy.get());
                    // The half that lies with its fold at the left is not turned over; of two halves one always does.
                    boolean over = isTurnedOver(pair.drawn(), pair.folds().get(0));
                    Outline seen = over ? whole.transformed(ASIDE) : whole;
                    for (int i = 0; i < pair.drawn().times(); i++) {
                        List<Affine> ways = ways(oneWay, Cutout.UPSIDE_DOWN);
                        shapes.add(
                                new Shape(pair.wholeName(), seen, new Cutout(seen.corners(Cutout.STRAY), ways, false)));
                    }
                    laid.addAll(List.of(pair.drawn(), pair.copy()));
                }
            }
        }
        return laid;
    }

    private static Optional<Outline> halfAtLeft(Piece piece, String fold) {
        Outline cut = CutLine.of(piece).outline().transformed(PaperPiece.upright(piece));
        return foldAtLeft(piece, cut, piece.edge(fold));
    }

    private static boolean isTurnedOver(Piece piece, String fold) {
        Outline upright = piece.outline().transformed(PaperPiece.upright(piece));
        return foldAtLeft(piece, upright, piece.edge(fold))
                .filter(o -> !o.equals(upright))
                .isPresent();
    }

    private static Optional<Edge> fold(Piece piece) {
        return piece.edges().stream().filter(e -> e.role() == EdgeRole.FOLD).findFirst();
    }

    private static List<Affine> ways(boolean oneWay, Affine other) {
        return oneWay ? List.of(Cutout.AS_DRAWN) : List.of(Cutout.AS_DRAWN, other);
    }

    private static void add(
            List<Shape> shapes, Piece piece, Outline outline, int times, List<Affine> ways, boolean left) {
        for (int i = 0; i < times; i++) {
            shapes.add(new Shape(piece.name(), outline, new Cutout(outline.corners(Cutout.STRAY), ways, left)));
        }
    }

    /** The upright piece with its fold edge at its left side; empty where that edge is not straight along the grain. */
    private static Optional<Outline> foldAtLeft(Piece piece, Outline upright, Optional<Edge> fold) {
        if (fold.isEmpty()) {
            return Optional.empty();
        }
        Box edge = fold.get()
                .on(piece.outline())
                .transformed(PaperPiece.upright(piece))
                .box();
        Box whole = upright.box();
        boolean straight = edge.width() < 1;
        if (straight && Math.abs(edge.minX() - whole.minX()) < 1) {
            return Optional.of(upright);
        }
        return straight && Math.abs(edge.maxX() - whole.maxX()) < 1
                ? Optional.of(upright.transformed(ASIDE))
                : Optional.empty();
    }

    /**
     * The whole of two halves whose folds both lie at their left side, the second turned over to the left of the first;
     * as a polygon. Of a piece that is cut on the fold both are the same.
     */
    private static Outline joined(Outline right, Outline left) {
        List<Point> all = offFold(right);
        List<Point> other = offFold(left);
        if (Math.signum(left.signedArea()) != Math.signum(right.signedArea())) {
            Collections.reverse(other);
        }
        double down = all.get(0).y() - other.get(0).y();
        double foldRight = right.box().minX();
        double foldLeft = left.box().minX();
        for (int i = other.size() - 1; i >= 0; i--) {
            Point p = other.get(i);
            if (p.x() >= foldLeft + 1) {
                all.add(new Point(foldRight - (p.x() - foldLeft), p.y() + down));
            }
        }
        return Outline.polygon(all);
    }

    /** The corners from the one at which the outline leaves the fold to the one at which it comes back to it. */
    private static List<Point> offFold(Outline half) {
        double fold = half.box().minX();
        List<Point> corners = half.corners(Cutout.STRAY);
        int start = 0;
        for (int i = 0; i < corners.size(); i++) {
            boolean on = corners.get(i).x() < fold + 1;
            boolean leaves = corners.get((i + 1) % corners.size()).x() >= fold + 1;
            if (on && leaves) {
                start = i;
            }
        }
        List<Point> all = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point p = corners.get((start + i) % corners.size());
            if (i == 0 || p.x() >= fold + 1 || all.get(all.size() - 1).x() >= fold + 1) {
                all.add(p);
            }
        }
        return all;
    }
}
