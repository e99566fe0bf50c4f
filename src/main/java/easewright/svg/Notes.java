package easewright.svg;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects findings while reading, each kind up to a number that a person would still read. */
final class Notes {
    /** Beyond this many of one kind, only their number is told. */
    private static final int MOST_OF_A_KIND = 20;

    private final Map<String, List<Finding>> byCode = new LinkedHashMap<>();
    private final Map<String, Integer> leftOut = new LinkedHashMap<>();

    void add(Finding finding) {
        List<Finding> same = byCode.computeIfAbsent(finding.code(), code -> new ArrayList<>());
        if (same.size() < MOST_OF_A_KIND) {
            if (!same.contains(finding)) {
                same.add(finding);
            }
        } else {
            leftOut.merge(finding.code(), 1, Integer::sum);
        }
    }

    void add(String code, Severity severity, String piece) {
        add(Finding.of(code, severity, piece));
    }

    List<Finding> all() {
        List<Finding> all = new ArrayList<>();
        for (List<Finding> same : byCode.values()) {
            all.addAll(same);
        }
        for (Map.Entry<String, Integer> more : leftOut.entrySet()) {
            all.add(Finding.of("more-of-the-same", Severity.NOTE, "")
                    .with("kind", more.getKey())
                    .with("most", MOST_OF_A_KIND)
                    .with("count", more.getValue()));
        }
        return all;
    }
}
