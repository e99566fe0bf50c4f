package easewright.svg.disk;

import java.io.IOException;
import java.util.List;

/**
 * The states a file went through before the one that is kept, so that whoever brings that back can still undo. Immutable.
 *
 * @param states each the whole file as it would have been saved then, oldest first
 * @param saved  which of them the user's file held, the number of them for the kept one itself, −1 for none
 */
public record EarlierStates(List<byte[]> states, int saved) {
    public static final EarlierStates NONE = new EarlierStates(List.of(), -1);

    /**
     * @throws IllegalArgumentException if there is no such state as is said to be saved
     */
    public EarlierStates {
        states = states.stream().map(byte[]::clone).toList();
        if (saved < -1 || saved > states.size()) {
            throw new IllegalArgumentException("Of " + states.size() + " earlier states number " + saved + " is saved");
        }
    }

    byte[] packed() {
        return StatesTogether.packed(states);
    }

    static EarlierStates unpacked(byte[] packed, int saved) throws IOException {
        return new EarlierStates(StatesTogether.unpacked(packed), saved);
    }
}
