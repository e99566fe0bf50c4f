package easewright.svg;

import easewright.pattern.NumberedNames;
import easewright.pattern.SizeNames;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the pieces of a drawing without marks are called: what the file, or a text inside them, calls them, else by their
 * number in the order in which they are drawn. A name is for people; marks refer to a piece by its id.
 */
final class PieceNames {
    /** What a layer is called by the lines that lie on it, not by the piece they draw. */
    private static final Pattern KIND_OF_LINE = Pattern.compile(
            "(cut(ting)?|stitch(ing)?|sew(n|ing)?|seams?|contours?|outlines?|patterns?|pieces?|drawing|layer)"
                    + "([-_ ]?(lines?|pieces?))?",
            Pattern.CASE_INSENSITIVE);

    private PieceNames() {}

    /** One for each of the outlines, in their order; no two are the same. */
    static List<String> of(List<PieceOutline> pieces) {
        Set<String> used = new HashSet<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Optional<String> given = pieces.get(i).name().map(SizeNames::withoutRun);
            names.add(unique(given.orElse(NumberedNames.of(i + 1)), used));
        }
        return names;
    }

    private static String unique(String wanted, Set<String> used) {
        String name = wanted;
        for (int i = 2; !used.add(name); i++) {
            name = wanted + " " + i;
        }
        return name;
    }

    /** What a shape that is no piece is called in findings. */
    static String called(DrawnShape shape) {
        return given(shape).orElse(shape.id());
    }

    /** What somebody called a shape. */
    static Optional<String> given(DrawnShape shape) {
        return own(shape).or(() -> ofLayer(shape));
    }

    /** What somebody called a shape itself, whatever its layer is called. */
    static Optional<String> own(DrawnShape shape) {
        if (!shape.label().isEmpty()) {
            return Optional.of(shape.label());
        }
        // Numbered ids are an editor's, not a person's: a layer's name says more.
        String id = shape.idGiven() ? ShapeNames.readable(shape.id()) : "";
        if (!id.isEmpty() && !NumberedNames.isNumbered(id)) {
            return Optional.of(id);
        }
        return Optional.empty();
    }

    private static Optional<String> ofLayer(DrawnShape shape) {
        return shape.groups().stream()
                .map(DrawnShape.Group::name)
                .filter(name -> !NumberedNames.isNumbered(name)
                        && !KIND_OF_LINE.matcher(name).matches())
                .reduce((outer, inner) -> inner);
    }
}
