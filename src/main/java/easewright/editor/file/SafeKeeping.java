package easewright.editor.file;

import easewright.editor.model.Begun;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.SavingDoes;
import easewright.editor.model.Session;
import easewright.editor.model.Unfinished;
import easewright.pattern.Pattern;
import easewright.svg.SvgProblem;
import easewright.svg.disk.KeptWork;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.util.Duration;

/**
 * Keeps unsaved work, and what is tried or half typed beside it, safe from a crash. Where that fails it is tried again
 * and again, and until it works the window says that the work is not safe.
 */
final class SafeKeeping {
    /** So long a pause in which nothing is done or typed has the work kept: not at every touch. */
    private static final Duration PAUSE = Duration.millis(300);

    /** So long after a step it is kept all the same: whoever never rests is kept safe as well. */
    private static final Duration LATEST = Duration.seconds(1.5);

    /** So long after a failure it is tried again. */
    private static final Duration AGAIN = Duration.seconds(3);

    private final Session session;
    private final Background background;
    private final KeepingPlace place;
    private final PauseTransition pause = new PauseTransition(PAUSE);
    private final PauseTransition latest = new PauseTransition(LATEST);
    private final PauseTransition again = new PauseTransition(AGAIN);
    private final ReadOnlyBooleanWrapper unsafe = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<SavingDoes>> saving = new ReadOnlyObjectWrapper<>(Optional.empty());
    private InHand window = InHand.EMPTY;

    /** For which files this window keeps work. */
    private final Set<Path> places = new HashSet<>();

    private Optional<ToKeep> lastKept = Optional.empty();
    private Optional<KeptWork> adopted = Optional.empty();

    /** What lies safe in the work that was adopted, until this window keeps it. */
    private Optional<Pattern> asAdopted = Optional.empty();

    private boolean keeping;

    /**
     * @param folder where the program keeps what it remembers
     */
    SafeKeeping(Session session, Background background, Path folder) {
        this.session = session;
        this.background = background;
        this.place = new KeepingPlace(background, folder);
        pause.setOnFinished(e -> atOnce());
        latest.setOnFinished(e -> atOnce());
        again.setOnFinished(e -> keep());
        session.deskProperty().addListener((o, before, now) -> follow(before, now));
    }

    /** From where it is known what is half typed and half marked. */
    void follow(InHand hand) {
        window = hand;
    }

    /** What is half typed and half marked in the window. */
    InHand window() {
        return window;
    }

    /** Whether there is unsaved work that cannot be kept safe for now. */
    ReadOnlyBooleanProperty unsafeProperty() {
        return unsafe.getReadOnlyProperty();
    }

    /** What saving would do, as far as it was looked at: a moment after the last step. */
    ReadOnlyObjectProperty<Optional<SavingDoes>> savingProperty() {
        return saving.getReadOnlyProperty();
    }

    /** Looks for work left behind by windows that did not end in good order, and puts aside what is damaged. */
    void leftBehind(Consumer<LeftBehind> found) {
        background.inOrder(place::leftBehind, found, unreachable -> found.accept(LeftBehind.NOTHING));
    }

    void discard(KeptWork work) {
        place.discard(work);
    }

    private void follow(Desk before, Desk now) {
        if (now.isSaved() && !before.isSaved()) {
            settled();
        }
        boolean step = now.pattern() != before.pattern() || now.isSaved() != before.isSaved();
        boolean other = !Unfinished.on(now, Begun.NOTHING).equals(Unfinished.on(before, Begun.NOTHING));
        if (step || other) {
            touched();
        }
    }

    /** Something was done, or may have been typed. */
    void touched() {
        if (session.desk().isOpen()) {
            pause.playFromStart();
            if (latest.getStatus() != Animation.Status.RUNNING) {
                latest.playFromStart();
            }
        }
    }

    /** Keeps what there is without a pause: a question is about to be asked, and who knows how long it stays. */
    void atOnce() {
        rest();
        keep();
    }

    /** There is nothing to be kept in a while. */
    private void rest() {
        pause.stop();
        latest.stop();
    }

    /** Keeps work that a crash left behind, now on the table, as this window's own; only then is what was left thrown away. */
    void adopt(KeptWork work) {
        adopted = Optional.of(work);
        asAdopted = Optional.of(session.desk().pattern());
        atOnce();
    }

    /** Keeps the present state, away from the window's thread: one at a time, so that the latest is what stays. */
    private void keep() {
        Desk desk = session.desk();
        if (desk.file().isEmpty()) {
            return;
        }
        ToKeep state = new ToKeep(desk.file().get(), desk.history(), Unfinished.on(desk, window.begun()));
        if (desk.isSaved() && state.hand().isNothing()) {
            settled();
            return;
        }
        if (lastKept.filter(state::isSame).isPresent()) {
            // Perhaps gone back to after what could not be kept.
            safeAgain();
            return;
        }
        if (keeping) {
            pause.playFromStart();
            return;
        }
        keeping = true;
        OpenFile file = state.file();
        Optional<KeptWork> former = adopted;
        places.add(file.known());
        background.inOrder(
                () -> place.keep(state, former),
                does -> {
                    keeping = false;
                    adopted = adopted.filter(work -> !former.equals(Optional.of(work)));
                    asAdopted = Optional.empty();
                    safeAgain();
                    keptAt(state);
                    // What was kept from a crash has the new lines in it already: what of them is new, it does not
                    // show.
                    saving.set(Optional.of(does).filter(d -> file.asRead()));
                },
                problem -> {
                    keeping = false;
                    failed(problem);
                });
    }

    /** It is in place of what was kept before, unless it was saved or given up meanwhile. */
    private void keptAt(ToKeep state) {
        Path file = state.file().known();
        Set<Path> others = new HashSet<>(places);
        if (others.remove(file)) {
            lastKept = Optional.of(state);
            places.retainAll(Set.of(file));
        } else {
            others = Set.of(file);
        }
        forget(others, Optional.empty());
    }

    private void forget(Set<Path> files, Optional<KeptWork> work) {
        if (!files.isEmpty() || work.isPresent()) {
            place.forget(files, work);
        }
    }

    /** Said once, and shown until it works again. A mere trial is not worth a word. */
    private void failed(Throwable problem) {
        again.playFromStart();
        Pattern now = session.desk().pattern();
        boolean safe =
                session.desk().isSaved() || asAdopted.filter(p -> p == now).isPresent();
        if (unsafe.get() || safe) {
            return;
        }
        unsafe.set(true);
        if (problem instanceof SvgProblem svg) {
            session.say(true, "problem." + svg.code(), svg.values());
        } else {
            session.say(true, "editor.said.not-kept", Map.of("reason", Failures.details(problem)));
        }
    }

    private void safeAgain() {
        if (unsafe.get()) {
            unsafe.set(false);
            session.say(false, "editor.said.kept-again", Map.of());
        }
    }

    /** What was kept is saved, or not wanted any more. */
    void settled() {
        rest();
        again.stop();
        unsafe.set(false);
        forget(Set.copyOf(places), adopted);
        places.clear();
        lastKept = Optional.empty();
        adopted = Optional.empty();
        asAdopted = Optional.empty();
    }

    /** The window ends in good order. */
    void close() {
        settled();
        place.close();
        background.end();
    }
}
