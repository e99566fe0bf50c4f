package easewright.command;

import easewright.print.pdf.PdfBook;
import easewright.print.sheet.PrintJob;
import easewright.print.sheet.PrintOrder;
import easewright.print.sheet.PrintProblem;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** {@code print FILE -o OUT.pdf}: the pieces at full scale. */
final class PrintCommand extends OnPaper {
    PrintCommand() {
        super("print", "print-output-needed", "print-kind-unknown");
    }

    @Override
    Grammar grammar(Grammar common) {
        return common.flag("--projector", "option.projector")
                .values("--pieces", "NAMES", "option.pieces")
                .value("--margin", "LENGTH", "option.margin")
                .value("--overlap", "LENGTH", "option.overlap");
    }

    @Override
    boolean canBeCalled(String lowerCaseName) {
        return lowerCaseName.endsWith(".pdf");
    }

    @Override
    Made make(Given given, Matter matter) throws Trouble {
        PrintOrder order = order(given, matter);
        PrintJob.Prints prints;
        try {
            prints = PrintJob.of(order, matter.before(), matter.now(), matter.cautions(), matter.words());
        } catch (PrintProblem e) {
            throw new Trouble(e.code(), e.values());
        }
        return new Made(
                PdfBook.of(prints.leaves(), order.name(), order.date(), share -> {}),
                Json.prints(prints),
                "command.printed",
                Map.of(
                        "file",
                        matter.output().toString(),
                        "pages",
                        prints.leaves().size()));
    }

    private static PrintOrder order(Given given, Matter matter) throws Trouble {
        List<String> pieces = given.texts("--pieces").stream()
                .flatMap(names -> Arrays.stream(names.split(",", -1)))
                .map(String::strip)
                .toList();
        if (pieces.stream().anyMatch(String::isEmpty)) {
            throw new Trouble("print-nothing-chosen", Map.of());
        }
        Typed typed = matter.source().typed();
        PrintOrder order = PrintOrder.on(PrintOptions.paper(given), matter.title(), matter.date())
                .withPieces(pieces)
                .withSize(given.text("--size").orElse(""))
                .withMargin(PrintOptions.length(given, "--margin", PrintOrder.MARGIN, typed))
                .withOverlap(PrintOptions.length(given, "--overlap", PrintOrder.OVERLAP, typed));
        return given.has("--projector") ? order.forProjector() : order;
    }
}
