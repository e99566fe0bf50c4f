package easewright.alter;

import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** At which end a centre line swings, and what its swing is called. */
class CentreLinesTest {
    private static final Level MIDDLE = Level.of("middle", LevelKind.BUST);
    private static final Level LOW = Level.of("low", LevelKind.HIP);

    /** A back of 100 by 300 with its centre at the left, upright or upside down on the sheet. */
    private static Pattern back(EdgeRole above, EdgeRole centre, boolean fold, EdgeRole below) {
        List<Point> c = List.of(new Point(0, 0), new Point(100, 0), new Point(100, 300), new Point(0, 300));
        Piece piece = Piece.bare("back", Outline.polygon(c)).toBuilder()
                .cut(fold ? 1 : 2, fold)
                .edges(List.of(
                        Edge.of("above", above, c.get(0), c.get(1)),
                        Edge.of("side", EdgeRole.SEAM, c.get(1), c.get(2)),
                        Edge.of("below", below, c.get(2), c.get(3)),
                        Edge.of("centre", centre, c.get(3), c.get(0))))
                .levels(List.of(
                        LevelMark.through("middle", new Point(40, 100)), LevelMark.through("low", new Point(40, 299))))
                .build();
        return pattern(List.of(MIDDLE, LOW), piece);
    }

    private static Altered wedge(Pattern pattern, String keep) throws Refusal {
        CentreChange change =
                CentreChange.wedge("middle", 12, EdgeRef.of("back", "centre")).acceptingProtected();
        return (keep.isEmpty() ? change : change.keeping(keep)).apply(pattern);
    }

    private static double low(Pattern before, Altered after) {
        return girth(after.pattern(), "low") - girth(before, "low");
    }

    @Test
    void itSwingsAtTheNeckOrElseAtItsUpperEnd() throws Refusal {
        // Held above: 12 at 100 from the end are 12 · 299/100 at 299. Held below: 12 at 200, and next to nothing at
        // 299.
        Pattern neck = back(EdgeRole.NECK, EdgeRole.CENTRE, false, EdgeRole.HEM);
        assertThat(low(neck, wedge(neck, ""))).isCloseTo(12 * 2.99, within(1e-6));
        Pattern skirt = back(EdgeRole.WAIST, EdgeRole.CENTRE, false, EdgeRole.HEM);
        assertThat(low(skirt, wedge(skirt, ""))).isCloseTo(12 * 2.99, within(1e-6));
        Pattern upsideDown = back(EdgeRole.HEM, EdgeRole.CENTRE, false, EdgeRole.WAIST);
        assertThat(low(upsideDown, wedge(upsideDown, ""))).isCloseTo(12 / 200.0, within(1e-6));
        Pattern neckBelow = back(EdgeRole.OTHER, EdgeRole.CENTRE, false, EdgeRole.NECK);
        assertThat(low(neckBelow, wedge(neckBelow, ""))).isCloseTo(12 / 200.0, within(1e-6));
        Pattern plain = back(EdgeRole.OTHER, EdgeRole.CENTRE, false, EdgeRole.OTHER);
        assertThat(low(plain, wedge(plain, ""))).isCloseTo(12 * 2.99, within(1e-6));
    }

    @Test
    void orWhereItIsTold() throws Refusal {
        Pattern neck = back(EdgeRole.NECK, EdgeRole.CENTRE, false, EdgeRole.HEM);
        assertThat(low(neck, wedge(neck, "below"))).isCloseTo(12 / 200.0, within(1e-6));
        assertThat(low(neck, wedge(neck, "above"))).isCloseTo(12 * 2.99, within(1e-6));
    }

    @Test
    void aFoldIsLostAndASeamOnlyLeavesTheGrain() throws Refusal {
        Pattern fold = back(EdgeRole.NECK, EdgeRole.FOLD, true, EdgeRole.HEM);
        assertThat(wedge(fold, "").findings()).extracting(Finding::code).containsExactly("centre-off-fold");
        Pattern unfolded = back(EdgeRole.NECK, EdgeRole.FOLD, false, EdgeRole.HEM);
        assertThat(wedge(unfolded, "").findings()).extracting(Finding::code).containsExactly("centre-off-fold");
        Pattern onFold = back(EdgeRole.NECK, EdgeRole.CENTRE, true, EdgeRole.HEM);
        assertThat(wedge(onFold, "").findings()).extracting(Finding::code).containsExactly("centre-off-fold");
        Pattern seam = back(EdgeRole.NECK, EdgeRole.CENTRE, false, EdgeRole.HEM);
        Finding off = wedge(seam, "").findings().get(0);
        assertThat(off.code()).isEqualTo("centre-off-grain");
        assertThat((Double) off.values().get("slant.degrees"))
                .isCloseTo(Math.toDegrees(Math.atan(6 / 100.0)), within(1e-6));
        Altered parallel = CentreChange.parallel("middle", 12, EdgeRef.of("back", "centre"))
                .acceptingProtected()
                .apply(seam);
        assertThat(parallel.findings()).isEmpty();
        assertThat(low(seam, parallel)).isCloseTo(12, within(1e-9));
    }
}
