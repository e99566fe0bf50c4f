package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A band that is longer than the waist by an underlap: that is no ease. */
class BandUnderlapTest {
    /** So much longer is the waist of the sample, to be eased into its band, mm. */
    private static final double EASED = 10;

    /** The skirt of the samples, with another declared ease of that seam. */
    private static Pattern skirt(double ease) throws Exception {
        Pattern skirt = SvgFile.read(Path.of("sample-pieces/skirt.svg")).pattern();
        return eased(skirt, ease);
    }

    private static Pattern eased(Pattern pattern, double ease) {
        return pattern.withMates(pattern.mates().stream()
                .map(m -> m.name().equals("waistband") ? new Mate(m.name(), m.first(), m.second(), ease) : m)
                .toList());
    }

    private static MateWalk walk(Pattern pattern, Mate mate) {
        return Measures.of(pattern).mate(mate.name()).orElseThrow();
    }

    private static Mate band(Pattern pattern) {
        return pattern.mates().stream()
                .filter(m -> m.name().equals("waistband"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aBandThatFitsHasNone() throws Exception {
        Pattern fits = skirt(EASED);
        assertThat(BandUnderlap.of(fits, walk(fits, band(fits)))).isEmpty();
    }

    /** The band of the sample drawn longer to the left, where it has no underlap yet. */
    private static Pattern longer(double by) throws Exception {
        Pattern fits = skirt(EASED);
        double wide = walk(fits, band(fits)).second();
        Piece old = fits.piece("Waistband").orElseThrow();
        double left = old.outline().box().minX();
        Piece now = old.toBuilder()
                .outline(new Outline(old.outline().segments().stream()
                        .map(s -> (Segment) new Line(moved(s.start(), left, by), moved(s.end(), left, by)))
                        .toList()))
                .edges(old.edges().stream()
                        .map(e -> e.withEnds(moved(e.from(), left, by), moved(e.to(), left, by)))
                        .toList())
                .riders(List.of())
                .build();
        Pattern longer = fits.withPiece(now);
        assertThat(walk(longer, band(longer)).second()).isCloseTo(wide + by, within(1e-6));
        return longer;
    }

    private static Point moved(Point p, double left, double by) {
        return p.x() < left + 1e-6 ? new Point(p.x() - by, p.y()) : p;
    }

    @ParameterizedTest
    @ValueSource(doubles = {EASED, 0, -20})
    void whatIsLongerBecomesAnEdgeOfItsOwnAtEitherEnd(double ease) throws Exception {
        Pattern pattern = eased(longer(30), ease);
        BandUnderlap found =
                BandUnderlap.of(pattern, walk(pattern, band(pattern))).orElseThrow();
        assertThat(found.mm()).isCloseTo(20 + Math.max(0, ease), within(0.2));
        assertThat(found.ends(pattern))
                .containsExactly(entry(BandUnderlap.End.LEFT, true), entry(BandUnderlap.End.RIGHT, false));
        for (boolean atEnd : new boolean[] {false, true}) {
            Pattern parted = found.parted(pattern, atEnd);
            MateWalk walk = walk(parted, band(parted));
            assertThat(walk.drift()).isCloseTo(0, within(0.001));
            assertThat(walk.mate().declaredEase()).isEqualTo(Math.max(0, ease));
            Piece piece = parted.piece(found.band().piece()).orElseThrow();
            Edge underlap = piece.edge("underlap 2").orElseThrow();
            assertThat(underlap.role()).isEqualTo(EdgeRole.OPENING);
            assertThat(piece.outline())
                    .isEqualTo(pattern.piece(piece.id()).orElseThrow().outline());
            Edge rest = parted.edge(found.band()).orElseThrow();
            assertThat(atEnd ? rest.to() : rest.from()).isEqualTo(atEnd ? underlap.from() : underlap.to());
            assertThat(BandUnderlap.of(parted, walk)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {8, 90})
    void lessOrMoreThanAnUnderlapIsNotTakenForOne(double by) throws Exception {
        Pattern pattern = longer(by);
        assertThat(BandUnderlap.of(pattern, walk(pattern, band(pattern)))).isEmpty();
    }

    /**
     * The seam of a band runs into its rounded end, where the stitching line is less than half as long as the line drawn:
     * in eight steps the place is not found there.
     */
    @Test
    void whereNoPlaceMakesTheRestFitNothingIsOffered() {
        double round = 25;
        double allowance = 15;
        double waist = 400;
        double underlap = 14;
        // Sewn is the straight run and a quarter round the corner.
        double run = waist + underlap + allowance - (round - allowance) * Math.PI / 2;
        Point start = new Point(0, 0);
        Point corner = new Point(run, 0);
        Point end = new Point(run + round, round);
        double handle = round * 0.5523;
        Outline drawn = new Outline(List.of(
                new Line(start, corner),
                new Cubic(corner, new Point(run + handle, 0), new Point(run + round, round - handle), end),
                new Line(end, new Point(run + round, 60)),
                new Line(new Point(run + round, 60), new Point(0, 60)),
                new Line(new Point(0, 60), start)));
        Piece band = Piece.bare("band", drawn).toBuilder()
                .drawn(LineKind.CUTTING, allowance)
                .edges(List.of(Edge.of("seam", EdgeRole.SEAM, start, end)))
                .build();
        Point left = new Point(0, 200);
        Point right = new Point(waist, 200);
        Point lower = new Point(waist, 500);
        Piece skirt = Piece.bare("skirt", Outline.polygon(List.of(left, right, lower, new Point(0, 500)))).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, left, right),
                        Edge.of("hem", EdgeRole.HEM, lower, new Point(0, 500))))
                .build();
        Mate seam =
                new Mate("waistband", List.of(EdgeRef.of("skirt", "waist")), List.of(EdgeRef.of("band", "seam")), 0);
        Pattern pattern = Pattern.bare(List.of(skirt, band), new Scale(1, 1, Scale.Proof.UNPROVED))
                .withMates(List.of(seam));
        BandUnderlap found = BandUnderlap.of(pattern, walk(pattern, seam)).orElseThrow();
        assertThat(found.mm()).isCloseTo(underlap, within(0.1));
        assertThat(found.ends(pattern)).containsExactly(entry(BandUnderlap.End.LEFT, false));
        assertThat(walk(found.parted(pattern, false), seam).drift()).isCloseTo(0, within(0.001));
        assertThatThrownBy(() -> found.parted(pattern, true)).isInstanceOf(IllegalArgumentException.class);
    }

    /** In a bare drawing without a notch where the underlap begins, the seam is suggested without ease. */
    @Test
    void aLongerBandIsNotSuggestedToBeEasedIn() throws Exception {
        UnsewnEdges unsewn = new UnsewnEdges(longer(30).withMates(List.of()));
        OneToSeveral.waistbands(unsewn);
        MateSuggestion band = unsewn.seams().stream()
                .filter(MateSuggestion.class::isInstance)
                .map(MateSuggestion.class::cast)
                .filter(m -> m.mate().name().equals("waistband"))
                .findFirst()
                .orElseThrow();
        assertThat(band.mate().declaredEase()).isZero();
        assertThat(band.reason().code()).isEqualTo("underlap-length");
    }
}
