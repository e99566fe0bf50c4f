package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Setting;
import easewright.alter.Taper;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OtherWayTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openTheSkirt() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
    }

    private static List<Way> ways() {
        return Ways.all();
    }

    private void want(String method, double mm) {
        OtherWay way = OtherWay.of(Ways.of(method).orElseThrow());
        session.want(session.desk()
                .wanted()
                .orElseThrow()
                .withOther(Optional.of(way))
                .withAmount(mm));
    }

    private void set(String key, String... texts) {
        Wanted wanted = session.desk().wanted().orElseThrow();
        session.want(wanted.withOther(wanted.other().map(o -> o.with(key, List.of(texts)))));
    }

    private double hip() {
        return session.desk()
                .shownReading()
                .measures()
                .girth("hip")
                .orElseThrow()
                .finished();
    }

    /** Every form is made of words and can be filled from what it offers. */
    @ParameterizedTest
    @MethodSource("ways")
    void everyWayHasAFormInWords(Way way) {
        want(way.method(), 10);
        Words words = session.desk().words();
        WayForm form = WayForm.of(session.desk().wanted().orElseThrow().other().orElseThrow(), session.desk());
        assertThat(form.what() + form.hint()).doesNotContain(way.method() + ".");
        for (WayForm.Field field : form.fields()) {
            assertThat(field.label() + field.hint()).as(field.key()).doesNotContain(".setting.");
            assertThat(field.options()).allSatisfy(o -> assertThat(o.label()).doesNotContain(".setting."));
            boolean offers = List.of(
                            Setting.Kind.EDGE,
                            Setting.Kind.SHARES,
                            Setting.Kind.PIECE,
                            Setting.Kind.NAME,
                            Setting.Kind.NAMES,
                            Setting.Kind.CHOICE)
                    .contains(field.kind());
            // There may be no dart and no sleeve at the level; the form then says so.
            boolean maybe = List.of(Setting.Kind.DARTS, Setting.Kind.PIECES).contains(field.kind());
            assertThat(maybe || field.options().isEmpty() != offers)
                    .as(field.key())
                    .isTrue();
        }
        assertThat(WayForm.ways(words)).anySatisfy(o -> assertThat(o.text()).isEqualTo(way.method()));
        assertThat(HereWords.outcome(session.desk()))
                .doesNotContain(".setting.")
                .doesNotContain("editor.");
    }

    @Test
    void aCentreLineMovesOnceItIsChosen() {
        double before = hip();
        want("centre", 12);
        assertThat(session.desk().trial()).isEmpty();
        assertThat(HereWords.outcome(session.desk())).contains("Centre line");
        set("edge", "skirt-back/centre back");
        assertThat(hip()).isCloseTo(before + 12, within(0.01));
        assertThat(session.desk().holds()).isEmpty();
        assertThat(HereWords.outcome(session.desk()))
                .as("the whole centre line moves, so the waist changes too")
                .contains("Other girths change too: waist +1.19");
        session.keep();
        assertThat(session.desk().pattern().changes().get(0).method()).isEqualTo("centre");
        assertThat(session.desk().wanted().orElseThrow().other()).isPresent();
    }

    @Test
    void theLevelStaysWithTheWay() {
        want("centre", 0);
        session.chooseLevel("waist");
        assertThat(session.desk().wanted().orElseThrow().other().map(OtherWay::method))
                .contains("centre");
    }

    private void go(String method) {
        Desk desk = session.desk();
        session.want(SeamsInFull.to(method, desk.wanted().orElseThrow(), desk));
    }

    /** In every setting of the few at the seams the form with all of them does the same, and leads back to the same. */
    @Test
    void theFormWithAllSettingsBeginsWithTheFewThatWereChosen() {
        Wanted usual = session.desk().wanted().orElseThrow();
        EdgeRef front = EdgeRef.of("skirt-front", "side");
        for (Taper taper : Taper.values()) {
            for (boolean carry : new boolean[] {true, false}) {
                for (Set<EdgeRef> out : List.of(Set.<EdgeRef>of(), Set.of(front))) {
                    for (Side side : Side.values()) {
                        Wanted few = usual.withTaper(taper)
                                .withCarry(carry)
                                .withEven(!carry && out.isEmpty())
                                .withLeftOut(out)
                                .withSide(side)
                                .withAmount(10);
                        session.want(few);
                        List<Piece> made = session.desk().shown().pieces();
                        go("seam");
                        assertThat(session.desk().wanted().orElseThrow().atSeams())
                                .isFalse();
                        assertThat(session.desk().shownTrial()).isPresent();
                        assertThat(session.desk().shown().pieces())
                                .as("%s", few)
                                .isEqualTo(made);
                        go("");
                        assertThat(session.desk().wanted()).contains(few);
                    }
                }
            }
        }
    }

    @Test
    void theFormAtTheSeamsOffersTheUsualFirstAndNotToKeepWhatIsChanged() {
        go("seam");
        assertThat(field("taper").options()).extracting(WayForm.Option::text).containsExactly("smooth", "straight");
        assertThat(field("keep").options())
                .extracting(WayForm.Option::text)
                .contains("waist")
                .doesNotContain("hip");
        assertThat(field("carry-to-hem").texts()).containsExactly("yes");
        set("keep", "waist");
        session.chooseLevel("waist");
        assertThat(field("keep").texts()).isEmpty();
        assertThat(field("carry-to-hem").texts()).isEmpty();
        assertThat(field("keep").options())
                .extracting(WayForm.Option::text)
                .contains("hip")
                .doesNotContain("waist");
    }

    /** What the few settings do not show holds on beside them, is told in a line, and goes away by one press. */
    @Test
    void whatIsSetBeyondTheFewHoldsOnAndIsTold() {
        Wanted few = session.desk().wanted().orElseThrow().withCarry(false).withAmount(16);
        session.want(few);
        List<Piece> plain = session.desk().shown().pieces();
        assertThat(SeamsInFull.stillSet(few, session.desk().words())).isEmpty();
        go("seam");
        Desk desk = session.desk();
        Piece front = desk.pattern().piece("skirt-front").orElseThrow();
        Point end = front.edge("side").orElseThrow().on(front.outline()).pointAtLength(320);
        set("keep", "waist");
        set("fixed", WayPlaces.text(desk, WayPlaces.meant(desk.pattern(), end, 40)));
        set("accept-protected", "yes");
        List<Piece> made = session.desk().shown().pieces();
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(made).isNotEqualTo(plain);

        go("");
        Wanted back = session.desk().wanted().orElseThrow();
        assertThat(back.atSeams()).isTrue();
        assertThat(session.desk().shown().pieces()).isEqualTo(made);
        assertThat(SeamsInFull.stillSet(back, session.desk().words()))
                .isEqualTo("Still set: Unchanged at waist; Fixed points (1); protected edges may move.");
        assertThat(WayPlaces.of(session.desk())).as("to be seen on the table").hasSize(1);
        assertThat(Unfinished.of(Unfinished.on(session.desk(), Begun.NOTHING).text())
                        .wanted())
                .as("kept from a crash")
                .contains(back);

        go("slash");
        assertThat(SeamsInFull.stillSet(
                        session.desk().wanted().orElseThrow(), session.desk().words()))
                .contains("waist");
        go("seam");
        assertThat(session.desk().shown().pieces()).isEqualTo(made);
        go("");
        session.chooseLevel("waist");
        assertThat(SeamsInFull.stillSet(
                        session.desk().wanted().orElseThrow(), session.desk().words()))
                .as("what is changed cannot stay as it is")
                .isEqualTo("Still set: Fixed points (1); protected edges may move.");

        session.want(SeamsInFull.withoutBeyond(back));
        assertThat(session.desk().shown().pieces()).isEqualTo(plain);
        session.want(back);
        session.keep();
        assertThat(SeamsInFull.stillSet(
                        session.desk().wanted().orElseThrow(), session.desk().words()))
                .as("places belong to one change only")
                .isEqualTo("Still set: Unchanged at waist; protected edges may move.");
    }

    @Test
    void lengthAimsAtNoGirthAndSaysWhichChange() {
        want("lengthen", 40);
        set("below", "100 mm");
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(HereWords.outcome(session.desk())).isEqualTo("No girth changes.");
    }

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
    void allThatCanTakePartDoesUntilSomeIsLeftOut() {
        session.chooseLevel("waist");
        want("dart", 10);
        WayForm.Field darts = darts();
        assertThat(darts.options()).hasSize(3);
        assertThat(darts.chosen()).hasSize(3);
        String first = darts.chosen().get(0);
        set("dart", darts.toggled(first).toArray(String[]::new));
        assertThat(darts().chosen()).hasSize(2).doesNotContain(first);
        assertThat(session.desk().shownTrial()).isPresent();
        // Taken in again it is as usual, and nothing need be said of it.
        assertThat(darts().toggled(first)).isEmpty();
        set("dart", first);
        assertThat(darts().toggled(first)).containsExactly(first);
    }

    private WayForm.Field darts() {
        return field("dart");
    }

    private WayForm.Field field(String key) {
        OtherWay way = session.desk().wanted().orElseThrow().other().orElseThrow();
        return WayForm.of(way, session.desk()).fields().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow();
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
