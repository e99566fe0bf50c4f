package easewright.editor.file;

import easewright.editor.mark.MarkRefused;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.svg.SvgProblem;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** Tells the user what went wrong with a file. */
final class Failures {
    private final Session session;

    Failures(Session session) {
        this.session = session;
    }

    /** What a file is called where it is spoken of: a folder's root has no name but its path. */
    static String name(Path file) {
        return String.valueOf(file.getFileName() == null ? file : file.getFileName());
    }

    void tell(Throwable problem, Path file) {
        tell(problem, name(file));
    }

    void tell(Throwable problem, String file) {
        if (problem instanceof SvgProblem svg) {
            session.say(true, "problem." + svg.code(), svg.values());
        } else if (problem instanceof MarkRefused refused) {
            session.say(true, "problem." + refused.code(), refused.values());
        } else if (problem instanceof VirtualMachineError) {
            session.say(true, "problem.file-too-much", Map.of("file", file));
        } else {
            session.say(true, "editor.said.failed", Map.of("file", file, "reason", details(problem)));
        }
    }

    /** Tells why work could not be saved, which can be tried again. */
    void notSaved(Throwable problem, Path file) {
        Map<String, Object> values = new HashMap<>(Map.of("reason", details(problem)));
        String key = "editor.said.not-saved";
        if (problem instanceof SvgProblem svg) {
            values.putAll(svg.values());
            key = "problem." + svg.code();
        }
        // Its name is enough; the way to it is told by the hint.
        values.put("file", name(file));
        values.put("path", file.toString());
        values.put("folder", name(file.toAbsolutePath().resolveSibling(".").normalize()));
        session.say(new Desk.Notice(true, key, values, true));
    }

    /** What the system says of it, for whoever is asked for help. */
    static String details(Throwable problem) {
        return problem.getMessage() == null ? problem.getClass().getSimpleName() : problem.getMessage();
    }
}
