package easewright.editor.file;

import easewright.editor.mark.LayerChoice;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Session;
import java.util.Map;
import java.util.Set;

/** Reads other layers of the file on the table, away from the window's thread, and says what came of it. */
final class Layers {
    private final Session session;
    private final Background background;
    private final Failures failures;

    Layers(Session session, Background background, Failures failures) {
        this.session = session;
        this.background = background;
        this.failures = failures;
    }

    /** Those with these keys; what was done on the table meanwhile stays, and nothing is read then. */
    void read(Set<String> keys) {
        Desk desk = session.desk();
        OpenFile file = desk.file().orElseThrow();
        background.whileWaiting(
                "reading",
                file.name(),
                () -> LayerChoice.reading(file.svg(), desk.history().upToPresent(), keys),
                read -> {
                    if (session.desk().pattern() == desk.pattern()) {
                        lay(read);
                    }
                },
                problem -> failures.tell(problem, file.name()));
    }

    private void lay(LayerChoice.Outcome read) {
        session.reread(read.svg(), read.pattern());
        if (!read.bare().isEmpty()) {
            session.say(true, "editor.said.layers-bare", Map.of("pieces", read.bare()));
        } else if (!read.gone().isEmpty()) {
            session.say(
                    false,
                    "editor.said.layers-gone",
                    Map.of("count", read.gone().size()));
        }
    }
}
