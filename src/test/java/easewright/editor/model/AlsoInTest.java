package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.draft.Samples;
import easewright.editor.mark.EdgeEdits;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** One change in several sizes of a nest at once, tried, kept and worked on in the editor. */
class AlsoInTest extends NestAtWork {
    @Test
    void itIsOneStepInTheListAndOneUndo() throws Exception {
        Pattern before = session.desk().pattern();
        also("14");
        want(w -> w.withAmount(24));
        session.keep();
        assertThat(session.kept().orElseThrow().words(session.desk())).contains("Kept in sizes 10 and 14: hip +2.4");
        assertThat(session.desk().pattern().changes()).hasSize(2);
        Course course = Course.of(session.desk());
        assertThat(course.lines()).hasSize(1);
        assertThat(course.lines().get(0).words()).startsWith("In sizes 10 and 14: hip:");
        Recasting.on(session, course.withAmount(0, 30));
        assertThat(hip(session.desk().pattern(), "10") - hip(before, "10")).isCloseTo(30, within(0.01));
        assertThat(hip(session.desk().pattern(), "14") - hip(before, "14")).isCloseTo(30, within(0.01));
        assertThat(Course.of(session.desk()).lines()).hasSize(1);
        Recasting.on(session, Course.of(session.desk()).switched(0, false));
        assertThat(session.desk().pattern().pieces()).isEqualTo(before.pieces());
        assertThat(Course.of(session.desk()).lines()).singleElement().matches(l -> !l.on());
        session.undo();
        session.undo();
        session.undo();
        assertThat(session.desk().pattern()).isSameAs(before);
        session.redo();
        assertThat(session.desk().pattern().changes()).hasSize(2);
    }

    @Test
    void theFileGivesBackTheSameChanges() throws Exception {
        Pattern before = session.desk().pattern();
        also("12", "14");
        want(w -> w.withAmount(-12));
        session.keep();
        want(w -> w.withAlsoIn(Set.of()).withAmount(6));
        session.keep();
        List<Course.Line> lines = Course.of(session.desk()).lines();
        assertThat(lines).hasSize(2);
        open(written());
        assertThat(Course.of(session.desk()).lines()).isEqualTo(lines);
        List<Step> off = Course.of(session.desk()).switched(0, false);
        Recasting.on(session, off);
        assertThat(hip(session.desk().pattern(), "10") - hip(before, "10")).isCloseTo(6, within(0.01));
        assertThat(hip(session.desk().pattern(), "14") - hip(before, "14")).isCloseTo(0, within(1e-5));
        open(written());
        Recasting.on(session, Course.of(session.desk()).switched(0, true));
        assertThat(Course.of(session.desk()).lines()).isEqualTo(lines);
        Recasting.on(session, Course.of(session.desk()).risen(1));
        assertThat(Course.of(session.desk()).lines())
                .extracting(Course.Line::words)
                .containsExactly(lines.get(1).words(), lines.get(0).words());
    }

    /** Two changes made one after the other are two, though they are alike. */
    @Test
    void whatWasMadeSizeBySizeStaysApart() {
        for (String size : SIZES) {
            session.chooseSize(size);
            want(w -> w.withAmount(10));
            session.keep();
        }
        assertThat(Course.of(session.desk()).lines()).hasSize(3);
    }

    /** Size 14 is made so narrow that it bears less than size 10, which is asked first. */
    @Test
    void oneSizeRefusesAndNothingIsHalfKept() throws Exception {
        session.chooseSize("14");
        want(w -> w.withAmount(-200));
        session.keep();
        session.chooseSize("10");
        Pattern before = session.desk().pattern();
        also("12", "14");
        want(w -> w.withAmount(-590));
        Trial.Refused refused = session.desk().refusedTrial().orElseThrow();
        assertThat(refused.size()).contains("14");
        assertThat(refused.words(session.desk().words()))
                .startsWith("In size 14: ")
                .contains("No size was changed")
                .contains("The largest amount");
        session.keep();
        assertThat(session.desk().pattern()).isSameAs(before);
        double largest = refused.largest(session.desk().words()).orElseThrow();
        want(w -> w.withAmount(largest));
        assertThat(session.desk().shownTrial()).isPresent();
        want(w -> w.withAmount(-10));
        session.keep();
        Course course = Course.of(session.desk());
        List<Step> wanted = course.withAmount(1, -590);
        StepRefused not = catchThrowableOfType(StepRefused.class, () -> Recasting.on(session, wanted));
        assertThat(course.refused(not, wanted, 1, session.desk()))
                .startsWith("This was not done in any size")
                .contains("In size 14: ");
        Recasting.on(session, course.withAmount(1, not.why().largest().orElseThrow()));
        assertThat(Course.of(session.desk()).lines()).hasSize(2);
        want(w -> w.withAlsoIn(Set.of()).withAmount(-590));
        assertThat(session.desk().refusedTrial().map(Trial.Refused::size)).isNotEqualTo(Optional.of(Optional.of("14")));
    }

