package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Ways;
import easewright.editor.mark.LevelEdits;
import easewright.editor.model.OtherWay;
import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.image.Image;
import javafx.scene.image.PixelReader;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** How pages, lists and the windows over the table lie. */
class PanelsJourneyTest extends Journey {
    /** Above and below the letters of a line nothing is seen, pixels. */
    private static final double BLANK = 2;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private void openSample(FxRobot robot, String sample) throws Exception {
        robot.clickOn("#sample-" + sample);
        until(d -> d.isOpen() && !d.pattern().levels().isEmpty());
        settle(robot);
    }

    private static void settle(FxRobot robot) {
        for (int i = 0; i < 3; i++) {
            WaitForAsyncUtils.waitForFxEvents();
            robot.interact(() -> robot.window(0).getScene().getRoot().layout());
        }
        WaitForAsyncUtils.waitForFxEvents(20);
    }

    /** What is seen of a page: the room it has, less what is left out at its edges; from top to bottom in its content. */
    private static double[] seen(ScrollPane page) {
        double room = page.getViewportBounds().getHeight();
        double whole = page.getContent().getLayoutBounds().getHeight();
        double top = page.getVvalue() * Math.max(0, whole - room);
        return page.getContent().getClip() instanceof Rectangle clip
                ? new double[] {clip.getY(), clip.getY() + clip.getHeight()}
                : new double[] {top, top + room};
    }

    private static void noLineIsCut(ScrollPane page, String when) {
        double[] seen = seen(page);
        Node content = page.getContent();
        assertThat(seen[1] - seen[0])
                .as("most of the page is seen, %s", when)
                .isGreaterThan(page.getViewportBounds().getHeight() / 2);
        for (Node node : content.lookupAll(".text")) {
            if (node instanceof Text text && !text.getText().isBlank() && shown(text)) {
                Bounds at = content.sceneToLocal(text.localToScene(text.getLayoutBounds()));
                if (at.getHeight() < text.getFont().getSize() * 1.8) {
                    assertThat(isCut(at, seen, BLANK))
                            .as("%s, %s", text.getText(), when)
                            .isFalse();
                }
            }
        }
        for (Node box : content.lookupAll(".box")) {
            if (shown(box)) {
                Bounds at = content.sceneToLocal(box.localToScene(box.getLayoutBounds()));
                assertThat(isCut(at, seen, 0.5)).as("a tick box, %s", when).isFalse();
            }
        }
    }

    private static boolean isCut(Bounds at, double[] seen, double rim) {
        boolean cut = false;
        for (double edge : seen) {
            cut |= at.getMinY() < edge - rim && at.getMaxY() > edge + rim;
        }
        return cut;
    }

    private static boolean shown(Node node) {
        return node == null || node.isVisible() && shown(node.getParent());
    }

    @Test
    void noLineOfAPageIsCutInItsHeight(FxRobot robot) throws Exception {
        openSample(robot, "trousers");
        ScrollPane ease = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        for (int i = 0; i <= 20; i++) {
            double at = i / 20.0;
            robot.interact(() -> ease.setVvalue(at));
            settle(robot);
            noLineIsCut(ease, "scrolled to " + at);
        }
    }

    /** A form that finds no room is scrolled by whole lines as well, tick boxes among them. */
    @Test
    void noTickBoxOfAFormIsCut(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        robot.interact(() -> app.session()
                .want(desk().wanted()
                        .orElseThrow()
                        .withAmount(10)
                        .withOther(Ways.of("slash")
                                .map(OtherWay::of)
                                .map(o -> o.with("slash", List.of("Back/hem@50% > Back/waist@50%"))))));
        ScrollPane form = robot.lookup(".here-room").queryAs(ScrollPane.class);
        int cutShort = 0;
        for (int high = 800; high >= 560; high -= 20) {
            double height = high;
            robot.interact(() -> stage.setHeight(height));
            settle(robot);
            cutShort += form.getContent().getClip() == null ? 0 : 1;
            noLineIsCut(form, "in a window " + high + " high");
        }
        assertThat(cutShort).isPositive();
    }

    private static double bottom(Node node) {
        return node.localToScene(node.getLayoutBounds()).getMaxY();
    }

