package easewright.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page of evidence, and whether two of them say the same. */
final class Page {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.(\\d+))?(?:e(-?\\d+))?");

    /** A share of what is allowed below which a difference is not worth a word. */
    private static final double WORTH_NAMING = 0.01;

    private final StringBuilder text = new StringBuilder();

    private Page() {}

    static String of(List<Topic> topics) throws Exception {
        List<List<Check>> all = new ArrayList<>();
        for (Topic topic : topics) {
            all.add(topic.checks());
        }
        Page page = new Page();
        page.head(all.stream().flatMap(List::stream).toList());
        for (int i = 0; i < topics.size(); i++) {
            page.section(topics.get(i), all.get(i));
        }
        return page.text.toString();
    }

    private void head(List<Check> all) {
        line("# Evidence");
        line("");
        line("What the program says, held against figures that are not its own. Written by the tests in"
                + " `src/test/java/easewright/evidence` (`mvn test -Dtest=EvidencePageTest -Devidence=write`); the same"
                + " tests fail when a figure is off by more than is allowed, or when this page no longer says what they"
                + " find. The full sources are in `sources.md`.");
        line("");
        line("A figure marked *published* was read where the source says; *second-hand* was read in a copy that quotes"
                + " it; *from memory* is unchecked and proves only that the program does with it what the rule says;"
                + " *common practice* has no source; *calculated* follows from arithmetic or comes from another"
                + " program, named beside it. A difference shown as \"under\" a bound is smaller than a hundredth of"
                + " what is allowed.");
        line("");
        line("| standing | checks |");
        line("|---|---|");
        for (Standing standing : Standing.values()) {
            long count =
                    all.stream().filter(c -> c.source().standing() == standing).count();
            if (count > 0) {
                line("| " + standing + " | " + count + " |");
            }
        }
        line("| all | " + all.size() + " |");
    }

    private void section(Topic topic, List<Check> checks) {
        line("");
        line("## " + topic.title());
        line("");
        line(topic.words());
        line("");
        line(worst(checks));
        line("");
        line("| what | expected | got | difference | allowed | source | standing |");
        line("|---|---|---|---|---|---|---|");
        for (Check c : checks) {
            line("| " + String.join(" | ", c.subject(), c.expected(), c.got(), c.differs(), c.allowed()) + " | "
                    + c.source().name() + " | " + c.source().standing() + " |");
        }
    }

    private static String worst(List<Check> checks) {
        Check worst =
                checks.stream().max(Comparator.comparingDouble(Check::share)).orElseThrow();
        return worst.share() < WORTH_NAMING
                ? "All differences are below a hundredth of what is allowed."
                : String.format(
                        Locale.ROOT,
                        "Nearest to what is allowed: %s, %.0f %% of it.",
                        worst.subject(),
                        100 * worst.share());
    }

    private void line(String words) {
        text.append(words).append('\n');
    }

    /** The first line in which two pages differ by more than one unit of a number's last digit; empty if none. */
    static String firstDifference(String one, String other) {
        List<String> ones = one.lines().toList();
        List<String> others = other.lines().toList();
        for (int i = 0; i < Math.max(ones.size(), others.size()); i++) {
            String left = i < ones.size() ? ones.get(i) : "(no line)";
            String right = i < others.size() ? others.get(i) : "(no line)";
            if (!same(left, right)) {
                return "line " + (i + 1) + "\n  page:  " + left + "\n  tests: " + right;
            }
        }
        return "";
    }

    private static boolean same(String one, String other) {
        Matcher left = NUMBER.matcher(one);
        Matcher right = NUMBER.matcher(other);
        while (left.find()) {
            if (!right.find()) {
                return false;
            }
            // Whole numbers count things or name them; the others are measured.
            double unit = Math.min(lastDigit(left), lastDigit(right));
            double difference = Double.parseDouble(left.group()) - Double.parseDouble(right.group());
            if (Math.abs(difference) > (unit == 1 ? 0 : 1.001 * unit)) {
                return false;
            }
        }
        return !right.find() && words(one).equals(words(other));
    }

    private static String words(String line) {
        return NUMBER.matcher(line).replaceAll("#");
    }

    private static double lastDigit(Matcher number) {
        int places = number.group(1) == null ? 0 : number.group(1).length();
        int exponent = number.group(2) == null ? 0 : Integer.parseInt(number.group(2));
        return Math.pow(10, exponent - places);
    }
}
