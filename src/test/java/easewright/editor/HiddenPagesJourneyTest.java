package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.mark.LevelEdits;
import easewright.pattern.Pattern;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.Image;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * What changed while another page was in sight: on the page turned to then nothing lies on anything else. Looked at is
 * also what is painted, since a part can be painted elsewhere than it lies.
 */
class HiddenPagesJourneyTest extends Journey {
    private static final List<String> PAGES = List.of("marks", "ease", "rings", "size", "changes", "true", "notes");

    /** Of the four bare pieces; its marks are made on the page Marks. */
    private static final Path BARE = Path.of("src/test/resources/marking/four-pieces.svg");

    private static final String LETTER = "(?s).*[\\p{L}\\p{N}].*";

    private interface Doing {
        void run() throws Exception;
    }

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    /** Does something while one page is in sight, and then looks at all the others. */
    private void unseen(FxRobot robot, String from, String what, Doing doing) throws Exception {
        turn(robot, from);
        doing.run();
        settle();
        for (String page : PAGES) {
            if (!page.equals(from)) {
                turn(robot, page);
                nothingLiesOnAnother(page, what);
                isPaintedAsItLies(page, what);
            }
        }
    }

    private void turn(FxRobot robot, String page) throws Exception {
        ToggleButton tab = robot.lookup("#page-" + page).queryAs(ToggleButton.class);
        WaitForAsyncUtils.waitForAsyncFx(5000, tab::fire);
        settle();
    }

    /** Pages that were in sight before are laid out and painted otherwise than those that never were. */
    private void seeAll(FxRobot robot) throws Exception {
        for (String page : PAGES) {
            turn(robot, page);
        }
    }

    /** As many layouts as it takes until nothing asks for another one. The robot waits much longer for each thing it does. */
    private void settle() throws Exception {
        Scene scene = stage.getScene();
        for (int pulses = 0; pulses < 4 || pulses < 40 && scene.getRoot().isNeedsLayout(); pulses++) {
            CountDownLatch laidOut = new CountDownLatch(1);
            Runnable once = laidOut::countDown;
            WaitForAsyncUtils.waitForAsyncFx(5000, () -> {
                scene.addPostLayoutPulseListener(once);
                Platform.requestNextPulse();
            });
            assertThat(laidOut.await(20, TimeUnit.SECONDS)).isTrue();
            WaitForAsyncUtils.waitForAsyncFx(5000, () -> scene.removePostLayoutPulseListener(once));
        }
    }

    private Parent sheet() {
        return (Parent) stage.getScene().lookup("#sheet");
    }

    /** Words, fields and presses, each for itself. */
    private static void gather(Node node, List<Node> found) {
        // The bar of a page that is seen whole keeps its room, and is not painted.
        if (!node.isVisible() || node.getOpacity() == 0) {
            return;
        }
        if (node.getStyleClass().contains("source-mark")) {
            // It reaches beyond its line, but is seen within it.
            return;
        }
        boolean whole = node instanceof Control && !(node instanceof ScrollPane) && !(node instanceof Label);
        // Words that run on in the next line reach around each other.
        if (whole
                || node instanceof TextFlow
                || node instanceof Text text && text.getText().matches(LETTER)) {
            found.add(node);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(part -> gather(part, found));
        }
    }

