package easewright.editor.file;

import easewright.ease.EaseTables;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.OwnTables;
import easewright.editor.model.Session;
import easewright.editor.model.Unfinished;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.svg.disk.Fingerprint;
import easewright.svg.disk.KeptWork;
import java.nio.file.Files;
import java.nio.file.Path;
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
                        back -> files.leaving(
                                () -> {
                                    restored(work, back);
                                    done.run();
                                },
                                () -> restore(work, done)),
                        problem -> failures.tell(problem, name));
    }

    /**
     * What was kept, read again.
     *
     * @param saved whether its file holds it just so
     */
    private record Back(Opened opened, boolean saved) {}

    private static Back kept(KeptWork work, String name, EaseTables tables) throws SvgProblem {
        // Where the file was changed since, its place is not taken for granted: the user says where to save.
        boolean itsPlace = work.original().isAbsolute() && !work.originalChanged();
        Optional<Path> path = itsPlace ? Optional.of(work.original()) : Optional.empty();
        SvgFile svg = SvgFile.read(work.bytes(), name);
        Optional<Fingerprint> onDisk = path.flatMap(Fingerprint::onDisk);
        boolean saved = onDisk.equals(Optional.of(Fingerprint.of(work.bytes())));
        return new Back(Opened.of(new OpenFile(svg, path, name, onDisk), tables), saved);
    }

    private void restored(KeptWork work, Back back) {
        OpenFile file = back.opened().file();
        Unfinished hand = Unfinished.of(work.unfinished());
        safe.settled();
        session.restore(back.opened(), back.saved(), hand);
        outside.seen(file.seen());
        safe.adopt(work);
        boolean alone = claim.take(file.path());
        boolean changed = work.original().isAbsolute() && file.path().isEmpty();
        String how = back.saved() ? "-as-saved" : !changed ? "" : Files.exists(work.original()) ? "-changed" : "-gone";
        session.say(changed, "editor.said.restored" + how, Map.of("file", file.name(), "hand", again(hand)));
        if (!alone) {
            session.say(true, "editor.said.open-elsewhere", Map.of("file", file.name()));
        }
    }

    /** What is said of what was in the user's hands. */
    private String again(Unfinished hand) {
        StringBuilder said = new StringBuilder();
        hand.wanted().ifPresent(wanted -> {
            boolean there = session.desk().wanted().equals(hand.wanted());
            said.append(' ')
                    .append(session.desk().words().of(there ? "editor.said.tried-again" : "editor.said.tried-lost"));
        });
        for (Unfinished.Typed typed : hand.typed()) {
            said.append(' ')
                    .append(session.desk()
                            .words()
                            .of("editor.said.typed-before", Map.of("field", typed.field(), "text", typed.text())));
        }
        return said.toString();
    }
}
