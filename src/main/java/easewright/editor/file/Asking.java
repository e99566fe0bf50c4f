package easewright.editor.file;

import java.nio.file.Path;
import java.util.Optional;

/** What the user is asked about files. The window shows dialogs; a test gives its answers. */
public interface Asking {
    /**
     * The file to open; empty for none after all.
     *
     * @param folder where to begin
     */
    Optional<Path> whichToOpen(Path folder);

    /**
     * An ease table of the user's own; empty for none after all.
     *
     * @param folder where to begin
     */
    Optional<Path> whichTable(Optional<Path> folder);

    /**
     * Where to save; empty for nowhere after all.
     *
     * @param proposed a name in the folder to begin in
     */
    Optional<Path> whereToSave(Path proposed);

    /**
     * What to do about changes that are not saved.
     *
     * @param file the name of the file they were made in
     */
    Leave leaving(String file);

    /**
     * What to do about a file that another program has changed since it was read here.
     *
     * @param file its name
     */
    Meanwhile changedMeanwhile(String file);

    /**
     * Whether work that a crash left behind is really not wanted: it cannot be brought back afterwards.
     *
     * @param file the name of the file it belongs to
     */
    boolean throwAway(String file);

    /** Before unsaved work is left. */
    enum Leave {
        SAVE_FIRST,
        WITHOUT_SAVING,
        STAY
    }

    /** Before a file is saved over what somebody else made of it. */
    enum Meanwhile {
        OTHER_NAME,
        REPLACE,
        STAY
    }
}
