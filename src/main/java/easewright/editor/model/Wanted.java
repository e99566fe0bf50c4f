package easewright.editor.model;

import easewright.alter.Alteration;
import easewright.alter.OtherSize;
import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.alter.Taper;
import easewright.alter.Way;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * "This much, here", as it stands in the user's hand before it is done.
 *
 * @param amount   by which the finished girth at the level is to change, mm
 * @param leftOut  seam edges at the level that shall not take part
 * @param carry    whether the change goes on parallel down to the hem
 * @param side     the side of the garment that changes; both where it changes alike on either
 * @param openUp   whether protected edges may move after all
 * @param even     whether seams that are sewn together shall change by the same length
 * @param other    another way than at the seams, or that way with all its settings
 * @param beyond   what was set in that form beyond the few settings at the seams, by its keys, and holds on there
 * @param alsoIn   the sizes beside the one at work in which the same is done
 */
public record Wanted(
        String level,
        double amount,
        Set<EdgeRef> leftOut,
        Taper taper,
        boolean carry,
        Side side,
        boolean openUp,
        boolean even,
        Optional<OtherWay> other,
        Map<String, List<String>> beyond,
        Set<String> alsoIn) {
    public Wanted {
        leftOut = Set.copyOf(leftOut);
        beyond = OtherWay.copied(beyond);
        alsoIn = Set.copyOf(alsoIn);
    }

    /** Nothing yet, with the settings most often right at such a level. */
    public static Wanted at(String level, LevelKind kind) {
        return new Wanted(
                level,
                0,
                Set.of(),
                Taper.SMOOTH,
                LevelsBelow.belowTheWaist(kind),
                Side.BOTH,
                false,
                false,
                Optional.empty(),
                Map.of(),
                Set.of());
    }

    /** The same in a pattern, where levels may lie between this one and the hem. */
    static Wanted at(Level level, Pattern pattern) {
        return at(level.name(), level.kind()).withCarry(LevelsBelow.isCarried(pattern, level));
    }

    /** Nothing yet, at the first level of a pattern; empty where it has none. */
    static Optional<Wanted> first(Pattern pattern) {
        return pattern.levels().stream().findFirst().map(l -> at(l, pattern));
    }

    /**
     * The same where the pattern was marked otherwise; as long as nothing is tried, and nobody has chosen whether it is
     * carried down to the hem, that goes by the levels that there are now.
     */
    Wanted remarked(Pattern is, Pattern was) {
        Optional<Boolean> before = was.level(level).map(l -> LevelsBelow.isCarried(was, l));
        return amount == 0 && before.equals(Optional.of(carry))
                ? is.level(level)
                        .map(l -> withCarry(LevelsBelow.isCarried(is, l)))
                        .orElse(this)
                : this;
    }

    /** Whether sewn seams are to change alike, in whichever form that is said. */
    boolean isEvened() {
        return other.map(o -> o.texts("even").contains("yes")).orElse(even);
    }

    /** Whether the change goes on down to the hem, in whichever way it is made. */
    boolean goesToHem() {
        return other.map(o -> o.texts("carry-to-hem").contains("yes")).orElse(carry);
    }

    public Wanted withAmount(double mm) {
        return new Wanted(level, mm, leftOut, taper, carry, side, openUp, even, other, beyond, alsoIn);
    }

    public Wanted withLeftOut(Set<EdgeRef> edges) {
        return new Wanted(level, amount, edges, taper, carry, side, openUp, even, other, beyond, alsoIn);
    }

    public Wanted withTaper(Taper shape) {
        return new Wanted(level, amount, leftOut, shape, carry, side, openUp, even, other, beyond, alsoIn);
    }

    public Wanted withCarry(boolean toHem) {
        return new Wanted(level, amount, leftOut, taper, toHem, side, openUp, even, other, beyond, alsoIn);
    }

    public Wanted withSide(Side which) {
        return new Wanted(level, amount, leftOut, taper, carry, which, openUp, even, other, beyond, alsoIn);
    }

    public Wanted withOpenUp(boolean allowed) {
        return new Wanted(level, amount, leftOut, taper, carry, side, allowed, even, other, beyond, alsoIn);
    }

    public Wanted withEven(boolean alike) {
        return new Wanted(level, amount, leftOut, taper, carry, side, openUp, alike, other, beyond, alsoIn);
    }

    public Wanted withOther(Optional<OtherWay> way) {
        return new Wanted(level, amount, leftOut, taper, carry, side, openUp, even, way, beyond, alsoIn);
    }

    /** With this set beyond the few settings at the seams. */
    Wanted withBeyond(Map<String, List<String>> set) {
        return new Wanted(level, amount, leftOut, taper, carry, side, openUp, even, other, set, alsoIn);
    }

    /** The form with what stands in it: of another way, or what holds beyond the few settings at the seams. */
    Optional<OtherWay> inForm() {
        return other.or(() -> SeamsInFull.beyond(this));
    }

    public Wanted withAlsoIn(Set<String> sizes) {
        return new Wanted(level, amount, leftOut, taper, carry, side, openUp, even, other, beyond, sizes);
    }

    /**
     * With another size at work, as far as what is named in the one that was is there as well. That one takes its place
     * among the others, if it was one of them.
     *
     * @param there finds there what is named here
     */
    Wanted atWork(String was, String is, OtherSize there) {
        Set<String> others = new HashSet<>(alsoIn);
        if (others.remove(is)) {
            others.add(was);
        }
        Set<EdgeRef> out = new HashSet<>();
        leftOut.forEach(edge -> there.edgeIfAny(edge).ifPresent(out::add));
        try {
            return in(there).withLeftOut(out).withAlsoIn(others);
        } catch (Refusal notThere) {
            return withLeftOut(out).withAlsoIn(others);
        }
    }

    /**
     * The same in another size, but for the seams left out.
     *
     * @throws Refusal if something that is named has nothing like it there
     */
    Wanted in(OtherSize size) throws Refusal {
        Optional<OtherWay> held = SeamsInFull.beyond(this);
        Wanted there = other.isPresent() ? withOther(Optional.of(other.get().in(size))) : this;
        return held.isPresent() ? there.withBeyond(held.get().in(size).texts()) : there;
    }

    /** Nothing more is wanted here for now; the way stays chosen. */
    Wanted done() {
        Map<String, List<String>> still = SeamsInFull.beyond(this)
                .map(OtherWay::withoutPlaces)
                .map(OtherWay::texts)
                .orElse(Map.of());
        return withAmount(0)
                .withOpenUp(false)
                .withOther(other.map(OtherWay::withoutPlaces))
                .withBeyond(still);
    }

    /** Whether something is tried or half chosen, beyond what stays for the next change. */
    public boolean isBegun() {
        return !equals(done());
    }

    /** Whether it is at the seams, where they can be taken hold of. */
    public boolean atSeams() {
        return other.isEmpty();
    }

    /** Whether the amount is one of the girth at the level. */
    public boolean aimsAtGirth() {
        return other.map(o -> o.way().aim() == Way.Aim.GIRTH).orElse(true);
    }

    /** Whether it may be made on one side: a centre line belongs to both. */
    public boolean maySided() {
        return other.map(o -> !o.method().equals("centre")).orElse(true);
    }

    /** Whether this is the same wish by as much or more in the same direction. */
    boolean asksMoreThan(Wanted other) {
        return equals(other.withAmount(amount))
                && amount * other.amount > 0
                && Math.abs(amount) >= Math.abs(other.amount);
    }

    /**
     * The change that does this.
     *
     * @param pattern the pieces among which it is made
     * @param taking  the seams at the level that are to take part, where some are left out
     * @throws Refusal if a setting of another way is missing or not understood
     */
    public Alteration change(Pattern pattern, List<EdgeRef> taking) throws Refusal {
        if (other.isEmpty() && beyond.isEmpty()) {
            return atSeams(taking);
        }
        OtherWay way = other.orElseGet(() -> SeamsInFull.form(this, leftOut.isEmpty() ? List.of() : taking));
        boolean mayMove = way.way().setting(Way.ACCEPT).isPresent();
        return (openUp && mayMove ? way.with(Way.ACCEPT, List.of("yes")) : way).change(pattern, level, amount);
    }

    /** The change at the seams that remain. */
    private SeamChange atSeams(List<EdgeRef> taking) {
        List<Share> shares = leftOut.isEmpty()
                ? List.of()
                : taking.stream().map(e -> new Share(e, 1)).toList();
        return new SeamChange(level, amount, shares, taper, carry, List.of(), List.of(), false, openUp, even);
    }
}
