package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.text.Words;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OtherWayTest extends FormAtWork {
    private static List<Way> ways() {
        return Ways.all();
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
        assertThat(WayForm.ways(session.desk(), session.desk().wanted().orElseThrow()))
                .anySatisfy(o -> assertThat(o.text()).isEqualTo(way.method()));
        assertThat(HereWords.outcome(session.desk()))
                .doesNotContain(".setting.")
                .doesNotContain("editor.");
    }

    @Test
    void aCentreLineMovesOnceItIsChosen() {
        double before = hip();
        want("centre", 12);
        assertThat(session.desk().trial()).isEmpty();
        assertThat(HereWords.outcome(session.desk())).contains("choose the centre line");
        set("edge", "skirt-back/centre back");
        assertThat(hip()).isCloseTo(before + 12, within(0.01));
        assertThat(session.desk().holds()).isEmpty();
        assertThat(HereWords.outcome(session.desk()))
                .as("the whole centre line moves, so the waist changes too")
                .contains("Other girths change too: waist +1.2");
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

    @Test
    void lengthAimsAtNoGirthAndSaysWhichChange() {
        want("lengthen", 40);
        set("below", "100 mm");
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(HereWords.outcome(session.desk())).isEqualTo("No girth changes.");
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

    /** A skirt has darts and no sleeve; without the pieces that have darts, nothing can be taken from them. */
    @Test
    void onlyWaysThatThePiecesAllowAreOffered() {
        assertThat(offered())
                .contains("dart", "dart-to-seam", "slash", "lengthen")
                .doesNotContain("sleeve");
        session.edit(session.desk()
                .pattern()
                .withPieces(session.desk().pattern().pieces().stream()
                        .filter(p -> p.darts().isEmpty())
                        .toList()));
        assertThat(offered()).contains("slash").doesNotContain("dart", "dart-to-seam");
        want("sleeve", 10);
        assertThat(offered()).as("what is chosen can be seen").contains("sleeve");
    }

    private List<String> offered() {
        return WayForm.ways(session.desk(), session.desk().wanted().orElseThrow()).stream()
                .map(WayForm.Option::text)
                .toList();
    }
}
