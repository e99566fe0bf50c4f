package easewright.command;

import easewright.pattern.Finding;
import easewright.print.Reading;
import java.io.PrintWriter;
import java.util.List;

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
            List<Finding> rest = noticed.all().stream().filter(f -> !tells(f)).toList();
            new Noticed(noticed.pattern(), rest).print(voice.out(), source.words());
        }
        return noticed.exitCode();
    }

    /** Whether the text says it already, so that it is not told twice. */
    boolean tells(Finding finding) {
        return false;
    }

    /** As text, up to what is to be noticed. */
    abstract void print(Reading reading, Source source, PrintWriter out);
}
