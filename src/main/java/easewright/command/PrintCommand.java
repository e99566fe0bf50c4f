package easewright.command;

import easewright.print.Cautions;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.Use;
import easewright.print.pdf.PdfBook;
import easewright.print.sheet.PrintJob;
import easewright.print.sheet.PrintOrder;
import easewright.print.sheet.PrintProblem;
import easewright.text.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** {@code print FILE -o OUT.pdf}: the pieces at full scale. */
final class PrintCommand implements Job {
    @Override
    public Grammar grammar() {
        return Target.grammar(Source.grammar("print"))
                .value("--paper", "PAPER", "option.paper")
                .flag("--projector", "option.projector")
                .values("--pieces", "NAMES", "option.pieces")
                .value("--size", "SIZE", "option.size")
                .value("--margin", "LENGTH", "option.margin")
                .value("--overlap", "LENGTH", "option.overlap")
                .value("--kind", "WORDS", "option.kind");
    }

    @Override
    public int run(Given given, Voice voice) throws Trouble {
        Source source = Source.of(given);
        Target target = Target.of(given);
        if (target.output().isEmpty()) {
            throw new Misuse("print-output-needed", Map.of());
        }
        Path output = target.output().get();
        Words words = source.words();
        PrintOrder order = order(given, source);
        Set<Use> uses = PrintOptions.uses(given);
        Source.Opened opened = source.open();
        target.check(output, source.file(), false);
        if (!output.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new Misuse("print-kind-unknown", Map.of("file", output.toString()));
        }
        Reading now = opened.reading(opened.pattern());
        Optional<Reading> before = Past.of(opened.pattern()).map(opened::reading);
        PrintJob.Prints prints;
        try {
            prints = PrintJob.of(order, before, now, Cautions.of(before, now, uses), words);
        } catch (PrintProblem e) {
            throw new Trouble(e.code(), e.values());
        }
        Target.save(output, PdfBook.of(prints.leaves(), order.name(), order.date(), share -> {}));
        if (source.json()) {
            Json json = new Json(words);
            voice.out().println(json.text(Json.prints(prints)));
        }
        voice.err()
                .println(words.of(
                        "command.printed",
                        Map.of(
                                "file",
                                output.toString(),
                                "pages",
                                prints.leaves().size())));
        return Noticed.in(opened, now).exitCode();
    }

    private static PrintOrder order(Given given, Source source) throws Trouble {
        List<String> pieces = given.texts("--pieces").stream()
                .flatMap(names -> Arrays.stream(names.split(",", -1)))
                .map(String::strip)
                .toList();
        if (pieces.stream().anyMatch(String::isEmpty)) {
            throw new Trouble("print-nothing-chosen", Map.of());
        }
        PrintOrder order = PrintOrder.on(
                        PrintOptions.paper(given),
                        PrintOptions.name(source.file()),
                        LocalDate.now(ZoneId.systemDefault()))
                .withPieces(pieces)
                .withSize(given.text("--size").orElse(""))
                .withMargin(PrintOptions.length(given, "--margin", PrintOrder.MARGIN, source.unit()))
                .withOverlap(PrintOptions.length(given, "--overlap", PrintOrder.OVERLAP, source.unit()));
        return given.has("--projector") ? order.forProjector() : order;
    }
}
