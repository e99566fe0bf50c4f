package easewright.editor;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import java.nio.file.Files;
import java.nio.file.Path;
import org.testfx.api.FxRobot;

/** Files of the sample skirt, and what is said of them. */
abstract class FilesJourney extends Journey {
    Path skirt(String name) throws Exception {
        Sample sample = Sample.all().get(0);
        return Files.write(folder.resolve(name), sample.read().bytes());
    }

    void widen(FxRobot robot, Path file) throws Exception {
        robot.interact(() -> app.files().open(file));
        until(Desk::isOpen);
        widen(robot);
    }

    void widen(FxRobot robot) throws Exception {
        robot.clickOn("#ease-hip .level-name");
        write(robot, "#amount", "2 cm");
        robot.clickOn("#keep");
        until(d -> !d.pattern().changes().isEmpty());
    }
}
