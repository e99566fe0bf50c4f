package easewright.command;

import easewright.check.Once;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import easewright.print.FindingWords;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** All findings of one run, worst first, one about one thing. */
record Noticed(List<Finding> all) {
    Noticed {
        all = Once.of(all).stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    static Noticed in(Source.Opened opened, Reading reading) {
        return new Noticed(opened.findings())
                .and(opened.worn().map(Worn::findings).orElse(List.of()))
                .and(reading.findings());
    }

    Noticed and(List<Finding> more) {
        List<Finding> both = new ArrayList<>(all);
        both.addAll(more);
        return new Noticed(both);
    }

    /** What a change brought: all but what was to be noticed before it, faults excepted. */
    Noticed since(Noticed before) {
        return new Noticed(all.stream()
                .filter(f -> f.severity() == Severity.FAULT || !before.all().contains(f))
                .toList());
    }

    /** All but findings of one kind. */
    Noticed without(String code) {
        return new Noticed(all.stream().filter(f -> !f.code().equals(code)).toList());
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
        for (Finding finding : all) {
            if (!isOffer(finding) || about(finding).isEmpty()) {
                String said = paragraph(finding, words);
                paragraphs.merge(said, 1, Integer::sum);
                severities.putIfAbsent(said, finding.severity());
            }
        }
        paragraphs.forEach((said, times) -> page.text(
                "  " + words.of("severity." + severities.get(said)) + "  ",
                times == 1 ? said : said + " " + words.of("command.places", Map.of("count", times))));
    }

    /** A finding in words, and after what is said of a seam what is offered to mend it. */
    private String paragraph(Finding finding, Words words) {
        List<String> sentences = new ArrayList<>(List.of(FindingWords.sentence(finding, words)));
        if (!isOffer(finding)) {
            for (Finding offer : all) {
                if (isOffer(offer) && about(offer).stream().anyMatch(f -> f.equals(finding))) {
                    sentences.add(FindingWords.sentence(offer, words));
                }
            }
        }
        return String.join(" ", sentences);
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
