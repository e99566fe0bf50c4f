package easewright.editor.model;

import easewright.check.LinesSaid;
import easewright.geom.Affine;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Closed lines on the table that belong to no piece, and what is to be noticed of them. */
final class BesideLines {
    private static final String UNMARKED = "shape-unmarked";

    /** What was found last: while a seam is pulled it is asked for in every frame, of one and the same pattern. */
    private record Last(SvgFile svg, Pattern pattern, List<Finding> findings) {}

    private static volatile Last last;

    private BesideLines() {}

    /** At the scale of the pattern. */
    static Stream<Rider> loose(OpenFile file, Pattern pattern) {
        double scale =
                pattern.scale().mmPerUnitX() / file.svg().drawing().scale().mmPerUnitX();
        List<Rider> loose = file.svg().looseOutlines(pattern);
        return scale == 1 ? loose.stream() : loose.stream().map(r -> scaled(r, Affine.scaling(scale, scale)));
    }

    private static Rider scaled(Rider rider, Affine map) {
        return rider.withSegments(
                rider.segments().stream().map(s -> s.transformed(map)).toList());
    }

    /** Those that lie beside a piece and stay put when it changes. */
    static Stream<Finding> of(OpenFile file, Pattern pattern) {
        Last known = last;
        if (known == null || known.svg() != file.svg() || known.pattern() != pattern) {
            known = new Last(
                    file.svg(),
                    pattern,
                    LinesSaid.around(pattern, loose(file, pattern).toList()));
            last = known;
        }
        return known.findings().stream();
    }

    /** A line that was said to be something since the file was opened, or that more is told of, is not told as unmarked. */
    static List<Finding> once(List<Finding> findings, Pattern pattern) {
        if (findings.stream().noneMatch(f -> f.code().equals(UNMARKED))) {
            return findings;
        }
        Set<Object> told = findings.stream()
                .filter(f -> !f.code().equals(UNMARKED) && f.values().containsKey("line"))
                .map(f -> f.values().get("line"))
                .collect(Collectors.toSet());
        pattern.pieces().forEach(p -> {
            told.add(p.id());
            p.riders().forEach(r -> told.add(r.id()));
        });
        told.addAll(pattern.noPieces());
        return findings.stream()
                .filter(f ->
                        !f.code().equals(UNMARKED) || !told.contains(f.values().get("line")))
                .toList();
    }
}
