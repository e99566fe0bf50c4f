package easewright.editor.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
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

    /** While a file is saved, that is what is shown; what went on before goes on beside it. */
    @Test
    void whatIsBegunLaterHidesNothingThatGoesOn(FxRobot robot) throws Exception {
        Background background = new Background();
        CountDownLatch saving = new CountDownLatch(1);
        CountDownLatch reading = new CountDownLatch(1);
        CountDownLatch interrupted = new CountDownLatch(1);
        List<String> heard = Collections.synchronizedList(new ArrayList<>());
        robot.interact(() -> {
            background.whileWaiting(
                    "reading",
                    "first.svg",
                    () -> {
                        try {
                            reading.await();
                        } catch (InterruptedException e) {
                            interrupted.countDown();
                        }
                        return "first";
                    },
                    heard::add,
                    failed -> {});
            background.throughout("saving", "mine.svg", held(saving, "saved"), heard::add, failed -> {});
            assertThat(shown(background)).isEqualTo("saving mine.svg");
        });
        saving.countDown();
        until(() -> heard.contains("saved"));
        robot.interact(() -> {
            assertThat(shown(background)).isEqualTo("reading first.svg");
            background.throughout("saving", "mine.svg", () -> "again", heard::add, failed -> {});
            background.whileWaiting("reading", "second.svg", () -> "second", heard::add, failed -> {});
        });
        until(() -> heard.contains("second") && heard.contains("again"));
        assertThat(interrupted.await(20, TimeUnit.SECONDS)).as("given up").isTrue();
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(heard).doesNotContain("first");
        robot.interact(() -> assertThat(shown(background)).isEmpty());
        robot.interact(background::end);
    }

    /** Nobody stopped what is only thought about otherwise; and a file that is read comes all the same. */
    @Test
    void aThoughtGivesWayToTheNextAndToNothingElse(FxRobot robot) throws Exception {
        Background background = new Background();
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch reading = new CountDownLatch(1);
        List<String> heard = Collections.synchronizedList(new ArrayList<>());
        robot.interact(() -> {
            background.whileWaiting("reading", "file.svg", held(reading, "read"), heard::add, failed -> {});
            background.thinking(held(held, "one"), heard::add, () -> heard.add("one stopped"));
            background.thinking(() -> "two", heard::add, () -> heard.add("two stopped"));
        });
        until(() -> heard.contains("two"));
        reading.countDown();
        until(() -> heard.contains("read"));
        held.countDown();
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(heard).containsExactly("two", "read");
        robot.interact(background::end);
    }

    /** A file that is being saved under another name is there when the window that was closed meanwhile is gone. */
    @Test
    void whatHasToComeToItsEndIsWaitedForWhenTheWindowEnds(FxRobot robot) {
        Background background = new Background();
        AtomicBoolean gone = new AtomicBoolean();
        AtomicBoolean saved = new AtomicBoolean();
        robot.interact(() -> {
            Thread window = Thread.currentThread();
            background.throughout(
                    "saving",
                    "copy.svg",
                    () -> {
                        while (!gone.get() && !isEnding(window)) {
                            Thread.onSpinWait();
                        }
                        saved.set(!gone.get());
                        return "";
                    },
                    done -> {},
                    failed -> {});
            background.end();
            gone.set(true);
            assertThat(saved).isTrue();
        });
    }

    /** Whoever waits for a thought that comes to grief is not left waiting. */
    @Test
    void aThoughtThatFailsIsToldAsStopped(FxRobot robot) throws Exception {
        Background background = new Background();
        List<String> heard = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch failed = new CountDownLatch(1);
        background.workProperty().addListener((o, before, now) -> {
            if (now.isEmpty()) {
                failed.countDown();
            }
        });
        robot.interact(() -> background.thinking(
                () -> {
                    throw new IllegalStateException("on purpose");
                },
                done -> heard.add("done"),
                () -> heard.add("stopped")));
        assertThat(failed.await(20, TimeUnit.SECONDS)).isTrue();
        CountDownLatch after = new CountDownLatch(1);
        Platform.runLater(after::countDown);
        assertThat(after.await(20, TimeUnit.SECONDS)).isTrue();
        WaitForAsyncUtils.clearExceptions();
        assertThat(heard).containsExactly("stopped");
        robot.interact(background::end);
    }

    private static boolean isEnding(Thread window) {
        return Arrays.stream(window.getStackTrace())
                .anyMatch(at -> at.getMethodName().equals("end"));
    }

    private static Callable<String> held(CountDownLatch latch, String done) {
        return () -> {
            latch.await();
            return done;
        };
    }

    private static String shown(Background background) {
        return background
                .workProperty()
                .get()
                .map(w -> w.what() + " " + w.file())
                .orElse("");
    }

    private static void until(Callable<Boolean> so) throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, so);
    }
}
