package easewright.command;

import easewright.print.Reading;
import java.io.PrintWriter;

/** A command that only looks at a pattern: opens it, reads everything off it, and prints that as text or as JSON. */
abstract class Look implements Job {
    private final String name;

    Look(String name) {
        this.name = name;
    }

    @Override
    public final Grammar grammar() {
        return Source.grammar(name);
    }

    @Override
    public final int run(Given given, Voice voice) throws Trouble {
        Source source = Source.of(given);
        Source.Opened opened = source.open();
        source.typed().tell(voice);
        Reading reading = opened.reading(opened.pattern());
        Noticed noticed = Noticed.in(opened, reading);
        if (source.json()) {
            Json json = new Json(source.words());
            voice.out().println(json.text(json.document(opened, reading, noticed)));
        } else {
            print(reading, source, voice.out());
            noticed.print(voice.out(), source.words());
        }
        return noticed.exitCode();
    }

    /** As text, up to what is to be noticed. */
    abstract void print(Reading reading, Source source, PrintWriter out);
}
