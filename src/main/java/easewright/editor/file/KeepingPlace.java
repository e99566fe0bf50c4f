package easewright.editor.file;

import easewright.editor.model.OpenFile;
import easewright.editor.model.SavingDoes;
import easewright.history.History;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.svg.disk.EarlierStates;
import easewright.svg.disk.KeptWork;
import easewright.svg.disk.Recovery;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Where unsaved work is kept, and how it is written there. What takes time is done in order, away from the window's
 * thread, which is not to wait for a slow disk.
 */
final class KeepingPlace {
    /**
     * So many bytes of earlier states are kept, as they would be saved: each is a drawing of its own once it is brought
     * back.
     */
    private static final long MOST = 8L << 20;

    private final Background background;
    private final Path folder;

    /** This and the next only for the work that is done in order. */
    private Recovery recovery;

    /** Of the file for which work was kept last; nothing once there is none to keep. */
    private List<Written> lastWritten = List.of();

    private Optional<Path> lastFile = Optional.empty();

    /** A file as it would be saved. */
    record Written(SvgFile svg, Pattern pattern, String name, byte[] bytes, SavingDoes does) {
        boolean isOf(SvgFile file, Pattern state, String called) {
            return svg == file && pattern == state && name.equals(called);
        }
    }

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
        background.inOrder(() -> {
            try {
                job.accept(recovery());
            } catch (SvgProblem saidWhenThereIsSomethingToLose) {
                return;
            }
        });
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
            if (lastFile.filter(files::contains).isPresent()) {
                lastWritten = List.of();
            }
            work.ifPresent(r::discard);
        });
    }

    /**
     * Keeps the work, done in order: the present state first, with those before it that are written already, since writing
     * the others may take long.
     *
     * @param former work left behind from which this goes on: thrown away once this is kept
     * @return what saving it would do to the drawing
     */
    SavingDoes keep(ToKeep work, Optional<KeptWork> former) throws SvgProblem {
        Written present = keepPresent(work);
        int kept = lastWritten.size();
        List<Written> all = written(present, work, false);
        if (all.size() > kept) {
            keep(work, all);
        }
        former.ifPresent(recovery()::discard);
        return present.does();
    }

    /** The present state, and of those before it what is written already. */
    Written keepPresent(ToKeep work) throws SvgProblem {
        lastFile = Optional.of(work.file().known());
        Written present = written(work.file().svg(), work.pattern(), work.file().name());
        keep(work, written(present, work, true));
        return present;
    }

    private void keep(ToKeep work, List<Written> states) throws SvgProblem {
        OpenFile file = work.file();
        byte[] present = states.get(states.size() - 1).bytes();
        recovery().keep(file.known(), file.seen(), present, work.hand().text(), earlier(states, work.history()));
        lastWritten = states;
    }

    /**
     * The states up to the present one, oldest first: as far back as there is room, and to the first that cannot be
     * written.
     *
     * @param already only to the first that is not written yet
     */
    private List<Written> written(Written present, ToKeep work, boolean already) {
        OpenFile file = work.file();
        Deque<Written> states = new ArrayDeque<>(List.of(present));
        long room = MOST;
        for (int i = work.history().index() - 1; i >= 0 && room > 0; i--) {
            try {
                SvgFile svg = file.readAt(i);
                Pattern pattern = work.history().states().get(i);
                if (already && known(svg, pattern, file.name()).isEmpty()) {
                    break;
                }
                Written state = written(svg, pattern, file.name());
                room -= state.bytes().length;
                states.addFirst(state);
            } catch (SvgProblem | RuntimeException notToBeWritten) {
                // Whatever is wrong with what was, the present state is kept.
                break;
            }
        }
        return List.copyOf(states);
    }

    private Optional<Written> known(SvgFile svg, Pattern pattern, String name) {
        return lastWritten.stream().filter(w -> w.isOf(svg, pattern, name)).findFirst();
    }

    /** What was written before is not written again. */
    private Written written(SvgFile svg, Pattern pattern, String name) throws SvgProblem {
        Optional<Written> known = known(svg, pattern, name);
        if (known.isPresent()) {
            return known.get();
        }
        SvgFile.Written anew = svg.writing(pattern);
        return new Written(svg, pattern, name, svg.named(anew.bytes(), name), SavingDoes.by(anew, pattern));
    }

    /** All but the present one; of those that the file does not tell apart, one. */
    private static EarlierStates earlier(List<Written> states, History<Pattern> history) {
        List<byte[]> earlier = new ArrayList<>();
        int first = history.index() + 1 - states.size();
        int saved = -1;
        for (int i = 0; i < states.size(); i++) {
            boolean present = i == states.size() - 1;
            saved = first + i == history.savedAt() ? earlier.size() : saved;
            if (!present
                    && !Arrays.equals(states.get(i).bytes(), states.get(i + 1).bytes())) {
                earlier.add(states.get(i).bytes());
            }
        }
        return new EarlierStates(earlier, saved);
    }

    /** The window ends in good order. */
    void close() {
        background.inOrder(() -> {
            if (recovery != null) {
                recovery.close();
            }
        });
    }
}
