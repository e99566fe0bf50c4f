package easewright.editor.file;

import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import easewright.svg.SvgProblem;
import easewright.svg.disk.FileClaim;
import easewright.svg.disk.KeptWork;
import easewright.svg.disk.Recovery;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.util.Duration;

/** Keeps unsaved work safe from a crash, and says which file this window has open. */
final class SafeKeeping {
    /** So long after a step the work is kept: soon enough to lose little, and not at every touch. */
    private static final Duration REST = Duration.seconds(1.5);

    private final Session session;
    private final Background background;
    private final Path folder;
    private final PauseTransition rest = new PauseTransition(REST);
    private Optional<Recovery> recovery = Optional.empty();
    private boolean taken;
    private Optional<FileClaim> claim = Optional.empty();
    private Optional<Path> kept = Optional.empty();
    private Optional<SvgProblem> hindrance = Optional.empty();
    private Optional<KeptWork> adopted = Optional.empty();
    private boolean keeping;

    /**
     * @param folder where the program keeps what it remembers
     */
    SafeKeeping(Session session, Background background, Path folder) {
        this.session = session;
        this.background = background;
        this.folder = folder;
        rest.setOnFinished(e -> keep());
        session.deskProperty().addListener((o, before, now) -> follow(before, now));
    }

    /** Where unsaved work is kept: taken when it is first asked for, so that no start of the window waits for the disk. */
    private Optional<Recovery> recovery() {
        if (!taken) {
            taken = true;
            try {
                recovery = Optional.of(new Recovery(folder));
            } catch (SvgProblem problem) {
                hindrance = Optional.of(problem);
            }
        }
        return recovery;
    }

    /** Work left behind by windows that did not end in good order, the latest first. */
    List<KeptWork> leftBehind() {
        return recovery().map(Recovery::leftBehind).orElse(List.of());
    }

    /** Where work left behind now lies that is damaged; told once. */
    List<Path> damaged() {
        return recovery().map(Recovery::putAsideDamaged).orElse(List.of());
    }

    void discard(KeptWork work) {
        recovery().ifPresent(r -> r.discard(work));
    }

    private void follow(Desk before, Desk now) {
        if (!now.pattern().equals(before.pattern()) || now.isSaved() != before.isSaved()) {
            if (now.isSaved()) {
                settled();
            } else if (rest.getStatus() != Animation.Status.RUNNING) {
                // From the first step on: whoever never rests is kept safe as well.
                rest.playFromStart();
            }
        }
    }

    /** Keeps work that a crash left behind, now on the table, as this window's own; only then is what was left thrown away. */
    void adopt(KeptWork work) {
        adopted = Optional.of(work);
        rest.stop();
        keep();
    }

    /** Keeps the present state, away from the window's thread: one at a time, so that the latest is what stays. */
    private void keep() {
        Desk desk = session.desk();
        if (desk.isSaved() || desk.file().isEmpty()) {
            return;
        }
        if (recovery().isEmpty()) {
            // Said when there is something to lose, and once.
            hindrance.ifPresent(this::failed);
            hindrance = Optional.empty();
            return;
        }
        if (keeping) {
            rest.playFromStart();
            return;
        }
        keeping = true;
        OpenFile file = desk.file().get();
        Pattern pattern = desk.pattern();
        Recovery keeper = recovery().get();
        Optional<KeptWork> former = adopted;
        kept.filter(p -> !p.equals(file.known())).ifPresent(keeper::done);
        kept = Optional.of(file.known());
        background.quietly(
                () -> {
                    keeper.keep(file.known(), file.svg().write(pattern));
                    return file;
                },
                done -> {
                    keeping = false;
                    former.ifPresent(keeper::discard);
                    forgetIfSettled(done.known());
                },
                problem -> {
                    keeping = false;
                    failed(problem);
                });
    }

    /** Saved or given up while it was being kept: then there is nothing to keep. */
    private void forgetIfSettled(Path file) {
        boolean wanted = !session.desk().isSaved() && kept.filter(file::equals).isPresent();
        if (!wanted) {
            recovery().ifPresent(r -> r.done(file));
        }
    }

    private void failed(Throwable problem) {
        if (problem instanceof SvgProblem svg) {
            session.say(true, "problem." + svg.code(), svg.values());
        } else {
            session.say(true, "editor.said.not-kept", Map.of("reason", String.valueOf(problem.getMessage())));
        }
    }

    /** What was kept is saved, or not wanted any more. */
    void settled() {
        rest.stop();
        recovery().ifPresent(r -> {
            kept.ifPresent(r::done);
            adopted.ifPresent(r::discard);
        });
        kept = Optional.empty();
        adopted = Optional.empty();
    }

    /** This window now has the file open; whether no other window has. */
    boolean claim(Optional<Path> file) {
        claim.ifPresent(FileClaim::close);
        claim = Optional.empty();
        if (file.isEmpty()) {
            return true;
        }
        try {
            claim = FileClaim.take(file.get(), folder);
            return claim.isPresent();
        } catch (SvgProblem problem) {
            // Where claims cannot be kept, saving still notices what changed meanwhile.
            return true;
        }
    }

    /** The window ends in good order. */
    void close() {
        settled();
        claim.ifPresent(FileClaim::close);
        recovery.ifPresent(Recovery::close);
    }
}
