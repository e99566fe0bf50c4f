package easewright.editor.model;

import easewright.svg.SvgProblem;
import java.io.IOException;
import java.util.Optional;

/** The samples opened as the window opens them, for tests of all rooms of the editor. */
public final class OpenedSample {
    private OpenedSample() {}

    /** The skirt, which is the first. */
    public static Opened skirt() throws IOException, SvgProblem {
        Sample skirt = Sample.all().get(0);
        return Opened.of(new OpenFile(skirt.read(), Optional.empty(), skirt.fileName()));
    }
}
