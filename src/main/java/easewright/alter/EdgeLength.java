package easewright.alter;

import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;

/**
 * Makes one edge of a piece longer or shorter by an exact length, so that it fits what it is sewn to: a waistband after
 * the waist, a collar after the neck, an armhole after the cap.
 *
 * @param edge            the edge
 * @param amount          change of its sewn length, mm
 * @param how             where the length goes in
 * @param acceptProtected protected edges beside it may change
 */
public record EdgeLength(EdgeRef edge, double amount, Manner how, boolean acceptProtected) implements ByAmount {
    static final String METHOD = "edge-length";

    /** Where the length goes in. */
    public enum Manner {
        /** The piece is slashed square to the edge between its notches, and the parts moved along the edge. */
        SLASHED,
        /** The ends of the edge at which it meets a seam move out, and that seam with them. */
        AT_ENDS,
        /** Its lower end is let down or taken up in the edge's own direction, as a side seam is at the hem. */
        AT_LOWER_END,
        /** The same at its upper end. */
        AT_UPPER_END
    }

    static final Way WAY = new Way(
            METHOD,
            Way.Family.LENGTHS,
            Way.Aim.EDGE,
            "amount",
            List.of(
                    Setting.needed("edge", Setting.Kind.EDGE),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.choice("how", Manner.SLASHED),
                    Setting.flag(Way.ACCEPT)),
            EdgeLength::from);

    private static final double CLOSE = 1e-9;
    private static final double PROMISED = 1e-6;

    private static final List<String> DEPENDS_ON_AMOUNT =
            List.of("outline-crosses-itself", "tuck-too-wide", "tuck-takes-mark", "edge-length-not-met");

    /** What is said of slashes that run off the edge since more is taken out than there is. */
    private static final List<String> RUNS_OFF = List.of("slash-off-outline", "slash-through-corner");

    /**
     * @throws IllegalArgumentException if the amount is no number
     */
    public EdgeLength {
        Amounts.require(amount);
    }

    public static EdgeLength slashed(EdgeRef edge, double amount) {
        return new EdgeLength(edge, amount, Manner.SLASHED, false);
    }

    public static EdgeLength atEnds(EdgeRef edge, double amount) {
        return new EdgeLength(edge, amount, Manner.AT_ENDS, false);
    }

    @Override
    public EdgeLength withAmount(double mm) {
        return new EdgeLength(edge, mm, how, acceptProtected);
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("edge", edge.toString())
                .number("amount", amount)
                .text("how", Settings.name(how))
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static EdgeLength from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        return new EdgeLength(s.edge("edge"), s.number("amount"), s.choice("how", Manner.class), s.flag(Way.ACCEPT));
    }

    /** One way of putting length into an edge: a piece for some measure of it. */
    interface Stretch {
        Piece by(double mm) throws Refusal;
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Piece piece = Known.piece(pattern, edge.piece());
        Edge own = Known.edge(piece, edge.edge());
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        try {
            return with(pattern, piece, own, amount);
        } catch (Refusal why) {
            if (RUNS_OFF.contains(why.code())) {
                throw Bisect.largest(notMet(piece), amount, some -> with(pattern, piece, own, some));
            }
            if (DEPENDS_ON_AMOUNT.contains(why.code())) {
                throw Bisect.largest(why, amount, some -> with(pattern, piece, own, some));
            }
            throw why;
        }
    }

    private Stretch stretch(Piece piece, Edge own, double some) throws Refusal {
        // That the edge itself changes is what is asked for, protected or not.
        Piece open = piece.withEdges(piece.edges().stream()
                .map(e -> e.name().equals(own.name()) ? e.withProtected(false) : e)
                .toList());
        return switch (how) {
            case SLASHED -> new EdgeSlashes(open, own, acceptProtected);
            case AT_ENDS -> new EdgeEnds(open, own, some, acceptProtected);
            case AT_LOWER_END -> new EdgeAtEnd(open, own, true, acceptProtected);
            case AT_UPPER_END -> new EdgeAtEnd(open, own, false, acceptProtected);
        };
    }

    private Altered with(Pattern pattern, Piece piece, Edge own, double some) throws Refusal {
        Stretch stretch = stretch(piece, own, some);
        double base = sewn(piece);
        double found = Root.of(mm -> sewn(stretch.by(mm)) - base - some, -some, some, CLOSE, PROMISED, notMet(piece));
        Piece open = stretch.by(found);
        Piece done = open.withEdges(open.edges().stream()
                .map(e -> e.name().equals(own.name()) ? e.withProtected(own.isProtected()) : e)
                .toList());
        Simple.require(piece.outline(), done);
        return new Altered(pattern.withPiece(done).withChange(note()), List.of());
    }

    private Refusal notMet(Piece piece) {
        return Refusal.of("edge-length-not-met").with("piece", piece.name()).with("edge", edge.edge());
    }

    /** An outline that the change tears too far has no such edge to be measured any more. */
    private double sewn(Piece piece) throws Refusal {
        return Measures.of(piece, List.of())
                .edge(edge.edge())
                .orElseThrow(() -> notMet(piece))
                .mm();
    }
}
