package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.ease.EaseLine;
import easewright.editor.mark.LevelEdits;
import easewright.editor.model.Desk;
import easewright.editor.panel.CuttingTable;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** From a drawing without marks to a pattern with a wish met, with mouse and keyboard in the window. */
@ExtendWith(ApplicationExtension.class)
class MarkingJourneyTest {
    private static final Path FOUR_PIECES = Path.of("src/test/resources/marking/four-pieces.svg");

    @TempDir
    static Path folder;

    private final EditorApp app = new EditorApp();
    private final Answers answers = new Answers();
    private CuttingTable table;
    private Stage stage;

    @Start
    void start(Stage shown) throws Exception {
        stage = shown;
        app.start(shown, Files.createTempDirectory(folder, "settings"), answers);
        shown.requestFocus();
    }

    @BeforeEach
    void untilFilled() throws TimeoutException {
        Journey.untilFilled(stage);
        Journey.ofOneSize(stage);
    }

    private Desk desk() {
        return app.session().desk();
    }

    private Piece piece(String name) {
        return desk().pattern().piece(name).orElseThrow();
    }

    private void until(Predicate<Desk> wanted) throws TimeoutException {
        try {
            WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> wanted.test(desk()));
        } catch (TimeoutException e) {
            throw new AssertionError(desk().notice() + " " + desk().pattern(), e);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void open(FxRobot robot, Path file) throws TimeoutException {
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        table = robot.lookup("#table").queryAs(CuttingTable.class);
    }

    private static void write(FxRobot robot, String field, String text) {
        robot.clickOn(field);
        robot.push(KeyCode.SHORTCUT, KeyCode.A).write(text).push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Point2D onScreen(Point place) {
        Point at = table.view().toScreen(place);
        return table.localToScreen(at.x(), at.y());
    }

    private EaseLine line(String level) {
        return desk().shownReading().sheet().lines().stream()
                .filter(l -> l.level().name().equals(level))
                .findFirst()
                .orElseThrow();
    }

    /** On which edge and from where, below each other and not cut short, in the unit with the longer lengths. */
    private void notchesAreToldWhole(FxRobot robot) {
        robot.interact(() -> app.session().setUnit(LengthUnit.INCH));
        WaitForAsyncUtils.waitForFxEvents();
        List<Region> lengths = List.of(
                robot.lookup("#notch-0-0").queryAs(Region.class),
                robot.lookup("#notch-1-0").queryAs(Region.class));
        assertThat(lengths.get(0).localToScene(0, 0).getX())
                .isEqualTo(lengths.get(1).localToScene(0, 0).getX());
        for (Region length : lengths) {
            for (Node part : length.getParent().getChildrenUnmodifiable()) {
                Region told = (Region) part;
                assertThat(told.getWidth()).isGreaterThanOrEqualTo(told.prefWidth(-1));
            }
        }
        assertThat(robot.lookup("#marks .label").queryAllAs(Label.class))
                .filteredOn(l -> l.getText().startsWith("from "))
                .extracting(Label::getText)
                .containsOnly("from waist");
        robot.interact(() -> app.session().setUnit(LengthUnit.CM));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** As many as the press would make, also from where they were passed over. */
    private void waitingSuggestionsAreCounted(FxRobot robot) throws Exception {
        ToggleButton tab = robot.lookup("#step-suggested").queryAs(ToggleButton.class);
        Button accept = robot.lookup("#suggest-accept").queryAs(Button.class);
        assertThat(tab.getText()).isEqualTo("Suggestions (30)");
        assertThat(accept.getText()).endsWith("(30)");
        CheckBox first = robot.lookup(".mark-row .check-box").queryAs(CheckBox.class);
        robot.clickOn(first);
        Journey.untilThought(robot);
        assertThat(tab.getText()).isEqualTo("Suggestions " + accept.getText().replaceAll(".* ", ""));
        robot.clickOn(first);
        Journey.untilThought(robot);
        robot.clickOn("#step-pieces");
        assertThat(tab.getText()).isEqualTo("Suggestions (30)");
        robot.clickOn("#step-suggested");
        Journey.untilThought(robot);
    }

    @Test
    void fourPiecesWithoutMarksOrSize(FxRobot robot) throws Exception {
        Path file = Files.copy(FOUR_PIECES, folder.resolve("four-pieces.svg"));
        open(robot, file);
        assertThat(desk().pattern().scale().proof()).isEqualTo(Scale.Proof.UNPROVED);

        // The test square on the sheet proves the scale.
        robot.clickOn("#scale-offer-0");
        until(d -> d.pattern().scale().proof() == Scale.Proof.KNOWN_LINE);
        assertThat(desk().pattern().scale().mmPerUnitX()).isCloseTo(25.4 / 72, within(1e-4));

        robot.clickOn("#mark-next");
        Journey.untilThought(robot);
        waitingSuggestionsAreCounted(robot);
        robot.clickOn("#suggest-accept");
        until(d -> d.pattern().pieces().stream().noneMatch(p -> p.edges().isEmpty()));
        assertThat(robot.lookup("#step-suggested").queryAs(ToggleButton.class).getText())
                .doesNotContain("(");
        assertThat(desk().pattern().pieces())
                .extracting(Piece::name)
                .containsExactly("Skirt back", "Skirt front", "Waistband", "Pocket");
        assertThat(piece("Skirt back").darts()).hasSize(2);
        assertThat(piece("Skirt front").onFold()).isTrue();

        // What was read from the drawing is put right by hand, on the part that follows by itself.
        assertThat(robot.lookup("#marks-made").queryAs(Label.class).getText())
                .startsWith("Marks made: pieces\u00a04, ");
        write(robot, "#piece-times", "two");
        assertThat(piece("Skirt back").times()).isEqualTo(2);
        write(robot, "#piece-times", "2");
        write(robot, "#piece-name", "Back");
        until(d -> d.pattern().piece("Back").isPresent());
        write(robot, "#dart-0-1", "12.5 cm");
        until(d -> Math.abs(length(piece("Back").darts().get(0)) - 125) < 1e-6);
        write(robot, "#notch-0-0", "9 m");
        assertThat(robot.lookup("#notch-0-0").queryAs(TextField.class).getText())
                .isEqualTo("9 m");
        assertThat(robot.lookup(".complaint").queryAllAs(Label.class))
                .anySatisfy(l -> assertThat(l.getText()).contains("Type a length between 0"));
        write(robot, "#notch-0-0", "20 cm");
        notchesAreToldWhole(robot);

        robot.clickOn("#mark-next");
        assertThat(desk().pattern().mates()).anyMatch(m -> m.name().equals("side seam"));

        robot.clickOn("#mark-next");
        assertThat(desk().pattern().level("hip"))
                .as("suggested below the waist")
                .isPresent();
        write(robot, "#level-below-hip", "20 cm");
        until(d -> d.pattern().piece("Back").orElseThrow().level("hip").isPresent());
        assertThat(robot.lookup(".label").queryAllAs(Label.class))
                .as("the back begins lower, so that it lies nearer there")
                .anySatisfy(l -> assertThat(l.getText()).contains("measured at the centre of Skirt front ("));
        double drawn = LevelEdits.distance(piece("Skirt front"), "hip").orElseThrow();
        assertThat(drawn).isCloseTo(200, within(1e-6));

        // Taken hold of on the table and moved down.
        Point hip = piece("Skirt front").level("hip").orElseThrow().through().orElseThrow();
        Point2D grip = onScreen(hip.plus(new Point(30, 0)));
        robot.moveTo(grip)
                .press(MouseButton.PRIMARY)
                .moveTo(grip.add(0, 4))
                .moveTo(grip.add(0, 8))
                .release(MouseButton.PRIMARY);
        until(d -> LevelEdits.distance(piece("Skirt front"), "hip").orElseThrow() > drawn + 2);
        robot.clickOn("#undo");
        until(d -> Math.abs(LevelEdits.distance(piece("Skirt front"), "hip").orElseThrow() - drawn) < 1e-9);

        robot.clickOn("#mark-next");
        write(robot, "#body-waist", "74.5 cm");
        write(robot, "#body-hip", "100 cm");
        write(robot, "#wish-hip", "8 cm");
        double ease = line("hip").ease().orElseThrow();
        assertThat(ease).isBetween(20.0, 70.0);
        robot.clickOn("#ease-hip .level-name");
        until(d -> d.wanted().filter(w -> w.level().equals("hip")).isPresent());
        write(robot, "#amount", "+" + Math.round(80 - ease) + " mm");
        robot.clickOn("#keep");
        until(d -> d.pattern().changes().size() == 1);
        assertThat(line("hip").ease().orElseThrow()).isCloseTo(80, within(1.0));

        Path saved = folder.resolve("skirt.svg");
        answers.toSave.add(saved);
        robot.push(KeyCode.SHORTCUT, KeyCode.S);
        until(Desk::isSaved);
        Pattern again = SvgFile.read(saved).pattern();
        assertThat(again.pieces()).extracting(Piece::name).contains("Back", "Skirt front");
        assertThat(again.scale()).isEqualTo(desk().pattern().scale());
        assertThat(again.mates()).isEqualTo(desk().pattern().mates());
        assertThat(again.changes()).isEqualTo(desk().pattern().changes());
        assertThat(again.levels()).isEqualTo(desk().pattern().levels());
    }

    @Test
    void markedByHandOnTheTable(FxRobot robot) throws Exception {
        Path file = Files.writeString(
                folder.resolve("two.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path d='M100,100 H300 V400 H100 Z'/><path d='M400,100 H600 V400 H400 Z'/></svg>");
        open(robot, file);
        robot.clickOn("#step-suggested");
        Journey.untilThought(robot);
        robot.clickOn("#suggest-none");
        robot.clickOn("#step-pieces").clickOn("#tool-split");
        for (Point corner : new Point[] {new Point(100, 100), new Point(300, 100), new Point(300, 400)}) {
            robot.clickOn(onScreen(corner.plus(new Point(0.5, 0.5))));
        }
        robot.clickOn(onScreen(new Point(100, 400)));
        until(d -> d.pattern().pieces().get(0).edges().size() == 4);
        robot.clickOn("#tool-dart")
                .clickOn(onScreen(new Point(185, 100)))
                .clickOn(onScreen(new Point(215, 100)))
                .clickOn(onScreen(new Point(200, 220)));
        until(d -> d.pattern().pieces().get(0).darts().size() == 1);
        robot.clickOn("#tool-notch").clickOn(onScreen(new Point(300, 250)));
        until(d -> d.pattern().pieces().get(0).notches().size() == 1);
        robot.push(KeyCode.ESCAPE);
        robot.clickOn("#tool-grain").clickOn(onScreen(new Point(150, 150))).clickOn(onScreen(new Point(150, 350)));
        until(d -> d.pattern().pieces().get(0).grain().isPresent());

        // The other piece by keyboard alone: from place to place, Enter clicks.
        robot.clickOn("#tool-split");
        for (int i = 0; i < 4; i++) {
            robot.push(KeyCode.N);
        }
        WaitForAsyncUtils.waitForFxEvents();
        Point2D far = onScreen(new Point(500, 100));
        robot.clickOn(far).push(KeyCode.ESCAPE);
        until(d -> d.pattern().pieces().get(1).edges().size() == 1);

        robot.clickOn("#view-tape").clickOn(onScreen(new Point(100, 100))).clickOn(onScreen(new Point(300, 400)));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#hint-bar .label").queryAs(Label.class).getText())
                .contains("36.05")
                .contains("50\u00a0cm");
        robot.clickOn("#unit-inch");
        assertThat(robot.lookup("#hint-bar .label").queryAs(Label.class).getText())
                .as("in the unit that is chosen")
                .contains("11/16\u00a0in along")
                .doesNotContain("cm");
        robot.clickOn("#unit-cm").clickOn("#tool-stop");
        robot.interact(() -> app.files().save(folder.resolve("two-marked.svg")));
        until(Desk::isSaved);
        assertThat(SvgFile.read(folder.resolve("two-marked.svg")).pattern()).isEqualTo(desk().pattern());
    }

    private static double length(Dart dart) {
        return dart.mouth1().towards(dart.mouth2(), 0.5).distance(dart.point());
    }

    /** Of three sizes in one drawing the user's own is kept, marked, and at another scale its allowance goes along. */
    @Test
    void oneSizeOfANest(FxRobot robot) throws Exception {
        StringBuilder nest = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='600mm' viewBox='0 0 600 600'>");
        for (int size = 36; size <= 40; size += 2) {
            nest.append("<g id='size-")
                    .append(size)
                    .append("'><path id='front-")
                    .append(size)
                    .append("' d='M100,100 h")
                    .append(150 + size)
                    .append(" v300 h-")
                    .append(150 + size)
                    .append("z'/></g>");
        }
        open(robot, Files.writeString(folder.resolve("nest.svg"), nest.append("</svg>")));
        assertThat(desk().pattern().pieces()).hasSize(3);
        robot.clickOn("#layer-only-1");
        until(d -> d.pattern().pieces().get(0).id().equals("front-38"));
        robot.clickOn("#undo");
        until(d -> d.pattern().pieces().size() == 3);
        robot.clickOn("#layer-only-1");
        until(d -> d.pattern().pieces().get(0).id().equals("front-38"));

        robot.clickOn("#step-pieces");
        write(robot, "#piece-allowance", "1 cm");
        robot.clickOn("#step-scale").clickOn("#stated-move").clickOn("#scale-otherwise");
        robot.interact(() -> robot.lookup("#scale-lines")
                .queryAs(ComboBox.class)
                .getSelectionModel()
                .selectFirst());
        write(robot, "#scale-length", "60 cm");
        until(d -> Math.abs(d.pattern().pieces().get(0).allowance() - 20) < 1e-6);
        assertThat(desk().pattern().pieces().get(0).outline().box().width()).isCloseTo(2 * 188, within(1e-6));
    }
}
