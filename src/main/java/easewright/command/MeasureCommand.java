package easewright.command;

import easewright.print.Reading;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code measure FILE}: pieces, edges, levels, girths, mates, findings. */
@Command(name = "measure", mixinStandardHelpOptions = true)
final class MeasureCommand implements Callable<Integer> {
    @Mixin
    Source source;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() throws Trouble {
        Source.Opened opened = source.open();
        Reading reading = opened.reading(opened.pattern());
        Noticed noticed = Noticed.in(opened, reading);
        PrintWriter out = spec.commandLine().getOut();
        if (source.json) {
            Json json = new Json(source.words());
            out.println(json.text(json.document(opened, reading, noticed)));
        } else {
            new MeasureSheet(out, source.words()).print(reading);
            noticed.print(out, source.words());
        }
        return noticed.exitCode();
    }
}