    private static double top(Node node) {
        return node.localToScene(node.getLayoutBounds()).getMinY();
    }

    /**
     * The amount is what one comes for: it stands at the head of its place, what comes of it below, then in one line how it
     * is made, and what is done with it at the foot. Beside a page that is read there is only its row.
     */
    @Test
    void theAmountComesFirstAndItsPlaceIsOneRowBesideAPageThatIsRead(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        for (int amount : new int[] {0, 20}) {
            robot.interact(
                    () -> app.session().want(desk().wanted().orElseThrow().withAmount(amount)));
            for (String page : List.of("ease", "rings", "size", "changes", "true", "notes")) {
                robot.clickOn("#page-" + page);
                settle(robot);
                String when = page + ", " + amount + " mm";
                List<String> order = page.equals("ease")
                        ? List.of("#here-title", "#amount", "#outcome", "#here-how", "#keep")
                        : amount == 0
                                ? List.of("#here-title", "#amount")
                                : List.of("#here-title", "#outcome", "#amount");
                for (int i = 1; i < order.size(); i++) {
                    double gap = top(robot.lookup(order.get(i)).query())
                            - bottom(robot.lookup(order.get(i - 1)).query());
                    boolean kept = order.get(i).equals("#here-how");
                    assertThat(gap).as("%s, above %s", when, order.get(i)).isBetween(0.0, kept ? 120.0 : 16.0);
                }
                assertThat(isShown(robot.lookup("#here-how").query())).as(when).isEqualTo(page.equals("ease"));
                assertThat(isShown(robot.lookup("#here-settings").query()))
                        .as(when)
                        .isFalse();
                assertThat(bottom(robot.lookup("#keep").query()))
                        .as(when)
                        .isBetween(
                                bottom(robot.lookup("#sheet").query()) - 16,
                                bottom(robot.lookup("#sheet").query()));
                if (!page.equals("ease")) {
                    if (amount != 0) {
                        assertThat(robot.lookup("#outcome").queryLabeled().getText())
                                .as("on one line")
                                .isEqualTo("waist: ease 2.5\u00a0cm \u2192 4.5\u00a0cm");
                    }
                    assertThat(robot.lookup("#here").queryAs(Region.class).getHeight())
                            .as(when)
                            .isLessThan(120);
                }
            }
        }
    }

    /** What changed on a page while another one was in sight is painted where it lies, within the margins of the page. */
    @Test
    void aPageThatChangedUnseenIsShownAsItLies(FxRobot robot) throws Exception {
        openSample(robot, "trousers");
        robot.clickOn("#page-rings");
        settle(robot);
        Pattern fewer = LevelEdits.remove(desk().pattern(), "knee");
        robot.interact(() -> app.session().edit(fewer));
        settle(robot);
        robot.clickOn("#page-ease");
        settle(robot);
        ScrollPane ease = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        assertThat(((Region) ease.getContent()).getInsets().getTop()).isPositive();
        for (String field : List.of("#body-waist", "#wish-thigh")) {
            Node node = robot.lookup(field).query();
            Bounds at = node.localToScene(node.getLayoutBounds());
            Image seen = WaitForAsyncUtils.waitForAsyncFx(
                    5000, () -> stage.getScene().snapshot(null));
            PixelReader pixels = seen.getPixelReader();
            int y = (int) at.getCenterY();
            Color ground = pixels.getColor((int) at.getMinX() - 4, y);
            assertThat(IntStream.rangeClosed(-1, 2).mapToObj(x -> pixels.getColor((int) at.getMinX() + x, y)))
                    .as("the rim of %s", field)
                    .anyMatch(c -> Math.abs(c.getBrightness() - ground.getBrightness()) > 0.1);
        }
    }

