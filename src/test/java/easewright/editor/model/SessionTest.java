package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.ease.EaseLine;
import easewright.editor.paint.TableScene;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.print.ChangeWords;
import easewright.svg.disk.Fingerprint;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;

/** What is done on the table: tried, kept, left, undone, saved. */
class SessionTest extends SkirtSession {
    private String kept() {
        return session.kept().map(k -> k.words(session.desk())).orElse("");
    }

    @Test
    void whatWasKeptIsSaidUntilSomethingNewIsBegun() {
        List<Runnable> begun = List.of(
                () -> session.want(wanted().withAmount(5)),
                () -> session.chooseLevel("waist"),
                session::undo,
                () -> session.setWish("hip", OptionalDouble.of(70)));
        for (Runnable next : begun) {
            session.chooseLevel("hip");
            session.want(wanted().withAmount(20));
            assertThat(kept()).isEmpty();
            session.keep();
            assertThat(kept()).isEqualTo("Kept: hip +2\u00a0cm. The page Changes lists it.");
            session.setUnit(LengthUnit.INCH);
            session.point(Optional.empty());
            assertThat(kept()).isEqualTo("Kept: hip about +13/16\u00a0in. The page Changes lists it.");
            session.setUnit(LengthUnit.CM);
            next.run();
            assertThat(kept()).isEmpty();
            session.leave();
            assertThat(kept()).as("it does not come back").isEmpty();
        }
    }

    @Test
    void whatWasTakenBackIsNotSaidToBeKept() {
        session.want(wanted().withAmount(20));
        session.leave();
        assertThat(kept()).isEmpty();
        session.want(wanted().withAmount(-3000));
        session.keep();
        assertThat(kept()).as("refused").isEmpty();
    }

