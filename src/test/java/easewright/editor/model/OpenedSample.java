package easewright.editor.model;

import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Samples, and drawings that a test has written, opened as the window opens them, for tests of all rooms of the editor. */
public final class OpenedSample {
    private OpenedSample() {}

    /** The skirt, which is the first. */
    public static Opened skirt() throws IOException, SvgProblem {
        return of("skirt");
    }

    /** The sample of that id. */
    public static Opened of(String id) throws IOException, SvgProblem {
        Sample sample =
                Sample.all().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
        return Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName()));
    }

    /** A file of that name with this text in it. */
    public static Opened drawn(String svg, String name) throws SvgProblem {
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), name);
        return Opened.of(new OpenFile(file, Optional.empty(), name));
    }
}
