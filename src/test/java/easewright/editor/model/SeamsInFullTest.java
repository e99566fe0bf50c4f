package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Taper;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The form with all settings of a change at the seams, and the few of them that are usual. */
class SeamsInFullTest extends FormAtWork {
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
}
