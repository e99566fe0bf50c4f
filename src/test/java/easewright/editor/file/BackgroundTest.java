package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class BackgroundTest {
    /** A slow disk holds up nobody, and nothing that is given later comes before what was given earlier. */
    @Test
    void whatIsDoneInOrderIsWaitedForAtTheEndOnly(FxRobot robot) {
        Background background = new Background();
        CountDownLatch slow = new CountDownLatch(1);
        List<Integer> done = Collections.synchronizedList(new ArrayList<>());
        robot.interact(() -> {
            for (int i = 0; i < 20; i++) {
                int number = i;
                background.inOrder(
                        () -> {
                            slow.await();
                            return done.add(number);
                        },
                        added -> {},
                        problem -> {});
            }
            assertThat(done).isEmpty();
            slow.countDown();
            background.end();
            background.inOrder(() -> done.add(99), added -> {}, problem -> {});
        });
        assertThat(done).hasSize(20).isSorted().doesNotContain(99);
    }

    /** Work may have ended in its worker while the window has not heard of it: who gives it up then hears nothing either. */
    @Test
    void whatIsGivenUpIsForgottenAlsoWhenItHasJustEnded(FxRobot robot) {
        Background background = new Background();
        AtomicReference<Thread> worker = new AtomicReference<>();
        List<String> heard = new ArrayList<>();
        robot.interact(() -> {
            Runnable cancel = background.making(
                    () -> {
                        worker.set(Thread.currentThread());
                        return "made";
                    },
                    heard::add,
                    () -> heard.add("stopped"));
            // A worker that waits for its next work has put down the last.
            while (worker.get() == null || worker.get().getState() != Thread.State.TIMED_WAITING) {
                Thread.onSpinWait();
            }
            cancel.run();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(heard).containsExactly("stopped");
        robot.interact(background::end);
    }
}
