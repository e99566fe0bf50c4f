package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The legs of a dart are sewn to one another: truing makes them equal (docs/sources.md 4.5), the seam keeps its length. */
class DartLegsTest {
    private static double difference(Dart dart) {
        return dart.mouth1().distance(dart.point()) - dart.mouth2().distance(dart.point());
    }

    @Test
    void unequalLegsAreFoundBothWhereItMattersAndWhereItIsLittle() {
        for (Piece piece : List.of(HandDrawn.front(), HandDrawn.back())) {
            Pattern pattern = Cloths.pattern(List.of(), piece);
            Proposal found = Panels.only(pattern, "dart-legs-differ");
            double legs = Math.abs(difference(piece.darts().get(0)));
            assertThat(found.finding().values()).containsEntry("dart", "dart");
            assertThat((Double) found.finding().values().get("difference")).isCloseTo(legs, within(1e-9));
            assertThat(Truing.isLittle(found.finding())).isEqualTo(legs < 1.5);
            assertThat(Panels.proposals(pattern, "dart-seam-bends"))
                    .as("redrawn with the legs")
                    .isEmpty();
        }
    }

    @Test
    void legsAreMadeEqualTheWaistKeepsItsLengthAndTheAllowanceIsEven() throws Refusal {
        for (Piece piece : List.of(HandDrawn.front(), HandDrawn.back(), Cloths.reversed(HandDrawn.back()))) {
            Pattern before = Cloths.pattern(List.of(), piece);
            Altered done = Panels.only(before, "dart-legs-differ").apply(before);
            Piece after = done.pattern().pieces().get(0);
            Dart dart = after.darts().get(0);
            assertThat(difference(dart)).isCloseTo(0, within(1e-6));
            assertThat(dart.point()).isEqualTo(piece.darts().get(0).point());
            assertThat(after.outline().nearest(dart.mouth1()).distance()).isLessThan(1e-9);
            assertThat(after.outline().nearest(dart.mouth2()).distance()).isLessThan(1e-9);
            assertThat(Cloths.sewn(after, "waist")).isCloseTo(Cloths.sewn(piece, "waist"), within(1e-3));
            double[] wide = HandDrawn.allowance(after, "waist");
            assertThat(wide[0]).isGreaterThan(HandDrawn.ALLOWANCE - 0.2);
            assertThat(wide[1]).isLessThan(HandDrawn.ALLOWANCE + 0.2);
            assertThat(Truing.proposals(done.pattern())).as("folded it is true").isEmpty();
            assertThat(OneCurve.farthest(piece, after))
                    .as("in one curve on each side, however far the mouth was moved")
                    .isPresent();
            Trued made = (Trued) Ways.from(done.pattern().changes().get(0));
            Piece back = made.opposite()
                    .orElseThrow()
                    .apply(done.pattern())
                    .pattern()
                    .pieces()
                    .get(0);
            assertThat(Worst.apart(back.outline(), piece.outline())).isLessThan(1e-6);
            assertThat(difference(back.darts().get(0)))
                    .isCloseTo(difference(piece.darts().get(0)), within(1e-6));
        }
    }

    /** Also a dart that is only marked, and one that is drawn by the cutting line. */
    @ParameterizedTest
    @CsvSource({"2, STITCHING", "-1, STITCHING", "-3, STITCHING", "2, CUTTING", "-1, CUTTING"})
    void legsThatAreOnlyMarkedAreMadeEqualToo(double aside, easewright.pattern.LineKind kind) throws Refusal {
        Piece plain = Panels.slanted("front", 600, 90, 90);
        Point one = new Point(90, 0);
        Point two = new Point(110, 0);
        Dart dart = new Dart("d", one, two, new Point(100 + 5 * aside, 90), Optional.empty(), Optional.of("waist"));
        Piece piece = plain.toBuilder().darts(List.of(dart)).drawn(kind, 10).build();
        Pattern before = Cloths.pattern(List.of(), piece);
        Altered done = Panels.only(before, "dart-legs-differ").apply(before);
        Piece after = done.pattern().pieces().get(0);
        assertThat(Panels.proposals(done.pattern(), "dart-legs-differ")).isEmpty();
        assertThat(Cloths.sewn(after, "waist")).isCloseTo(Cloths.sewn(piece, "waist"), within(0.02));
        assertThat(after.darts().get(0).point()).isEqualTo(dart.point());
    }

    /** A dart that leans too much is left as it is, and the reason says what to do. */
    @Test
    void legsOfALeaningDartStay() {
        Dart dart = new Dart(
                "d", new Point(90, 0), new Point(110, 0), new Point(40, 90), Optional.empty(), Optional.of("waist"));
        Piece piece = Panels.slanted("front", 600, 90, 90).toBuilder()
                .darts(List.of(dart))
                .build();
        Pattern pattern = Cloths.pattern(List.of(), piece);
        Proposal found = Panels.only(pattern, "dart-legs-differ");
        assertThat(Cloths.refusal(found.truing(), pattern).code()).isEqualTo("dart-legs-stay-apart");
    }

    @Test
    void equalLegsAreLeftAlone() {
        Piece piece = Panels.slanted("front", 600, 90, 90).toBuilder()
                .darts(List.of(Panels.DART))
                .build();
        assertThat(Panels.proposals(Cloths.pattern(List.of(), piece), "dart-legs-differ"))
                .isEmpty();
    }
}
