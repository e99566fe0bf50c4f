package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Lengthen;
import easewright.alter.Refusal;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class CourseTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void widenHipThenLengthen() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
        want(24);
        session.edit(lengthened(session.desk().pattern()));
    }

    private static Pattern lengthened(Pattern pattern) throws Refusal {
        return Lengthen.below("hip", 100, 30).apply(pattern).pattern();
    }

    private void want(double mm) {
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        session.keep();
    }

    private Course course() {
        return Course.of(session.desk());
    }

    private double hip() {
        return session.desk().reading().measures().girth("hip").orElseThrow().finished();
    }

    @Test
    void eachChangeIsToldWithItsAmountAndMayRiseOnlyAsLengthBeforeWidth() {
        List<Course.Line> lines = course().lines();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).words()).contains("hip").contains("+2.4");
        assertThat(lines.get(0).amount()).isEqualTo("+2.4\u00a0cm");
        assertThat(lines.get(0).mayRise()).isFalse();
        assertThat(lines.get(1).mayRise()).isTrue();
        assertThat(lines.get(0).maySink()).isTrue();
        assertThat(lines.get(1).maySink()).isFalse();
    }

    @Test
    void switchingOffAltersTheGirthAndKeepsTheLine() throws Exception {
        double wide = hip();
        Pattern both = session.desk().pattern();
        Recasting.on(session, course().switched(0, false));
        assertThat(hip()).isCloseTo(wide - 24, within(1e-6));
        assertThat(course().lines()).hasSize(2);
        assertThat(course().lines().get(0).on()).isFalse();
        Recasting.on(session, course().switched(0, true));
        assertThat(session.desk().pattern().pieces()).isEqualTo(both.pieces());
        session.undo();
        session.undo();
        assertThat(session.desk().pattern()).isEqualTo(both);
    }

    /** A change on one side makes pieces and seams that later ones name. */
    @Test
    void whatLeansOnAChangeMayGoWithIt() throws Exception {
        Session other = new Session(LengthUnit.CM, false);
        Path file = Path.of("src/test/resources/marking/one-side-trued.svg");
        other.open(Opened.of(new OpenFile(SvgFile.read(file), Optional.of(file), "one-side-trued.svg")));
        Course course = Course.of(other.desk());
        int trued = course.changes().size() - 1;
        assertThat(trued).isEqualTo(6);

        List<Step> off = course.switched(0, false);
        assertThat(catchThrowableOfType(StepRefused.class, () -> Recasting.on(other, off)))
                .isNotNull();
        Leaning leaning = course.leaning(off, 0, other.desk()).orElseThrow();
        assertThat(leaning.count())
                .as("the caps of two darts can be trued all the same")
                .isEqualTo(trued - 2);
        assertThat(leaning.words(other.desk())).contains("4 later changes");
        Recasting.on(other, leaning.steps());
        assertThat(Course.of(other.desk()).lines())
                .hasSize(trued + 1)
                .filteredOn(Course.Line::on)
                .hasSize(2);
        assertThat(other.desk().pattern().pieces())
                .extracting(Piece::name)
                .doesNotHaveDuplicates()
                .hasSize(3);

        other.undo();
        List<Step> without = course.without(0);
        Leaning gone = course.leaning(without, 0, other.desk()).orElseThrow();
        Recasting.on(other, gone.steps());
        assertThat(Course.of(other.desk()).lines()).hasSize(2).allMatch(Course.Line::on);
    }

    /** What comes to nothing is no longer in the record of the pattern, where later changes are counted. */
    @Test
    void whatComesToNothingIsSetAside() throws Exception {
        Session other = new Session(LengthUnit.CM, false);
        Path file = Path.of("src/test/resources/marking/one-side-trued.svg");
        other.open(Opened.of(new OpenFile(SvgFile.read(file), Optional.of(file), "one-side-trued.svg")));
        Course course = Course.of(other.desk());
        List<Step> nothing = course.withAmount(0, 0);
        Leaning leaning = course.leaning(nothing, 0, other.desk()).orElseThrow();
        assertThat(leaning.count()).isEqualTo(4);
        Recasting.on(other, leaning.steps());
        assertThat(Course.of(other.desk()).lines())
                .extracting(Course.Line::on)
                .containsExactly(false, false, false, true, false, true, false);

        Recasting.on(session, course().withAmount(0, 0));
        assertThat(course().lines()).extracting(Course.Line::on).containsExactly(false, true);
    }

    @Test
    void nothingLeansOnAListThatCanBeMade() {
        assertThat(course().leaning(course().switched(0, false), 0, session.desk()))
                .isEmpty();
    }

    @Test
    void whatIsSwitchedOffComesBackFromTheFile() throws Exception {
        Recasting.on(session, course().switched(0, false));
        byte[] written =
                session.desk().file().orElseThrow().svg().write(session.desk().pattern());
        Session other = new Session(LengthUnit.CM, false);
        other.open(Opened.of(new OpenFile(SvgFile.read(written, "again.svg"), Optional.empty(), "again.svg")));
        Course again = Course.of(other.desk());
        assertThat(again.lines()).isEqualTo(course().lines());
        double narrow = hip();
        Recasting.on(other, again.switched(0, true));
        assertThat(other.desk().reading().measures().girth("hip").orElseThrow().finished())
                .isCloseTo(narrow + 24, within(0.01));
    }

    @Test
    void lengthRisesBeforeWidthAndTheGirthIsTheSame() throws Exception {
        double wide = hip();
        Recasting.on(session, course().risen(1));
        assertThat(session.desk().pattern().changes().get(0).method()).isEqualTo("lengthen");
        assertThat(hip()).isCloseTo(wide, within(0.01));
    }

    @Test
    void anotherAmountAndTakingOut() throws Exception {
        double wide = hip();
        Recasting.on(session, course().withAmount(0, 40));
        assertThat(hip()).isCloseTo(wide + 16, within(0.01));
        Recasting.on(session, course().without(0));
        assertThat(hip()).isCloseTo(wide - 24, within(0.01));
        assertThat(course().lines()).hasSize(1);
    }

    @Test
    void whatCannotBeIsSaidAndNothingIsDifferent() {
        Desk before = session.desk();
        Course course = course();
        List<Step> wanted = course.withAmount(0, -3000);
        StepRefused refused = catchThrowableOfType(StepRefused.class, () -> Recasting.on(session, wanted));
        assertThat(session.desk()).isSameAs(before);
        assertThat(course.refused(refused, wanted, 0, before))
                .contains("nothing has changed")
                .doesNotContain("problem.")
                .doesNotContain("{");
        assertThat(course.refused(refused, wanted, 1, before)).contains("later change");
    }
}
