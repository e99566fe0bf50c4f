package easewright.editor.file;

import easewright.editor.model.OpenFile;
import easewright.editor.model.SavingDoes;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.svg.disk.KeptWork;
import easewright.svg.disk.Recovery;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Where unsaved work is kept, and how it is written there. What takes time is done in order, away from the window's
 * thread, which is not to wait for a slow disk.
 */
final class KeepingPlace {
    private final Background background;
    private final Path folder;

    /** This and the next only for the work that is done in order. */
    private Recovery recovery;

    private Written lastWritten;

    /** A file as it would be saved. */
    private record Written(SvgFile svg, Pattern pattern, String name, byte[] bytes, SavingDoes does) {}

    /**
     * @param folder where the program keeps what it remembers
     */
    KeepingPlace(Background background, Path folder) {
        this.background = background;
        this.folder = folder;
    }

    /** Taken when it is first asked for. */
    private Recovery recovery() throws SvgProblem {
        if (recovery == null) {
            recovery = new Recovery(folder);
        }
        return recovery;
    }

    /** Something to be done, after all that was asked for before; nothing where it cannot be. */
    private void there(Consumer<Recovery> job) {
        background.inOrder(
                () -> {
                    job.accept(recovery());
                    return folder;
                },
                done -> {},
                saidWhenThereIsSomethingToLose -> {});
    }

    /** Work left behind by other windows, done in order. */
    LeftBehind leftBehind() throws SvgProblem {
        return LeftBehind.in(recovery());
    }

    /** Throws work away that was left behind. */
    void discard(KeptWork work) {
        there(r -> r.discard(work));
    }

    /** Throws away what this window has kept of the files, and work that was left behind. */
    void forget(Set<Path> files, Optional<KeptWork> work) {
        there(r -> {
            files.forEach(r::done);
            work.ifPresent(r::discard);
        });
    }

    /**
     * Keeps the work, done in order.
     *
     * @param former work left behind from which this goes on: thrown away once this is kept
     * @return what saving it would do to the drawing
     */
    SavingDoes keep(ToKeep work, Optional<KeptWork> former) throws SvgProblem {
        OpenFile file = work.file();
        Written written = written(work);
        recovery().keep(file.known(), file.seen(), written.bytes(), work.hand().text());
        former.ifPresent(recovery()::discard);
        return written.does();
    }

    /** Of what is tried on one and the same pattern the file is written once. */
    private Written written(ToKeep work) throws SvgProblem {
        OpenFile file = work.file();
        boolean same = lastWritten != null
                && lastWritten.svg() == file.svg()
                && lastWritten.pattern() == work.pattern()
                && lastWritten.name().equals(file.name());
        if (!same) {
            SvgFile.Written anew = file.svg().writing(work.pattern());
            byte[] bytes = file.svg().named(anew.bytes(), file.name());
            SavingDoes does = SavingDoes.by(anew, work.pattern());
            lastWritten = new Written(file.svg(), work.pattern(), file.name(), bytes, does);
        }
        return lastWritten;
    }

    /** The window ends in good order. */
    void close() {
        background.inOrder(
                () -> {
                    if (recovery != null) {
                        recovery.close();
                    }
                    return folder;
                },
                done -> {},
                unreachable -> {});
    }
}
