package easewright.editor;

import org.junit.jupiter.api.extension.Extension;

/** Lets the robot's pointer jump and its keys follow at once. Named before the extension that makes the robot. */
final class Swift implements Extension {
    static {
        System.setProperty("testfx.robot.move_max_count", "1");
        System.setProperty("testfx.robot.write_sleep", "0");
    }
}
