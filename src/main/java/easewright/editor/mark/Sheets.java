package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Affine;
import easewright.geom.Segment;
import easewright.pattern.Caption;
import easewright.pattern.Pattern;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import easewright.suggest.Sheet;
import easewright.svg.SvgFile;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The sheet that lies on the table: the present pattern with the lines and words around it, at the present scale. The
 * same sheet, not only an equal one, as long as the pattern is the same.
 */
final class Sheets {
    private SvgFile svg;
    private List<String> ids = List.of();
    private Scale scale;
    private List<Rider> loose = List.of();
    private List<Caption> captions = List.of();
    private Map<String, List<String>> layers = Map.of();
    private Sheet last = new Sheet(Pattern.bare(List.of(), new Scale(1, 1, Scale.Proof.UNPROVED)), loose, captions);

    /** Remembers what is costly to find and only changes with the file, the scale and the set of pieces. */
    Sheet of(Desk desk) {
        Pattern pattern = desk.pattern();
        if (desk.file().isEmpty()) {
            return new Sheet(pattern, List.of(), List.of());
        }
        SvgFile now = desk.file().get().svg();
        if (now == svg && pattern == last.pattern()) {
            return last;
        }
        List<String> idsNow = ids(pattern);
        if (now != svg || !pattern.scale().equals(scale) || !idsNow.equals(ids)) {
            svg = now;
            scale = pattern.scale();
            ids = idsNow;
            Scale drawn = svg.drawing().scale();
            Affine map =
                    Affine.scaling(scale.mmPerUnitX() / drawn.mmPerUnitX(), scale.mmPerUnitY() / drawn.mmPerUnitY());
            loose = svg.loose(pattern).stream().map(r -> scaled(r, map)).toList();
            layers = svg.layerNames(pattern);
            captions = svg.texts().stream().map(c -> scaled(c, map)).toList();
        }
        last = new Sheet(pattern, loose, captions, layers);
        return last;
    }

    private static List<String> ids(Pattern pattern) {
        return pattern.pieces().stream()
                .flatMap(p ->
                        Stream.concat(Stream.of(p.id()), p.riders().stream().map(Rider::id)))
                .toList();
    }

    private static Rider scaled(Rider rider, Affine map) {
        if (map.equals(Affine.IDENTITY)) {
            return rider;
        }
        List<Segment> moved =
                rider.segments().stream().map(s -> s.transformed(map)).toList();
        return rider.withSegments(moved);
    }

    private static Caption scaled(Caption caption, Affine map) {
        return new Caption(caption.lines(), map.apply(caption.middle()), caption.height() * map.d());
    }
}
