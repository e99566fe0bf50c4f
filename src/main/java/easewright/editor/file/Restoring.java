package easewright.editor.file;

import easewright.ease.EaseTables;
import easewright.editor.model.Begun;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.OwnTables;
import easewright.editor.model.Session;
import easewright.editor.model.Unfinished;
import easewright.editor.model.Wanted;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.svg.disk.Fingerprint;
import easewright.svg.disk.KeptWork;
import easewright.text.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Brings back what a crash left behind, and says what has become of its file since. */
final class Restoring {
    private final FileWork files;
    private final Session session;
    private final SafeKeeping safe;
    private final OwnClaim claim;
    private final Outside outside;
    private final Failures failures;

    Restoring(FileWork files, Session session, SafeKeeping safe, OwnClaim claim, Outside outside, Failures failures) {
        this.files = files;
        this.session = session;
        this.safe = safe;
        this.claim = claim;
        this.outside = outside;
        this.failures = failures;
    }

    /**
     * Puts work that a crash left behind back on the table.
     *
     * @param done called once it lies there
     */
    void restore(KeptWork work, Runnable done) {
        String name = Failures.name(work.original());
        OwnTables tables = session.ownTables();
        files.background()
                .whileWaiting(
                        "reading",
                        name,
                        () -> kept(work, name, tables.all()),
                        back -> files.leaving(() -> restored(work, back, done), () -> restore(work, done)),
                        problem -> failures.tell(problem, name));
    }

    /**
     * What was kept, read again.
     *
     * @param asSaved whether its file holds it just so, or it is a sample to which nothing was done
     * @param savedAt which of its states the file holds, −1 for none
     */
    record Back(Opened opened, boolean asSaved, int savedAt) {}

    static Back kept(KeptWork work, String name, EaseTables tables) throws SvgProblem {
        // Where the file was changed since, its place is not taken for granted: the user says where to save.
        boolean itsPlace = work.original().isAbsolute() && !work.originalChanged();
        Optional<Path> path = itsPlace ? Optional.of(work.original()) : Optional.empty();
        List<SvgFile> states = states(work, name);
        Optional<Fingerprint> onDisk = path.flatMap(Fingerprint::onDisk);
        boolean asSaved = LeftBehind.isAsSaved(work);
        OpenFile file = OpenFile.kept(states, path, name, onDisk, path.isPresent() && isBare(path.get()), asSaved);
        int last = states.size() - 1;
        boolean known = itsPlace || !work.original().isAbsolute();
        int lost = work.earlier().states().size() - last;
        int saved = asSaved ? last : known ? Math.max(work.earlier().saved() - lost, -1) : -1;
        return new Back(Opened.of(file, tables), asSaved, saved);
    }

    /** All that can be undone to, oldest first, and then what was kept. */
    private static List<SvgFile> states(KeptWork work, String name) throws SvgProblem {
        List<SvgFile> states = new ArrayList<>();
        states.add(SvgFile.read(work.bytes(), name));
        List<byte[]> earlier = work.earlier().states();
        for (int i = earlier.size() - 1; i >= 0; i--) {
            try {
                states.add(0, SvgFile.read(earlier.get(i), name));
            } catch (SvgProblem unreadable) {
                // What comes before it cannot be reached by undoing.
                break;
            }
        }
        return states;
    }

    /** What was kept has marks: whether the user's own drawing has them, it alone can say. */
    private static boolean isBare(Path path) {
        try {
            return Files.exists(path) && !SvgFile.read(path).marked();
        } catch (SvgProblem noDrawing) {
            return true;
        }
    }

    private void restored(KeptWork work, Back back, Runnable done) {
        OpenFile file = back.opened().file();
        Unfinished hand = Unfinished.of(work.unfinished());
        safe.settled();
        session.restore(back.opened(), back.savedAt(), hand);
        done.run();
        Begun lost = safe.window().again(hand.begun());
        outside.seen(file.seen());
        safe.adopt(work);
        boolean alone = claim.take(file.path());
        String said = again(hand, lost);
        String how = how(work, back);
        boolean changed = how.equals("-changed") || how.equals("-gone");
        session.say(changed, "editor.said.restored" + how, Map.of("file", file.name(), "hand", said));
        if (!alone) {
            session.say(true, "editor.said.open-elsewhere", Map.of("file", file.name()));
        }
    }

    private static String how(KeptWork work, Back back) {
        if (back.asSaved()) {
            return work.original().isAbsolute() ? "-as-saved" : "-sample";
        }
        boolean changed =
                work.original().isAbsolute() && back.opened().file().path().isEmpty();
        return !changed ? "" : Files.exists(work.original()) ? "-changed" : "-gone";
    }

    /** What is said of what was in the user's hands. */
    private String again(Unfinished hand, Begun lost) {
        List<String> said = new ArrayList<>();
        Begun begun = hand.begun();
        Words words = session.desk().words();
        hand.wanted().filter(Wanted::isBegun).ifPresent(wanted -> {
            boolean there = session.desk().wanted().equals(hand.wanted());
            said.add(words.of("editor.said." + (there ? "tried-again" : "tried-lost")));
        });
        begun.marking()
                .filter(Begun.Marking::isHalfDone)
                .ifPresent(m -> said.add(
                        words.of("editor.said." + (lost.marking().isEmpty() ? "marked-again" : "marked-lost"))));
        begun.cut()
                .ifPresent(c -> said.add(words.of("editor.said." + (lost.cut().isEmpty() ? "cut-again" : "cut-lost"))));
        List<Begun.Typed> forPrint = begun.forPrint();
        if (begun.typed().size() - forPrint.size() > lost.typed().size()) {
            said.add(words.of("editor.said.typed-again"));
        }
        if (!forPrint.isEmpty()) {
            said.add(words.of("editor.said.typed-for-print"));
        }
        for (Begun.Typed typed : lost.typed()) {
            said.add(words.of("editor.said.typed-before", Map.of("field", typed.field(), "text", typed.text())));
        }
        return said.isEmpty() ? "" : " " + String.join(" ", said);
    }
}
