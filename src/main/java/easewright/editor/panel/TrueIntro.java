package easewright.editor.panel;

import easewright.editor.model.TrueWork;
import easewright.text.Words;
import java.util.List;
import java.util.Map;

/** What the page True says at its top. */
final class TrueIntro {
    private TrueIntro() {}

    /**
     * What stands in the list, and how it is done.
     *
     * @param trying whether a change is being tried, while the list is about what was before it
     */
    static String of(TrueWork work, boolean trying, Words words) {
        if (work.offers().isEmpty() && work.places().isEmpty()) {
            String none = work.others().isEmpty() ? "none" : "none-here";
            return words.of("editor.true." + (trying ? "trying-none" : none));
        }
        if (trying) {
            return words.of("editor.true.trying");
        }
        if (work.offers().isEmpty()) {
            return words.of("editor.true.intro");
        }
        if (!work.places().isEmpty()) {
            return words.of("editor.true.intro-both");
        }
        List<String> presses = work.offers().stream()
                .flatMap(o -> o.presses().stream())
                .map(p -> p.label().in(words))
                .distinct()
                .toList();
        if (presses.isEmpty()) {
            return words.of("editor.true.intro-none");
        }
        return presses.size() == 1
                ? words.of("editor.true.intro-press", Map.of("press", presses.get(0)))
                : words.of("editor.true.intro-fit");
    }
}
