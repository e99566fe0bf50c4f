package easewright.print;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.text.Span;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is to be told of one thing: a finding, or the same one in several sizes. They are the same if they differ in
 * figures alone once the sizes are left out of the names; the figures are then told from the least to the greatest.
 *
 * @param findings one for each size, or the only one
 * @param plain    what they have in common, named as in every size
 * @param sizes    empty where the finding is of no size
 * @param every    whether these are all sizes that there are
 */
public record InSizes(List<Finding> findings, Finding plain, List<String> sizes, boolean every) {
    public InSizes {
        findings = List.copyOf(findings);
        sizes = List.copyOf(sizes);
    }

    /** In the order of the first finding of each. */
    public static List<InSizes> of(List<Finding> findings, Pattern pattern) {
        List<String> known = PatternPart.sizes(pattern);
        if (known.size() < 2) {
            return findings.stream().map(InSizes::alone).toList();
        }
        Names names = new Names(pattern, known);
        Map<Object, List<Named>> alike = new LinkedHashMap<>();
        Map<Object, Integer> times = new HashMap<>();
        for (Finding finding : findings) {
            Named named = names.of(finding);
            // The second of two alike in one size goes with the second in the others.
            int nth = times.merge(List.of(named.plain(), named.sizes()), 1, Integer::sum);
            Object key = named.sizes().size() == 1 ? List.of(named.plain(), nth) : finding;
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(named);
        }
        return alike.values().stream().map(each -> of(each, known)).toList();
    }

    private static InSizes alone(Finding finding) {
        return new InSizes(List.of(finding), finding, List.of(), false);
    }

    private static InSizes of(List<Named> alike, List<String> known) {
        List<Finding> findings = alike.stream().map(Named::finding).toList();
        if (alike.get(0).sizes().size() != 1) {
            return alone(findings.get(0));
        }
        Finding plain = alike.get(0).plain();
        for (String key : plain.values().keySet()) {
            if (findings.get(0).values().get(key) instanceof Double) {
                DoubleSummaryStatistics figures = findings.stream()
                        .mapToDouble(f -> (Double) f.values().get(key))
                        .summaryStatistics();
                plain = plain.with(key, new Span(figures.getMin(), figures.getMax()));
            }
        }
        List<String> sizes = alike.stream()
                .flatMap(n -> n.sizes().stream())
                .sorted(Comparator.comparingInt(known::indexOf))
                .toList();
        return new InSizes(findings, plain, sizes, sizes.size() == known.size());
    }

    /** In words, with the sizes before them unless the names of the only one have its size in them. */
    public String sentence(Words words) {
        if (sizes.isEmpty()) {
            return FindingWords.sentence(plain, words);
        }
        if (sizes.size() == 1) {
            String said = FindingWords.sentence(findings.get(0), words);
            return said.equals(FindingWords.sentence(plain, words)) ? inThem(said, words) : said;
        }
        return inThem(FindingWords.sentence(plain, words), words);
    }

    private String inThem(String said, Words words) {
        String key = every ? "sizes.all" : sizes.size() == 1 ? "sizes.one" : "sizes.some";
        return words.of(key, Map.of("sizes", sizes, "said", said));
    }

    /** A finding, the same without sizes in its names and without figures, and the sizes that were in them. */
    private record Named(Finding finding, Finding plain, Set<String> sizes) {}

    /** Names with sizes in them. */
    private static final class Names {
        /** Pieces that have a size, by name, the longest first, so that no name is taken for the start of another. */
        private final Map<String, Piece> pieces =
                new TreeMap<>(Comparator.comparingInt(String::length).reversed().thenComparing(n -> n));

        private final List<String> known;

        Names(Pattern pattern, List<String> known) {
            this.known = known;
            pattern.pieces().stream().filter(p -> p.size().isPresent()).forEach(p -> pieces.put(p.name(), p));
        }

        Named of(Finding finding) {
            Set<String> sizes = new LinkedHashSet<>();
            Map<String, Object> values = new TreeMap<>();
            finding.values().forEach((key, value) -> {
                if (key.equals("size")) {
                    sizes.add(String.valueOf(value));
                } else {
                    values.put(key, value instanceof Double ? "" : plain(value, sizes));
                }
            });
            String piece = plain(finding.piece(), sizes);
            return new Named(finding, new Finding(finding.code(), finding.severity(), piece, values), sizes);
        }

        private Object plain(Object value, Set<String> sizes) {
            if (value instanceof Collection<?> many) {
                return many.stream().map(each -> plain(each, sizes)).toList();
            }
            return value instanceof String text ? plain(text, sizes) : value;
        }

        private String plain(String text, Set<String> sizes) {
            String plain = text;
            for (Map.Entry<String, Piece> each : pieces.entrySet()) {
                String without = replaced(plain, each.getKey(), each.getValue().plainName());
                if (!without.equals(plain)) {
                    sizes.add(each.getValue().size().orElseThrow());
                    plain = without;
                }
            }
            for (String size : known) {
                String ending = " (" + size + ")";
                if (plain.endsWith(ending)) {
                    sizes.add(size);
                    plain = plain.substring(0, plain.length() - ending.length());
                }
            }
            return plain;
        }

        /** Wherever the name stands, but not as a part of a longer word. */
        private static String replaced(String text, String name, String by) {
            StringBuilder said = new StringBuilder();
            int done = 0;
            for (int at = text.indexOf(name); at >= 0; ) {
                int end = at + name.length();
                boolean whole = (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1)))
                        && (end == text.length() || !Character.isLetterOrDigit(text.charAt(end)));
                if (whole) {
                    said.append(text, done, at).append(by);
                    done = end;
                }
                at = text.indexOf(name, whole ? end : at + 1);
            }
            return said.append(text, done, text.length()).toString();
        }
    }
}