    private void nothingLiesOnAnother(String page, String what) {
        List<Node> parts = new ArrayList<>();
        gather(sheet(), parts);
        assertThat(parts).as("%s, %s", page, what).hasSizeGreaterThan(PAGES.size());
        List<String> heaps = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int k = i + 1; k < parts.size(); k++) {
                if (overlap(parts.get(i), parts.get(k))) {
                    heaps.add(told(parts.get(i)) + " on " + told(parts.get(k)));
                }
            }
        }
        assertThat(heaps).as("%s, %s", page, what).isEmpty();
    }

    private static boolean overlap(Node one, Node other) {
        if (scroll(one) != scroll(other)) {
            // What is scrolled away lies below what stands.
            return false;
        }
        Bounds a = one.localToScene(one.getLayoutBounds());
        Bounds b = other.localToScene(other.getLayoutBounds());
        double wide = Math.min(a.getMaxX(), b.getMaxX()) - Math.max(a.getMinX(), b.getMinX());
        double high = Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY());
        return wide > 3 && high > 5;
    }

    private static String told(Node part) {
        String words = part instanceof Text text ? text.getText() : part.getTypeSelector() + " " + part.getId();
        Bounds at = part.localToScene(part.getLayoutBounds());
        return String.format(
                Locale.ROOT,
                "%s at %.0f, %.0f, %.0f by %.0f",
                words,
                at.getMinX(),
                at.getMinY(),
                at.getWidth(),
                at.getHeight());
    }

    private static Node scroll(Node node) {
        return node == null || node instanceof ScrollPane ? node : scroll(node.getParent());
    }

    /** Where words or a field lie something of them is seen. */
    private void isPaintedAsItLies(String page, String what) throws Exception {
        Image seen =
                WaitForAsyncUtils.waitForAsyncFx(5000, () -> stage.getScene().snapshot(null));
        List<String> blank = new ArrayList<>();
        List<Node> parts = new ArrayList<>();
        gather(sheet(), parts);
        for (Node part : parts) {
            Bounds at = part.localToScene(part.getLayoutBounds());
            if (isInSight(part, at) && isOneColour(seen, at)) {
                blank.add(told(part));
            }
        }
        assertThat(blank).as("%s, %s: nothing is painted", page, what).isEmpty();
    }

    /** Within the page that is scrolled, and not left out at its edge. */
    private boolean isInSight(Node part, Bounds at) {
        Scene scene = stage.getScene();
        if (at.getMinY() < 0 || at.getMaxY() > scene.getHeight() || at.getMaxX() > scene.getWidth()) {
            return false;
        }
        for (Node n = part.getParent(); n != null; n = n.getParent()) {
            Node edge = n instanceof ScrollPane ? n : n.getClip();
            if (edge != null) {
                Bounds within = n.localToScene(edge.getBoundsInParent());
                if (n == edge) {
                    within = n.localToScene(n.getLayoutBounds());
                }
                if (at.getMinY() < within.getMinY() || at.getMaxY() > within.getMaxY()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean isOneColour(Image seen, Bounds at) {
        int first = seen.getPixelReader().getArgb((int) at.getMinX(), (int) at.getMinY());
        for (int y = (int) at.getMinY(); y < at.getMaxY(); y++) {
            for (int x = (int) at.getMinX(); x < at.getMaxX(); x++) {
                if (seen.getPixelReader().getArgb(x, y) != first) {
                    return false;
                }
            }
        }
        return true;
    }

    private void openTrousers(FxRobot robot) throws Exception {
        robot.clickOn("#sample-trousers");
        until(d -> d.isOpen() && !d.pattern().levels().isEmpty());
        seeAll(robot);
    }

    @Test
    void marksAreMade(FxRobot robot) throws Exception {
        Path file = Files.copy(BARE, folder.resolve("bare-pieces.svg"));
        robot.interact(() -> app.files().open(file));
        until(d -> d.isOpen() && d.pattern().levels().isEmpty());
        seeAll(robot);
        unseen(robot, "marks", "marks made", () -> {
            robot.clickOn("#scale-offer-0").clickOn("#mark-next");
            untilThought(robot);
            robot.clickOn("#suggest-accept");
            until(d -> !d.pattern().levels().isEmpty());
        });
    }

    @Test
    void aLevelComesAndGoes(FxRobot robot) throws Exception {
        openTrousers(robot);
        Pattern whole = desk().pattern();
        Pattern fewer = LevelEdits.remove(whole, "knee");
        unseen(
                robot,
                "marks",
                "a level gone",
                () -> robot.interact(() -> app.session().edit(fewer)));
        unseen(
                robot,
                "rings",
                "a level added",
                () -> robot.interact(() -> app.session().edit(whole)));
        unseen(
                robot,
                "changes",
                "taken back",
                () -> robot.interact(() -> app.session().undo()));
    }

    @Test
    void theUnitChanges(FxRobot robot) throws Exception {
        openTrousers(robot);
        unseen(robot, "changes", "inches", () -> robot.clickOn("#unit-inch"));
        unseen(robot, "notes", "centimetres", () -> robot.clickOn("#unit-cm"));
    }

    @Test
    void figuresAreTakenBack(FxRobot robot) throws Exception {
        openTrousers(robot);
        turn(robot, "ease");
        write(robot, "#wish-hip", "9");
        write(robot, "#body-hip", "104.3");
        unseen(robot, "true", "undone", () -> robot.interact(() -> app.session().undo()));
        unseen(
                robot,
                "size",
                "undone twice",
                () -> robot.interact(() -> app.session().undo()));
        unseen(
                robot,
                "marks",
                "done again",
                () -> robot.interact(() -> app.session().redo()));
    }

    @Test
    void itGrowsDark(FxRobot robot) throws Exception {
        openTrousers(robot);
        unseen(robot, "rings", "dark", () -> robot.clickOn("#lamp"));
    }

    @Test
    void theWindowIsDrawnWiderAndBack(FxRobot robot) throws Exception {
        openTrousers(robot);
        // What reaches beyond the screen cannot be painted there without a window system.
        robot.interact(() -> {
            stage.setX(0);
            stage.setY(0);
        });
        unseen(robot, "notes", "wide", () -> robot.interact(() -> stage.setWidth(1700)));
        unseen(robot, "true", "as before", () -> robot.interact(() -> stage.setWidth(1280)));
        unseen(robot, "marks", "high", () -> robot.interact(() -> stage.setHeight(1000)));
    }
}
