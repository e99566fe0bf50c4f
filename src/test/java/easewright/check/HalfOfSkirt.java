package easewright.check;

import easewright.ease.EaseTables;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;

/** Halves of a plain skirt, and what the checks find on them. */
abstract class HalfOfSkirt {
    static final EaseTables TABLES = EaseTables.standard();

    static final String[] NAMES = {"neck", "side", "hem", "fold"};

    static final EdgeRole[] ROLES = {EdgeRole.NECK, EdgeRole.SEAM, EdgeRole.HEM, EdgeRole.FOLD};

    static Piece half(String id, double slant) {
        List<Point> corners =
                List.of(new Point(0, 0), new Point(200, 0), new Point(200 + slant, 400), new Point(0, 400));
        return half(id, corners);
    }

    static Piece half(String id, List<Point> corners) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(Edge.of(NAMES[i], ROLES[i], corners.get(i), corners.get((i + 1) % 4)));
        }
        return Piece.bare(id, Outline.polygon(corners)).toBuilder()
                .cut(1, true)
                .edges(edges)
                .levels(List.of(LevelMark.through("hip", new Point(50, 200))))
                .build();
    }

    static Pattern pattern(double declared, Piece... pieces) {
        Pattern bare = Pattern.bare(List.of(pieces), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(Level.of("hip", LevelKind.HIP)));
        return pieces.length < 2
                ? bare
                : bare.withMates(List.of(new Mate(
                        "side seam",
                        List.of(EdgeRef.of("front", "side")),
                        List.of(EdgeRef.of("back", "side")),
                        declared)));
    }

    static List<String> codes(Pattern p) {
        return Checks.of(p, Measures.of(p), TABLES).stream().map(Finding::code).toList();
    }

    static List<String> codes(Pattern before, Pattern after) {
        return Checks.compare(before, Measures.of(before), after, Measures.of(after), TABLES).stream()
                .map(Finding::code)
                .toList();
    }
}
