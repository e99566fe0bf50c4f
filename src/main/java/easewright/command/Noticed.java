package easewright.command;

import easewright.check.Once;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Severity;
import easewright.print.FindingWords;
import easewright.print.InSizes;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All findings of one run, worst first, one about one thing.
 *
 * @param pattern whose names and sizes are in them
 */
record Noticed(Pattern pattern, List<Finding> all) {
    Noticed {
        all = Once.of(all).stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    static Noticed in(Source.Opened opened, Reading reading) {
        return new Noticed(reading.pattern(), opened.findings())
                .and(opened.worn().map(Worn::findings).orElse(List.of()))
                .and(reading.findings());
    }

    Noticed and(List<Finding> more) {
        List<Finding> both = new ArrayList<>(all);
        both.addAll(more);
        return new Noticed(pattern, both);
    }

    /**
     * What a change brought, as text: all but what was said in the same words before it, faults excepted. That seams
     * became longer and still fit, the table of lengths tells already.
     */
    void printSince(Noticed before, PrintWriter out, Words words) {
        Set<String> said =
                before.all().stream().map(f -> FindingWords.sentence(f, words)).collect(Collectors.toSet());
        List<Finding> told = all.stream()
                .filter(f -> !f.code().equals("mate-length-changed"))
                .toList();
        List<Finding> fresh = told.stream()
                .filter(f -> f.severity() == Severity.FAULT || !said.contains(FindingWords.sentence(f, words)))
                .toList();
        int old = told.size() - fresh.size();
        Page page = new Page(out);
        page.line();
        if (fresh.isEmpty() && old > 0) {
            page.text(words.of("command.nothing-new"));
            return;
        }
        new Noticed(pattern, fresh).print(out, words);
        if (old > 0) {
            page.line();
            page.text(words.of(old == 1 ? "command.as-before.one" : "command.as-before", Map.of("count", old)));
        }
    }

    int exitCode() {
        return all.stream().anyMatch(f -> f.severity() == Severity.FAULT) ? Commands.FAULTS : Commands.DONE;
    }

    void print(PrintWriter out, Words words) {
        Page page = new Page(out);
        if (all.isEmpty()) {
            page.text(words.of("command.nothing-noticed"));
            return;
        }
        page.text(words.of("command.findings"));
        Map<String, Integer> paragraphs = new LinkedHashMap<>();
        Map<String, Severity> severities = new LinkedHashMap<>();
        List<Finding> first =
                all.stream().filter(f -> !isOffer(f) || about(f).isEmpty()).toList();
        for (InSizes told : InSizes.of(first, pattern)) {
            String said = paragraph(told, words);
            paragraphs.merge(said, 1, Integer::sum);
            severities.putIfAbsent(said, told.plain().severity());
        }
        paragraphs.forEach((said, times) -> page.text(
                "  " + words.of("severity." + severities.get(said)) + "  ",
                times == 1 ? said : said + " " + words.of("command.places", Map.of("count", times))));
    }

    /** A finding in words, and after what is said of a seam what is offered to mend it. */
    private String paragraph(InSizes told, Words words) {
        List<Finding> offers = all.stream()
                .filter(f -> isOffer(f) && about(f).stream().anyMatch(told.findings()::contains))
                .toList();
        return Stream.concat(Stream.of(told), InSizes.of(offers, pattern).stream())
                .map(each -> each.sentence(words))
                .collect(Collectors.joining(" "));
    }

    /** The findings that an offer answers: the first one about the same seam. */
    private List<Finding> about(Finding offer) {
        return all.stream()
                .filter(f -> !isOffer(f)
                        && Objects.equals(f.values().get("mate"), offer.values().get("mate")))
                .limit(1)
                .toList();
    }

    private static boolean isOffer(Finding finding) {
        return finding.code().startsWith("fit-offer");
    }
}
