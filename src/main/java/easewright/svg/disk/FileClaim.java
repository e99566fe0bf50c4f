package easewright.svg.disk;

import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * One window's word that it has a file open, so that a second window on the same file can be warned. It binds nobody:
 * a second window may go on, and saving notices a file that changed meanwhile. It is kept on this machine, so that
 * two machines on one shared folder do not see each other's.
 */
public final class FileClaim implements AutoCloseable {
    private final Claims claims;
    private final String name;

    private FileClaim(Claims claims, String name) {
        this.claims = claims;
        this.name = name;
    }

    /**
     * Says that a file is open from now on until the claim is closed or the program ends, by whatever end.
     *
     * @param stateFolder where the program keeps what it remembers
     * @return empty if another window has it open
     * @throws SvgProblem {@code state-folder} if the folder cannot be written
     */
    public static Optional<FileClaim> take(Path file, Path stateFolder) throws SvgProblem {
        try {
            Claims claims = Claims.in(stateFolder);
            String name = "file " + real(file);
            return claims.take(name) ? Optional.of(new FileClaim(claims, name)) : Optional.empty();
        } catch (IOException e) {
            throw Recovery.folderProblem(stateFolder, e);
        }
    }

    /** The file behind links, where it is there. */
    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException notThere) {
            return file.toAbsolutePath().normalize();
        }
    }

    @Override
    public void close() {
        claims.release(name);
    }
}
