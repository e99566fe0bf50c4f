package easewright.command;

import easewright.print.Reading;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code check FILE}: everything that is to be noticed. */
@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
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
        } else if (noticed.all().isEmpty()) {
            out.println(source.words().of("command.nothing-noticed"));
        } else {
            noticed.print(out, source.words());
        }
        return noticed.exitCode();
    }
}
