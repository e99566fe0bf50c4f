package easewright.suggest;

import easewright.pattern.Caption;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * All that lies on a sheet of pattern pieces, at one scale.
 *
 * @param loose    drawn lines that belong to no piece
 * @param captions words written on it
 * @param layers   names of the layers on which each piece is drawn, outermost first, by its id
 */
public record Sheet(Pattern pattern, List<Rider> loose, List<Caption> captions, Map<String, List<String>> layers) {
    public Sheet {
        layers = Map.copyOf(layers);
        loose = List.copyOf(loose);
        captions = List.copyOf(captions);
    }

    /** A sheet of whose layers nothing is known. */
    public Sheet(Pattern pattern, List<Rider> loose, List<Caption> captions) {
        this(pattern, loose, captions, Map.of());
    }

    /** Names of the layers of a piece; none where it has none. */
    List<String> layersOf(String piece) {
        return layers.getOrDefault(piece, List.of());
    }

    /** Lines that go with other sizes and lie on this piece too: in a nest some are drawn once for all. */
    List<Rider> linesOfOtherSizes(Piece piece) {
        List<Rider> lines = new ArrayList<>();
        for (Piece other : pattern.pieces()) {
            boolean otherSize = other.size().isPresent()
                    && piece.size().isPresent()
                    && !other.size().equals(piece.size());
            if (otherSize) {
                other.riders().stream()
                        .filter(r -> !r.segments().isEmpty()
                                && piece.outline().contains(r.segments().get(0).at(0.5)))
                        .forEach(lines::add);
            }
        }
        return lines;
    }

    Sheet with(Pattern other) {
        return new Sheet(other, loose, captions, layers);
    }
}
