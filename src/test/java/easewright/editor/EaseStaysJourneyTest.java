package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.mark.LevelEdits;
import easewright.editor.mark.PieceEdits;
import easewright.pattern.Body;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Nothing on the ease page moves under the hand, and long names can be read. */
class EaseStaysJourneyTest extends Journey {
    private static final List<String> FIELDS =
            List.of("#body-waist", "#wish-waist", "#body-hip", "#wish-hip", "#body-thigh", "#body-knee", "#wish-knee");

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    /** Trousers on a body of which nothing is known. */
    private void openUnmeasured(FxRobot robot) throws Exception {
        robot.clickOn("#sample-trousers");
        until(d -> d.isOpen() && d.pattern().level("knee").isPresent());
        Pattern pattern = desk().pattern();
        robot.interact(() -> app.session().edit(pattern.withBody(Body.UNKNOWN).withWishes(Map.of())));
        settle(robot);
    }

    private static void settle(FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> robot.window(0).getScene().getRoot().layout());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static Map<String, Double> places(FxRobot robot) {
        settle(robot);
        Map<String, Double> places = new TreeMap<>();
        for (String field : FIELDS) {
            Node node = robot.lookup(field).query();
            Bounds at = node.localToScene(node.getBoundsInLocal());
            places.put(field, at.getMinY());
        }
        return places;
    }

    private static void stay(Map<String, Double> before, Map<String, Double> now, String when) {
        before.forEach((field, y) ->
                assertThat(now.get(field)).as("%s, %s", field, when).isCloseTo(y, within(0.5)));
    }

    /** The keyboard's next place after typing: what is said of the ease must not push it away. */
    @Test
    void fieldsStayWhileMeasurementsAreTypedAndLevelsChosen(FxRobot robot) throws Exception {
        openUnmeasured(robot);
        Map<String, Double> before = places(robot);
        robot.clickOn("#body-waist").write("ninety").push(KeyCode.ENTER);
        stay(before, places(robot), "something wrong typed");
        robot.push(KeyCode.SHORTCUT, KeyCode.A).write("74").push(KeyCode.TAB);
        assertThat(line("waist").ease()).isPresent();
        stay(before, places(robot), "typed");
        robot.write("6").push(KeyCode.TAB);
        assertThat(line("waist").missing()).isPresent();
        stay(before, places(robot), "wished");
        robot.clickOn("#body-hip").write("980 cm").push(KeyCode.ENTER);
        stay(before, places(robot), "a measurement in a wrong unit");
        robot.push(KeyCode.SHORTCUT, KeyCode.A).write("98").push(KeyCode.ENTER);
        stay(before, places(robot), "all typed");
        robot.clickOn("#ease-hip .level-name");
        assertThat(desk().wanted().orElseThrow().level()).isEqualTo("hip");
        stay(before, places(robot), "a level chosen");
        assertThat(robot.lookup("#level-told .marked-line").queryAllAs(TextFlow.class).stream()
                        .map(t -> t.queryAccessibleAttribute(AccessibleAttribute.TEXT)
                                .toString()))
                .anyMatch(t -> t.equals("hip"))
                .anyMatch(t -> t.contains("sources ask for at least"));
        robot.clickOn("#ease-waist .level-name");
        stay(before, places(robot), "another level chosen");
    }

