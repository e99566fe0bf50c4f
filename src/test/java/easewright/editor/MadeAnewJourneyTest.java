package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.file.Asking;
import easewright.editor.model.Desk;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.SetAside;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** While changes are made again the window goes on, and whatever is done there meanwhile holds. */
class MadeAnewJourneyTest extends Journey {
    private Keys keys;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
        keys = new Keys(shown);
    }

    /** Two changes of the skirt, shown in their list. */
    private Pattern changed(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        for (double mm : List.of(20.0, 12.0)) {
            robot.interact(
                    () -> app.session().want(desk().wanted().orElseThrow().withAmount(mm)));
            robot.interact(app.session()::keep);
        }
        until(d -> d.pattern().changes().size() == 2);
        robot.clickOn("#page-changes");
        return desk().pattern();
    }

    private static CheckBox on(FxRobot robot, int line) {
        return robot.lookup("#change-on-" + line).queryAs(CheckBox.class);
    }

    private boolean isMaking() {
        return app.files()
                .background()
                .workProperty()
                .get()
                .filter(w -> w.what().equals("making"))
                .isPresent();
    }

    @Test
    void whatIsSavedHasWhatWasAskedForBefore(FxRobot robot) throws Exception {
        Pattern before = changed(robot);
        Path saved = folder.resolve("made-anew.svg");
        answers.toSave.add(saved);
        robot.interact(() -> {
            on(robot, 0).fire();
            assertThat(isMaking()).isTrue();
            assertThat(desk().pattern()).as("not yet").isSameAs(before);
            app.files().save();
        });
        until(Desk::isSaved);
        assertThat(SvgFile.read(saved).pattern().changes()).hasSize(1);
    }

    @Test
    void theQuestionBeforeLeavingWaitsForIt(FxRobot robot) throws Exception {
        changed(robot);
        robot.interact(() -> app.session().saved(desk().pattern()));
        answers.leave.add(Asking.Leave.STAY);
        robot.interact(() -> {
            on(robot, 0).fire();
            app.files().leaving(stage::hide);
        });
        until(d -> d.pattern().changes().size() == 1);
        untilMade();
        assertThat(answers.asked).contains("leave skirt.svg");
        assertThat(stage.isShowing()).isTrue();
    }

    @Test
    void toUndoGivesItUp(FxRobot robot) throws Exception {
        Pattern before = changed(robot);
        robot.interact(() -> {
            on(robot, 0).fire();
            on(robot, 1).fire();
            app.session().undo();
            assertThat(isMaking()).isFalse();
        });
        untilMade();
        assertThat(desk().pattern()).isSameAs(before);
        assertThat(on(robot, 0).isSelected()).isTrue();
        assertThat(on(robot, 1).isSelected()).isTrue();
        robot.interact(app.session()::undo);
        assertThat(desk().pattern().changes()).as("as before it was asked for").hasSize(1);
    }

    @Test
    void whatIsDoneMeanwhileStays(FxRobot robot) throws Exception {
        Pattern before = changed(robot);
        ChangeNote second = before.changes().get(1);
        robot.interact(() -> {
            on(robot, 0).fire();
            app.session().setBody(before.level("hip").orElseThrow(), OptionalDouble.of(987), "Hip girth");
        });
        until(d -> d.pattern().changes().size() == 1);
        assertThat(desk().pattern().changes()).containsExactly(second);
        assertThat(desk().pattern().body().girth("hip")).hasValue(987);
        // A change that was taken out in the meantime is not the one that comes to stand in its line.
        robot.interact(() -> {
            robot.lookup("#change-remove-0").queryButton().fire();
            on(robot, 0).fire();
        });
        until(d -> d.pattern().aside().isEmpty());
        untilMade();
        assertThat(desk().pattern().changes()).containsExactly(second);
    }

    @Test
    void anAmountThatIsRefusedLaterStaysAsItWasTyped(FxRobot robot) throws Exception {
        Pattern before = changed(robot);
        robot.interact(() -> robot.lookup("#change-amount-0").query().requestFocus());
        keys.fill("-3 m");
        untilMade();
        TextField amount = robot.lookup("#change-amount-0").query();
        assertThat(amount.getText()).isEqualTo("-3 m");
        assertThat(complains(robot, "#change-0")).isTrue();
        assertThat(desk().pattern()).isSameAs(before);
        keys.press(KeyCode.ESCAPE);
        assertThat(amount.getText()).isEqualTo("+2\u00a0cm");
    }

    /** Whoever waits gives it up by Escape, from wherever the keys are. */
    @Test
    void escapeGivesUpWhatIsGoingOn(FxRobot robot) throws Exception {
        changed(robot);
        CountDownLatch held = new CountDownLatch(1);
        AtomicInteger stopped = new AtomicInteger();
        robot.interact(() -> app.files()
                .background()
                .making(
                        () -> {
                            held.await();
                            return 0;
                        },
                        made -> {},
                        stopped::incrementAndGet));
        WaitForAsyncUtils.waitFor(
                20, TimeUnit.SECONDS, () -> robot.lookup("#busy").query().isVisible());
        robot.interact(() -> robot.lookup("#change-amount-0").query().requestFocus());
        keys.press(KeyCode.ESCAPE);
        assertThat(stopped).hasValue(1);
        assertThat(robot.lookup("#busy").query().isVisible()).isFalse();
        assertThat(isMaking()).isFalse();
        held.countDown();
    }

    /** What is offered beside a change that was refused is about the list as it was: what is made meanwhile stays. */
    @Test
    void whatIsOfferedOfAnEarlierListUndoesNothing(FxRobot robot) throws Exception {
        Path file = Files.copy(Path.of("src/test/resources/marking/one-side-trued.svg"), folder.resolve("earlier.svg"));
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        robot.clickOn("#page-changes");
        int last = desk().pattern().changes().size() - 1;
        ChangeNote first = desk().pattern().changes().get(0);
        ChangeNote other = desk().pattern().changes().get(last);
        Button letGo = robot.lookup("#change-lean-0").queryButton();
        AtomicInteger offers = new AtomicInteger();
        robot.interact(() -> {
            letGo.visibleProperty().addListener(o -> {
                if (letGo.isVisible() && offers.getAndIncrement() == 0) {
                    letGo.fire();
                }
            });
            on(robot, 0).fire();
            on(robot, last).fire();
        });
        untilMade();
        assertThat(offers).hasValue(1);
        assertThat(desk().pattern().aside()).extracting(SetAside::note).containsExactly(other);
        assertThat(desk().pattern().changes()).as("asked about anew").contains(first);
        Button anew = robot.lookup("#change-lean-0").queryButton();
        assertThat(isShown(anew)).isTrue();
        robot.interact(anew::fire);
        untilMade();
        assertThat(desk().pattern().aside()).extracting(SetAside::note).contains(first, other);
    }
}
