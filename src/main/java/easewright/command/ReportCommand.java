package easewright.command;

import easewright.print.report.HtmlReport;
import easewright.print.report.PdfReport;
import easewright.print.report.ReportContent;
import easewright.print.report.ReportOrder;
import easewright.print.sheet.Paper;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** {@code report FILE -o OUT.html} or {@code -o OUT.pdf}: the record of what was changed, to be kept. */
final class ReportCommand extends OnPaper {
    private static final double NARROWEST = 200;
    private static final double WIDEST = 4000;
    private static final String PDF = ".pdf";

    ReportCommand() {
        super("report", "report-output-needed", "report-kind-unknown");
    }

    @Override
    Grammar grammar(Grammar common) {
        return common.value("--cloth-width", "LENGTH", "option.cloth-width").flag("--one-way", "option.one-way");
    }

    @Override
    boolean canBeCalled(String lowerCaseName) {
        return lowerCaseName.endsWith(PDF) || lowerCaseName.endsWith(".html") || lowerCaseName.endsWith(".htm");
    }

    @Override
    Made make(Given given, Matter matter) throws Trouble {
        ReportContent content = ReportContent.of(
                order(given, matter),
                matter.before(),
                matter.now(),
                matter.noticed().all(),
                matter.cautions(),
                matter.words());
        String name = matter.output().toString();
        boolean pdf = name.toLowerCase(Locale.ROOT).endsWith(PDF);
        return new Made(
                pdf
                        ? PdfReport.of(content, share -> {})
                        : HtmlReport.of(content).getBytes(StandardCharsets.UTF_8),
                json(matter),
                "command.saved",
                Map.of("file", name));
    }

    private static Node json(Matter matter) {
        Json json = new Json(matter.source().words());
        Node document = json.document(matter.opened(), matter.now(), matter.noticed());
        document.put("changes", Json.changes(matter.opened().pattern().changes()));
        document.put("before", matter.before().map(json::reading).orElse(null));
        return document;
    }

    private static ReportOrder order(Given given, Matter matter) throws Trouble {
        Paper paper = PrintOptions.paper(given);
        if (!ReportOrder.PAPERS.contains(paper)) {
            throw new Misuse("report-paper", Map.of("paper", paper.label()));
        }
        double width = PrintOptions.length(
                given, "--cloth-width", ReportOrder.CLOTH_WIDTH, matter.source().typed());
        if (width < NARROWEST || width > WIDEST) {
            throw new Trouble("cloth-width", Map.of("width", width));
        }
        return ReportOrder.of(matter.title(), matter.date())
                .onCloth(width, given.has("--one-way"))
                .on(paper);
    }
}
