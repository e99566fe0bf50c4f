package easewright.alter;

import static easewright.alter.Cloths.HIP;
import static easewright.alter.Cloths.WAIST;
import static easewright.alter.Cloths.curvedSkirt;
import static easewright.alter.Cloths.pattern;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every way says to names that are not there and to amounts of nothing. */
class WaysRefusedTest {
    private static final Level KNEE = Level.of("knee", LevelKind.KNEE);
    private static final Pattern SKIRT = pattern(List.of(WAIST, HIP, KNEE), curvedSkirt("front"), facing());
    private static final Point FOOT = new Point(120, 603);
    private static final Point TOP = new Point(60, 7);
    private static final EdgeRef FOLD = EdgeRef.of("front", "fold");

    /** A piece that is measured at the hip but does not count there. */
    private static Piece facing() {
        return curvedSkirt("facing")
                .withLevels(List.of(LevelMark.through("hip", new Point(20, 200)).notCounted()));
    }

    private static String code(Alteration change) {
        return catchThrowableOfType(Refusal.class, () -> change.apply(SKIRT)).code();
    }

    @Test
    void levelsThatAreNotThere() {
        assertThat(code(SeamChange.at("bust", 10))).isEqualTo("level-unknown");
        assertThat(code(CentreChange.parallel("bust", 10, FOLD))).isEqualTo("level-unknown");
        assertThat(code(Lengthen.below("bust", 0, 10))).isEqualTo("level-unknown");
        assertThat(code(SpreadSlashes.hinged("bust", 10, Slash.of("front", FOOT, TOP))))
                .isEqualTo("level-unknown");
        assertThat(code(DartIntake.at("bust", 10))).isEqualTo("level-unknown");
        assertThat(code(Lengthen.below("knee", 0, 10))).isEqualTo("level-without-piece");
    }

    @Test
    void piecesThatAreNotThere() {
        assertThat(code(CentreChange.parallel("hip", 10, EdgeRef.of("back", "fold"))))
                .isEqualTo("piece-unknown");
        assertThat(code(new HingedSlash("back", TOP, FOOT, 10, TOP, false))).isEqualTo("piece-unknown");
        assertThat(code(new ParallelSlash("back", TOP, FOOT, 10, FOOT, false))).isEqualTo("piece-unknown");
        assertThat(code(new Lengthen("hip", 50, 10, List.of("back"), false))).isEqualTo("piece-unknown");
        assertThat(code(SpreadSlashes.hinged("hip", 10, Slash.of("back", FOOT, TOP))))
                .isEqualTo("piece-unknown");
        assertThat(code(SeamChange.at("hip", 10).withShares(Share.of("back", "side"))))
                .isEqualTo("piece-unknown");
        assertThat(code(DartIntake.at("waist", 5, DartShare.of("back", "dart"))))
                .isEqualTo("piece-unknown");
    }

    @Test
    void edgesDartsAndPlacesThatAreNotThere() {
        assertThat(code(CentreChange.parallel("hip", 10, EdgeRef.of("front", "middle"))))
                .isEqualTo("edge-unknown");
        assertThat(code(CentreChange.parallel("hip", 10, EdgeRef.of("front", "waist"))))
                .isEqualTo("edge-not-at-level");
        assertThat(code(CentreChange.parallel("hip", 10, EdgeRef.of("facing", "fold"))))
                .isEqualTo("piece-not-counted");
        assertThat(code(SeamChange.at("hip", 10).withShares(Share.of("front", "middle"))))
                .isEqualTo("edge-unknown");
        assertThat(code(SeamChange.at("hip", 10).fixedAt(new Point(100, 300)))).isEqualTo("fixed-point-off-outline");
        assertThat(code(new Lengthen("knee", 50, 10, List.of("front"), false))).isEqualTo("piece-not-counted");
        assertThat(code(new HingedSlash("front", new Point(100, 300), FOOT, 10, TOP, false)))
                .isEqualTo("slash-off-outline");
        assertThat(code(CentreChange.wedge("hip", 10, FOLD).acceptingProtected().keeping("collar")))
                .isEqualTo("keep-unknown");
        assertThat(code(new HingedSlash("front", TOP, TOP.plus(new Point(0.3, 0)), 10, FOOT, false)))
                .isEqualTo("slash-without-length");
    }

    @Test
    void nothingIsDoneForNothing() throws Refusal {
        for (Alteration none : List.of(
                SeamChange.at("hip", 0),
                CentreChange.parallel("hip", 0, FOLD).acceptingProtected(),
                Lengthen.below("hip", 50, 0),
                new HingedSlash("front", TOP, FOOT, 0, new Point(240, 400), false),
                new ParallelSlash("front", TOP, FOOT, 0, new Point(240, 400), false),
                SpreadSlashes.parallel("hip", 0, Slash.of("front", FOOT, TOP)))) {
            Altered done = none.apply(SKIRT);
            assertThat(done.pattern()).isSameAs(SKIRT);
            assertThat(done.moved()).isEmpty();
            assertThat(done.findings()).isEmpty();
        }
    }

    @Test
    void amountsMustBeNumbers() {
        for (double no : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> SeamChange.at("hip", no)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> CentreChange.parallel("hip", no, FOLD))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Lengthen.below("hip", 1, no)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Lengthen.below("hip", no, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new ParallelSlash("front", TOP, FOOT, no, FOOT, false))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new HingedSlash("front", TOP, FOOT, no, FOOT, false))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> SpreadSlashes.hinged("hip", no, Slash.of("front", FOOT, TOP)))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> DartIntake.at("waist", no)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> DartToSeam.at("waist", no)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> SleeveWidth.at("arm", no)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> EdgeLength.slashed(FOLD, no)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new Share(EdgeRef.of("front", "side"), 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Slash.of("front", FOOT, TOP).withWeight(-1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DartShare("front", "dart", Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void oppositesHaveTheOppositeAmount() {
        for (Alteration change : List.of(
                Lengthen.below("hip", 50, 12),
                SeamChange.at("hip", 12),
                new ParallelSlash("front", TOP, FOOT, 12, FOOT, false),
                CentreChange.parallel("hip", 12, FOLD))) {
            String key = change instanceof HingedSlash ? "gap" : "amount";
            Alteration opposite = change.opposite().orElseThrow();
            assertThat(Double.parseDouble(opposite.note().settings().get(key))).isEqualTo(-12);
            assertThat(opposite.note().method()).isEqualTo(change.note().method());
            assertThat(Double.parseDouble(change.withAmount(7).note().settings().get(key)))
                    .isEqualTo(7);
        }
    }
}
