package easewright.editor.model;

import easewright.alter.Alteration;
import easewright.alter.Coupled;
import easewright.pattern.Pattern;
import easewright.print.ChangeWords;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the last change asks of the pieces sewn to those it changed: offered, and done only if the user takes it.
 *
 * @param words  what no longer fits, what would make it fit, and what that brings
 * @param result the pattern with it
 */
public record FollowUp(String words, Pattern result) {
    /** Whether the last step made a change, so that there may be something to offer. */
    public static boolean isAsked(Desk desk) {
        return desk.history().canUndo()
                && desk.trial().isEmpty()
                && desk.pattern().changes().size() > before(desk).changes().size();
    }

    private static Pattern before(Desk desk) {
        return desk.history().states().get(desk.history().index() - 1);
    }

    /** All offers after the last step. Takes a moment: for a thread of its own. */
    public static List<FollowUp> of(Desk desk) {
        Words words = desk.words();
        List<FollowUp> all = new ArrayList<>();
        for (Coupled.Offer offer : Coupled.offers(before(desk), desk.pattern())) {
            List<String> changes = offer.alterations().stream()
                    .map(Alteration::note)
                    .map(note -> new ChangeWords(words).brief(note, desk.pattern()))
                    .toList();
            String text = words.of(
                    "editor.follow.text",
                    Map.of(
                            "mate", offer.mate().name(),
                            "drift.signed", offer.drift(),
                            "changes", String.join(" ", changes)));
            all.add(new FollowUp(text + girths(offer, words), offer.result()));
        }
        return List.copyOf(all);
    }

    private static String girths(Coupled.Offer offer, Words words) {
        List<String> changed = new ArrayList<>();
        new TreeMap<>(offer.girths())
                .forEach((level, by) ->
                        changed.add(words.of("editor.here.girth-by", Map.of("level", level, "by.signed", by))));
        return changed.isEmpty()
                ? ""
                : " " + words.of("editor.here.girths", Map.of("girths", String.join(", ", changed)));
    }
}
