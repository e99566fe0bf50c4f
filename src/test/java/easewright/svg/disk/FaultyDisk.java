package easewright.svg.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A disk on which one step goes wrong: it fails and the program lives on, or the program dies in the middle of it,
 * after which nothing more is done, not even tidying up.
 */
final class FaultyDisk implements Disk {
    enum Fault {
        /** The step does nothing and reports an error. */
        REFUSE,
        /** The step does nothing, since this user may not. */
        FORBID,
        /** A file is written by half, then an error is reported, as on a full disk. */
        HALF,
        /** The step is done, then an error is reported. */
        LATE,
        /** The program dies before the step. */
        DIE_BEFORE,
        /** The program dies with a file written by half. */
        DIE_HALF,
        /** The program dies just after the step. */
        DIE_AFTER
    }

    /** The end of the program. */
    static final class Died extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final int wrongStep;
    private final Fault fault;
    private int step;
    private boolean dead;

    FaultyDisk(int wrongStep, Fault fault) {
        this.wrongStep = wrongStep;
        this.fault = fault;
    }

    /** How many steps were asked for. */
    int steps() {
        return step;
    }

    private interface Step {
        void run() throws IOException;
    }

    private void perform(Step whole, Step half) throws IOException {
        if (dead) {
            throw new Died();
        }
        if (step++ != wrongStep) {
            whole.run();
            return;
        }
        switch (fault) {
            case HALF, DIE_HALF -> half.run();
            case LATE, DIE_AFTER -> whole.run();
            default -> {
                // Nothing of it is done.
            }
        }
        if (fault == Fault.FORBID) {
            throw new AccessDeniedException("fault at step " + wrongStep);
        }
        if (fault == Fault.REFUSE || fault == Fault.HALF || fault == Fault.LATE) {
            throw new IOException("fault at step " + wrongStep);
        }
        dead = true;
        throw new Died();
    }

    @Override
    public byte[] read(Path file) throws IOException {
        byte[][] content = new byte[1][];
        perform(() -> content[0] = REAL.read(file), () -> {});
        return content[0];
    }

    @Override
    public void writeNew(Path file, byte[] content) throws IOException {
        perform(
                () -> REAL.writeNew(file, content),
                () -> Files.write(file, Arrays.copyOf(content, content.length / 2)));
    }

    @Override
    public boolean copyTraits(Path from, Path to) throws IOException {
        boolean[] same = new boolean[1];
        perform(() -> same[0] = REAL.copyTraits(from, to), () -> {});
        return same[0];
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        perform(() -> REAL.replace(from, to), () -> {});
    }

    @Override
    public void remove(Path file) throws IOException {
        perform(() -> REAL.remove(file), () -> {});
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        perform(() -> REAL.forceFolder(folder), () -> {});
    }
}
