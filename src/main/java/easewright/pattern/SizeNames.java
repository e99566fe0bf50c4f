package easewright.pattern;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sizes as they are written at the ends of names ("Front 38", "Front 40", "Sleeve size M"), or else at their beginnings
 * ("38 Front", "40 Front"). They are believed only where some name comes in two sizes or more, so that "Pocket 2" beside
 * "Front" is no size.
 */
public final class SizeNames {
    private static final String ONE = "(?:(?:EU|UK|US|DE|FR|IT)\\s?)?(?:\\d{1,3}|[2-6]?X{0,3}[SL]|M)";
    private static final String SIZE = "(?<size>" + ONE + ")";
    private static final Pattern ENDING =
            Pattern.compile("(?<stem>.*?\\S)[\\s,:_\u2013-]+(?:size[\\s_]*)?" + SIZE, Pattern.CASE_INSENSITIVE);
    private static final Pattern BEGINNING =
            Pattern.compile("(?:size[\\s_]*)?" + SIZE + "[\\s,:_\u2013-]+(?<stem>\\p{L}.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern ALONE = Pattern.compile("(?:size[\\s,:_\u2013-]*)?" + SIZE, Pattern.CASE_INSENSITIVE);

    private static final Pattern SAID = Pattern.compile("size[\\s,:_\u2013-]*" + SIZE, Pattern.CASE_INSENSITIVE);

    /** Two sizes or more, as a nest says which are in it: "10-12-14", "sizes S to XL", "38/40". */
    private static final String RUN = "\\(?\\s*(?:sizes?[\\s:]*)?" + ONE
            + "(?:(?:\\s*[-\u2010-\u2015/,;&+|]\\s*|\\s+(?:to|and)\\s+)" + ONE + ")+\\s*\\)?";

    private static final Pattern RUN_ALONE = Pattern.compile(RUN, Pattern.CASE_INSENSITIVE);
    private static final Pattern RUN_INSIDE =
            Pattern.compile("(?<![\\w/]|\\d[.,])" + RUN + "(?!\\w|[.,]\\d|\\s*[-/]\\s*\\d)", Pattern.CASE_INSENSITIVE);
    private static final Pattern ONE_OF_RUN = Pattern.compile("\\b" + ONE + "\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern RUN_LAST =
            Pattern.compile("(?<stem>.*?[^\\s,:;\u2013-])[\\s,:;\u2013-]+" + RUN, Pattern.CASE_INSENSITIVE);
    private static final Pattern RUN_FIRST =
            Pattern.compile(RUN + "[\\s,:;\u2013-]+(?<stem>[^\\s,:;\u2013-].*)", Pattern.CASE_INSENSITIVE);

    /** One number below ten in a row of such numbers more likely counts something else, as in "1/2" or "1-2-3". */
    private static final Pattern SURELY_SIZES =
            Pattern.compile(".*(\\d{2}|\\bsizes?\\b|\\b(\\d?X{0,3}[SL]|M)\\b).*", Pattern.CASE_INSENSITIVE);

    /** Longer ones are no names, characters. */
    private static final int LONGEST = 120;

    /** The sizes of a pattern are asked for again and again, and few. */
    private static final Map<String, Without> WITHOUT = new ConcurrentHashMap<>();

    private static final int MANY_WORDS = 200;

    private SizeNames() {}

    /** The sizes by name, for those of the names that end or begin in one; empty if they come in no sizes. */
    public static Map<String, String> in(List<String> names) {
        return inNames(
                names.stream().filter(name -> !NumberedNames.isNumbered(name)).toList());
    }

    private static Map<String, String> inNames(List<String> names) {
        Map<String, String> endings = believed(names, ENDING);
        Map<String, String> beginnings = endings.isEmpty() ? believed(names, BEGINNING) : Map.of();
        // Small numbers before names more likely count the pieces.
        boolean sure = beginnings.keySet().stream().anyMatch(SizeNames::beginsWithASureSize);
        return sure ? beginnings : endings;
    }

    private static boolean beginsWithASureSize(String name) {
        Matcher beginning = BEGINNING.matcher(name.strip());
        return beginning.matches()
                && SURELY_SIZES
                        .matcher(name.strip().substring(0, beginning.end("size")))
                        .matches();
    }

    private static Map<String, String> believed(List<String> names, Pattern form) {
        Map<String, String> sizes = new LinkedHashMap<>();
        Map<String, Set<String>> found = new LinkedHashMap<>();
        for (String name : names) {
            Matcher sized = form.matcher(name.strip());
            if (sized.matches()) {
                sizes.put(name, sized.group("size"));
                found.computeIfAbsent(sized.group("stem"), s -> new LinkedHashSet<>())
                        .add(sized.group("size"));
            }
        }
        return found.values().stream().anyMatch(s -> s.size() > 1) ? sizes : Map.of();
    }

    /** The sizes by name where names are those of layers: "12", "Size 12", or as {@link #in} has it. */
    public static Map<String, String> ofLayers(List<String> names) {
        Map<String, String> sizes = new LinkedHashMap<>();
        for (String name : names) {
            Matcher alone = ALONE.matcher(name.strip());
            if (alone.matches()) {
                sizes.put(name, alone.group("size"));
            }
        }
        return sizes.size() > 1 ? sizes : inNames(names);
    }

    /** Whether a name is nothing but a size and says so: "Size 12", "size_M". */
    public static boolean saysSize(String name) {
        return SAID.matcher(name.strip()).matches();
    }

    /** The sizes of the run in a text, in their order there; empty where there is none. */
    public static List<String> run(String text) {
        Matcher run = RUN_INSIDE.matcher(text);
        while (text.length() <= LONGEST && run.find()) {
            if (SURELY_SIZES.matcher(run.group()).matches()) {
                return ONE_OF_RUN
                        .matcher(run.group().replaceFirst("(?i)sizes?", ""))
                        .results()
                        .map(found -> found.group())
                        .toList();
            }
        }
        return List.of();
    }

    /** Whether a text is nothing but a run of sizes. */
    public static boolean isRun(String text) {
        return text.length() <= LONGEST
                && RUN_ALONE.matcher(text.strip()).matches()
                && SURELY_SIZES.matcher(text).matches();
    }

    /**
     * A name without the run of sizes at its end or its beginning, which says what the whole nest holds and not what the
     * piece is; the name itself where there is none.
     */
    public static String withoutRun(String name) {
        List<Pattern> forms = name.length() > LONGEST || isRun(name) ? List.of() : List.of(RUN_LAST, RUN_FIRST);
        for (Pattern form : forms) {
            Matcher run = form.matcher(name.strip());
            if (run.matches()) {
                String stem = run.group("stem");
                String rest = name.strip().replace(stem, " ");
                if (SURELY_SIZES.matcher(rest).matches()) {
                    return stem.strip();
                }
            }
        }
        return name;
    }

    /** A name without a word at its end or its beginning, such as its size; the name itself if that is all it is. */
    public static String without(String name, String word) {
        if (WITHOUT.size() > MANY_WORDS) {
            WITHOUT.clear();
        }
        Without forms = WITHOUT.computeIfAbsent(word, Without::of);
        String cut = forms.last().matcher(name.strip()).replaceFirst("");
        String plain = forms.first().matcher(cut).replaceFirst("").strip();
        return plain.isEmpty() ? name.strip() : plain;
    }

    /** A word at the end and at the beginning of names. */
    private record Without(Pattern last, Pattern first) {
        static Without of(String word) {
            String quoted = Pattern.quote(word);
            return new Without(
                    Pattern.compile("(?iu)[\\s,:_\u2013-]*\\(?(?<![\\p{L}\\p{N}])(size[\\s_]*)?" + quoted + "\\)?$"),
                    Pattern.compile("(?iu)^\\(?(size[\\s_]*)?" + quoted + "(?![\\p{L}\\p{N}])\\)?[\\s,:_\u2013-]*"));
        }
    }
}
