package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Ways;
import easewright.editor.file.Asking;
import easewright.editor.model.Desk;
import easewright.editor.model.OtherWay;
import easewright.editor.model.Sample;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Level;
import easewright.pattern.Piece;
import easewright.svg.disk.KeptWork;
import easewright.svg.disk.Recovery;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What was begun when the program ended is begun again: typed, marked, cut, tried. */
class BegunAgainJourneyTest extends KeptJourney {
    private static final PseudoClass WAITING = PseudoClass.getPseudoClass("waiting");

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    /** What another window would find if the program ended as soon as this has been kept. */
    private KeptWork endedWith(String text) throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> {
            List<Path> all = kept();
            return all.size() == 1
                    && Files.readString(all.get(0), StandardCharsets.ISO_8859_1).contains(text);
        });
        Path other = Files.createTempDirectory(folder, "other");
        Path recovery = Files.createDirectories(other.resolve("recovery"));
        Path left = kept().get(0);
        Files.copy(left, recovery.resolve(left.getFileName()));
        try (Recovery next = new Recovery(other)) {
            return next.leftBehind().get(0);
        }
    }

    /** Puts something else on the table, and then what was left behind. */
    private void bringBack(FxRobot robot, KeptWork work) throws Exception {
        answers.leave.add(Asking.Leave.WITHOUT_SAVING);
        int other = name(work).startsWith("bodice") ? 0 : 1;
        robot.interact(() -> app.files().openSample(Sample.all().get(other)));
        until(d -> d.isOpen() && !d.file().orElseThrow().name().equals(name(work)));
        robot.interact(() -> app.files().restore(work, () -> {}));
        until(d -> d.file().orElseThrow().name().equals(name(work)));
    }

    private static String name(KeptWork work) {
        return work.original().getFileName().toString();
    }

    private static TextField field(FxRobot robot, String id) {
        return robot.lookup(id).queryAs(TextField.class);
    }

    private static boolean waits(FxRobot robot, String id) {
        return field(robot, id).getPseudoClassStates().contains(WAITING);
    }

    @Test
    void aHalfTypedMeasurementStandsInItsFieldAndWaits(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("10");
        String before = line("hip").body().toString();
        bringBack(robot, endedWith("text=10"));

        assertThat(desk().isSaved()).as("a sample to which nothing was done").isTrue();
        assertThat(said()).contains("is open again as it comes", "stands in its field again");
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(waits(robot, "#body-hip")).isTrue();
        assertThat(field(robot, "#body-hip").isFocused()).isTrue();
        assertThat(robot.lookup("#ease-hip .complaint").queryAllAs(Label.class))
                .anyMatch(l -> l.isVisible() && l.getText().contains("not taken yet"));

        // Neither looking elsewhere nor another size of its row takes it or takes it away.
        robot.clickOn("#page-notes");
        robot.clickOn("#page-ease");
        robot.interact(() -> app.session().setUnit(easewright.text.LengthUnit.INCH));
        robot.interact(() -> app.session().setUnit(easewright.text.LengthUnit.CM));
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(line("hip").body().toString()).isEqualTo(before);

        robot.clickOn("#body-hip").push(KeyCode.END).write("4").push(KeyCode.ENTER);
        until(d -> line("hip").body().isPresent());
        assertThat(line("hip").body().orElseThrow()).isCloseTo(1040, within(1e-9));
        assertThat(waits(robot, "#body-hip")).isFalse();
    }

    /** What is typed in the window for prints waits until that is opened, also for a second crash. */
    @Test
    void whatIsTypedForAPrintStandsInItsFieldOnceThatIsOpen(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#print");
        robot.clickOn("#print-kind-report");
        robot.clickOn("#print-cloth").push(KeyCode.SHORTCUT, KeyCode.A).write("7");
        KeptWork work = endedWith("text=7");
        robot.push(KeyCode.ESCAPE).push(KeyCode.ESCAPE);
        bringBack(robot, work);
        assertThat(said()).contains("half typed for the print");
        assertThat(desk().isSaved()).isTrue();
        endedWith("text=7");

        robot.clickOn("#print");
        assertThat(field(robot, "#print-cloth").getText()).isEqualTo("7");
        assertThat(waits(robot, "#print-cloth")).isTrue();
        assertThat(field(robot, "#print-cloth").isFocused()).isTrue();
        assertThat(robot.lookup("#print-cloth").queryAs(Node.class).getParent().isVisible())
                .as("its part is shown")
                .isTrue();
        robot.clickOn("#print-cloth").push(KeyCode.END).write("0").push(KeyCode.ENTER);
        assertThat(waits(robot, "#print-cloth")).isFalse();
        assertThat(field(robot, "#print-cloth").getText()).startsWith("70");
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> kept().isEmpty());
    }

    /** What was typed for one thing is not taken for another that comes into its place. */
    @Test
    void whatWaitsIsNotTakenForAnotherLevelOrUnit(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("10");
        robot.interact(() -> field(robot, "#amount").setText("4,"));
        bringBack(robot, endedWith("text=4,"));
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(field(robot, "#amount").getText()).isEqualTo("4,");

        robot.clickOn("#ease-waist .level-name");
        until(d -> d.wanted().orElseThrow().level().equals("waist"));
        assertThat(field(robot, "#amount").getText())
                .as("amount of another level")
                .isEmpty();
        robot.interact(() -> app.session().setUnit(easewright.text.LengthUnit.INCH));
        robot.clickOn("#body-hip").push(KeyCode.END).write("4").push(KeyCode.ENTER);
        until(d -> line("hip").body().isPresent());
        assertThat(line("hip").body().orElseThrow()).as("typed in cm").isCloseTo(1040, within(1e-9));
    }

    @Test
    void whatWaitsIsNotTakenForAnotherSize(FxRobot robot) throws Exception {
        Path file = Files.copy(Path.of("sample-pieces/skirt-sizes.svg"), folder.resolve("waits.svg"));
        robot.interact(() -> app.files().open(file));
        until(d -> d.size().isPresent());
        String size = desk().size().orElseThrow();
        robot.clickOn("#body-hip").push(KeyCode.SHORTCUT, KeyCode.A).write("10");
        bringBack(robot, endedWith("text=10"));
        assertThat(field(robot, "#body-hip").getText()).isEqualTo("10");
        assertThat(desk().size()).contains(size);

        robot.interact(() -> app.session().chooseSize("14"));
        assertThat(waits(robot, "#body-hip")).isFalse();
        assertThat(desk().words().length(line("hip").body().orElseThrow()))
                .isEqualTo(field(robot, "#body-hip").getText());
    }

    @Test
    void aFieldFarDownThePageIsBroughtIntoSight(FxRobot robot) throws Exception {
        robot.interact(() -> app.files().openSample(Sample.all().get(1)));
        until(Desk::isOpen);
        List<Level> levels = desk().pattern().levels();
        String id = "#wish-" + levels.get(levels.size() - 1).name();
        robot.interact(() -> {
            field(robot, id).requestFocus();
            field(robot, id).setText("7");
            app.files().begun();
        });
        bringBack(robot, endedWith("text=7"));
        assertThat(field(robot, id).getText()).isEqualTo("7");
        Node page = robot.lookup("#ease-sheet").query();
        Bounds seen = page.localToScene(page.getLayoutBounds());
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> {
            Bounds at = field(robot, id).localToScene(field(robot, id).getLayoutBounds());
            return seen.contains(at);
        });
    }

    @Test
    void whatWasRefusedOnOnePageAndHalfTypedOnAnotherComesBackOnBoth(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#wish-hip", "much");
        robot.clickOn("#page-marks").clickOn("#step-pieces");
        robot.clickOn("#piece-name").push(KeyCode.SHORTCUT, KeyCode.A).write("Rear");
        String piece = field(robot, "#piece-name").getText();
        bringBack(robot, endedWith("text=Rear"));

        assertThat(piece).isEqualTo("Rear");
        assertThat(field(robot, "#piece-name").getText()).isEqualTo("Rear");
        assertThat(field(robot, "#wish-hip").getText()).isEqualTo("much");
        assertThat(robot.lookup("#page-marks")
                        .queryAs(javafx.scene.control.ToggleButton.class)
                        .isSelected())
                .isTrue();
        robot.clickOn("#piece-name").push(KeyCode.ESCAPE);
        assertThat(field(robot, "#piece-name").getText()).isNotEqualTo("Rear");
        assertThat(waits(robot, "#piece-name")).isFalse();
    }

    @Test
    void whatIsTriedCannotBeKeptWhileAnotherAmountWaits(FxRobot robot) throws Exception {
        openTheSkirt(robot);
        write(robot, "#amount", "2 cm");
        until(d -> d.shownTrial().isPresent());
        robot.clickOn("#amount").push(KeyCode.SHORTCUT, KeyCode.A).write("3,");
        KeptWork work = endedWith("text=3,");
        bringBack(robot, work);
        assertThat(desk().isSaved()).isTrue();
        assertThat(desk().shownTrial().orElseThrow().wanted().amount()).isEqualTo(20);
        assertThat(field(robot, "#amount").getText()).isEqualTo("3,");
        assertThat(robot.lookup("#keep").query().isDisabled()).isTrue();
        assertThat(robot.lookup("#outcome").queryAs(Label.class).getText()).contains("once the marked field");
        robot.clickOn("#amount").push(KeyCode.ESCAPE);
        assertThat(field(robot, "#amount").getText()).contains("2\u00a0cm");
        assertThat(robot.lookup("#keep").query().isDisabled()).isFalse();
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
        assertThat(said()).contains("show its other end");
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
