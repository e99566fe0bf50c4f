package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a size up would do, by figures that can be worked out by hand, on a sheet turned any way. */
class SizeUpFiguresTest {
    private static final Offset<Double> EXACT = within(1e-6);
    private static final Level HIP = Level.of("hip", LevelKind.HIP);
    private static final Level BUST = Level.of("bust", LevelKind.BUST);

    /** A panel of 100 by 300, its neck along the top, a dart of 10 at the hip, and 20 of overlap at the bust. */
    private static Piece panel(Affine map) {
        List<Point> corners = List.of(new Point(0, 0), new Point(100, 0), new Point(100, 300), new Point(0, 300));
        Outline outline = Outline.polygon(corners).transformed(map);
        Dart dart = new Dart(
                "d",
                map.apply(new Point(40, 200)),
                map.apply(new Point(50, 200)),
                map.apply(new Point(45, 120)),
                Optional.of(map.apply(new Point(45, 280))),
                Optional.empty());
        return Piece.bare("panel", outline).toBuilder()
                .cut(2, false)
                .edges(List.of(
                        Edge.of("neck", EdgeRole.NECK, map.apply(corners.get(0)), map.apply(corners.get(1))),
                        Edge.of("armhole", EdgeRole.ARMHOLE, map.apply(corners.get(1)), map.apply(corners.get(2)))))
                .levels(List.of(
                        LevelMark.through("hip", map.apply(new Point(10, 200))),
                        LevelMark.through("bust", map.apply(new Point(10, 80))).withOverlap(20)))
                .darts(List.of(dart))
                .grain(new Grain(map.apply(new Point(20, 20)), map.apply(new Point(20, 280))))
                .build();
    }

    /** A band, longer along its own grain than the panel, that goes round nothing. */
    private static Piece band() {
        return Piece.bare(
                "band",
                Outline.polygon(List.of(new Point(0, 0), new Point(40, 0), new Point(40, 900), new Point(0, 900))));
    }

    private static SizeUp.Line line(SizeUp size, String name) {
        return size.lines().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void assertLine(SizeUp.Line line, double before, double local, double across, double whole) {
        assertThat(line.before()).as(line.name()).isCloseTo(before, EXACT);
        assertThat(line.local()).as(line.name()).isCloseTo(local, EXACT);
        assertThat(line.across()).as(line.name()).isCloseTo(across, EXACT);
        assertThat(line.whole()).as(line.name()).isCloseTo(whole, EXACT);
    }

    @Test
    void everyMeasureFourWays() throws Refusal {
        for (Affine map : List.of(
                Affine.IDENTITY,
                Affine.rotation(0.7, new Point(50, 60)),
                Affine.rotation(-2.1, new Point(5, 6)),
                Affine.rotation(Math.PI / 2, Point.ORIGIN))) {
            Pattern before = Cloths.pattern(List.of(HIP, BUST, Level.of("knee", LevelKind.KNEE)), panel(map), band());
            Piece wider = before.pieces().get(0);
            Pattern local = before.withPieces(List.of(
                    wider
                            .withLevels(List.of(
                                    wider.levels().get(0), wider.levels().get(1).withOverlap(11)))
                            .toBuilder()
                            .darts(List.of())
                            .build(),
                    before.pieces().get(1)));
            // Hip: twice 100 less the dart's 10; without the dart twice 100: wider by a ninth less a tenth part.
            SizeUp size = SizeUp.of(before, local, "hip");
            double by = 200.0 / 180;
            assertThat(size.target()).isCloseTo(200, EXACT);
            assertThat(size.acrossBy()).isCloseTo(by, within(1e-9));
            assertLine(line(size, "neck"), 200, 200, 200 * by, 200 * by);
            assertLine(line(size, "armhole"), 300, 300, 300, 300 * by);
            assertLine(line(size, "hip"), 180, 200, 200, 200);
            assertLine(line(size, "bust"), 160, 178, 160 * by, 160 * by);
            SizeUp.Line length = line(size, "panel");
            assertThat(length.kind()).isEqualTo(SizeUp.Kind.LENGTH);
            assertLine(length, 300, 300, 300, 300 * by);
            assertThat(size.lines()).extracting(SizeUp.Line::name).doesNotContain("shoulder", "knee", "band");
        }
    }

    /** The allowance does not grow with the piece: 100 cut is 70 sewn, and 84 sewn is 114 cut. */
    @Test
    void theAllowanceStays() throws Refusal {
        Piece plain = panel(Affine.IDENTITY).toBuilder()
                .darts(List.of())
                .drawn(LineKind.CUTTING, 15)
                .build();
        Pattern before = Cloths.pattern(List.of(HIP), plain);
        Pattern local = Cloths.pattern(
                List.of(HIP),
                plain.withOutline(Outline.polygon(
                                List.of(new Point(0, 0), new Point(114, 0), new Point(114, 300), new Point(0, 300))))
                        .withEdges(List.of()));
        SizeUp size = SizeUp.of(before, local, "hip");
        assertThat(size.acrossBy()).isCloseTo(1.14, within(1e-7));
        assertLine(line(size, "hip"), 140, 168, 168, 168);
    }

    @Test
    void levelsWithoutAGirthAreRefused() {
        Pattern before = Cloths.pattern(List.of(HIP, Level.of("knee", LevelKind.KNEE)), panel(Affine.IDENTITY));
        assertThat(catchThrowableOfType(Refusal.class, () -> SizeUp.of(before, before, "calf"))
                        .code())
                .isEqualTo("level-unknown");
        assertThat(catchThrowableOfType(Refusal.class, () -> SizeUp.of(before, before, "knee"))
                        .code())
                .isEqualTo("level-without-piece");
    }
}
