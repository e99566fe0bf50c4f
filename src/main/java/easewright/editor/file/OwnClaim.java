package easewright.editor.file;

import easewright.svg.SvgProblem;
import easewright.svg.disk.FileClaim;
import java.nio.file.Path;
import java.util.Optional;

/** Which file this window says it has open. */
final class OwnClaim {
    private final Path folder;
    private Optional<FileClaim> claim = Optional.empty();

    /**
     * @param folder where the program keeps what it remembers
     */
    OwnClaim(Path folder) {
        this.folder = folder;
    }

    /** This window now has the file open; whether no other window has. */
    boolean take(Optional<Path> file) {
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

    void close() {
        claim.ifPresent(FileClaim::close);
    }
}
