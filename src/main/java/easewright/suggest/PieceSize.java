package easewright.suggest;

import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.Piece;
import easewright.pattern.SizeNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The size that a piece belongs to, by the end of its name or by the layer on which it is drawn. */
public record PieceSize(String piece, String size, Reason reason) implements Suggestion.OnPiece {
    /** Suggested only where several sizes are found: one alone says nothing. */
    static List<Suggestion> find(Sheet sheet) {
        List<Piece> pieces = sheet.pattern().pieces();
        if (pieces.stream().anyMatch(p -> p.size().isPresent())) {
            return List.of();
        }
        Map<String, String> byName =
                SizeNames.in(pieces.stream().map(Piece::name).toList());
        Map<String, String> sizes = sizesOfLayers(sheet);
        Map<String, String> written = byRun(sheet);
        GradedNest graded = written.isEmpty() && sizes.isEmpty() ? GradedNest.on(sheet) : GradedNest.NONE;
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : pieces) {
            Optional<String> layer = layer(piece, sheet, sizes);
            if (layer.isPresent()) {
                found.add(new PieceSize(
                        piece.id(),
                        sizes.get(layer.get()),
                        new Reason("size-of-layer", Map.of("layer", layer.get()), 0.9)));
            } else if (written.containsKey(piece.id())) {
                found.add(new PieceSize(piece.id(), written.get(piece.id()), Reason.of("size-in-run", 0.6)));
            } else if (graded.calls(piece, byName.get(piece.name()))) {
                found.add(new PieceSize(piece.id(), graded.sizes().get(piece.id()), graded.reason()));
            } else if (byName.containsKey(piece.name())) {
                found.add(new PieceSize(piece.id(), byName.get(piece.name()), Reason.of("size-in-name", 0.8)));
            }
        }
        boolean several =
                found.stream().map(s -> ((PieceSize) s).size()).distinct().count() > 1;
        return several ? found : List.of();
    }

    private static Map<String, String> sizesOfLayers(Sheet sheet) {
        Set<String> layers = new LinkedHashSet<>();
        sheet.pattern().pieces().forEach(p -> layers.addAll(sheet.layersOf(p.id())));
        return SizeNames.ofLayers(List.copyOf(layers));
    }

    private static Optional<String> layer(Piece piece, Sheet sheet, Map<String, String> sizes) {
        return sheet.layersOf(piece.id()).stream().filter(sizes::containsKey).reduce((outer, inner) -> inner);
    }

    /**
     * Sizes by the ids of pieces that lie on each other, where words on them name just as many sizes: the smallest is the
     * first.
     */
    private static Map<String, String> byRun(Sheet sheet) {
        Map<String, String> sizes = new HashMap<>();
        for (Caption caption : sheet.captions()) {
            for (String line : caption.lines()) {
                List<String> run = SizeNames.run(line);
                List<Piece> under = run.size() < 2 ? List.of() : under(sheet, caption.middle());
                if (!under.isEmpty() && run.size() == under.size()) {
                    for (int i = 0; i < run.size(); i++) {
                        sizes.putIfAbsent(under.get(i).id(), run.get(i));
                    }
                }
            }
        }
        return sizes;
    }

    /** The pieces that hold a place, the smallest first. */
    private static List<Piece> under(Sheet sheet, Point at) {
        return sheet.pattern().pieces().stream()
                .filter(p -> p.outline().box().contains(at) && p.outline().contains(at))
                .sorted(Comparator.comparingDouble(p -> Math.abs(p.outline().signedArea())))
                .toList();
    }

    /**
     * Sizes by the ids of pieces, where pieces of several sizes lie on layers that are called so, or on each other under
     * words that name them; else none.
     */
    static Map<String, String> ofNest(Sheet sheet) {
        Map<String, String> sizes = sizesOfLayers(sheet);
        Map<String, String> byPiece = new HashMap<>(sizes.isEmpty() ? byRun(sheet) : Map.of());
        boolean named = !SizeNames.in(
                        sheet.pattern().pieces().stream().map(Piece::name).toList())
                .isEmpty();
        if (sizes.isEmpty() && byPiece.isEmpty() && !named) {
            byPiece.putAll(GradedNest.on(sheet).sizes());
        }
        for (Piece piece : sheet.pattern().pieces()) {
            layer(piece, sheet, sizes).ifPresent(layer -> byPiece.put(piece.id(), sizes.get(layer)));
        }
        return new HashSet<>(byPiece.values()).size() > 1 ? byPiece : Map.of();
    }

    @Override
    public Kind kind() {
        return Kind.SIZE;
    }

    @Override
    public String key() {
        return "size " + piece;
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("size", size);
    }

    @Override
    public Piece marked(Piece old) {
        return old.toBuilder().size(Optional.of(size)).build();
    }
}
