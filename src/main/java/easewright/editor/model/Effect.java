package easewright.editor.model;

import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.Grain;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What a change that is being tried is warned of, what it moves, what it leaves, and what no longer fits together: one line each, in words.
 *
 * @param lines empty while nothing is tried
 */
public record Effect(List<Line> lines) {
    /** A dart whose mouth is as wide as this to before has not been changed but redrawn, mm. */
    private static final double DART_CHANGED = 0.05;

    /** More names than these are not read. */
    private static final int MOST_NAMES = 6;

    /** So many cautions are read beside the amount; the page Notes has them all. */
    private static final int MOST_CAUTIONS = 2;

    /** What a line is about. */
    public enum Kind {
        CAUTION,
        MOVED,
        STAYED,
        FITS,
        DRIFTED
    }

    /**
     * One line.
     *
     * @param evens   whether the change can be made so that this seam's two sides change alike
     * @param partners edges that are left out, although they are sewn to one that takes part
     */
    public record Line(Kind kind, String words, boolean evens, List<EdgeRef> partners) {
        public Line {
            partners = List.copyOf(partners);
        }

        Line(Kind kind, String words) {
            this(kind, words, false, List.of());
        }
    }

    public Effect {
        lines = List.copyOf(lines);
    }

    public static Effect of(Desk desk) {
        Optional<Trial.Shown> trial = desk.shownTrial();
        if (trial.isEmpty()) {
            return new Effect(List.of());
        }
        Words words = desk.words();
        Pattern before = desk.pattern();
        Pattern after = trial.get().altered().pattern();
        List<EdgeFate> fates = trial.get().fates();
        List<String> sizes = trial.get().sizes();
        List<Line> lines = new ArrayList<>(cautions(trial.get(), words));
        String moved = named(fates, EdgeFate.Fate.RESHAPED, sizes, words);
        if (!moved.isEmpty()) {
            lines.add(new Line(Kind.MOVED, words.of("editor.effect.moved", Map.of("edges", moved))));
        }
        String darts = darts(before, fates, words);
        if (!darts.isEmpty()) {
            lines.add(new Line(Kind.MOVED, words.of("editor.effect.moved-darts", Map.of("darts", darts))));
        }
        String carried = named(fates, EdgeFate.Fate.CARRIED, sizes, words);
        if (!carried.isEmpty()) {
            lines.add(new Line(Kind.MOVED, words.of("editor.effect.carried", Map.of("edges", carried))));
        }
        String stayed = stayed(before, after, sizes, fates, words);
        if (!stayed.isEmpty()) {
            lines.add(new Line(Kind.STAYED, words.of("editor.effect.stayed", Map.of("edges", stayed))));
        }
        boolean mayEven = trial.get().offer().isEmpty()
                && trial.get().wanted().atSeams()
                && !trial.get().wanted().even();
        lines.addAll(SeamsTried.lines(desk, fates, mayEven));
        return new Effect(lines);
    }

    /**
     * What the change itself is warned of, such as a taper that is too steep; of seams that drift the lines below tell.
     * It is told here, where the amount is still in the hand.
     */
    private static List<Line> cautions(Trial.Shown trial, Words words) {
        List<String> told = trial.altered().findings().stream()
                .filter(f -> f.severity() != Severity.NOTE && !f.values().containsKey("mate"))
                .map(words::of)
                .distinct()
                .toList();
        List<Line> lines = new ArrayList<>();
        told.stream().limit(MOST_CAUTIONS).forEach(said -> lines.add(new Line(Kind.CAUTION, said)));
        if (told.size() > MOST_CAUTIONS) {
            lines.add(new Line(
                    Kind.CAUTION,
                    words.of("editor.effect.more-cautions", Map.of("count", told.size() - MOST_CAUTIONS))));
        }
        return lines;
    }

    /** Edges of one fate, gathered by piece; where several sizes change, those together in which they are the same. */
    private static String named(List<EdgeFate> fates, EdgeFate.Fate fate, List<String> sizes, Words words) {
        if (sizes.size() < 2) {
            return named(fates, fate, Piece::name, words);
        }
        BySize each = new BySize();
        for (String size : sizes) {
            List<EdgeFate> own = fates.stream()
                    .filter(f -> f.piece().size().equals(Optional.of(size)))
                    .toList();
            each.add(size, named(own, fate, Piece::plainName, words));
        }
        boolean inAll = each.isAlike()
                && fates.stream()
                                .filter(f -> f.fate() == fate)
                                .map(f -> f.piece().size())
                                .distinct()
                                .count()
                        == sizes.size();
        return inAll ? each.said().get(0) : String.join("; ", each.lines(words, "editor.effect.in-size", ""));
    }

    private static String named(List<EdgeFate> fates, EdgeFate.Fate fate, Function<Piece, String> called, Words words) {
        return gathered(
                fates.stream().filter(f -> f.fate() == fate).toList(), called, each -> name(each, words), words);
    }

