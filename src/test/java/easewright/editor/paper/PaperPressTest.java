package easewright.editor.paper;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class PaperPressTest {
    /** Pages may be made while the window has not heard of it: who gives them up then hears nothing of them. */
    @Test
    void pagesThatAreGivenUpWhenTheyHaveJustBeenMadeAreForgotten(FxRobot robot) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        PaperChoice choice = PaperChoice.first(false);
        List<String> heard = new ArrayList<>();
        Set<Thread> others = Thread.getAllStackTraces().keySet();
        robot.interact(() -> {
            PaperPress press = new PaperPress();
            press.make(session.desk(), choice, pages -> heard.add("made"), problem -> heard.add(problem.toString()));
            while (!rests(others)) {
                Thread.onSpinWait();
            }
            press.cancel();
            assertThat(press.progressProperty().get()).isEqualTo(PaperPress.IDLE);
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(heard).isEmpty();
    }

    /** A worker that waits for its next work has put down the last. */
    private static boolean rests(Set<Thread> others) {
        return Thread.getAllStackTraces().entrySet().stream()
                .filter(e -> e.getKey().getName().equals("paper") && !others.contains(e.getKey()))
                .anyMatch(e -> Arrays.stream(e.getValue())
                        .anyMatch(at -> at.getMethodName().equals("getTask")));
    }
}
