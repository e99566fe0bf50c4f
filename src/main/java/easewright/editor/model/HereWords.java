package easewright.editor.model;

import easewright.ease.EaseLine;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What "this much, here" says about a change that is being tried. */
public final class HereWords {
    private HereWords() {}

    /** What the girth and ease become and how far each seam moves; an invitation while nothing is tried. */
    public static String outcome(Desk desk) {
        Words words = desk.words();
        Optional<Wanted> wanted = desk.wanted();
        if (wanted.isEmpty() || wanted.get().amount() == 0) {
            return words.of("editor.here.invite");
        }
        Optional<EaseLine> before = line(desk.reading(), wanted.get().level());
        Optional<EaseLine> after =
                desk.shownTrial().flatMap(t -> line(t.reading(), wanted.get().level()));
        if (before.isEmpty() || after.isEmpty()) {
            return "";
        }
        List<Hold> taking = desk.holds().stream()
                .filter(h -> !wanted.get().leftOut().contains(h.edge()))
                .toList();
        int sewn = Math.max(1, Hold.sewn(taking));
        String each = words.of(
                sewn == 1 ? "editor.here.each.one" : "editor.here.each",
                Map.of("seams", sewn, "amount.signed", wanted.get().amount() / sewn));
        OptionalDouble from = before.get().ease();
        OptionalDouble to = after.get().ease();
        String what = from.isPresent() && to.isPresent()
                ? words.of(
                        "editor.here.ease",
                        Map.of("level", wanted.get().level(), "from", from.getAsDouble(), "to", to.getAsDouble()))
                : words.of(
                        "editor.here.girth",
                        Map.of(
                                "level", wanted.get().level(),
                                "from", before.get().finished(),
                                "to", after.get().finished()));
        return what + " " + each;
    }

    /** A seam as a chip names it. */
    public static String seam(Desk desk, EdgeRef edge) {
        String piece = desk.pattern().piece(edge.piece()).map(Piece::name).orElse(edge.piece());
        return desk.words().of("editor.here.seam", Map.of("piece", piece, "edge", edge.edge()));
    }

    static Optional<EaseLine> line(Reading reading, String level) {
        return reading.sheet().lines().stream()
                .filter(l -> l.level().name().equals(level))
                .findFirst();
    }
}
