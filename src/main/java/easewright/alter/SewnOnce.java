package easewright.alter;

import easewright.measure.BothSides;
import easewright.measure.EdgeLength;
import easewright.measure.GarmentMeasures;
import easewright.measure.LayerCounted;
import easewright.measure.PastCentre;
import easewright.measure.PieceMeasures;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.List;
import java.util.Locale;

/**
 * How long the edges of one role are on a garment: the neck all round, the rest as a person would lay a tape to them, on
 * one side, on one sleeve, along one seam. What lies on another piece counts once (common practice: a yoke is lined with
 * itself, and facings and linings lie on the piece they finish).
 */
final class SewnOnce {
    /** Cut in two layers. */
    private static final java.util.regex.Pattern DOUBLE = java.util.regex.Pattern.compile("\\byokes?\\b");

    private final List<Piece> pieces;
    private final GarmentMeasures measures;
    private final EdgeRole role;

    private SewnOnce(Pattern pattern, GarmentMeasures measures, EdgeRole role) {
        this.measures = measures;
        this.role = role;
        List<Piece> all = pattern.pieces().stream().filter(p -> sewn(p) > 0).toList();
        List<Piece> outer = all.stream().filter(p -> !LayerCounted.isLayer(p)).toList();
        pieces = outer.isEmpty() ? all : outer;
    }

    /** That length, mm; 0 where no edge is of the role. */
    static double length(Pattern pattern, GarmentMeasures measures, EdgeRole role) {
        SewnOnce edges = new SewnOnce(pattern, measures, role);
        double oneSide = edges.pieces.stream()
                .mapToDouble(p -> edges.sewn(p) * edges.onOneSide(p))
                .sum();
        return switch (role) {
            case NECK -> 2 * oneSide;
            case SHOULDER -> edges.shapes() > 1 ? oneSide / 2 : oneSide; // front and back are sewn to each other
            default -> oneSide;
        };
    }

    private double sewn(Piece piece) {
        return measures.piece(piece.id()).map(PieceMeasures::edges).orElse(List.of()).stream()
                .filter(e -> e.role() == role)
                .mapToDouble(e -> e.mm() - past(e))
                .sum();
    }

    /** What of a neck lies on a button stand is on the other side's as well. */
    private double past(EdgeLength edge) {
        return role == EdgeRole.NECK
                ? measures.piece(edge.pieceId())
                        .map(m -> PastCentre.mm(m, edge.edge()))
                        .orElse(0.0)
                : 0;
    }

    /** How often what is drawn lies on one side of the body, or on one sleeve. */
    private double onOneSide(Piece piece) {
        if (piece.side() != Side.BOTH) {
            return 0.5;
        }
        if (role == EdgeRole.CAP) {
            return piece.onFold() ? 2 : 1;
        }
        boolean whole = isWhole(piece);
        return (whole ? 0.5 : 1) * repeats(piece, whole);
    }

    /** How many such pieces lie beside each other, as where front and back are cut alike. */
    private double repeats(Piece piece, boolean whole) {
        int halves = piece.shapes() * (piece.onFold() || whole ? 2 : 1);
        return called(piece, DOUBLE) ? 1 : Math.max(1, halves / 2.0);
    }

    private boolean isWhole(Piece piece) {
        return !piece.onFold() && BothSides.on(piece);
    }

    /** How many fronts and backs there are. */
    private double shapes() {
        return pieces.stream()
                .mapToDouble(p -> p.side() == Side.BOTH ? repeats(p, isWhole(p)) : 0.5)
                .sum();
    }

    private static boolean called(Piece piece, java.util.regex.Pattern words) {
        return words.matcher(piece.name().toLowerCase(Locale.ROOT)).find();
    }
}
