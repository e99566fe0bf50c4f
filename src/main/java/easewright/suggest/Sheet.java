package easewright.suggest;

import easewright.pattern.Caption;
import easewright.pattern.Pattern;
import easewright.pattern.Rider;
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

    Sheet with(Pattern other) {
        return new Sheet(other, loose, captions, layers);
    }
}
