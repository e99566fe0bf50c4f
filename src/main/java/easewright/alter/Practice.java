package easewright.alter;

import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** How far the trade goes before a change distorts the garment (docs/sources.md 4.3; common practice unless said). */
final class Practice {
    /** Taper length at least 10 times the added width: about 5.7°, common practice. */
    static final double LEAST_RATIO = 10;

    /** A swing of 20.56° is to be warned of, one of 7.13° is acceptable (worked example W14); drawn between them at 1:5. */
    static final double STEEP_RATIO = 5;

    /** Up to 1/2 in on one seam edge is routine, common practice. */
    private static final double ROUTINE = 12.7;

    /** 1 in on one seam edge is the usual ceiling, common practice; the only sourced figure is E-372's 1 in. */
    private static final double CEILING = 25.4;

    private static final double ROUNDING = 1e-6;

    private Practice() {}

    /**
     * @param on     the edge on which that dies away most steeply: the same, or one beside it
     * @param amount by how much the edge moved at most, mm
     * @param taper  length square to the level over which that dies away, mm; infinite where it does not
     * @param carried whether it is carried to the hem already, so that this is no advice
     */
    static List<Finding> edge(Piece piece, Edge edge, Edge on, double amount, double taper, boolean carried) {
        List<Finding> findings = new ArrayList<>();
        double much = Math.abs(amount);
        if (taper < LEAST_RATIO * much - ROUNDING) {
            boolean steep = taper < STEEP_RATIO * much - ROUNDING;
            findings.add(of(
                            steep ? steep(piece, carried) : "taper-short",
                            steep ? Severity.CAUTION : Severity.NOTE,
                            piece,
                            on)
                    .with("slope.degrees", Math.toDegrees(Math.atan(much / taper)))
                    .with("taper", taper)
                    .with("needed", LEAST_RATIO * much));
        }
        if (much > CEILING + ROUNDING) {
            findings.add(of("edge-past-practice", Severity.CAUTION, piece, edge)
                    .with("amount.signed", amount)
                    .with("limit", CEILING));
        } else if (much > ROUTINE + ROUNDING) {
            findings.add(of("edge-past-routine", Severity.NOTE, piece, edge)
                    .with("amount.signed", amount)
                    .with("limit", ROUTINE));
        }
        return findings;
    }

    /** What is better than a steep taper depends on the piece: a sleeve has a way of its own. */
    private static String steep(Piece piece, boolean carried) {
        boolean sleeve = piece.edges().stream().anyMatch(e -> e.role() == EdgeRole.CAP);
        if (sleeve) {
            return "taper-steep-sleeve";
        }
        return carried ? "taper-steep-carried" : "taper-steep";
    }

    /** A level that a change runs past, since dying away before it would be steeper than is practice. */
    static Finding passed(Piece piece, Edge edge, String level, double amount) {
        return of("taper-passes-level", Severity.NOTE, piece, edge)
                .with("level", level)
                .with("needed", LEAST_RATIO * Math.abs(amount));
    }

    private static Finding of(String code, Severity severity, Piece piece, Edge edge) {
        return Finding.of(code, severity, piece.name()).with("edge", edge.name());
    }
}