    /** Edges by name, gathered by piece. */
    static String gathered(
            List<EdgeFate> fates, Function<Piece, String> called, Function<EdgeFate, String> edge, Words words) {
        Map<String, List<String>> byPiece = new LinkedHashMap<>();
        for (EdgeFate each : fates) {
            byPiece.computeIfAbsent(called.apply(each.piece()), k -> new ArrayList<>())
                    .add(edge.apply(each));
        }
        List<String> parts = new ArrayList<>();
        byPiece.forEach(
                (piece, edges) -> parts.add(words.of("editor.effect.piece", Map.of("piece", piece, "edges", edges))));
        return String.join("; ", parts);
    }

    /** An edge whose line stays and only runs on further or ends sooner is not called moved. */
    private static String name(EdgeFate each, Words words) {
        String edge = each.edge().name();
        return each.grew() == 0
                ? edge
                : words.of(
                        each.grew() > 0 ? "editor.effect.edge-longer" : "editor.effect.edge-shorter",
                        Map.of("edge", edge));
    }

    private static String stayed(Pattern before, Pattern after, List<String> sizes, List<EdgeFate> fates, Words words) {
        List<String> parts = new ArrayList<>();
        String edges = named(fates, EdgeFate.Fate.STAYED, sizes, words);
        if (!edges.isEmpty()) {
            parts.add(edges);
        }
        List<Piece> touched = touched(fates);
        if (touched.stream().anyMatch(p -> !p.darts().isEmpty())
                && touched.stream().allMatch(p -> sameDarts(before, after, p))) {
            parts.add(words.of("editor.effect.darts"));
        }
        if (touched.stream().anyMatch(p -> p.grain().isPresent())
                && touched.stream().allMatch(p -> sameGrain(before, after, p))) {
            parts.add(words.of("editor.effect.grain"));
        }
        addWhole(before, after, sizes, words, parts);
        return String.join("; ", parts);
    }

    /** Pieces that stayed as they were: a few by their names, many by their number, those of other sizes together. */
    private static void addWhole(Pattern before, Pattern after, List<String> sizes, Words words, List<String> parts) {
        Map<String, Piece> old = new HashMap<>();
        before.pieces().forEach(p -> old.put(p.id(), p));
        List<String> whole = new ArrayList<>();
        List<String> elsewhere = new ArrayList<>();
        boolean allElsewhere = true;
        for (Piece piece : after.pieces()) {
            boolean other = !sizes.isEmpty()
                    && piece.size().filter(s -> !sizes.contains(s)).isPresent();
            boolean same = piece == old.get(piece.id()) || piece.equals(old.get(piece.id()));
            if (same) {
                (other ? elsewhere : whole).add(piece.name());
            }
            allElsewhere &= same || !other;
        }
        if (!allElsewhere) {
            whole.addAll(elsewhere);
        }
        if (whole.size() > MOST_NAMES) {
            parts.add(words.of("editor.effect.whole-many", Map.of("count", whole.size())));
        } else if (!whole.isEmpty()) {
            parts.add(words.of("editor.effect.whole", Map.of("pieces", whole)));
        }
        if (allElsewhere && !elsewhere.isEmpty()) {
            parts.add(words.of("editor.effect.sizes"));
        }
    }

    private static List<Piece> touched(List<EdgeFate> fates) {
        Map<String, Piece> byId = new LinkedHashMap<>();
        fates.forEach(f -> byId.putIfAbsent(f.piece().id(), f.piece()));
        return List.copyOf(byId.values());
    }

    /** Darts that take in another width than before. */
    private static String darts(Pattern before, List<EdgeFate> fates, Words words) {
        List<String> parts = new ArrayList<>();
        for (Piece now : touched(fates)) {
            List<Dart> then = before.piece(now.id()).map(Piece::darts).orElse(List.of());
            for (Dart dart : now.darts()) {
                then.stream()
                        .filter(d ->
                                d.name().equals(dart.name()) && Math.abs(d.intake() - dart.intake()) > DART_CHANGED)
                        .findFirst()
                        .ifPresent(d -> parts.add(words.of(
                                "editor.effect.dart",
                                Map.of("piece", now.name(), "dart", dart.name(), "to", dart.intake()))));
            }
        }
        return String.join("; ", parts);
    }

    private static boolean sameDarts(Pattern before, Pattern after, Piece now) {
        Optional<Piece> then = before.piece(now.id());
        if (then.isPresent()) {
            return then.get().darts().equals(now.darts());
        }
        // A mirrored piece is compared by what its darts take in.
        List<Double> was = intakes(EdgeFate.asItWas(now, before, after));
        List<Double> is = intakes(Optional.of(now));
        return was.size() == is.size()
                && IntStream.range(0, is.size()).allMatch(i -> Math.abs(was.get(i) - is.get(i)) <= DART_CHANGED);
    }

    private static List<Double> intakes(Optional<Piece> piece) {
        return piece.stream()
                .flatMap(p -> p.darts().stream())
                .sorted(Comparator.comparing(Dart::name))
                .map(Dart::intake)
                .toList();
    }

    private static boolean sameGrain(Pattern before, Pattern after, Piece now) {
        Optional<Grain> is = now.grain();
        Optional<Piece> then = before.piece(now.id());
        if (then.isPresent()) {
            return then.get().grain().map(Grain::direction).equals(is.map(Grain::direction));
        }
        // In a mirrored piece the grain runs mirrored.
        return EdgeFate.asItWas(now, before, after).isPresent();
    }
}