    @Test
    void typingTheBodyGivesTheEase() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(900), "Hip girth");
        assertThat(hip().ease().orElseThrow()).isCloseTo(hip().finished() - 900, within(1e-9));
        session.setBody(hip, OptionalDouble.empty(), "Hip girth");
        assertThat(hip().ease()).isEmpty();
    }

    @Test
    void aTrialChangesWhatIsSeenAndNothingElse() {
        double before = hip().finished();
        session.want(wanted().withAmount(24));
        assertThat(hip().finished()).isCloseTo(before + 24, within(0.01));
        assertThat(session.desk().isSaved()).isTrue();
        session.leave();
        assertThat(hip().finished()).isEqualTo(before);
    }

    @Test
    void keepingIsOneStepThatCanBeUndone() {
        var pattern = session.desk().pattern();
        double before = hip().finished();
        session.want(wanted().withAmount(24));
        session.keep();
        assertThat(session.desk().trial()).isEmpty();
        assertThat(wanted().amount()).isZero();
        assertThat(hip().finished()).isCloseTo(before + 24, within(0.01));
        assertThat(new ChangeWords(session.desk().words()).of(session.desk().pattern()))
                .hasSize(1);
        assertThat(session.desk().isSaved()).isFalse();
        session.undo();
        assertThat(session.desk().pattern()).isEqualTo(pattern);
        assertThat(session.desk().isSaved()).isTrue();
        session.redo();
        assertThat(hip().finished()).isCloseTo(before + 24, within(0.01));
    }

    @Test
    void undoingWhileTryingLeavesTheTrialAndNoStepBeforeIt() {
        var opened = session.desk().pattern();
        assertThat(session.desk().canUndo()).isFalse();
        session.want(wanted().withAmount(10));
        session.keep();
        var kept = session.desk().pattern();
        session.want(wanted().withAmount(24));
        assertThat(session.desk().trial()).isPresent();
        session.undo();
        assertThat(session.desk().trial()).isEmpty();
        assertThat(wanted().amount()).isZero();
        assertThat(session.desk().pattern()).isEqualTo(kept);
        assertThat(session.desk().canUndo()).isTrue();
        session.undo();
        assertThat(session.desk().pattern()).isEqualTo(opened);
        assertThat(session.desk().canUndo()).isFalse();
        session.want(wanted().withAmount(24));
        assertThat(session.desk().canUndo()).isTrue();
    }

    @Test
    void savingMarksThePresentStateAsSaved() {
        session.want(wanted().withAmount(10));
        session.keep();
        session.placed(Path.of("/tmp/skirt-of-mine.svg"), Fingerprint.of(new byte[0]));
        assertThat(session.desk().isSaved()).isFalse();
        session.saved(session.desk().pattern());
        assertThat(session.desk().isSaved()).isTrue();
        assertThat(session.desk().file().orElseThrow().name()).isEqualTo("skirt-of-mine.svg");
    }

    @Test
    void anAmountThatCannotBeIsRefusedWithAReason() {
        session.want(wanted().withAmount(-1500));
        assertThat(session.desk().refusedTrial()).isPresent();
        assertThat(session.desk().shownTrial()).isEmpty();
        session.keep();
        assertThat(session.desk().pattern().changes()).isEmpty();
    }

    @Test
    void aHandThatPullsOnIsRefusedAsBeforeAndOneThatGoesBackIsNot() {
        session.want(wanted().withAmount(-1500));
        var first = session.desk().refusedTrial().orElseThrow().refusal();
        session.want(wanted().withAmount(-1600));
        assertThat(session.desk().refusedTrial().orElseThrow().refusal()).isSameAs(first);
        session.want(wanted().withAmount(-20));
        assertThat(session.desk().shownTrial()).isPresent();
        session.want(wanted().withAmount(-1500).withCarry(false));
        assertThat(session.desk().refusedTrial().orElseThrow().refusal()).isNotSameAs(first);
    }

    @Test
    void seamsLeftOutStayWhereTheyAre() {
        List<Hold> holds = session.desk().holds();
        EdgeRef back = holds.stream().map(Hold::edge).findFirst().orElseThrow();
        var untouched =
                session.desk().pattern().piece(back.piece()).orElseThrow().outline();
        session.want(wanted().withLeftOut(Set.of(back)).withAmount(20));
        assertThat(session.desk().shown().piece(back.piece()).orElseThrow().outline())
                .isEqualTo(untouched);
    }

    @Test
    void theWishSaysWhatIsMissing() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(Math.rint(hip().finished()) - 30), "Hip girth");
        session.setWish("hip", OptionalDouble.of(50));
        double missing = hip().missing().orElseThrow();
        session.want(wanted().withAmount(missing));
        EaseRow row = EaseWords.row(
                hip(), session.desk().words(), true, Optional.empty(), new EaseFoot(), OptionalDouble.empty());
        assertThat(row.standing()).isEqualTo(EaseRow.Standing.MET);
        session.setWish("hip", OptionalDouble.empty());
        assertThat(hip().wish()).isEmpty();
    }

    @Test
    void everyWordOfTheWindowIsInTheBundle() {
        session.want(wanted().withAmount(12));
        assertThat(HereWords.outcome(session.desk())).doesNotContain("editor.").doesNotContain("{");
        session.keep();
        assertThat(new ChangeWords(session.desk().words()).of(session.desk().pattern()))
                .allSatisfy(line -> assertThat(line).doesNotContain("change.").doesNotContain("{"));
        for (EaseLine line : session.desk().reading().sheet().lines()) {
            EaseRow row =
                    EaseWords.row(line, session.desk().words(), true, Optional.empty(), new EaseFoot(), line.ease());
            assertThat(row.verdict() + row.percent() + row.classes() + row.minimums())
                    .doesNotContain("editor.")
                    .doesNotContain("{");
        }
    }

    /** What stands on the pieces adds up to what stands in the sheet. */
    @Test
    void theWidthsOnThePiecesSayHowOftenTheyCount() {
        TableScene scene = new TableScenes().of(session.desk());
        double hip = 0;
        for (TableScene.PieceSight piece : scene.pieces()) {
            for (TableScene.LevelSight level : piece.levels()) {
                Matcher label = java.util.regex.Pattern.compile("hip (\\d+) \u00d7 ([\\d.]+)\u00a0cm")
                        .matcher(level.label());
                hip += label.matches() ? Integer.parseInt(label.group(1)) * Double.parseDouble(label.group(2)) : 0;
            }
        }
        double girth =
                session.desk().reading().measures().girth("hip").orElseThrow().finished();
        assertThat(hip * 10).isCloseTo(girth, within(0.5));
    }

    private static Opened page(String width) throws Exception {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='" + width
                + "' viewBox='0 0 800 600'><path d='M100,100 H300 V400 H100 Z'/></svg>";
        return OpenedSample.drawn(svg, "page.svg");
    }

    /** A file is shown in the unit of its page until a unit is chosen; pixels say nothing. */
    @Test
    void theUnitIsThatOfTheFileUntilOneIsChosen() throws Exception {
        session.open(page("24in"));
        assertThat(session.desk().unit()).as("chosen from the start").isEqualTo(LengthUnit.CM);
        session.takeUnitsFromFiles();
        session.open(page("24in"));
        assertThat(session.desk().unit()).isEqualTo(LengthUnit.INCH);
        session.open(page("800px"));
        assertThat(session.desk().unit()).isEqualTo(LengthUnit.INCH);
        session.open(page("600mm"));
        assertThat(session.desk().unit()).isEqualTo(LengthUnit.CM);
        session.setUnit(LengthUnit.CM);
        session.open(page("24in"));
        assertThat(session.desk().unit()).as("now chosen").isEqualTo(LengthUnit.CM);
    }

    /** What failed is told until something else is done; what went well stays. */
    @Test
    void whatFailedIsNotSaidBesideWhatIsDoneSince() throws Exception {
        session.open(OpenedSample.skirt());
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        List<Runnable> done = List.of(
                session::keep,
                session::undo,
                session::redo,
                () -> session.setUnit(LengthUnit.INCH),
                () -> session.setDark(true),
                session::goOn);
        for (Runnable step : done) {
            session.say(true, "editor.said.failed", Map.of("file", "a.svg", "reason", "b"));
            session.point(Optional.empty());
            assertThat(session.desk().notice()).as("nothing was done yet").isPresent();
            step.run();
            assertThat(session.desk().notice()).isEmpty();
        }
        session.say(false, "editor.said.kept-again", Map.of());
        session.setDark(false);
        session.goOn();
        assertThat(session.desk().notice()).isPresent();
    }
}
