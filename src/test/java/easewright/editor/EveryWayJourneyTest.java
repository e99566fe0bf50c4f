package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.editor.model.OtherWay;
import easewright.editor.model.Sample;
import easewright.editor.model.Wanted;
import easewright.pattern.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Whatever way a change is made in, all that is said of it and asked for it can be read in a small window. */
class EveryWayJourneyTest extends Journey {
    /** Less than this is not seen, pixels. */
    private static final double HAIR = 1;

    /** Above and below the letters of a line nothing is seen, pixels. */
    private static final double BLANK = 2;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Test
    void nothingIsCutInAnyWay(FxRobot robot) throws Exception {
        List<String> cut = new ArrayList<>();
        for (Sample sample : Sample.all()) {
            robot.interact(() -> app.files().openSample(sample));
            until(d -> d.file().filter(f -> f.name().equals(sample.fileName())).isPresent());
            openHow(robot);
            List<Level> levels = desk().pattern().levels();
            for (Level level : List.of(levels.get(0), levels.get(levels.size() - 1))) {
                robot.interact(() -> app.session().chooseLevel(level.name()));
                for (Way way : Ways.all()) {
                    for (double amount : new double[] {0, 12}) {
                        Wanted wanted = desk().wanted()
                                .orElseThrow()
                                .withAmount(amount)
                                .withOther(Optional.of(OtherWay.of(way)));
                        robot.interact(() -> app.session().want(wanted));
                        robot.interact(() -> stage.getScene().getRoot().layout());
                        WaitForAsyncUtils.waitForFxEvents(2);
                        gather(
                                robot,
                                sample.fileName() + ", " + level.name() + ", " + way.method() + " by " + amount,
                                cut);
                    }
                }
                robot.interact(() -> app.session().leave());
            }
        }
        assertThat(cut).isEmpty();
    }

    private void gather(FxRobot robot, String when, List<String> cut) {
        Node here = robot.lookup("#here").query();
        Bounds panel = here.localToScene(here.getLayoutBounds());
        ScrollPane room = robot.lookup(".here-room").query();
        Bounds inside = room.localToScene(room.getLayoutBounds());
        for (Node node : here.lookupAll(".text")) {
            if (node instanceof Text text && node.getParent() instanceof Labeled labeled && isShown(text)) {
                Bounds at = text.localToScene(text.getLayoutBounds());
                Bounds own = labeled.localToScene(labeled.getLayoutBounds());
                boolean shortened = !text.getText().equals(labeled.getText());
                boolean beyond = at.getMaxX() > Math.min(own.getMaxX(), panel.getMaxX()) + HAIR
                        || at.getMaxY() > own.getMaxY() + HAIR
                        || at.getMinY() < own.getMinY() - HAIR;
                boolean scrolled = isIn(text, room);
                boolean low = !scrolled && at.getMaxY() > panel.getMaxY() + HAIR;
                boolean wide = scrolled && at.getMaxX() > inside.getMaxX() + HAIR;
                if (shortened || beyond || low || wide || scrolled && isCutAtAnEdge(text, room)) {
                    cut.add(when + ": " + labeled.getText() + " | " + text.getText());
                }
            }
        }
    }

    /** Whether an edge of what is scrolled goes through a line of the text. */
    private static boolean isCutAtAnEdge(Text text, ScrollPane room) {
        Node content = room.getContent();
        Rectangle seen = content.getClip() instanceof Rectangle clip
                ? clip
                : new Rectangle(
                        0,
                        -room.getViewportBounds().getMinY(),
                        1,
                        room.getViewportBounds().getHeight());
        Bounds at = content.sceneToLocal(text.localToScene(text.getLayoutBounds()));
        long lines = Math.max(1, Math.round(at.getHeight() / (text.getFont().getSize() * 1.2)));
        double high = at.getHeight() / lines;
        for (int i = 0; i < lines; i++) {
            double top = at.getMinY() + i * high;
            for (double edge : new double[] {seen.getY(), seen.getY() + seen.getHeight()}) {
                if (top < edge - BLANK && top + high > edge + BLANK) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isIn(Node part, Node whole) {
        return part != null && (part == whole || isIn(part.getParent(), whole));
    }
}
