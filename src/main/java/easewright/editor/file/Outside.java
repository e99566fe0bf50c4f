package easewright.editor.file;

import easewright.editor.model.OpenFile;
import easewright.editor.model.Session;
import easewright.svg.disk.Fingerprint;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** What other programs do to the file on the table. */
final class Outside {
    private final Session session;
    private final Background background;
    private final BooleanSupplier saving;
    /** What the file was when last looked at, so that what has happened to it is said once. */
    private Optional<Fingerprint> lastSeen = Optional.empty();

    /**
     * @param saving whether this window is writing the file itself
     */
    Outside(Session session, Background background, BooleanSupplier saving) {
        this.session = session;
        this.background = background;
        this.saving = saving;
    }

    /** What the file on the table was when it was read. */
    void seen(Optional<Fingerprint> fingerprint) {
        lastSeen = fingerprint;
    }

    /** Looks whether another program has changed the file or taken it away, and says so once. */
    void lookAgain() {
        OpenFile file = session.desk().file().orElse(null);
        if (file == null || file.path().isEmpty()) {
            return;
        }
        Path path = file.path().get();
        background.quietly(
                () -> new Look(Fingerprint.onDisk(path), Files.exists(path)),
                look -> compare(file, look),
                unreadable -> {});
    }

    private record Look(Optional<Fingerprint> now, boolean there) {}

    private void compare(OpenFile file, Look look) {
        boolean same = session.desk().file().equals(Optional.of(file));
        // What this window writes may be on the disk before it has heard that it is.
        if (!same || saving.getAsBoolean() || look.now().equals(lastSeen)) {
            return;
        }
        lastSeen = look.now();
        boolean told = session.desk()
                .notice()
                .filter(n -> n.key().equals("problem.save-changed-meanwhile"))
                .isPresent();
        if (!look.now().equals(file.seen()) && !told) {
            String how = look.there() ? "changed-outside" : "gone";
            session.say(true, "editor.said." + how, Map.of("file", file.name()));
        }
    }
}
