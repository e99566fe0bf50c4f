package easewright.editor.model;

import easewright.ease.EaseTables;
import java.util.Optional;

/**
 * A file with all that can be read off its pattern. Measuring and checking a large file takes longer than a window may
 * stand still, so this is made where the file is read.
 *
 * @param reading of the pattern of the file
 */
public record Opened(OpenFile file, Reading reading) {
    /** With the tables that came with the program. */
    public static Opened of(OpenFile file) {
        return of(file, EaseTables.standard());
    }

    /**
     * @param tables to judge the ease by
     */
    public static Opened of(OpenFile file, EaseTables tables) {
        return new Opened(file, Reading.of(file.svg().pattern(), tables, Optional.empty()));
    }
}
