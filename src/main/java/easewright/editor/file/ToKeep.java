package easewright.editor.file;

import easewright.editor.model.OpenFile;
import easewright.editor.model.Unfinished;
import easewright.pattern.Pattern;

/**
 * What there is to keep from a crash.
 *
 * @param hand what is tried, half typed or half marked beside the pattern
 */
record ToKeep(OpenFile file, Pattern pattern, Unfinished hand) {
    /** Whether nothing was done since. */
    boolean isSame(ToKeep other) {
        return file.equals(other.file) && pattern == other.pattern && hand.equals(other.hand);
    }
}
