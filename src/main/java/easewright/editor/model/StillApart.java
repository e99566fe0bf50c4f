package easewright.editor.model;

import easewright.measure.Cutting;
import easewright.measure.MateWalk;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Seams that do not fit in what was just saved: who saves may take the work for done. */
public final class StillApart {
    private StillApart() {}

    /** In a sentence; empty where nothing has to be done about any. */
    public static Optional<String> of(List<MateWalk> walks, Words words) {
        List<MateWalk> apart =
                walks.stream().filter(w -> Math.abs(w.drift()) > Cutting.WORKS).toList();
        long seams = apart.stream().map(w -> w.mate().name()).distinct().count();
        if (seams == 0) {
            return Optional.empty();
        }
        if (seams > 1 || apart.size() > 1) {
            return Optional.of(words.of("editor.saving.apart.some", Map.of("count", seams)));
        }
        MateWalk walk = apart.get(0);
        return Optional.of(words.of(
                "editor.saving.apart.one",
                Map.of(
                        "mate", walk.mate().name(),
                        "first", walk.first(),
                        "second", walk.second(),
                        "ease.signed", walk.mate().declaredEase(),
                        "apart", Math.abs(walk.drift()))));
    }
}
