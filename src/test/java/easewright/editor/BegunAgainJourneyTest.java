package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Ways;
import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.editor.model.Sample;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Piece;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What was begun when the program ended is begun again: tried, marked, cut. */
class BegunAgainJourneyTest extends BegunAgainJourney {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Test
    void aTrialOnASampleIsATrialOnASample(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        bringBack(robot, endedWith("amount=20.0"));
        assertThat(desk().isSaved()).isTrue();
        assertThat(desk().shownTrial()).isPresent();
        assertThat(said())
                .contains("is open again as it comes", "is on the table again")
                .doesNotContain("Save it");
        answers.asked.clear();
        robot.interact(() -> app.files().openSample(Sample.all().get(1)));
        until(d -> !d.file().orElseThrow().name().startsWith("skirt"));
        assertThat(answers.asked).isEmpty();
    }

    /** Whether it was turned to by mouse, with nothing else in hand, and of marking its part. */
    @Test
    void thePageThatWasOpenIsOpenAgain(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        until(d -> !d.isSaved());
        robot.clickOn("#page-changes");
        bringBack(robot, endedWith("page=changes"));
        assertThat(robot.lookup("#page-changes").queryAs(ToggleButton.class).isSelected())
                .isTrue();
        assertThat(robot.lookup("#changes").query().isVisible()).isTrue();

        robot.clickOn("#page-marks").clickOn("#step-seams");
        bringBack(robot, endedWith("mark.step=SEAMS"));
        assertThat(robot.lookup("#marks").query().isVisible()).isTrue();
        assertThat(robot.lookup("#step-seams").queryAs(ToggleButton.class).isSelected())
                .isTrue();
        assertThat(said()).as("nothing was half marked").doesNotContain("half marked");
    }

    private static Point middle(Box box) {
        return new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    }

    /** A dart of which two places are shown; the third makes it. */
    @Test
    void twoPlacesOfADartAreShownAgainWithTheToolInHand(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#page-marks").clickOn("#step-pieces").clickOn("#tool-dart");
        Piece front = desk().pattern().pieces().get(0);
        Point corner = front.outline().segments().get(0).start();
        Point end = front.outline().segments().get(0).end();
        Point one = corner.plus(end.minus(corner).times(0.4));
        Point two = corner.plus(end.minus(corner).times(0.5));
        robot.clickOn(onScreen(robot, one)).clickOn(onScreen(robot, two));
        String hint = robot.lookup("#hint-bar .label").queryAs(Label.class).getText();
        int darts = front.darts().size();
        bringBack(robot, endedWith("mark.place.1.kind"));

        assertThat(desk().isSaved()).isTrue();
        assertThat(said()).contains("What was half marked is as it was");
        assertThat(robot.lookup("#hint-bar .label").queryAs(Label.class).getText())
                .isEqualTo(hint);
        assertThat(robot.lookup("#table").query().isFocused()).isTrue();
        Point inside = middle(front.outline().box());
        robot.clickOn(onScreen(robot, inside));
        until(d -> d.pattern().piece(front.id()).orElseThrow().darts().size() == darts + 1);
        assertThat(desk().pattern()
                        .piece(front.id())
                        .orElseThrow()
                        .darts()
                        .get(darts)
                        .point())
                .satisfies(p -> assertThat(p.distance(inside)).isLessThan(5));
    }

    @Test
    void aCutWithOneEndAsksForTheOther(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.interact(() -> app.session()
                .want(desk().wanted().orElseThrow().withOther(Ways.of("slash").map(OtherWay::of))));
        robot.clickOn("#pick-slash");
        Piece front = desk().pattern().pieces().get(0);
        robot.clickOn(onScreen(robot, front.outline().segments().get(0).at(0.5)));
        assertThat(app.session().picking().askProperty().get().orElseThrow().from())
                .isPresent();
        Optional<Point> from =
                app.session().picking().askProperty().get().orElseThrow().from();
        bringBack(robot, endedWith("cut.from"));
        assertThat(app.session().picking().askProperty().get().orElseThrow().from())
                .isEqualTo(from);
        assertThat(said()).contains("click where it ends");
        int across = front.outline().segments().size() / 2;
        robot.clickOn(onScreen(robot, front.outline().segments().get(across).at(0.5)));
        until(d -> d.wanted().orElseThrow().other().orElseThrow().texts("slash").size() == 1);
    }

    /** What was kept has marks, and the user's drawing has none: it is still not to be replaced unasked. */
    @Test
    void aDrawingOfTheUsersOwnIsStillNotReplacedUnasked(FxRobot robot) throws Exception {
        Path bare = Files.writeString(
                folder.resolve("bare.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='300mm' viewBox='0 0 300 300'>"
                        + "<path d='M50 50H250V250H50Z' fill='none' stroke='black'/></svg>");
        byte[] asDrawn = Files.readAllBytes(bare);
        robot.interact(() -> app.files().open(bare));
        until(Desk::isOpen);
        robot.interact(() -> app.session().setGarment("skirt"));
        bringBack(robot, endedWith("bare.svg"));
        assertThat(desk().isSaved()).isFalse();
        // What is new in it against the file, the window does not know any more, and does not say.
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> kept().size() == 1 && app.files().savingProperty().get().isEmpty());
        assertThat(robot.lookup(".top-bar .quiet").queryAs(Label.class).getText())
                .isEqualTo("not saved yet");
        robot.interact(() -> app.files().save());
        assertThat(answers.asked).contains("save bare-fitted.svg");
        assertThat(bare).hasBinaryContent(asDrawn);
    }
}
