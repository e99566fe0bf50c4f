package easewright.editor.panel;

import easewright.editor.mark.MarkState;
import easewright.editor.mark.PlaceWords;
import easewright.editor.mark.Tape;
import easewright.editor.mark.Tool;
import easewright.editor.model.Desk;
import easewright.editor.model.HereWords;
import easewright.editor.model.Hold;
import easewright.editor.model.Picking;
import java.util.Map;
import java.util.Optional;

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
        return state.over().map(s -> PlaceWords.of(desk, s) + " \u00b7 " + keys).orElse(keys);
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
        String next = ask.from().isPresent() ? "editor.way.picking.to" : "editor.way.picking";
        return ask.what() + ": " + desk.words().of(next);
    }

    /**
     * All of it for whoever does not see the table.
     *
     * @param asked what place is asked for, and where the hand is
     */
    static String spoken(Desk desk, Optional<String> asked, Optional<MarkState> tool, Optional<Hold> held) {
        return asked.map(a -> a + ". " + desk.words().of("editor.tool.keys"))
                .or(() -> tool.map(t -> tool(desk, t) + " " + keys(desk, t)))
                .or(() -> held.map(h -> HereWords.seam(desk, h.edge()) + ". " + amount(desk)))
                .orElseGet(() -> desk.words()
                        .of(
                                "editor.table.accessible",
                                Map.of("pieces", desk.pattern().pieces().size())));
    }
}
