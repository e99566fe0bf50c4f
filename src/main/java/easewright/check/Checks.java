package easewright.check;

import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The one door to checking. */
public final class Checks {
    private static final List<Rule> RULES = List.of(
            new ScaleProved(),
            new LevelsMarked(),
            new LevelsMeet(),
            new MeasuredThroughout(),
            new OutlineBoundsCloth(),
            new AllowanceStated(),
            new MatesFit(),
            new DartsFold(),
            new FoldStraight(),
            new PlacesTrue(),
            new EaseEnough(),
            new BodyGoneRound(),
            new PiecesOnEachOther(),
            new LeftAndRightCut(),
            new FullerSide());

    private static final List<Rule> RULES_TRIED =
            RULES.stream().filter(rule -> !(rule instanceof PlacesTrue)).toList();

    /** What concerns how pieces were drawn and counted: no change of their shape brings it about, and it takes long. */
    private static final List<Rule> RULES_OF_DRAWING = List.of(
            new HalvesCountedOnce(), new LinesSaid(), new LevelGoesRound(), new OverlapSaid(), new LayersCountedOnce());

    private static final List<ChangeRule> CHANGE_RULES = List.of(
            new ProtectedUnmoved(),
            new MatesKeptLength(),
            new DartPointKept(),
            new CentreNotCrossed(),
            new PiecesApart(),
            new Proportion());

    private Checks() {}

    /** Everything there is to say about a pattern. */
    public static List<Finding> of(Pattern p, GarmentMeasures m, EaseTables t) {
        return of(p, m, EaseSheet.of(p, m, t));
    }

    /** The same where the ease sheet is at hand. */
    public static List<Finding> of(Pattern p, GarmentMeasures m, EaseSheet sheet) {
        Sight sight = new Sight(p, m, sheet);
        Set<Finding> findings = new LinkedHashSet<>(look(RULES, sight));
        findings.addAll(look(RULES_OF_DRAWING, sight));
        return List.copyOf(findings);
    }

    private static Set<Finding> look(List<Rule> rules, Sight sight) {
        Set<Finding> findings = new LinkedHashSet<>();
        for (Rule rule : rules) {
            findings.addAll(rule.look(sight));
        }
        return findings;
    }

    /**
     * What a change of shape brought about: its own effects first, then whatever {@link #of} says of the changed
     * pattern that it did not say before.
     */
    public static List<Finding> compare(
            Pattern before, GarmentMeasures mBefore, Pattern after, GarmentMeasures mAfter, EaseTables t) {
        return compare(
                before, mBefore, EaseSheet.of(before, mBefore, t), after, mAfter, EaseSheet.of(after, mAfter, t));
    }

    /** The same where the ease sheets are at hand. */
    public static List<Finding> compare(
            Pattern before,
            GarmentMeasures mBefore,
            EaseSheet sheetBefore,
            Pattern after,
            GarmentMeasures mAfter,
            EaseSheet sheetAfter) {
        Sight was = new Sight(before, mBefore, sheetBefore);
        return compare(RULES, was, look(RULES, was), new Sight(after, mAfter, sheetAfter));
    }

    /**
     * What a change that is only tried would bring about, where it is known what {@link #of} says of the pattern before:
     * only pieces that the change made anew are looked at. A hand waits for it in every picture, so that places which can
     * be made true are not looked for: they are told, and offered to be trued, of what is kept.
     */
    public static List<Finding> tried(
            Pattern before,
            GarmentMeasures mBefore,
            EaseSheet sheetBefore,
            Collection<Finding> said,
            Pattern after,
            GarmentMeasures mAfter,
            EaseSheet sheetAfter) {
        return compare(
                RULES_TRIED, new Sight(before, mBefore, sheetBefore), said, new Sight(after, mAfter, sheetAfter));
    }

    /**
     * Protected edges that changes which are kept have made others, and that are sewn to no edge of the pattern: what is
     * sewn there, a facing or a sleeve drawn elsewhere, has to be changed likewise. Of a seam in the pattern it is told
     * whether it fits. Of the ease nothing is said, so that no table is asked for.
     */
    public static List<Finding> protectedSince(
            Pattern drawn, GarmentMeasures mDrawn, Pattern now, GarmentMeasures mNow) {
        EaseTables none = EaseTables.none();
        Sight was = new Sight(drawn, mDrawn, EaseSheet.of(drawn, mDrawn, none));
        return new ProtectedUnmoved().since(was, new Sight(now, mNow, EaseSheet.of(now, mNow, none)));
    }

    private static List<Finding> compare(List<Rule> rules, Sight was, Collection<Finding> said, Sight all) {
        Sight is = all.unlike(was);
        List<Finding> findings = new ArrayList<>();
        for (ChangeRule rule : CHANGE_RULES) {
            findings.addAll(rule.look(was, is));
        }
        Set<Finding> known = new HashSet<>(said);
        for (Finding finding : look(rules, is)) {
            if (!known.contains(finding)) {
                findings.add(finding);
            }
        }
        return Once.of(findings);
    }
}
