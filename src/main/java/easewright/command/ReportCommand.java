package easewright.command;

import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.ReportPage;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** {@code report FILE -o OUT.html}: the record of what was changed, to be kept. */
final class ReportCommand implements Job {
    @Override
    public Grammar grammar() {
        return Target.grammar(Source.grammar("report"));
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Source source = Source.of(given);
        Target target = Target.of(given);
        if (target.output().isEmpty()) {
            throw new Misuse("report-output-needed", Map.of());
        }
        Path output = target.output().get();
        Words words = source.words();
        Source.Opened opened = source.open();
        target.check(output, source.file(), false);
        Reading after = opened.reading(opened.pattern());
        Optional<Reading> before = Past.of(opened.pattern()).map(opened::reading);
        Noticed noticed = Noticed.in(opened, after);
        String name = String.valueOf(source.file().getFileName());
        String page = ReportPage.of(name, before, after, noticed.all(), words);
        Target.save(output, page.getBytes(StandardCharsets.UTF_8));
        voice.err().println(words.of("command.saved", Map.of("file", output.toString())));
        return noticed.exitCode();
    }
}