    @Test
    void aSizeWithoutTheMatchingPlaceSaysSo() throws Exception {
        Pattern nest = session.desk().pattern();
        session.edit(EdgeEdits.rename(nest, "skirt-back-14", "side", "seam at the hip"));
        also("12", "14");
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))).withAmount(10));
        assertThat(session.desk()
                        .refusedTrial()
                        .orElseThrow()
                        .words(session.desk().words()))
                .startsWith("In size 14: ")
                .contains("side")
                .contains("Back 14");
        also("12");
        assertThat(session.desk().shownTrial()).isPresent();
        also("12");
        want(way("slash", Map.of("slash", List.of("150,730 > Back 10/waist@60mm"))));
        assertThat(session.desk()
                        .refusedTrial()
                        .orElseThrow()
                        .words(session.desk().words()))
                .startsWith("In size 12: The place 150,730");
    }

    @Test
    void aSizeIsOfferedThatHasPiecesLikeThese() {
        assertThat(AlsoIn.offered(session.desk())).containsExactly("12", "14");
        session.chooseSize("12");
        assertThat(AlsoIn.offered(session.desk())).containsExactly("10", "14");
        Pattern nest = session.desk().pattern();
        List<Piece> other = nest.pieces().stream()
                .map(p -> p.size().equals(Optional.of("14")) ? p.withName("Other " + p.name()) : p)
                .toList();
        session.edit(nest.withPieces(other));
        assertThat(AlsoIn.offered(session.desk())).containsExactly("10");
        also("14");
        assertThat(session.desk().sizesTaking()).containsExactly("12");
    }

    @Test
    void theTicksStayAndTheSizeAtWorkChangesPlacesWithOneOfThem() {
        also("14");
        want(w -> w.withAmount(20));
        session.chooseSize("14");
        assertThat(session.desk().sizesTaking()).containsExactly("10", "14");
        assertThat(session.desk().wanted().orElseThrow().alsoIn()).containsExactly("10");
        session.chooseLevel("waist");
        session.chooseSize("12");
        assertThat(session.desk().sizesTaking()).containsExactly("10", "12");
        session.leave();
        assertThat(session.desk().sizesTaking()).containsExactly("10", "12");
    }

    @Test
    void whatIsChosenIsTakenAlongToTheSizeThatComesToWork() {
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side")))
                .withBeyond(Map.of("fixed", List.of("Back 10/side@400mm"))));
        session.chooseSize("14");
        Wanted there = session.desk().wanted().orElseThrow();
        assertThat(there.leftOut()).containsExactly(EdgeRef.of("skirt-front-14", "side"));
        assertThat(there.beyond()).containsEntry("fixed", List.of("skirt-back-14/side@400mm"));
        want(way("slash", Map.of("slash", List.of("150,730 > Back 14/waist@60mm"))));
        session.chooseSize("10");
        assertThat(session.desk().wanted().orElseThrow().leftOut())
                .as("also where a place cannot be taken along")
                .containsExactly(EdgeRef.of("skirt-front-10", "side"));
    }

    @Test
    void aSizeBeforeTheNameIsOfferedLikeOneBehindIt() throws Exception {
        String nest = Samples.files().get("skirt-sizes.svg");
        String named = nest.replaceAll("name=\"(Back|Front|Waistband) (10|12|14)\"", "name=\"$2 $1\"");
        assertThat(named).isNotEqualTo(nest);
        session.open(OpenedSample.drawn(named, "nest.svg"));
        session.chooseLevel("hip");
        assertThat(AlsoIn.offered(session.desk())).containsExactly("12", "14");
        also("14");
        want(w -> w.withAmount(10));
        assertThat(session.desk().shownTrial().orElseThrow().sizes()).containsExactly("10", "14");
    }

    @Test
    void aCrashLeavesTheTicksBehind() {
        Desk opened = session.desk();
        also("12");
        want(w -> w.withAmount(20));
        Desk trying = session.desk();
        Desk again = Unfinished.of(Unfinished.on(trying, Begun.NOTHING).text()).laidOn(opened);
        assertThat(again.sizesTaking()).containsExactly("10", "12");
        assertThat(again.shown()).isEqualTo(trying.shown());
        want(w -> w.withAmount(0));
        Begun typed = new Begun(
                "ease",
                List.of(new Begun.Typed("", "amount", "Change", "2,", true)),
                Optional.empty(),
                Optional.empty());
        Unfinished half = Unfinished.of(Unfinished.on(session.desk(), typed).text());
        assertThat(half.laidOn(opened).sizesTaking())
                .as("while the amount is still typed")
                .containsExactly("10", "12");
    }
}
