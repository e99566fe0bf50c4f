package easewright.editor.file;

import easewright.editor.model.OpenFile;
import easewright.editor.model.Unfinished;
import easewright.history.History;
import easewright.pattern.Pattern;

/**
 * What there is to keep from a crash.
 *
 * @param history up to the present pattern, so that undoing goes on where it is brought back
 * @param hand    what is tried, half typed or half marked beside the pattern
 */
record ToKeep(OpenFile file, History<Pattern> history, Unfinished hand) {
    Pattern pattern() {
        return history.present();
    }

    /** Whether nothing was done since. */
    boolean isSame(ToKeep other) {
        return file.equals(other.file) && pattern() == other.pattern() && hand.equals(other.hand);
    }
}
