package easewright.check;

import easewright.measure.Girth;
import easewright.measure.LevelGap;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/** A girth that leaves out a piece over which its level should go on. */
final class LevelGoesRound implements Rule {
    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        for (LevelGap gap : LevelGap.of(sight.pattern(), sight.measures())) {
            String code = gap.at().isPresent() ? "level-left-out" : "level-left-out-in-size";
            sight.measures().inEverySize().girths().stream()
                    .filter(g ->
                            g.level().name().equals(gap.level()) && g.size().equals(gap.size()))
                    .findFirst()
                    .map(girth ->
                            girth.named(Finding.of(code, severity(girth, sight), name(sight.pattern(), gap.lacks()))
                                    .with("other", name(sight.pattern(), gap.has()))))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    /** Where the body would not go in, there is no doubt that something is missing. */
    private static Severity severity(Girth girth, Sight sight) {
        return sight.sheet().lines().stream()
                        .anyMatch(line -> line.girth().sameAs(girth)
                                && line.ease().isPresent()
                                && BodyGoneRound.tooLittle(line, sight.pattern().cloth()))
                ? Severity.FAULT
                : Severity.CAUTION;
    }

    private static String name(Pattern pattern, String id) {
        return pattern.piece(id).map(Piece::name).orElse(id);
    }
}
