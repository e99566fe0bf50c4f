package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.text.LengthUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Seams at a level taken hold of and pulled. */
class PullingTest extends SkirtSession {
    @Test
    void holdsPointAwayFromTheCloth() {
        List<Hold> holds = session.desk().holds();
        // Two side seams drawn, each sewn twice: W3 of docs/sources.md counts four side-seam edges.
        assertThat(holds).hasSize(2);
        assertThat(Hold.sewn(holds)).isEqualTo(4);
        for (Hold hold : holds) {
            var outline =
                    session.desk().pattern().piece(hold.pieceId()).orElseThrow().outline();
            assertThat(outline.contains(hold.at().minus(hold.outward().times(2))))
                    .isTrue();
            assertThat(outline.contains(hold.at().plus(hold.outward().times(2))))
                    .isFalse();
        }
    }

    @Test
    void pullingASeamByFiveGivesFiveTimesItsSewnEdges() {
        List<Hold> holds = session.desk().holds();
        Hold hold = holds.get(0);
        Point start = hold.at();
        Pulling pulling = Pulling.begin(hold, holds, wanted(), start);
        Point hand = start.plus(hold.outward().times(5)).plus(new Point(0, 3));
        assertThat(pulling.amount(hand)).isCloseTo(20, within(1e-9));
    }

    @Test
    void aPullNearTheWishGoesToTheWish() {
        Pulling pulling = new Pulling(Point.ORIGIN, new Point(1, 0), 4, 0);
        assertThat(pulling.snapped(23.4, 1, LengthUnit.CM, OptionalDouble.of(24.5)))
                .isEqualTo(24.5);
        assertThat(pulling.snapped(37.4, 1, LengthUnit.CM, OptionalDouble.of(24.5)))
                .isEqualTo(35);
        assertThat(pulling.snapped(37.4, 0.25, LengthUnit.CM, OptionalDouble.of(24.5)))
                .as("from near")
                .isEqualTo(37);
        assertThat(pulling.snapped(24.6, 1, LengthUnit.INCH, OptionalDouble.empty()))
                .isCloseTo(25.4, within(1e-9));
    }

    /** One pixel after the other, wherever the hand took hold, comes to every amount as round as the pixels allow. */
    @Test
    void aPullPassesOverNoRoundAmount() {
        Random random = new Random(20260312);
        for (int round = 0; round < 200; round++) {
            LengthUnit unit = random.nextBoolean() ? LengthUnit.CM : LengthUnit.INCH;
            int sewn = 1 + random.nextInt(4);
            double scale = 0.3 + 3 * random.nextDouble();
            double from = 400 * random.nextDouble();
            Pulling pulling = new Pulling(new Point(from, 0), new Point(1, 0), sewn, 0);
            Set<Long> come = new HashSet<>();
            double step = unit == LengthUnit.CM ? 10 : 25.4 / 2;
            for (int pixel = 0; pixel * sewn / scale < 100 + 2 * step; pixel++) {
                double amount = pulling.amount(new Point(from + pixel / scale, 0));
                double snapped = pulling.snapped(amount, 1 / scale, unit, OptionalDouble.empty());
                assertThat(snapped).isCloseTo(amount, within(Math.max(step, 2 * sewn / scale)));
                if (Math.abs(snapped / step - Math.rint(snapped / step)) < 1e-9) {
                    come.add(Math.round(snapped / step));
                }
            }
            if (sewn / scale <= step) {
                assertThat(come).as("%s %s x %s", unit, sewn, scale).contains(0L, 1L, 2L, 3L, 4L, 5L, 6L, 7L);
            }
        }
    }

    /** A wrist lies at the corner of underarm seam and hem; the seams are what can be pulled there. */
    @Test
    void aLevelAtTheEndOfASeamStillTakesTheSeam() throws Exception {
        Sample bodice = Sample.all().get(1);
        session.open(Opened.of(new OpenFile(bodice.read(), Optional.empty(), bodice.fileName())));
        session.chooseLevel("wrist");
        assertThat(session.desk().holds()).hasSize(2);
    }
}
