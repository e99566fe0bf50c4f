package easewright.editor.model;

import easewright.alter.Ways;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where to put a change, for one sign on this pattern. The user decides: taking it only chooses level and way.
 *
 * @param level  of this pattern
 * @param sign   what is seen, in words
 * @param words  where and how, in words
 * @param source of that, in words
 */
public record Advice(FitSign about, String level, String sign, String words, String source) {
    /** The advice for every sign of a kind whose level this pattern has. */
    public static List<Advice> of(Desk desk, FitSign.Feels feels) {
        Words words = desk.words();
        List<Advice> all = new ArrayList<>();
        for (FitSign sign : FitSign.all()) {
            Optional<Level> level = level(desk.pattern(), sign);
            if (sign.feels() == feels && level.isPresent()) {
                String key = "editor.sign." + sign.id();
                Map<String, Object> values = Map.of(
                        "level", level.get().name(),
                        "way", words.of("way." + sign.way() + ".name"));
                String source =
                        words.of("editor.where.source", Map.of("source", sign.source(), "standing", sign.standing()));
                all.add(new Advice(
                        sign, level.get().name(), words.of(key, values), words.of(key + ".advice", values), source));
            }
        }
        return List.copyOf(all);
    }

    private static Optional<Level> level(Pattern pattern, FitSign sign) {
        return sign.levels().stream()
                .flatMap(kind -> pattern.levels().stream().filter(l -> l.kind() == kind))
                .findFirst();
    }

    /** The wish with this level and way, and no amount yet. */
    public Wanted taken(Pattern pattern) {
        Level at = pattern.level(level).orElseThrow();
        Wanted wanted = Wanted.at(at, pattern);
        boolean seams = about.way().equals(Ways.all().get(0).method());
        if (seams) {
            return wanted;
        }
        OtherWay way = OtherWay.of(Ways.of(about.way()).orElseThrow());
        Optional<String> centre = about.centre().flatMap(side -> centreLine(pattern, side));
        return wanted.withOther(
                Optional.of(centre.map(c -> way.with("edge", List.of(c))).orElse(way)));
    }

    /** The centre line of the piece of that side which counts at the level, if there is just one. */
    private Optional<String> centreLine(Pattern pattern, String side) {
        List<String> found = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            boolean counts = piece.level(level).filter(m -> m.counts()).isPresent();
            if (counts && piece.name().toLowerCase(Locale.ROOT).contains(side)) {
                for (Edge edge : piece.edges()) {
                    if (edge.role() == EdgeRole.CENTRE || edge.role() == EdgeRole.FOLD) {
                        found.add(piece.id() + "/" + edge.name());
                    }
                }
            }
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }
}
