package easewright.print;

import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.text.Words;

/** What the girth at a level goes round, as it is said of an amount there: "+2 cm all round", "round one leg". */
public final class AllRound {
    private AllRound() {}

    public static String of(Pattern pattern, String level, Words words) {
        return words.of("change."
                + pattern.level(level)
                        .filter(Level::limb)
                        .map(l -> limb(l, pattern))
                        .orElse("all-round"));
    }

    private static String limb(Level level, Pattern pattern) {
        boolean ofArms = level.kind() == LevelKind.UPPER_ARM || level.kind() == LevelKind.WRIST;
        boolean arms = ofArms || level.kind() == LevelKind.OTHER && has(pattern, EdgeRole.CAP);
        boolean legs = !ofArms && (level.kind() != LevelKind.OTHER || has(pattern, EdgeRole.CROTCH));
        return arms == legs ? "round-limb" : arms ? "round-arm" : "round-leg";
    }

    private static boolean has(Pattern pattern, EdgeRole role) {
        return pattern.pieces().stream().flatMap(p -> p.edges().stream()).anyMatch(e -> e.role() == role);
    }
}
