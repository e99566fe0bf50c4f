package easewright.alter;

import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.measure.StitchLines;
import easewright.pattern.Level;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Finds the amount of a shift at which a piece has exactly the width asked for. */
final class Exact {
    /** Widths are met within this; the promise to the user is 0.01 mm. */
    private static final double CLOSE = 1e-9;

    /** A stitching line found inside a cutting line is true to about this, so that nothing nearer can be asked for. */
    private static final double CLOSE_INSIDE = 2e-7;

    private static final double PROMISED = 0.01;
    private static final int STEPS = 30;

    private Exact() {}

    /** A piece and the amount that made it. */
    record Met(Piece piece, double amount) {}

    /**
     * Solves by the secant; where the level crosses the edge the first guess is exact already.
     *
     * @param make   the piece for an amount
     * @param now  net width at the level at amount 0, mm
     * @param more by how much it is to change, and the first amount to try, mm
     */
    static Met width(DoubleFunction<Piece> make, Level level, double now, double more) throws Refusal {
        return width(make, level, now, more, new StitchLines());
    }

    /** The same; the stitching lines found on the way are added to those given. */
    static Met width(DoubleFunction<Piece> make, Level level, double now, double more, StitchLines lines)
            throws Refusal {
        double wanted = now + more;
        double amount = more;
        Piece piece = make.apply(amount);
        double close = piece.drawn() == LineKind.CUTTING ? CLOSE_INSIDE : CLOSE;
        double miss = net(piece, level, Measures.width(lines.of(piece), level)) - wanted;
        double lastAmount = 0;
        double lastMiss = -more;
        Piece best = piece;
        double bestMiss = miss;
        double bestAmount = amount;
        for (int i = 0; i < STEPS && Math.abs(miss) > close; i++) {
            double slope = (miss - lastMiss) / (amount - lastAmount);
            if (!Double.isFinite(slope) || slope == 0) {
                break;
            }
            lastAmount = amount;
            lastMiss = miss;
            amount -= miss / slope;
            piece = make.apply(amount);
            miss = net(piece, level, Measures.width(lines.of(piece), level)) - wanted;
            if (Math.abs(miss) < Math.abs(bestMiss)) {
                best = piece;
                bestMiss = miss;
                bestAmount = amount;
            }
        }
        if (Math.abs(bestMiss) > PROMISED) {
            throw Refusal.of("girth-not-met").with("piece", piece.name()).with("level", level.name());
        }
        return new Met(best, bestAmount);
    }

    static double net(Piece piece, Level level) throws Refusal {
        return net(piece, level, Measures.width(piece, level));
    }

    static double net(SewnPiece sewn, Level level) throws Refusal {
        return net(sewn.piece(), level, sewn.width(level));
    }

    private static double net(Piece piece, Level level, Optional<LevelWidth> width) throws Refusal {
        return width.orElseThrow(() ->
                        Refusal.of("level-lost").with("piece", piece.name()).with("level", level.name()))
                .net();
    }
}
