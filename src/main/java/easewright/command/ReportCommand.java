package easewright.command;

import easewright.print.Cautions;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.Use;
import easewright.print.report.HtmlReport;
import easewright.print.report.PdfReport;
import easewright.print.report.ReportContent;
import easewright.print.report.ReportOrder;
import easewright.print.sheet.Paper;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code report FILE -o OUT.html} or {@code -o OUT.pdf}: the record of what was changed, to be kept. */
final class ReportCommand implements Job {
    private static final double NARROWEST = 200;
    private static final double WIDEST = 4000;

    @Override
    public Grammar grammar() {
        return Target.grammar(Source.grammar("report"))
                .value("--cloth-width", "LENGTH", "option.cloth-width")
                .flag("--one-way", "option.one-way")
                .value("--paper", "PAPER", "option.report-paper")
                .value("--kind", "WORDS", "option.kind");
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Source source = Source.of(given);
        Target target = Target.of(given);
        if (target.output().isEmpty()) {
            throw new Misuse("report-output-needed", Map.of());
        }
        Path output = target.output().get();
        boolean pdf = pdf(output);
        ReportOrder order = order(given, source);
        Set<Use> uses = PrintOptions.uses(given);
        Words words = source.words();
        Source.Opened opened = source.open();
        target.check(output, source.file(), false);
        Reading after = opened.reading(opened.pattern());
        Optional<Reading> before = Past.of(opened.pattern()).map(opened::reading);
        Noticed noticed = Noticed.in(opened, after);
        ReportContent content =
                ReportContent.of(order, before, after, noticed.all(), Cautions.of(before, after, uses), words);
        Target.save(
                output,
                pdf
                        ? PdfReport.of(content, share -> {})
                        : HtmlReport.of(content).getBytes(StandardCharsets.UTF_8));
        voice.err().println(words.of("command.saved", Map.of("file", output.toString())));
        return noticed.exitCode();
    }

    private static boolean pdf(Path output) throws Misuse {
        String name = String.valueOf(output.getFileName()).toLowerCase(Locale.ROOT);
        boolean pdf = name.endsWith(".pdf");
        if (!pdf && !name.endsWith(".html") && !name.endsWith(".htm")) {
            throw new Misuse("report-kind-unknown", Map.of("file", output.toString()));
        }
        return pdf;
    }

    private static ReportOrder order(Given given, Source source) throws Trouble {
        Paper paper = PrintOptions.paper(given);
        if (!paper.tiled()) {
            throw new Misuse("report-paper", Map.of("paper", paper.label()));
        }
        double width = PrintOptions.length(given, "--cloth-width", ReportOrder.CLOTH_WIDTH, source.unit());
        if (width < NARROWEST || width > WIDEST) {
            throw new Trouble("cloth-width", Map.of("width", width));
        }
        return ReportOrder.of(PrintOptions.name(source.file()), LocalDate.now(ZoneId.systemDefault()))
                .onCloth(width, given.has("--one-way"))
                .on(paper);
    }
}
