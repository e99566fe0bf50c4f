package easewright.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Values such as lines of the bundle are shown with, by the names of their placeholders, and for some lines by their own.
 * A name that is not known here stands for a word.
 */
final class TypicalValues {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z][A-Za-z0-9_.-]*)\\}");

    /** The lengths in the lines, by the size that they mostly have, mm. */
    private static final Map<String, Double> LENGTHS = lengths();

    /** How many, and other plain numbers. */
    private static final Map<String, Object> NUMBERS = Map.ofEntries(
            Map.entry("across", 4),
            Map.entry("at", 7),
            Map.entry("column", 12),
            Map.entry("count", 3),
            Map.entry("depth", 100),
            Map.entry("down", 4),
            Map.entry("good", 5),
            Map.entry("line", 4),
            Map.entry("megabytes", 64),
            Map.entry("number", 2),
            Map.entry("of", 4),
            Map.entry("pages", 3),
            Map.entry("perInch", 96),
            Map.entry("scale", 8),
            Map.entry("seconds", 10),
            Map.entry("share", "42"),
            Map.entry("times", 2),
            Map.entry("weight", "2"));

    /** Names and the like, in words. */
    private static final String PLAIN = """
            attribute=length; backup=skirt.svg.bak; beside=side; class=fitted; cloth=woven; command=change;
            content=marker; cutting=cut 2 (a pair); dart=waist dart; date=3 March 2025; edge=side;
            encoding=UTF-7; end=upper end; far=12 cm; field=Hip girth; file=skirt.svg; garment=skirts;
            give=Add 2 cm; guide=centre; id=path12; kind=outline-open; lowest=very close; layer=Size 12;
            level=hip; lying=on folded cloth; mark=edge; mate=side seam; measured=12 cm; method=seam;
            name=Front; next=loose; notch=N1; note=for sitting; option=--at; other=Back; other-edge=side;
            paper=A4; percent=5 %; piece=Front; place=waist; ref=path12; seam=side seam; setting=taper; size=12;
            source=Threads 200; standing=published; text=abc; title=Straight skirt; unit=cm; value=2;
            verdict=2 cm missing; version=3; what=slash 1; wearer=Ida; when=today; where=Front, side;
            word=fitted; words=10 cm; work=skirt.svg, today; left=Front left; right=Front right; shape=ellipse;
            holds=classes at hip; regions=hip; how=met; matter=a corner; manners=tapers smoothly; perInch=96;
            hand=; standard=smooth; adopt=Wish for 7 cm; inches=2 in; brief=3 cm is fitted;
            """;

    private static final Map<String, Object> NAMES = names();

    /** Where a name stands for something else than elsewhere. */
    private static final Map<String, Object> IN_LINES = inLines();

    private TypicalValues() {}

    private static Map<String, Double> lengths() {
        Map<String, Double> mm = new TreeMap<>();
        List.of("amount", "by", "change", "longer", "more", "first.signed", "second.signed", "largest")
                .forEach(name -> mm.put(name, 20.0));
        List.of("apart", "bent", "difference", "distance", "drift", "missing", "now", "off", "was", "short")
                .forEach(name -> mm.put(name, 3.0));
        List.of("allowance", "gap", "intake", "limit", "margin", "minimum", "outside", "overlap", "stays", "step")
                .forEach(name -> mm.put(name, 12.7));
        List.of("ease", "least", "low", "most", "pen", "beyond", "wish").forEach(name -> mm.put(name, 38.0));
        mm.put("high", 52.0);
        List.of(
                        "after",
                        "along",
                        "drawn",
                        "first",
                        "held",
                        "worn",
                        "length",
                        "marked",
                        "over",
                        "stated",
                        "straight",
                        "taper")
                .forEach(name -> mm.put(name, 153.0));
        List.of("before", "needed", "second", "to", "usual", "x", "y").forEach(name -> mm.put(name, 157.0));
        List.of("body", "finished", "from", "girth", "here", "tall", "wide", "width", "height", "page")
                .forEach(name -> mm.put(name, 402.0));
        mm.put("narrow", 157.0);
        mm.put("unit.number", 0.2646);
        mm.put("per.number", 37.795);
        mm.put("scale.number", 0.2646);
        return mm;
    }

    private static Map<String, Object> names() {
        Map<String, Object> said = new HashMap<>();
        for (String each : PLAIN.split(";\\s*")) {
            said.put(
                    each.substring(0, each.indexOf('=')),
                    each.substring(each.indexOf('=') + 1).strip());
        }
        for (String many : List.of("edges", "names", "pieces", "darts", "changed", "line")) {
            said.put(many + ".and", List.of("Front side", "Back side"));
        }
        said.put("one.and", List.of("Front side"));
        said.put("two.and", List.of("Back side"));
        said.put("other.and", List.of("Back side"));
        said.put("garment.or", List.of("dress", "bodice", "top"));
        said.put("levels.and", List.of("waist", "hip"));
        said.put("seams.and", List.of("Back side"));
        said.put("sizes.and", List.of("10", "12"));
        said.put("by.signed.and", List.of(20.0, -12.7));
        for (String many : List.of("edges", "pieces", "names", "seams", "darts")) {
            said.put(many, "Front side, Back side");
        }
        said.put("known", "10, 12, 14");
        said.put("sizes", "10, 12");
        said.put("values", "smooth");
        said.put("files", "notes.txt");
        said.put("marks", "notch, level");
        said.put("places", "waist");
        said.put("settings", "Hinge, Opening");
        said.put("girths", "hip +2 cm");
        said.put("lengths", "Front side +2 cm");
        said.put("changes", "Back side +2 cm");
        said.put("classes", "\u201cfitted\u201d [1]");
        said.put("asked", "5 cm [2]");
        said.put("grain", "Keep the grain arrows along the selvedge.");
        said.put("each", "10: as wished");
        said.put("whole", "of girth");
        for (String sentence : List.of("reason", "why", "hint", "problem", "said")) {
            said.put(sentence, "Check the unit.");
        }
        said.put("which", "Change 2.");
        said.put("found", "not tested yet");
        said.put("key", "by");
        said.put("others", "waist");
        said.put("last", "hip");
        return said;
    }

    private static Map<String, Object> inLines() {
        Map<String, Object> said = new HashMap<>();
        said.put("finding.side-assumed drawn", "Front left");
        said.put("print.plan.control across", "10 cm");
        said.put("print.plan.control down", "10 cm");
        said.put("editor.here.each seams", 4);
        for (String count : List.of(
                "problem.too-many-segments most",
                "finding.pieces-left-out most",
                "finding.more-of-the-same most",
                "problem.print-too-many-sheets most",
                "problem.scenery-large most")) {
            said.put(count, 4);
        }
        for (String clause : List.of(
                "problem.save-failed reason",
                "problem.save-not-forced reason",
                "problem.recovery-not-kept reason",
                "problem.file-name-form reason",
                "main.no-window-sample reason",
                "main.no-window-file reason",
                "editor.said.not-kept reason",
                "editor.suggest.guess why",
                "problem.not-foreseen what")) {
            said.put(clause, "no room left");
        }
        return said;
    }

    /**
     * Values for all placeholders of a line.
     *
     * @param scale lengths are so many times what they mostly are
     */
    static Map<String, Object> of(String key, String line, double scale) {
        Map<String, Object> values = new HashMap<>();
        Matcher place = PLACEHOLDER.matcher(line);
        while (place.find()) {
            put(key.replaceFirst("\\.(command|mac|one|why)$", ""), place.group(1), scale, values);
        }
        return values;
    }

    private static void put(String key, String name, double scale, Map<String, Object> values) {
        Object own = IN_LINES.get(key + " " + name);
        if (own != null) {
            values.put(name, own);
        } else if (NAMES.containsKey(name)) {
            values.put(name.replaceFirst("\\.(and|or)$", ""), NAMES.get(name));
        } else if (name.matches(".*\\.(percent|degrees|number)")) {
            values.put(name, LENGTHS.getOrDefault(name, 12.5));
        } else {
            String stem = name.replaceFirst("\\.(coarse|part|agreeing|exact|then|now|so|eased)$", "");
            if (name.matches(".*\\.(then|now|so)")) {
                // The side that is too long is one of these.
                values.putIfAbsent("one", List.of("Front side"));
                values.putIfAbsent("other", List.of("Back side"));
            }
            Double mm = LENGTHS.getOrDefault(stem, LENGTHS.get(stem.replace(".signed", "")));
            if (mm != null) {
                values.put(stem, mm * scale);
            } else if (!name.startsWith("key.")) {
                values.put(name, NUMBERS.getOrDefault(name, "side"));
            }
        }
    }
}
