package easewright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Desk;
import easewright.editor.model.Sample;
import easewright.svg.disk.EarlierStates;
import easewright.svg.disk.Fingerprint;
import easewright.svg.disk.Recovery;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** Two windows had the same file open, and both ended: the work of each is offered, and can be told from the other's. */
class TwoLeftBehindJourneyTest extends Journey {
    @Start
    void start(Stage shown) throws Exception {
        open(shown);
    }

    @Override
    Path state() throws Exception {
        Path state = super.state();
        byte[] skirt = Sample.all().get(0).read().bytes();
        Path file = Files.write(Files.createTempDirectory(folder, "files").resolve("twice.svg"), skirt);
        for (String garment : new String[] {"skirt", "kilt"}) {
            var svg = Sample.all().get(0).read();
            byte[] work = svg.write(svg.pattern().withGarment(garment + " of one window"));
            try (Recovery window = new Recovery(state)) {
                window.keep(file, Optional.of(Fingerprint.of(skirt)), work, "", EarlierStates.NONE);
            }
        }
        return state;
    }

    @Test
    void eachIsOfferedByTheSecond(FxRobot robot) throws Exception {
        MenuButton others = robot.lookup("#left-others").queryAs(MenuButton.class);
        assertThat(others.isVisible()).isTrue();
        // Unless a minute ended between the two.
        assertThat(others.getItems())
                .extracting(MenuItem::getText)
                .hasSize(2)
                .allMatch(line -> line.matches("twice\\.svg, .* \\d\\d:\\d\\d(:\\d\\d)?"))
                .satisfiesAnyOf(
                        lines -> assertThat(lines).allMatch(line -> line.matches(".*\\d\\d:\\d\\d:\\d\\d")),
                        lines -> assertThat(lines).doesNotHaveDuplicates());
        robot.clickOn("#left-restore");
        until(Desk::isOpen);
        String first = desk().pattern().garment();
        assertThat(robot.lookup("#left-behind .label")
                        .nth(1)
                        .queryAs(Label.class)
                        .getText())
                .contains("twice.svg");
        answers.leave.add(easewright.editor.file.Asking.Leave.WITHOUT_SAVING);
        robot.clickOn("#left-restore");
        until(d -> !d.pattern().garment().equals(first));
        assertThat(robot.lookup("#left-behind").query().isVisible()).isFalse();
    }
}
