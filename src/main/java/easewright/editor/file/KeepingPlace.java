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

    private List<Written> lastWritten = List.of();

    /** A file as it would be saved. */
    private record Written(SvgFile svg, Pattern pattern, String name, byte[] bytes, SavingDoes does) {
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
        List<Written> states = written(work);
        Written present = states.get(states.size() - 1);
        lastWritten = states;
        recovery()
                .keep(file.known(), file.seen(), present.bytes(), work.hand().text(), earlier(states, work.history()));
        former.ifPresent(recovery()::discard);
        return present.does();
    }

    /**
     * The states up to the present one, oldest first: as far back as there is room, and to the first that cannot be
     * written.
     */
    private List<Written> written(ToKeep work) throws SvgProblem {
        OpenFile file = work.file();
        int index = work.history().index();
        Deque<Written> states = new ArrayDeque<>();
        states.add(written(file.svg(), work.pattern(), file.name()));
        long room = MOST;
        for (int i = index - 1; i >= 0 && room > 0; i--) {
            try {
                Written state = written(file.readAt(i), work.history().states().get(i), file.name());
                room -= state.bytes().length;
                states.addFirst(state);
            } catch (SvgProblem | RuntimeException notToBeWritten) {
                // Whatever is wrong with what was, the present state is kept.
                break;
            }
        }
        return List.copyOf(states);
    }

    /** What was written before is not written again. */
    private Written written(SvgFile svg, Pattern pattern, String name) throws SvgProblem {
        Optional<Written> known =
                lastWritten.stream().filter(w -> w.isOf(svg, pattern, name)).findFirst();
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