    /** While a change is tried two whole levels with their verdicts are seen above it, in a window of 1280 × 800. */
    @Test
    void twoLevelsAreSeenWhileAChangeIsTried(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withAmount(20)));
        settle(robot);
        ScrollPane ease = robot.lookup("#ease-sheet").queryAs(ScrollPane.class);
        assertThat(ease.getVvalue()).isZero();
        for (String level : List.of("waist", "hip")) {
            assertThat(bottom(robot.lookup("#ease-" + level).query()))
                    .as(level)
                    .isLessThan(top(robot.lookup("#here").query()));
        }
    }

    /** The settings come by themselves where one of them has to be answered, and what is set is told while they are away. */
    @Test
    void theSettingsComeWhereOneIsNeeded(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        Node settings = robot.lookup("#here-settings").query();
        Labeled how = robot.lookup("#here-how").queryLabeled();
        assertThat(isShown(settings)).isFalse();
        assertThat(how.getText())
                .startsWith("How: at Back side and Front side, smooth")
                .endsWith("both sides");
        robot.interact(() -> app.session()
                .want(desk().wanted().orElseThrow().withOther(Ways.of("slash").map(OtherWay::of))));
        settle(robot);
        assertThat(isShown(settings)).isTrue();
        assertThat(how.getText()).as("beside what is seen").isEqualTo("How");
        robot.clickOn("#here-how");
        settle(robot);
        assertThat(how.getText()).startsWith("How: slash and spread");
        assertThat(isShown(settings)).as("folded by hand").isFalse();
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withOther(Optional.empty())));
        settle(robot);
        assertThat(isShown(settings)).isFalse();
        robot.clickOn("#here-how").clickOn("#taper-straight").clickOn("#here-how");
        settle(robot);
        assertThat(how.getText()).contains("straight");
        robot.clickOn("#here-how");
        robot.clickOn("#page-rings").clickOn("#page-ease");
        settle(robot);
        assertThat(isShown(settings)).as("opened by hand, so it stays").isTrue();
    }

    /** While a place is asked for there is one filled button, and what came of the amount is one line. */
    @Test
    void oneButtonIsFilledAtATime(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withAmount(20)));
        Labeled outcome = robot.lookup("#outcome").queryLabeled();
        assertThat(filled(robot)).containsExactly("keep");
        robot.clickOn("#ask-where").clickOn("#feels-pulls").clickOn("#sign-tight-all-round");
        settle(robot);
        assertThat(filled(robot)).containsExactly("where-take");
        assertThat(isShown(robot.lookup("#here-less").query()))
                .as("what is asked cannot be folded")
                .isFalse();
        assertThat(outcome.getHeight()).isLessThan(outcome.getFont().getSize() * 1.8);
        assertThat(isShown(robot.lookup("#effect").query())).isFalse();
        robot.clickOn("#ask-where");
        settle(robot);
        assertThat(filled(robot)).containsExactly("keep");
        assertThat(isShown(robot.lookup("#here-less").query())).isTrue();
        assertThat(outcome.getHeight()).isGreaterThan(outcome.getFont().getSize() * 1.8);
    }

    /** What its settings took of the height goes back to the page above when they go, also while a change is tried. */
    @Test
    void itIsNoHigherThanBeforeWhenItsSettingsAreAwayAgain(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withAmount(30)));
        settle(robot);
        Region here = robot.lookup("#here").queryAs(Region.class);
        double before = here.getHeight();
        robot.interact(() -> app.session()
                .want(desk().wanted().orElseThrow().withOther(Ways.of("slash").map(OtherWay::of))));
        settle(robot);
        assertThat(here.getHeight()).isGreaterThan(before);
        robot.clickOn("#pick-slash");
        settle(robot);
        robot.interact(() -> app.session().want(desk().wanted().orElseThrow().withOther(Optional.empty())));
        settle(robot);
        assertThat(here.getHeight()).isEqualTo(before);
        robot.clickOn("#here-how");
        settle(robot);
        assertThat(here.getHeight()).isGreaterThan(before);
        robot.clickOn("#here-how");
        settle(robot);
        assertThat(here.getHeight()).isEqualTo(before);
    }

    private static List<String> filled(FxRobot robot) {
        return robot.lookup("#here .accent").queryAll().stream()
                .filter(Journey::isShown)
                .map(Node::getId)
                .toList();
    }

    /** In a wide window the sheet has more room, and what is entered stays at its right edge. */
    @Test
    void theSheetGrowsWithTheWindow(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        Region sheet = robot.lookup("#sheet").queryAs(Region.class);
        Region wish = robot.lookup("#wish-hip").queryAs(Region.class);
        double margin = sheet.getWidth() - (right(wish) - sheet.getLayoutX());
        assertThat(sheet.getWidth()).isEqualTo(452);
        robot.interact(() -> stage.setWidth(1900));
        settle(robot);
        assertThat(sheet.getWidth()).isEqualTo(551);
        assertThat(sheet.getWidth() - (right(wish) - sheet.getLayoutX())).isEqualTo(margin);
    }

    private static double right(Node node) {
        return node.localToScene(node.getLayoutBounds()).getMaxX();
    }

    /** The list of ways opens above its field, for want of room below, and close to it. */
    @Test
    void theListOfWaysHangsOnItsField(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        openHow(robot);
        ComboBox<?> way = robot.lookup("#way").queryAs(ComboBox.class);
        robot.interact(way::show);
        settle(robot);
        Node list = ((ComboBoxListViewSkin<?>) way.getSkin()).getPopupContent();
        Bounds shown = list.localToScreen(list.getLayoutBounds());
        Bounds field = way.localToScreen(way.getLayoutBounds());
        double above = Math.abs(field.getMinY() - shown.getMaxY());
        double below = Math.abs(shown.getMinY() - field.getMaxY());
        assertThat(Math.min(above, below)).isLessThan(2);
        robot.interact(way::hide);
    }

    @Test
    void edgesAreChosenByTheirPiecesAndThoseOfThePieceInHandFirst(FxRobot robot) throws Exception {
        openSample(robot, "trousers");
        robot.clickOn("#page-marks").clickOn("#step-pieces");
        var pieces = desk().pattern().pieces();
        ComboBox<?> choice = robot.lookup("#piece-choice").queryAs(ComboBox.class);
        robot.interact(() -> choice.getSelectionModel().select(1));
        robot.clickOn("#step-levels");
        settle(robot);
        String level = desk().pattern().levels().get(0).name();
        MenuButton along = robot.lookup("#level-measured-" + level).queryAs(MenuButton.class);
        assertThat(along.getItems().get(0).getText()).isEqualTo("Straight across, where you click");
        List<MenuItem> offered = along.getItems().subList(1, along.getItems().size());
        assertThat(offered).hasSize(pieces.size()).allSatisfy(i -> assertThat(i).isInstanceOf(Menu.class));
        assertThat(offered.get(0).getText()).isEqualTo(pieces.get(1).name());
        assertThat(offered.get(1).getText()).isEqualTo(pieces.get(0).name());
        assertThat(((Menu) offered.get(0)).getItems())
                .extracting(MenuItem::getText)
                .containsExactlyElementsOf(
                        pieces.get(1).edges().stream().map(e -> e.name()).toList());
        robot.interact(() -> ((Menu) offered.get(0)).getItems().get(0).fire());
        assertThat(desk().pattern().level(level)).isPresent();
        assertThat(desk().history().canUndo()).isTrue();
    }

    /** What is asked of the garment comes before a list of pieces that may be long, and the table steps back. */
    @Test
    void theTableStepsBackBehindThePrintsAndCautionsStandAboveThePieces(FxRobot robot) throws Exception {
        openSample(robot, "skirt");
        Node root = stage.getScene().getRoot();
        assertThat(root.getOpacity()).isEqualTo(1);
        robot.clickOn("#print");
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> robot.lookup("#print-save").tryQuery().isPresent());
        settle(robot);
        assertThat(root.getOpacity()).isLessThan(1);
        CheckBox child = robot.lookup("#print-use-child").queryAs(CheckBox.class);
        CheckBox piece = robot.lookup("#print-piece-skirt-back").queryAs(CheckBox.class);
        assertThat(child.localToScene(0, 0).getY())
                .isLessThan(piece.localToScene(0, 0).getY());
        Stage prints = (Stage) child.getScene().getWindow();
        double bar = stage.getY()
                + stage.getScene().getY()
                + bottom(robot.lookup(".top-bar").query());
        assertThat(prints.getY()).as("the bar at the head is left whole").isGreaterThanOrEqualTo(bar);
        assertThat(prints.getY() + prints.getHeight())
                .isBetween(stage.getY() + stage.getHeight() - 60, stage.getY() + stage.getHeight());
        robot.interact(prints::close);
        settle(robot);
        assertThat(root.getOpacity()).isEqualTo(1);
    }
}
