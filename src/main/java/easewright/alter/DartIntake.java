package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import java.util.List;

/**
 * Takes darts in or lets them out until the finished girth at a level has changed by exactly the amount. Their points
 * and the seams beside them stay; the ease appears between seam and point (docs/sources.md 4.1).
 *
 * @param level           name of the level whose finished girth changes
 * @param amount          change of the finished girth, mm; above 0 makes the darts narrower
 * @param darts           which, each with its share; empty: every dart that takes cloth in at the level, all alike
 * @param acceptProtected darts on protected edges may change
 */
public record DartIntake(String level, double amount, List<DartShare> darts, boolean acceptProtected)
        implements ByAmount {
    static final String METHOD = "dart";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.DARTS,
            Way.Aim.GIRTH,
            "amount",
            List.of(
                    Setting.needed("level", Setting.Kind.LEVEL),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.free("dart", Setting.Kind.DARTS),
                    Setting.flag(Way.ACCEPT)),
            DartIntake::from);

    /**
     * @throws IllegalArgumentException if the amount is no number
     */
    public DartIntake {
        Amounts.require(amount);
        darts = List.copyOf(darts);
    }

    public static DartIntake at(String level, double amount, DartShare... darts) {
        return new DartIntake(level, amount, List.of(darts), false);
    }

    @Override
    public DartIntake withAmount(double mm) {
        return new DartIntake(level, mm, darts, acceptProtected);
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("level", level)
                .number("amount", amount)
                .darts("dart", darts)
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static DartIntake from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        return new DartIntake(s.text("level"), s.number("amount"), s.darts("dart"), s.flag(Way.ACCEPT));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Level at = Known.level(pattern, level);
        DartWork work = new DartWork(pattern, at, darts, acceptProtected);
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        Altered altered = work.done(amount);
        return new Altered(altered.pattern().withChange(note()), altered.findings());
    }

    /** The darts that take part where none are named: every dart at the level, alike; none where there is no dart. */
    public static List<DartShare> at(Pattern pattern, Level level) {
        try {
            return new DartWork(pattern, level, List.of(), true)
                    .parts().stream()
                            .map(p -> new DartShare(p.piece().id(), p.dart().name(), p.weight()))
                            .toList();
        } catch (Refusal noneThere) {
            return List.of();
        }
    }
}
