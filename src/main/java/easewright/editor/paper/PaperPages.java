package easewright.editor.paper;

import easewright.ease.EaseTables;
import easewright.editor.model.Desk;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.print.Cautions;
import easewright.print.Cautions.Caution;
import easewright.print.Past;
import easewright.print.Reading;
import easewright.print.ink.Leaf;
import easewright.print.report.HtmlReport;
import easewright.print.report.PdfReport;
import easewright.print.report.ReportContent;
import easewright.print.sheet.PrintJob;
import easewright.print.sheet.PrintProblem;
import easewright.text.Lengths;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Pages made of a pattern as chosen.
 *
 * @param title for the file
 * @param said  in a sentence, what came out
 * @param html  the report as a page for a browser; empty for a print
 */
public record PaperPages(List<Leaf> leaves, String title, LocalDate date, String said, Optional<byte[]> html) {
    public PaperPages {
        leaves = List.copyOf(leaves);
    }

    /**
     * Makes them. Takes a while: not for the window's thread.
     *
     * @throws PrintProblem where nothing sound can be printed
     */
    static PaperPages of(Desk desk, PaperChoice choice, LocalDate date) throws PrintProblem {
        EaseTables tables = desk.reading().tables();
        if (desk.size().isPresent() && choice.sizes().isEmpty()) {
            throw PrintProblem.noSizeChosen();
        }
        List<String> sizes = sizes(desk, choice);
        Pattern pattern = PatternPart.ofSizes(desk.pattern(), sizes).alone();
        Reading now = Reading.of(pattern, tables.fitting(pattern));
        Optional<Reading> before = Past.of(desk.pattern())
                .map(p -> PatternPart.ofSizes(p, sizes).alone())
                .map(p -> Reading.of(p, tables.fitting(p)));
        List<Caution> cautions = Cautions.of(before, now, choice.uses());
        Words words = desk.words();
        String untried = desk.shownTrial().isPresent() ? " " + words.of("editor.print.said.untried") : "";
        String name = name(desk);
        if (choice.report()) {
            ReportContent content =
                    ReportContent.of(choice.reportOrder(name, date), before, now, findings(desk, now), cautions, words);
            List<Leaf> leaves = PdfReport.leaves(content);
            String said = words.of("editor.print.said.report", Map.of("count", leaves.size())) + untried;
            byte[] html = HtmlReport.of(content).getBytes(StandardCharsets.UTF_8);
            return new PaperPages(leaves, content.title(), date, said, Optional.of(html));
        }
        List<String> ids = pattern.pieces().stream().map(Piece::id).toList();
        if (choice.without().containsAll(ids)) {
            throw PrintProblem.nothingChosen();
        }
        PrintJob.Prints prints = PrintJob.of(choice.printOrder(name, date, ids), before, now, cautions, words);
        String key = "editor.print.said."
                + (choice.joined()
                        ? prints.sheets() == 1 ? "one" : "joined"
                        : choice.onPaper() ? "whole" : "projector");
        String said =
                words.of(key, Map.of("count", prints.sheets(), "width", prints.width(), "height", prints.height()))
                        + untried;
        return new PaperPages(prints.leaves(), name, date, Lengths.together(said), Optional.empty());
    }

    /** The sizes wanted, in the pattern's order; none where it comes in one. */
    private static List<String> sizes(Desk desk, PaperChoice choice) {
        return desk.size().isEmpty()
                ? List.of()
                : PatternPart.sizes(desk.pattern()).stream()
                        .filter(choice.sizes()::contains)
                        .toList();
    }

    /** What the file told and what was read off the pattern, each once, the weightiest first. */
    private static List<Finding> findings(Desk desk, Reading now) {
        Set<Finding> all = new LinkedHashSet<>();
        desk.file().ifPresent(f -> {
            all.addAll(f.svg().findings(desk.pattern()));
            all.addAll(f.svg().oldWords(desk.pattern()));
        });
        // Of a piece of a size that is not wanted nothing is told.
        all.removeIf(f -> desk.pattern().piece(f.piece()).isPresent()
                && now.pattern().piece(f.piece()).isEmpty());
        all.addAll(now.findings());
        List<Finding> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing(Finding::severity).reversed());
        return sorted;
    }

    /**
     * What a file of these pages is called: as the pattern, with the sizes where only some of several are wanted. What
     * stands in them that not every system takes in the name of a file is a hyphen.
     */
    public static String name(Desk desk, PaperChoice choice) {
        List<String> sizes = sizes(desk, choice);
        boolean some = sizes.size() < PatternPart.sizes(desk.pattern()).size();
        return some && !sizes.isEmpty()
                ? name(desk) + " " + String.join(" ", sizes).replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}]", "-")
                : name(desk);
    }

    /** What the pattern is called: its file without the ending. */
    public static String name(Desk desk) {
        return desk.file().map(f -> f.name().replaceFirst("(?i)\\.svgz?$", "")).orElse("");
    }
}
