package easewright.suggest;

import easewright.pattern.Piece;
import easewright.pattern.SizeNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The size that a piece belongs to, by the end of its name or by the layer on which it is drawn. */
public record PieceSize(String piece, String size, Reason reason) implements Suggestion.OnPiece {
    /** A drawing program's number for an element is no size. */
    private static final Pattern NUMBERED = Pattern.compile(
            "(shape|path|polygon|polyline|rect|circle|ellipse|line|g|group|layer|object|svg|use|copy)?[-_ #]*\\d[-_ #\\d]*",
            Pattern.CASE_INSENSITIVE);

    /** Suggested only where several sizes are found: one alone says nothing. */
    static List<Suggestion> find(Sheet sheet) {
        List<Piece> pieces = sheet.pattern().pieces();
        if (pieces.stream().anyMatch(p -> p.size().isPresent())) {
            return List.of();
        }
        Map<String, String> byName = SizeNames.in(pieces.stream()
                .map(Piece::name)
                .filter(name -> !NUMBERED.matcher(name).matches())
                .toList());
        Map<String, String> sizes = sizesOfLayers(sheet);
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : pieces) {
            Optional<String> layer = layer(piece, sheet, sizes);
            if (layer.isPresent()) {
                found.add(new PieceSize(
                        piece.id(),
                        sizes.get(layer.get()),
                        new Reason("size-of-layer", Map.of("layer", layer.get()), 0.9)));
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

    /** Sizes by the ids of pieces, where pieces of several sizes lie on layers that are called so; else none. */
    static Map<String, String> byLayer(Sheet sheet) {
        Map<String, String> sizes = sizesOfLayers(sheet);
        Map<String, String> byPiece = new HashMap<>();
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
