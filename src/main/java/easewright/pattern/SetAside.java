package easewright.pattern;

/**
 * A change that was made once and is switched off.
 *
 * @param before index of the made change before which it would stand; the number of changes for the end of the list
 */
public record SetAside(int before, ChangeNote note) {
    /**
     * @throws IllegalArgumentException if the place is below 0
     */
    public SetAside {
        if (before < 0) {
            throw new IllegalArgumentException("A list of changes begins at 0, not " + before);
        }
    }
}
