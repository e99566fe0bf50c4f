package easewright.check;

import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The one door to checking. */
public final class Checks {
    private static final List<Rule> RULES = List.of(
            new ScaleProved(),
            new MeasuredThroughout(),
            new OutlineBoundsCloth(),
            new MatesFit(),
            new DartsFold(),
            new FoldStraight(),
            new EaseEnough());

    private static final List<ChangeRule> CHANGE_RULES =
            List.of(new ProtectedUnmoved(), new MatesKeptLength(), new DartPointKept(), new CentreNotCrossed());

    private Checks() {}

    /** Everything there is to say about a pattern. */
    public static List<Finding> of(Pattern p, GarmentMeasures m, EaseTables t) {
        Sight sight = new Sight(p, m, t);
        Set<Finding> findings = new LinkedHashSet<>();
        for (Rule rule : RULES) {
            findings.addAll(rule.look(sight));
        }
        return List.copyOf(findings);
    }

    /**
     * What a change brought about: its own effects first, then whatever {@link #of} says of the changed pattern that
     * it did not say before.
     */
    public static List<Finding> compare(
            Pattern before, GarmentMeasures mBefore, Pattern after, GarmentMeasures mAfter, EaseTables t) {
        Sight was = new Sight(before, mBefore, t);
        Sight is = new Sight(after, mAfter, t);
        List<Finding> findings = new ArrayList<>();
        for (ChangeRule rule : CHANGE_RULES) {
            findings.addAll(rule.look(was, is));
        }
        Set<Finding> known = new LinkedHashSet<>(of(before, mBefore, t));
        for (Finding finding : of(after, mAfter, t)) {
            if (!known.contains(finding)) {
                findings.add(finding);
            }
        }
        return List.copyOf(findings);
    }
}