    /** What no hand has scrolled goes back to its top once there is room, and never stands with a line cut at it. */
    @Test
    void theSheetBeginsAtItsTop(FxRobot robot) throws Exception {
        robot.clickOn("#sample-skirt");
        until(d -> d.isOpen() && d.pattern().level("hip").isPresent());
        robot.interact(() -> robot.window(0).setHeight(640));
        settle(robot);
        ScrollPane sheet = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        robot.interact(() -> app.session().chooseLevel("hip"));
        robot.clickOn("#ask-where").clickOn("#feels-pulls").clickOn("#sign-tight-all-round");
        settle(robot);
        double rest = sheet.getContent().getLayoutBounds().getHeight()
                - sheet.getViewportBounds().getHeight();
        assertThat(sheet.getVvalue() * rest).as("the level at work is in sight").isGreaterThan(5);
        if (sheet.getContent().getClip() instanceof Rectangle shown) {
            assertThat(shown.getY()).as("no blank strip").isCloseTo(sheet.getVvalue() * rest, within(1.0));
        }
        robot.clickOn("#ask-where");
        robot.interact(() -> robot.window(0).setHeight(900));
        settle(robot);
        settle(robot);
        assertThat(sheet.getVvalue()).isZero();
    }

    /** The number of a source leads to it, and back; the level at work stays, and so does what is known of the keys. */
    @Test
    void numbersLeadToTheirSourcesAndBack(FxRobot robot) throws Exception {
        robot.clickOn("#sample-skirt");
        until(d -> d.isOpen() && d.pattern().level("hip").isPresent());
        settle(robot);
        String level = desk().wanted().orElseThrow().level();
        ScrollPane sheet = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        Button number = robot.lookup("#ease-waist .source-mark").queryButton();
        String source = number.getAccessibleHelp();
        assertThat(number.getText()).matches("\\[\\d+]");
        robot.clickOn(number);
        settle(robot);
        Node keys = number.getScene().getFocusOwner();
        assertThat(keys).as("keys").isInstanceOf(Button.class);
        Button there = (Button) keys;
        assertThat(sheet.getVvalue()).as("the sources are far below").isPositive();
        assertThat(there).isNotSameAs(number);
        assertThat(there.getText()).isEqualTo(number.getText());
        assertThat(robot.lookup(".sources .label").queryAllAs(Label.class).stream()
                        .filter(l -> l.getPseudoClassStates().stream()
                                .anyMatch(p -> p.getPseudoClassName().equals("led")))
                        .map(Label::getText))
                .containsExactly(source);
        robot.push(KeyCode.SPACE);
        settle(robot);
        assertThat(number.isFocused()).isTrue();
        assertThat(sheet.localToScreen(sheet.getBoundsInLocal())
                        .contains(number.localToScreen(number.getBoundsInLocal())))
                .as("it is in sight again")
                .isTrue();
        assertThat(desk().wanted().orElseThrow().level()).isEqualTo(level);
    }

    /** Also where the sheet has been scrolled down to the last levels. */
    @Test
    void fieldsStayWhereTheSheetIsScrolled(FxRobot robot) throws Exception {
        openUnmeasured(robot);
        TextField knee = robot.lookup("#body-knee").queryAs(TextField.class);
        ScrollPane sheet = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        robot.interact(knee::requestFocus);
        robot.interact(() -> sheet.setVvalue(1));
        Map<String, Double> before = places(robot);
        robot.interact(() -> knee.setText("37.5"));
        robot.push(KeyCode.ENTER);
        assertThat(line("knee").ease()).isPresent();
        stay(before, places(robot), "typed at the end of the sheet");
    }

    @Test
    void theClothIsSaidAboveTheLevelsAndTestedBelowAButton(FxRobot robot) throws Exception {
        openUnmeasured(robot);
        Node cloth = robot.lookup("#cloth-judged").query();
        Node rows = robot.lookup("#ease-waist").query();
        assertThat(cloth.localToScene(0, 0).getY())
                .isLessThan(rows.localToScene(0, 0).getY());
        assertThat(robot.lookup("#cloth-judged").queryAs(Label.class).getText()).contains("trousers");
        robot.clickOn("#cloth-garment");
        assertThat(cloth.isVisible()).as("said once, by the choice below it").isFalse();
        robot.clickOn("#cloth-garment");
        assertThat(cloth.isVisible()).isTrue();
        robot.interact(() ->
                app.session().setBody(desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(1200), "hip"));
        robot.clickOn("#cloth-test");
        settle(robot);
        Map<String, Double> before = places(robot);
        robot.clickOn("#cloth-stretched").write("14").push(KeyCode.ENTER);
        assertThat(desk().pattern().cloth().across().orElseThrow()).isCloseTo(40, within(1e-9));
        stay(before, places(robot), "the stretch tested");
        assertThat(robot.lookup("#cloth-now").queryAs(Label.class).getText()).startsWith("stretches\u00a040");
    }

