package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes a sleeve wider or narrower across and keeps the length of the cap seam, so that it still fits its armhole: the
 * four-way slash with the cap drawn smooth again. The cap becomes lower as the sleeve becomes wider (docs/sources.md
 * 4.2, C-228: the alternative to changing the bodice with the cap).
 *
 * @param level           name of the level whose finished girth changes
 * @param amount          change of the finished girth, mm
 * @param pieces          ids or names of the sleeves; empty: every piece with a cap that counts at the level
 * @param carryToHem      keep the whole change down to the hem, which then becomes wider; else it dies away there
 * @param acceptProtected protected underarm seams and hems may change
 */
public record SleeveWidth(String level, double amount, List<String> pieces, boolean carryToHem, boolean acceptProtected)
        implements ByAmount {
    static final String METHOD = "sleeve";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.SLASHES,
            Way.Aim.GIRTH,
            "amount",
            List.of(
                    Setting.needed("level", Setting.Kind.LEVEL),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.free("piece", Setting.Kind.PIECES),
                    Setting.flag("carry-to-hem"),
                    Setting.flag(Way.ACCEPT)),
            SleeveWidth::from);

    private static final List<String> DEPENDS_ON_AMOUNT =
            List.of("outline-crosses-itself", "cap-too-short", "girth-not-met", "level-lost", "dart-point-left-out");

    /**
     * @throws IllegalArgumentException if the amount is no number
     */
    public SleeveWidth {
        Amounts.require(amount);
        pieces = List.copyOf(pieces);
    }

    public static SleeveWidth at(String level, double amount) {
        return new SleeveWidth(level, amount, List.of(), false, false);
    }

    @Override
    public SleeveWidth withAmount(double mm) {
        return new SleeveWidth(level, mm, pieces, carryToHem, acceptProtected);
    }

    public SleeveWidth carriedToHem() {
        return new SleeveWidth(level, amount, pieces, true, acceptProtected);
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("level", level)
                .number("amount", amount)
                .texts("piece", pieces)
                .flag("carry-to-hem", carryToHem)
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static SleeveWidth from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        return new SleeveWidth(
                s.text("level"), s.number("amount"), s.texts("piece"), s.flag("carry-to-hem"), s.flag(Way.ACCEPT));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Level at = Known.level(pattern, level);
        List<Sleeve> sleeves = new ArrayList<>();
        for (Piece piece : chosen(pattern)) {
            sleeves.add(Sleeve.of(piece, carryToHem, acceptProtected));
        }
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        try {
            return with(pattern, at, sleeves, amount);
        } catch (Refusal why) {
            if (DEPENDS_ON_AMOUNT.contains(why.code())) {
                throw Bisect.largest(why, amount, some -> with(pattern, at, sleeves, some));
            }
            throw why;
        }
    }

    private List<Piece> chosen(Pattern pattern) throws Refusal {
        List<Piece> chosen = new ArrayList<>();
        for (String name : pieces) {
            Piece piece = Known.piece(pattern, name);
            Known.requireCounted(piece, level);
            chosen.add(piece);
        }
        if (pieces.isEmpty()) {
            pattern.pieces().stream()
                    .filter(p -> p.countsAt(level) && p.edges().stream().anyMatch(e -> e.role() == EdgeRole.CAP))
                    .forEach(chosen::add);
        }
        if (chosen.isEmpty()) {
            throw Refusal.of("no-sleeve-at-level").with("level", level);
        }
        return chosen;
    }

    private Altered with(Pattern pattern, Level at, List<Sleeve> sleeves, double some) throws Refusal {
        double whole = 0;
        for (Sleeve sleeve : sleeves) {
            whole += sleeve.piece().count(at);
        }
        Pattern changed = pattern;
        List<Finding> findings = new ArrayList<>();
        for (Sleeve sleeve : sleeves) {
            double own = some / whole;
            double base = Exact.net(sleeve.piece(), at);
            double wider = Root.of(
                    w -> Exact.net(sleeve.wider(w), at) - base - own,
                    -own,
                    own,
                    1e-9,
                    1e-6,
                    Refusal.of("girth-not-met")
                            .with("piece", sleeve.piece().name())
                            .with("level", level));
            Piece done = sleeve.wider(wider);
            Simple.require(sleeve.piece().outline(), done);
            changed = changed.withPiece(done);
            findings.addAll(sleeve.findings(wider));
        }
        return new Altered(changed.withChange(note()), findings);
    }
}
