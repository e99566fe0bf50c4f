package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.editor.model.OtherWay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/**
 * Whatever is clicked is at least 24 pixels wide and high: W3C, Web Content Accessibility Guidelines 2.2, success
 * criterion 2.5.8 (from memory).
 */
class TargetsJourneyTest extends Journey {
    private static final double LEAST = 24;

    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    private static void collect(Node node, List<Region> found) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof ButtonBase
                || node instanceof CheckBox
                || node instanceof TextField
                || node instanceof ComboBoxBase<?>) {
            found.add((Region) node);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
        }
    }

    private void allAreLarge(String when) {
        List<String> small = new ArrayList<>();
        List<Region> found = new ArrayList<>();
        stage.getScene().getRoot().applyCss();
        stage.getScene().getRoot().layout();
        collect(stage.getScene().getRoot(), found);
        for (Region target : found) {
            // Laid out by something that is not shown, such as a page behind another.
            boolean there = target.getWidth() > 0 && target.getHeight() > 0;
            if (there && Math.min(target.getWidth(), target.getHeight()) < LEAST - 0.5) {
                small.add(String.format(
                        Locale.ROOT,
                        "%.1f x %.1f %s %s",
                        target.getWidth(),
                        target.getHeight(),
                        target.getId(),
                        target.getStyleClass()));
            }
        }
        assertThat(found).as(when).isNotEmpty();
        assertThat(small).as(when).isEmpty();
    }

    @Test
    void onEveryPageAndStep(FxRobot robot) throws Exception {
        robot.interact(() -> allAreLarge("start"));
        openTheSkirt(robot);
        write(robot, "#wish-hip", "9 cm");
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        until(d -> !d.pattern().changes().isEmpty());
        robot.interact(() -> app.session().say(true, "editor.said.failed", Map.of("file", "x", "reason", "y")));
        for (String page : List.of("ease", "rings", "size", "changes", "true", "notes", "marks")) {
            robot.clickOn("#page-" + page);
            robot.interact(() -> allAreLarge(page));
        }
        for (String step : List.of("scale", "suggested", "pieces", "seams", "levels")) {
            robot.clickOn("#step-" + step);
            robot.interact(() -> allAreLarge(step));
        }
        robot.clickOn("#page-ease").clickOn("#ask-where").clickOn("#feels-pulls");
        robot.interact(() -> allAreLarge("where"));
        robot.clickOn("#ask-where");
        openHow(robot);
        for (Way way : Ways.all()) {
            robot.interact(
                    () -> app.session().want(desk().wanted().orElseThrow().withOther(Optional.of(OtherWay.of(way)))));
            robot.interact(() -> allAreLarge(way.method()));
        }
    }
}
