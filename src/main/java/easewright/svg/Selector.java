package easewright.svg;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A CSS selector: types, ids, classes and attributes, joined by descendant, child ({@code >}) and next sibling
 * ({@code +}).
 */
final class Selector {
    private static final Pattern COMPOUND =
            Pattern.compile("\\*|[#.]?-?[_a-zA-Z\\x{80}-\\x{10FFFF}][\\w\\-\\x{80}-\\x{10FFFF}]*"
                    + "|\\[\\s*([\\w\\-]+)\\s*(?:([~|^$*]?=)\\s*(\"[^\"]*\"|'[^']*'|[\\w\\-]+)\\s*)?]");

    private static final int LONGEST = 2000;

    /** One test of an element: kind is t(ype), #, ., or the operator of an attribute test. */
    private record Test(String kind, String name, String value) {}

    /** Tests that one element must pass, and how it stands to the one matched before: space, &gt;, + or none. */
    private record Compound(List<Test> tests, char join) {}

    /** Right to left. */
    private final List<Compound> compounds;

    private final int specificity;

    private Selector(List<Compound> compounds, int specificity) {
        this.compounds = compounds;
        this.specificity = specificity;
    }

    /** Empty for a selector that uses more of CSS than is known here. */
    static Optional<Selector> parse(String text) {
        if (text.length() > LONGEST || text.isBlank()) {
            return Optional.empty();
        }
        List<Compound> leftToRight = new ArrayList<>();
        List<Test> tests = new ArrayList<>();
        char join = 0;
        int specificity = 0;
        Matcher part = COMPOUND.matcher(text);
        int at = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (NumberScanner.isSpace(c) || c == '>' || c == '+') {
                if (!tests.isEmpty()) {
                    leftToRight.add(new Compound(tests, join));
                    tests = new ArrayList<>();
                    join = ' ';
                }
                if (c == '>' || c == '+') {
                    if (join != ' ') {
                        return Optional.empty();
                    }
                    join = c;
                }
                at++;
                continue;
            }
            part.region(at, text.length());
            if (!part.lookingAt()) {
                return Optional.empty();
            }
            Test test = test(part);
            tests.add(test);
            specificity += switch (test.kind()) {
                case "*" -> 0;
                case "t" -> 1;
                case "#" -> 1_000_000;
                default -> 1000;
            };
            at = part.end();
        }
        if (!tests.isEmpty()) {
            leftToRight.add(new Compound(tests, join));
        } else if (join != ' ') {
            return Optional.empty();
        }
        List<Compound> compounds = new ArrayList<>(leftToRight);
        java.util.Collections.reverse(compounds);
        return Optional.of(new Selector(compounds, specificity));
    }

    private static Test test(Matcher part) {
        String text = part.group();
        return switch (text.charAt(0)) {
            case '*' -> new Test("*", "", "");
            case '#', '.' -> new Test(text.substring(0, 1), text.substring(1), "");
            case '[' -> {
                String value = part.group(3) == null ? "" : part.group(3);
                boolean quoted = value.startsWith("\"") || value.startsWith("'");
                yield new Test(
                        part.group(2) == null ? "[" : part.group(2),
                        part.group(1),
                        quoted ? value.substring(1, value.length() - 1) : value);
            }
            default -> new Test("t", text, "");
        };
    }

    int specificity() {
        return specificity;
    }

    /** How much looking at elements one drawing's style may cost. */
    static final class Effort {
        private static final long MOST = 40_000_000;

        /** The style sheet asks for more looking than any drawing's would. */
        static final class TooMuch extends RuntimeException {
            private static final long serialVersionUID = 1L;
        }

        private long spent;

        private void spend(long steps) {
            spent += steps;
            if (spent > MOST) {
                throw new TooMuch();
            }
        }
    }

    /**
     * Whether the selector is met.
     *
     * @throws Effort.TooMuch if the effort is used up
     */
    boolean matches(Element element, Effort effort) {
        if (!passes(element, compounds.get(0), effort)) {
            return false;
        }
        Set<Element> reached = Set.of(element);
        for (int i = 1; i < compounds.size() && !reached.isEmpty(); i++) {
            char join = compounds.get(i - 1).join();
            Set<Element> next = new LinkedHashSet<>();
            for (Element from : reached) {
                step(from, join, compounds.get(i), next, effort);
            }
            reached = next;
        }
        return !reached.isEmpty();
    }

    private static void step(Element from, char join, Compound wanted, Set<Element> next, Effort effort) {
        if (join == '+') {
            if (from.parent != null && from.position > 0) {
                Element before = from.parent.children.get(from.position - 1);
                if (passes(before, wanted, effort)) {
                    next.add(before);
                }
            }
            return;
        }
        for (Element up = from.parent; up != null; up = join == '>' ? null : up.parent) {
            if (passes(up, wanted, effort)) {
                next.add(up);
            }
        }
    }

    private static boolean passes(Element element, Compound compound, Effort effort) {
        effort.spend(1);
        for (Test test : compound.tests()) {
            if (!passes(element, test, effort)) {
                return false;
            }
        }
        return true;
    }

    private static boolean passes(Element element, Test test, Effort effort) {
        switch (test.kind()) {
            case "*":
                return true;
            case "t":
                return element.name.equals(test.name());
            case "#":
                return element.id().equals(test.name());
            case ".":
                return hasWord(spent(element.get("class"), effort), test.name());
            default:
                break;
        }
        String value = spent(element.get(test.name()), effort);
        if (value == null) {
            return false;
        }
        String wanted = test.value();
        return switch (test.kind()) {
            case "[" -> true;
            case "=" -> value.equals(wanted);
            case "~=" -> hasWord(value, wanted);
            case "|=" -> value.equals(wanted) || value.startsWith(wanted + "-");
            case "^=" -> !wanted.isEmpty() && value.startsWith(wanted);
            case "$=" -> !wanted.isEmpty() && value.endsWith(wanted);
            default -> !wanted.isEmpty() && value.contains(wanted);
        };
    }

    /** Long values take long to look through. */
    private static String spent(String value, Effort effort) {
        effort.spend(value == null ? 0 : value.length() / 16);
        return value;
    }

    private static boolean hasWord(String text, String word) {
        if (text == null || word.isEmpty()) {
            return false;
        }
        int at = text.indexOf(word);
        while (at >= 0) {
            int end = at + word.length();
            boolean begins = at == 0 || NumberScanner.isSpace(text.charAt(at - 1));
            boolean ends = end == text.length() || NumberScanner.isSpace(text.charAt(end));
            if (begins && ends) {
                return true;
            }
            at = text.indexOf(word, at + 1);
        }
        return false;
    }
}
