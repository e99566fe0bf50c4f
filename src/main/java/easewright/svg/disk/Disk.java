package easewright.svg.disk;

import java.io.IOException;
import java.nio.file.Path;

/** The few things that saving asks of a disk, so that tests can make each of them fail. */
interface Disk {
    /** The machine's own. */
    Disk REAL = new RealDisk();

    byte[] read(Path file) throws IOException;

    /** Writes a file that must not be there yet, and waits until the disk has it. */
    void writeNew(Path file, byte[] content) throws IOException;

    /**
     * Gives a file the permissions, owner, group and extended attributes of another, as far as this user may.
     *
     * @return whether owner and group are the same afterwards
     */
    boolean copyTraits(Path from, Path to) throws IOException;

    /** Puts one file in the place of another in one step. */
    void replace(Path from, Path to) throws IOException;

    /** Removes a file if it is there. */
    void remove(Path file) throws IOException;

    /** Waits until the disk has the names of a folder. */
    void forceFolder(Path folder) throws IOException;
}
