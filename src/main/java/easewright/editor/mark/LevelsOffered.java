package easewright.editor.mark;

import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelWords;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Which kinds of levels may be added, and which of them the pieces reach, as far as their edges tell. */
final class LevelsOffered {
    private static final Set<EdgeRole> ABOVE_WAIST =
            EnumSet.of(EdgeRole.NECK, EdgeRole.SHOULDER, EdgeRole.ARMHOLE, EdgeRole.CAP);
    private static final Set<LevelKind> OF_LEGS =
            EnumSet.of(LevelKind.THIGH, LevelKind.KNEE, LevelKind.CALF, LevelKind.ANKLE);
    private static final Set<LevelKind> ABOVE =
            EnumSet.of(LevelKind.NECK, LevelKind.BUST, LevelKind.UNDERBUST, LevelKind.UPPER_ARM, LevelKind.WRIST);

    private LevelsOffered() {}

    static List<LevelsView.Kind> of(Pattern pattern, List<Level> levels, Words words) {
        Set<EdgeRole> there = EnumSet.noneOf(EdgeRole.class);
        pattern.pieces().forEach(p -> p.edges().forEach(e -> there.add(e.role())));
        boolean legs = there.contains(EdgeRole.CROTCH);
        boolean above = there.stream().anyMatch(ABOVE_WAIST::contains);
        // Where nothing tells what it is, all may be meant.
        boolean known = legs || above || there.contains(EdgeRole.WAIST);
        List<LevelsView.Kind> kinds = new ArrayList<>();
        for (LevelKind kind : LevelKind.values()) {
            boolean taken = levels.stream().anyMatch(l -> l.kind() == kind);
            boolean reached = !known || (ABOVE.contains(kind) ? above : !OF_LEGS.contains(kind) || legs);
            if (kind != LevelKind.OTHER && !taken) {
                kinds.add(new LevelsView.Kind(kind, words.name("level", kind), reached));
            }
        }
        if (levels.stream().noneMatch(l -> LevelWords.isHem(l.name()))) {
            kinds.add(new LevelsView.Kind(LevelKind.OTHER, words.of("level.hem"), true));
        }
        return kinds;
    }
}
