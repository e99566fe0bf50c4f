package easewright.editor.model;

import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.alter.Taper;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelKind;
import java.util.List;
import java.util.Set;

/**
 * "This much, here", as it stands in the user's hand before it is done.
 *
 * @param amount   by which the finished girth at the level is to change, mm
 * @param leftOut  seam edges at the level that shall not take part
 * @param carry    whether the change goes on parallel down to the hem
 * @param oneSide  whether only one side of the garment changes
 * @param openUp   whether protected edges may move after all
 */
public record Wanted(
        String level,
        double amount,
        Set<EdgeRef> leftOut,
        Taper taper,
        boolean carry,
        boolean oneSide,
        boolean openUp) {
    public Wanted {
        leftOut = Set.copyOf(leftOut);
    }

    /** Nothing yet, with the settings most often right at such a level. */
    public static Wanted at(String level, LevelKind kind) {
        return new Wanted(level, 0, Set.of(), Taper.SMOOTH, belowTheWaist(kind), false, false);
    }

    private static boolean belowTheWaist(LevelKind kind) {
        return kind == LevelKind.HIP || kind == LevelKind.HIGH_HIP || kind == LevelKind.THIGH;
    }

    public Wanted withAmount(double mm) {
        return new Wanted(level, mm, leftOut, taper, carry, oneSide, openUp);
    }

    public Wanted withLeftOut(Set<EdgeRef> edges) {
        return new Wanted(level, amount, edges, taper, carry, oneSide, openUp);
    }

    public Wanted withTaper(Taper shape) {
        return new Wanted(level, amount, leftOut, shape, carry, oneSide, openUp);
    }

    public Wanted withCarry(boolean toHem) {
        return new Wanted(level, amount, leftOut, taper, toHem, oneSide, openUp);
    }

    public Wanted withOneSide(boolean only) {
        return new Wanted(level, amount, leftOut, taper, carry, only, openUp);
    }

    public Wanted withOpenUp(boolean allowed) {
        return new Wanted(level, amount, leftOut, taper, carry, oneSide, allowed);
    }

    /** Whether this is the same wish by as much or more in the same direction. */
    boolean asksMoreThan(Wanted other) {
        return equals(other.withAmount(amount))
                && amount * other.amount > 0
                && Math.abs(amount) >= Math.abs(other.amount);
    }

    /** The change that does this on the edges that remain. */
    public SeamChange change(List<Hold> holds) {
        List<Share> shares = leftOut.isEmpty()
                ? List.of()
                : holds.stream()
                        .map(Hold::edge)
                        .distinct()
                        .filter(e -> !leftOut.contains(e))
                        .map(e -> new Share(e, 1))
                        .toList();
        return new SeamChange(level, amount, shares, taper, carry, List.of(), List.of(), oneSide, openUp);
    }
}
