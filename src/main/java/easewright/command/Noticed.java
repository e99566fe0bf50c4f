package easewright.command;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import easewright.print.FindingWords;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All findings of one run, worst first, each once: of two that say the same, the one that says more. */
record Noticed(List<Finding> all) {
    Noticed {
        List<Finding> sorted = new ArrayList<>(new LinkedHashSet<>(all));
        List<Finding> said = List.copyOf(sorted);
        sorted.removeIf(f -> said.stream().anyMatch(g -> saysMore(g, f)));
        sorted.sort(Comparator.comparing(Finding::severity).reversed());
        all = List.copyOf(sorted);
    }

    static Noticed in(Source.Opened opened, Reading reading) {
        return new Noticed(List.of())
                .and(opened.svg().findings())
                .and(opened.worn().map(Worn::findings).orElse(List.of()))
                .and(reading.findings());
    }

    Noticed and(List<Finding> more) {
        Set<Finding> both = new LinkedHashSet<>(all);
        both.addAll(more);
        return new Noticed(List.copyOf(both));
    }

    private static boolean saysMore(Finding one, Finding other) {
        return one.code().equals(other.code())
                && one.piece().equals(other.piece())
                && one.values().size() > other.values().size()
                && one.values().entrySet().containsAll(other.values().entrySet());
    }

    int exitCode() {
        return all.stream().anyMatch(f -> f.severity() == Severity.FAULT) ? Commands.FAULTS : Commands.DONE;
    }

    void print(PrintWriter out, Words words) {
        if (all.isEmpty()) {
            return;
        }
        out.println();
        out.println(words.of("command.findings"));
        for (Finding finding : all) {
            out.println("  " + words.of("severity." + finding.severity().name()) + "  "
                    + FindingWords.sentence(finding, words));
        }
    }
}