    /** A level of 40 letters on a piece of 60: every letter of both is shown. */
    @Test
    void longNamesAreReadInFull(FxRobot robot) throws Exception {
        openUnmeasured(robot);
        String level = "widest part of the seat over the pockets";
        String piece = "Front panel with pleat, upper part, lining side, cut on fold";
        Pattern named = PieceEdits.rename(
                LevelEdits.below(LevelEdits.add(desk().pattern(), level, LevelKind.OTHER), level, "waist", 150),
                desk().pattern().pieces().get(1).id(),
                piece);
        robot.interact(() -> app.session().edit(named));
        robot.clickOn("#page-marks");
        robot.clickOn("#step-levels");
        settle(robot);
        for (String name : List.of(level, piece)) {
            assertThat(robot.lookup("#marks .label").queryAllAs(Label.class).stream()
                            .filter(l -> l.isVisible() && l.getText().equals(name)))
                    .as(name)
                    .isNotEmpty()
                    .allSatisfy(l ->
                            assertThat(((Text) l.lookup(".text")).getText()).isEqualTo(name));
        }
        robot.clickOn("#page-rings");
        settle(robot);
        assertThat(robot.lookup("#rings .section-title").<Node>queryAll())
                .extracting(n -> ((Text) n.lookup(".text")).getText())
                .anyMatch(shown -> shown.replaceAll("\\s+", " ").equals(level));
        robot.clickOn("#page-ease");
        settle(robot);
        assertThat(robot.lookup(".level-name").<Node>queryAll())
                .extracting(n -> ((Text) n.lookup(".text")).getText())
                .contains(level);
    }

    /** What is said of an ease goes on in a second line rather than be cut short, and the next level makes room for it. */
    @Test
    void aLongVerdictIsReadInFull(FxRobot robot) throws Exception {
        robot.clickOn("#sample-skirt");
        until(d -> d.isOpen() && d.pattern().level("hip").isPresent());
        settle(robot);
        Label verdict = robot.lookup("#ease-waist .verdict").queryAs(Label.class);
        double line = verdict.getHeight();
        Pattern counted = PieceEdits.rename(
                LevelEdits.counts(desk().pattern(), "skirt-band", "waist", true),
                "skirt-band",
                "Waistband, upper part with its lining, cut on the fold");
        robot.interact(() -> app.session().edit(counted));
        settle(robot);
        assertThat(verdict.getText())
                .startsWith("Sewn over others: Waistband, upper part")
                .endsWith("? See Notes.");
        assertThat(((Text) verdict.lookup(".text")).getText().replaceAll("\\s+", " "))
                .isEqualTo(verdict.getText());
        assertThat(verdict.getHeight()).isGreaterThan(1.8 * line);
        Node row = robot.lookup("#ease-waist").query();
        assertThat(verdict.localToScene(verdict.getLayoutBounds()).getMaxY())
                .isLessThanOrEqualTo(row.localToScene(row.getLayoutBounds()).getMaxY() + 0.5);
    }

    /** Whoever goes on from the levels to the measurements can type the first one at once. */
    @Test
    void theKeysBeginInTheFirstMeasurement(FxRobot robot) throws Exception {
        openUnmeasured(robot);
        robot.clickOn("#page-marks").clickOn("#step-levels").clickOn("#mark-next");
        settle(robot);
        robot.write("74").push(KeyCode.ENTER);
        assertThat(line("waist").ease()).isPresent();
    }
}
