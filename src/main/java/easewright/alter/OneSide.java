package easewright.alter;

import easewright.measure.StitchLines;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One change being made on one side of a garment. It is made on the pieces of that side as if there were no others, so
 * that every way does there what it does anywhere, and the girth changes by the whole amount. What it would move and is
 * cut alike for both sides is made into a left and a right piece first.
 */
final class OneSide {
    /** Enough to see which pieces a change moves, whatever the amount, mm. */
    private static final double A_LITTLE = 0.1;

    private final Pattern garment;
    private final Side side;
    private final Alteration change;

    /**
     * @param garment of one size
     */
    OneSide(Pattern garment, Side side, Alteration change) {
        this.garment = garment;
        this.side = side;
        this.change = change;
    }

    /**
     * @throws Refusal if the change is refused there, or moves what cannot be made into a left and a right piece
     */
    Altered done(StitchLines lines) throws Refusal {
        if (change instanceof CentreChange) {
            throw Refusal.of("one-side-centre");
        }
        PatternPart before = PatternPart.ofSide(garment, side);
        Pattern seen = looked(before.alone());
        if (seen == before.alone()) {
            return Altered.nothing(garment);
        }
        Set<String> parted = new LinkedHashSet<>(symmetricMoved(before.alone(), seen));
        while (true) {
            LeftRight.Parted pieces = LeftRight.of(garment, parted);
            PatternPart half = PatternPart.ofSide(pieces.garment(), side);
            Altered done = change.make(half.alone(), lines);
            // The whole amount may reach pieces that a little of it did not.
            if (!parted.addAll(symmetricMoved(half.alone(), done.pattern()))) {
                return outcome(half, done, pieces.findings());
            }
        }
    }

    private Altered outcome(PatternPart half, Altered done, List<Finding> first) {
        List<Moved> moved = done.moved().stream()
                .map(m -> new Moved(
                        half.idOf(m.pieceId()),
                        half.inWhole(m.pieceId(), m.before()),
                        half.inWhole(m.pieceId(), m.after())))
                .toList();
        List<Finding> findings = new ArrayList<>(first);
        findings.addAll(done.findings());
        return new Altered(half.back(done.pattern()), moved, findings);
    }

    /** What a little of the change does; where that is refused, what all of it does. */
    private Pattern looked(Pattern pieces) throws Refusal {
        double amount = Ways.of(change.note().method())
                .flatMap(way -> way.amountOf(change.note()))
                .orElse(0.0);
        if (amount == 0) {
            return change.make(pieces).pattern();
        }
        try {
            return change.withAmount(Math.copySign(Math.min(A_LITTLE, Math.abs(amount)), amount))
                    .make(pieces)
                    .pattern();
        } catch (Refusal little) {
            return change.make(pieces).pattern();
        }
    }

    private static Set<String> symmetricMoved(Pattern before, Pattern after) {
        Set<String> moved = new LinkedHashSet<>();
        for (Piece piece : after.pieces()) {
            boolean same = before.pieces().stream().anyMatch(p -> p == piece);
            if (!same && LeftRight.symmetric(piece)) {
                moved.add(piece.id());
            }
        }
        return moved;
    }
}
