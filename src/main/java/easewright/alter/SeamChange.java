package easewright.alter;

import easewright.geom.Point;
import easewright.measure.StitchLines;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import java.util.List;

/**
 * Spreads or pinches a garment at one level by moving seam edges along the level: most at the level, nothing at the
 * fixed points (the seam method, docs/sources.md 4.1).
 *
 * @param level           name of the level whose finished girth changes
 * @param amount          change of the finished girth, mm; above 0 spreads, below 0 pinches
 * @param shares          edges that take the change; empty: every seam edge that bounds the level on a counted piece,
 *                        all alike
 * @param taper           how it dies away
 * @param carryToHem      keep the whole amount from the level down to the lower end of the edge
 * @param keep            names of notches, levels or neighbouring edges at which the change must have died away; on a
 *                        side where none lies, the next notch, dart mouth or other level with room to taper, or the end
 *                        of the edge (docs/decisions/0011)
 * @param fixed           the same as places on the outline
 * @param oneSide         only one side of the garment is to change
 * @param acceptProtected protected edges may move
 * @param even            seam lines that are sewn together change by the same length
 */
public record SeamChange(
        String level,
        double amount,
        List<Share> shares,
        Taper taper,
        boolean carryToHem,
        List<String> keep,
        List<Point> fixed,
        boolean oneSide,
        boolean acceptProtected,
        boolean even)
        implements ByAmount {
    static final String METHOD = "seam";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.SEAMS,
            Way.Aim.GIRTH,
            "amount",
            List.of(
                    Setting.needed("level", Setting.Kind.LEVEL),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.free("edge", Setting.Kind.SHARES),
                    Setting.choice("taper", Taper.SMOOTH),
                    Setting.flag("carry-to-hem"),
                    Setting.flag("even"),
                    Setting.flag("one-side"),
                    Setting.free("keep", Setting.Kind.NAMES),
                    Setting.free("fixed", Setting.Kind.PLACES),
                    Setting.flag(Way.ACCEPT)),
            SeamChange::from);

    /**
     * @throws IllegalArgumentException if the amount is no number
     */
    public SeamChange {
        Amounts.require(amount);
        shares = List.copyOf(shares);
        keep = List.copyOf(keep);
        fixed = List.copyOf(fixed);
    }

    /** The same, each seam line changing as it comes. */
    public SeamChange(
            String level,
            double amount,
            List<Share> shares,
            Taper taper,
            boolean carryToHem,
            List<String> keep,
            List<Point> fixed,
            boolean oneSide,
            boolean acceptProtected) {
        this(level, amount, shares, taper, carryToHem, keep, fixed, oneSide, acceptProtected, false);
    }

    /** The amount at the level, on all its seams alike, with a smooth taper to the next fixed points. */
    public static SeamChange at(String level, double amount) {
        return new SeamChange(level, amount, List.of(), Taper.SMOOTH, false, List.of(), List.of(), false, false);
    }

    @Override
    public SeamChange withAmount(double mm) {
        return new SeamChange(level, mm, shares, taper, carryToHem, keep, fixed, oneSide, acceptProtected, even);
    }

    public SeamChange withShares(Share... among) {
        return new SeamChange(
                level, amount, List.of(among), taper, carryToHem, keep, fixed, oneSide, acceptProtected, even);
    }

    public SeamChange withTaper(Taper how) {
        return new SeamChange(level, amount, shares, how, carryToHem, keep, fixed, oneSide, acceptProtected, even);
    }

    public SeamChange carriedToHem() {
        return new SeamChange(level, amount, shares, taper, true, keep, fixed, oneSide, acceptProtected, even);
    }

    public SeamChange keeping(String... names) {
        return new SeamChange(
                level, amount, shares, taper, carryToHem, List.of(names), fixed, oneSide, acceptProtected, even);
    }

    public SeamChange fixedAt(Point... places) {
        return new SeamChange(
                level, amount, shares, taper, carryToHem, keep, List.of(places), oneSide, acceptProtected, even);
    }

    public SeamChange onOneSide() {
        return new SeamChange(level, amount, shares, taper, carryToHem, keep, fixed, true, acceptProtected, even);
    }

    public SeamChange acceptingProtected() {
        return new SeamChange(level, amount, shares, taper, carryToHem, keep, fixed, oneSide, true, even);
    }

    /** Seam lines that are sewn together change by the same length. */
    public SeamChange evened() {
        return new SeamChange(level, amount, shares, taper, carryToHem, keep, fixed, oneSide, acceptProtected, true);
    }

    @Override
    public ChangeNote note() {
        Settings settings = new Settings()
                .text("level", level)
                .number("amount", amount)
                .text("taper", Settings.name(taper))
                .flag("carry-to-hem", carryToHem)
                .flag("one-side", oneSide)
                .flag(Way.ACCEPT, acceptProtected)
                .flag("even", even);
        return settings.shares("edge", shares)
                .texts("keep", keep)
                .points("fixed", fixed)
                .note(METHOD);
    }

    static SeamChange from(ChangeNote note) throws Refusal {
        Settings settings = new Settings(note);
        return new SeamChange(
                settings.text("level"),
                settings.number("amount"),
                settings.shares("edge"),
                settings.choice("taper", Taper.class),
                settings.flag("carry-to-hem"),
                settings.texts("keep"),
                settings.points("fixed"),
                settings.flag("one-side"),
                settings.flag(Way.ACCEPT),
                settings.flag("even"));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        return make(pattern, new StitchLines());
    }

    @Override
    public Altered make(Pattern pattern, StitchLines lines) throws Refusal {
        SeamWork work = new SeamWork(pattern, this, lines);
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        return even ? evenly(pattern) : work.done();
    }

    private Altered evenly(Pattern pattern) throws Refusal {
        SeamChange plain =
                new SeamChange(level, amount, shares, taper, carryToHem, keep, fixed, oneSide, acceptProtected);
        Altered done = new Evening(pattern, plain).done();
        return new Altered(
                done.pattern().withChanges(pattern.changes()).withChange(note()), done.moved(), done.findings());
    }
}
