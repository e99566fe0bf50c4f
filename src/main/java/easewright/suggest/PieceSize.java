package easewright.suggest;

import easewright.pattern.Piece;
import easewright.pattern.SizeNames;
import java.util.ArrayList;
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
        Set<String> layers = new LinkedHashSet<>();
        pieces.forEach(p -> layers.addAll(sheet.layersOf(p.id())));
        Map<String, String> byLayer = SizeNames.ofLayers(List.copyOf(layers));
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : pieces) {
            Optional<String> layer = sheet.layersOf(piece.id()).stream()
                    .filter(byLayer::containsKey)
                    .reduce((outer, inner) -> inner);
            if (layer.isPresent()) {
                found.add(new PieceSize(
                        piece.id(),
                        byLayer.get(layer.get()),
                        new Reason("size-of-layer", Map.of("layer", layer.get()), 0.9)));
            } else if (byName.containsKey(piece.name())) {
                found.add(new PieceSize(piece.id(), byName.get(piece.name()), Reason.of("size-in-name", 0.8)));
            }
        }
        boolean several =
                found.stream().map(s -> ((PieceSize) s).size()).distinct().count() > 1;
        return several ? found : List.of();
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
