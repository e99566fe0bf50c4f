package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The seam meant at a place is that found by measuring the distance from every edge. */
class HoldTest {
    private final Random random = new Random(1213);

    @Test
    void theSeamAtAPlaceIsThatFoundByAllDistances() throws Exception {
        List<Piece> pieces = new ArrayList<>();
        for (Sample sample : Sample.all()) {
            pieces.addAll(sample.read().pattern().pieces());
        }
        pieces.addAll(
                SvgFile.read(Path.of("sample-pieces/skirt-sizes.svg")).pattern().pieces());
        int found = 0;
        int asked = 0;
        for (Piece piece : pieces) {
            for (int i = 0; i < 40; i++) {
                Point at = somewhere(piece);
                Optional<Edge> expected = byAllDistances(piece, at);
                assertThat(Hold.seamAt(piece, at)).isEqualTo(expected);
                found += expected.isPresent() ? 1 : 0;
                asked++;
            }
        }
        assertThat(found).isBetween(asked / 5, asked - asked / 10);
    }

    /** On the outline, at a corner of it, just beside one, or off it as a stitching line is. */
    private Point somewhere(Piece piece) {
        int segment = random.nextInt(piece.outline().segments().size());
        Segment on = piece.outline().segments().get(segment);
        Point way = new Point(random.nextGaussian(), random.nextGaussian());
        return switch (random.nextInt(4)) {
            case 0 -> on.start();
            case 1 -> on.start().plus(way);
            case 2 -> piece.outline().point(new Place(segment, random.nextDouble()));
            default -> on.at(random.nextDouble()).plus(way.times(8));
        };
    }

    private static Optional<Edge> byAllDistances(Piece piece, Point at) {
        double nearest = piece.edges().stream()
                .mapToDouble(e -> away(piece, e, at))
                .min()
                .orElse(0);
        return piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.SEAM && !e.isProtected())
                .filter(e -> away(piece, e, at) <= nearest + 1)
                .min(Comparator.comparingDouble(e -> away(piece, e, at)));
    }

    private static double away(Piece piece, Edge edge, Point at) {
        return edge.on(piece.outline()).nearest(at).distance();
    }
}
