package easewright.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A journey that looks at what is kept from a crash. */
abstract class KeptJourney extends Journey {
    /** Where the window keeps it. */
    Path state;

    @Override
    Path state() throws Exception {
        state = super.state();
        return state;
    }

    /** The files in which work is kept. */
    List<Path> kept() throws IOException {
        return kept(state);
    }
}
