package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.PlaceWords;
import easewright.editor.mark.Tape;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.HereWords;
import easewright.editor.model.Hold;
import easewright.editor.model.Picking;
import easewright.editor.model.Trial;
import easewright.editor.model.Wanted;
import easewright.text.Words;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the table says: of the tool in hand, of the seam that the keys hold, or of itself. */
final class CuttingTableWords {
    private CuttingTableWords() {}

    /** What the next click does, or what was measured. */
    static String tool(Desk desk, MarkState state) {
        if (state.tool() == Tool.TAPE && state.line().isPresent()) {
            String length = Tape.words(desk, state.line().get());
            return desk.words().of("editor.tool.tape.measured", Map.of("measured", length));
        }
        return desk.words()
                .of("editor.tool." + state.tool().key() + "." + (state.picks().size() + 1));
    }

    /** Where the keys point, and which there are. */
    static String keys(Desk desk, MarkState state) {
        String keys = desk.words().of("editor.tool.keys");
        return place(desk, state).map(p -> p + " \u00b7 " + keys).orElse(keys);
    }

    private static Optional<String> place(Desk desk, MarkState state) {
        return state.over().map(s -> PlaceWords.of(desk, s));
    }

    static String amount(Desk desk) {
        return desk.wanted()
                .filter(w -> w.amount() != 0)
                .map(w ->
                        desk.words().of("editor.table.amount", Map.of("level", w.level(), "amount.signed", w.amount())))
                .orElse("");
    }

    /** For what a form wants a place. */
    static String asked(Desk desk, Picking.Ask ask) {
        return switch (ask.of()) {
            case ITSELF -> desk.words().of("editor.table.asks", Map.of("what", ask.what()));
            case BEGINNING -> desk.words().of("editor.table.asks.beginning");
            case END -> desk.words().of("editor.table.asks.end");
        };
    }

    /** The same in a word, to stand beside the pointer. */
    static String askedHere(Desk desk, Picking.Ask ask) {
        return switch (ask.of()) {
            case ITSELF -> ask.what();
            case BEGINNING -> desk.words().of("editor.table.asks.begins");
            case END -> desk.words().of("editor.table.asks.ends");
        };
    }

    /**
     * What is to be heard by whoever does not see the table, first what is new on every key.
     *
     * @param news  what was told last
     * @param asked what place is asked for
     * @param place where the hand is that shows it
     */
    static String spoken(
            Desk desk,
            String news,
            Optional<String> asked,
            Optional<String> place,
            Optional<MarkState> tool,
            Optional<Hold> held) {
        Words words = desk.words();
        String keys = words.of("editor.tool.keys");
        String here = asked.map(a -> sentences(place.orElse(""), a, keys))
                .or(() -> tool.map(t -> sentences(place(desk, t).orElse(""), tool(desk, t), keys)))
                .or(() -> held.map(h -> sentences(tried(desk), HereWords.seam(desk, h.edge()), level(desk))))
                .orElseGet(() -> words.of(
                        "editor.table.accessible",
                        Map.of("pieces", desk.pattern().pieces().size())));
        return sentences(news, here);
    }

    /** The level at work, which what is tried names as well. */
    private static String level(Desk desk) {
        return amount(desk).isEmpty() ? desk.wanted().map(Wanted::level).orElse("") : "";
    }

    /** What is tried, and what comes of it or why it cannot be. */
    private static String tried(Desk desk) {
        String refused = desk.refusedTrial()
                .map(Trial.Refused::refusal)
                .map(r -> desk.words().problem(r.code(), r.values()))
                .orElse("");
        String amount = amount(desk);
        return amount.isEmpty() ? "" : sentences(amount, refused.isEmpty() ? HereWords.outcome(desk) : refused);
    }

    private static String sentences(String... said) {
        return Arrays.stream(said)
                .filter(s -> !s.isEmpty())
                .map(s -> s.endsWith(".") ? s : s + ".")
                .collect(Collectors.joining(" "));
    }
}
