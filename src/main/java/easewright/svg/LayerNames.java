package easewright.svg;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** On which layers and other groups pieces are drawn. */
final class LayerNames {
    private LayerNames() {}

    /** Their names for each piece of the pattern that is on any, outermost first. */
    static Map<String, List<String>> of(Drawing drawing, DrawnGeometry drawn, Pattern of) {
        Map<String, List<String>> layers = new HashMap<>();
        for (Piece piece : of.pieces()) {
            drawn.piece(piece.id())
                    .or(() -> drawn.open(piece.id()))
                    .map(DrawnGeometry.Part::shape)
                    .or(() -> drawn.joined(piece.id()).map(j -> j.parts().get(0).shape()))
                    .map(shape -> drawing.all().get(shape).layers())
                    .filter(names -> !names.isEmpty())
                    .ifPresent(names -> layers.put(piece.id(), names));
        }
        return layers;
    }
}
