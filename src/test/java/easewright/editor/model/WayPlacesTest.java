package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.text.LengthUnit;
import org.junit.jupiter.api.Test;

/** Places that a form asks for, picked on the table. */
class WayPlacesTest extends FormAtWork {
    @Test
    void aCutIsPickedOnTheTable() {
        double before = hip();
        want("slash", 10);
        Desk desk = session.desk();
        Point waist = WayPlaces.meant(desk.pattern(), new Point(180, 128), 40);
        Point hem = WayPlaces.meant(desk.pattern(), new Point(180, 741), 40);
        assertThat(hem.distance(new Point(180, 730))).isLessThan(1e-9);
        set("slash", WayPlaces.text(desk, hem) + " > " + WayPlaces.text(desk, waist));
        assertThat(WayPlaces.of(session.desk())).hasSize(2);
        assertThat(hip()).isCloseTo(before + 10, within(0.01));
        session.keep();
        assertThat(WayPlaces.of(session.desk())).isEmpty();
    }

    @Test
    void aPickedPlaceIsWrittenInTheUnitOfTheOneWhoPicks() throws Exception {
        want("slash", 10);
        for (LengthUnit unit : LengthUnit.values()) {
            session.setUnit(unit);
            Desk desk = session.desk();
            Point picked = WayPlaces.meant(desk.pattern(), new Point(180, 741), 40);
            String text = WayPlaces.text(desk, picked);
            assertThat(text).endsWith(unit.symbol());
            set("slash", text + " > " + WayPlaces.text(desk, new Point(180, 128)));
            assertThat(WayPlaces.of(session.desk()).get(0).at().distance(picked))
                    .as(text)
                    .isLessThan(0.13);
        }
    }

    /** The places say on which piece they lie; it need not be named, and is not taken along to the next change. */
    @Test
    void thePieceIsTakenFromThePlaces() {
        want("parallel-slash", 10);
        assertThat(HereWords.outcome(session.desk()))
                .startsWith("Now choose the place where the slash meets the outline");
        Desk desk = session.desk();
        Point from = WayPlaces.meant(desk.pattern(), new Point(180, 128), 40);
        Point to = WayPlaces.meant(desk.pattern(), new Point(180, 741), 40);
        set("one", WayPlaces.text(desk, "one", from));
        set("other", WayPlaces.text(desk, "other", to));
        String named = field("piece").texts().get(0);
        assertThat(desk.pattern()
                        .piece(named)
                        .orElseThrow()
                        .outline()
                        .nearest(from)
                        .distance())
                .isLessThan(1e-6);
        assertThat(field("piece").missing()).isFalse();
        for (double x : new double[] {175, 185, 200}) {
            Point inside = new Point(x, 500);
            String part = WayPlaces.text(session.desk(), "beyond", inside);
            assertThat(part).as("in words, not in figures of the drawing").contains("/");
            set("beyond", part);
            Point meant = WayPlaces.of(session.desk()).get(2).at();
            assertThat((meant.x() - 180) * (x - 180))
                    .as("on its side of the slash")
                    .isPositive();
            assertThat(session.desk().shownTrial()).isPresent();
        }
        session.keep();
        assertThat(session.desk().pattern().changes().get(0).settings()).containsEntry("piece", named);
        assertThat(field("piece").texts()).isEmpty();
        assertThat(session.kept().orElseThrow().words(session.desk()))
                .startsWith("Kept: ")
                .contains("a gap of +1\u00a0cm", "Girths change: ", "hip +2")
                .doesNotContain("hip +1\u00a0cm");
    }

    @Test
    void aPlaceThatCannotBeReadIsRefusedInWordsAndKept() {
        want("slash", 10);
        set("slash", "somewhere > elsewhere");
        var refusal = session.desk().refusedTrial().orElseThrow().refusal();
        assertThat(session.desk().words().problem(refusal.code(), refusal.values()))
                .doesNotContain("problem.")
                .doesNotContain("{");
        assertThat(session.desk().wanted().orElseThrow().other().orElseThrow().texts("slash"))
                .containsExactly("somewhere > elsewhere");
    }

    @Test
    void aClickFarFromEveryLineMeansThePlaceItself() {
        Point free = new Point(200, 500);
        assertThat(WayPlaces.meant(session.desk().pattern(), free, 5)).isEqualTo(free);
        Point corner = session.desk().pattern().pieces().get(0).edges().get(0).from();
        assertThat(WayPlaces.meant(session.desk().pattern(), corner.plus(new Point(2, 1)), 5))
                .isEqualTo(corner);
    }

    @Test
    void aPlaceAskedForIsGivenOnceOrLeft() {
        Picking picking = session.picking();
        StringBuilder heard = new StringBuilder();
        picking.ask("cut", "one", p -> heard.append("given "), () -> heard.append("stopped "));
        picking.ask("cut", "two", p -> heard.append("two "), () -> heard.append("left "));
        picking.give(Point.ORIGIN);
        picking.give(Point.ORIGIN);
        picking.stop();
        assertThat(heard.toString()).isEqualTo("stopped two ");
    }

    @Test
    void aCutLiesBetweenItsPlaces() {
        session.chooseLevel("hip");
        want("slash", 10);
        assertThat(WayPlaces.cuts(session.desk())).isEmpty();
        set("slash", "Front/hem@25% > Front/waist@78%", "Front/hem@75% > Front/waist@22%");
        assertThat(WayPlaces.cuts(session.desk())).hasSize(2);
        assertThat(WayPlaces.cuts(session.desk()).get(0).length()).isGreaterThan(500);
    }
}
