package easewright.alter;

import static easewright.alter.CornerTruingTest.WAIST;
import static easewright.alter.CornerTruingTest.angle;
import static easewright.alter.CornerTruingTest.assertRestIsTheSame;
import static easewright.alter.CornerTruingTest.pattern;
import static easewright.alter.Panels.kept;
import static easewright.alter.Panels.panel;
import static easewright.alter.Panels.sewn;
import static easewright.alter.Panels.slanted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that go on across a seam, and what the seam gives way by. */
class JoinedLineTruingTest {
    /** Both pieces bend by half, seams keep their lines, and protected or measured lines their lengths. */
    @ParameterizedTest
    @CsvSource({"87, 90", "93, 90", "86, 88", "100, 88", "80, 85"})
    void linesAcrossASeamBecomeStraight(double front, double back) throws Refusal {
        for (boolean keep : new boolean[] {false, true}) {
            Piece one = slanted("front", 600, 180 - front, 90);
            Piece other = slanted("back", 600, 180 - back, 90);
            Pattern before = keep ? sewn(kept(one, "waist"), kept(other, "waist")) : sewn(one, other);
            Altered done = Trued.join("seam", false).acceptingProtected().apply(before);
            Piece frontNow = done.pattern().pieces().get(0);
            Piece backNow = done.pattern().pieces().get(1);
            double is1 = angle(frontNow, "waist", "side");
            double is2 = angle(backNow, "waist", "side");
            assertThat(is1 + is2).isCloseTo(180, within(keep ? 0.01 : 1e-6));
            double half = (180 - front - back) / 2;
            assertThat(is1 - front).isCloseTo(half, within(0.01));
            assertThat(is2 - back).isCloseTo(half, within(0.01));
            for (int i = 0; i < 2; i++) {
                Piece was = before.pieces().get(i);
                Piece is = done.pattern().pieces().get(i);
                if (keep) {
                    assertThat(Cloths.sewn(is, "waist")).isCloseTo(Cloths.sewn(was, "waist"), within(1e-3));
                }
                assertRestIsTheSame(was, is, keep ? Set.of("waist", "side") : Set.of("waist"));
                for (Segment s : is.outline().segments()) {
                    for (double t = 0; t < 1; t += 0.1) {
                        if (s.at(t).x() < 200 - 61) {
                            assertThat(was.outline().nearest(s.at(t)).distance())
                                    .isLessThan(1e-9);
                        }
                    }
                }
            }
        }
    }

    @Test
    void whereADartIsTooNearNothingIsBent() {
        for (double away : new double[] {5, 12}) {
            Piece piece = panelWithDart(away);
            Refusal refusal = Cloths.refusal(WAIST, pattern(piece));
            if (away < 7) {
                assertThat(refusal).isNotNull();
                assertThat(refusal.code()).isEqualTo("no-room-to-true");
                assertThat(refusal.values()).containsEntry("piece", "front").containsEntry("edge", "waist");
            } else {
                assertThat(refusal).isNull();
            }
        }
    }

    private static Piece panelWithDart(double away) {
        Piece plain = slanted("front", 600, 85, 90);
        double slope = Math.tan(Math.toRadians(5));
        Dart dart = new Dart(
                "d",
                new Point(away, away * slope),
                new Point(away + 15, (away + 15) * slope),
                new Point(away + 8, 90),
                Optional.empty(),
                Optional.of("waist"));
        return plain.toBuilder().darts(List.of(dart)).build();
    }

    /** Only a level along the edge itself makes its length matter. */
    @Test
    void levelAlongAnotherEdgeAsksForNoLength() throws Refusal {
        Piece plain = slanted("front", 600, 78, 90);
        Pattern levelled =
                Cloths.pattern(List.of(Cloths.WAIST), plain.withLevels(List.of(LevelMark.along("waist", "hem"))));
        assertThat(WAIST.apply(levelled).pattern().pieces().get(0).outline())
                .isEqualTo(WAIST.apply(pattern(plain)).pattern().pieces().get(0).outline());
    }

    /** The corner gives the waist its length back along it; the seam takes that up above the first level. */
    @Test
    void seamFollowsOnlyDownToALevel() throws Refusal {
        Piece front = kept(slanted("front", 600, 105, 90), "waist");
        for (boolean levelled : new boolean[] {false, true}) {
            Piece one = levelled ? front.withLevels(List.of(LevelMark.through("hip", new Point(190, -30)))) : front;
            Pattern before = sewn(one, panel("back", 600)).withLevels(List.of(Cloths.HIP));
            Piece after = Trued.join("seam", false)
                    .acceptingProtected()
                    .apply(before)
                    .pattern()
                    .pieces()
                    .get(0);
            double most = 0;
            for (Segment s :
                    after.edge("side").orElseThrow().on(after.outline()).segments()) {
                for (double t = 0; t <= 1; t += 0.02) {
                    if (s.at(t).y() > -30) {
                        most = Math.max(most, Math.abs(s.at(t).x() - 200));
                    }
                }
            }
            assertThat(most < 1e-9).as("still at %s mm", most).isEqualTo(levelled);
        }
    }
}
