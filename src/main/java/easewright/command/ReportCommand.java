package easewright.command;

import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.ReportPage;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code report FILE -o OUT.html}: the record of what was changed, to be kept. */
@Command(name = "report", mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {
    @Mixin
    Source source;

    @Mixin
    Target target;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() throws Trouble {
        Words words = source.words();
        if (target.output == null) {
            throw new ParameterException(spec.commandLine(), words.of("command.report-output-needed"));
        }
        Source.Opened opened = source.open();
        target.check(target.output, source.file, false);
        Reading after = opened.reading(opened.pattern());
        Optional<Reading> before = Past.of(opened.pattern()).map(opened::reading);
        Noticed noticed = Noticed.in(opened, after);
        String name = String.valueOf(source.file.getFileName());
        String page = ReportPage.of(name, before, after, noticed.all(), words);
        Target.save(target.output, page.getBytes(StandardCharsets.UTF_8));
        spec.commandLine().getErr().println(words.of("command.saved", Map.of("file", target.output.toString())));
        return noticed.exitCode();
    }
}
