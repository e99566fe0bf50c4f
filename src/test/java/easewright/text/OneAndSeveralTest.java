package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every line with a list in it reads well with one thing on the list, and with two. */
class OneAndSeveralTest {
    private static final Pattern LIST = Pattern.compile("\\{([a-z]+)\\.(?:and|or)}");

    /** Lines in two wordings: the ending of the other one, and whether that is the one for several. */
    private static final Map<String, Boolean> OTHER = Map.of(".several", true, ".one", false);

    private static final String ONE = "Front";
    private static final List<String> TWO = List.of("Front", "Back");
    private static final String BOTH = "Front and Back";

    /** A verb for one beside several, and a word that takes several up as one. */
    private static final Pattern BESIDE_TWO = Pattern.compile(BOTH
            + " (is|was|has|does|fits|lies|counts|needs|goes|takes|makes|changes|shares|measures|stays|becomes|belongs)\\b"
            + "|\\b(Is|Was|Has|Does|is|was|has|does) " + BOTH);

    private static final Pattern BESIDE_ONE = Pattern.compile("\\b" + ONE
            + " (are|were|have|do|fit|lie|count|need|go|take|make|change|share|measure|stay|become|belong)\\b"
            + "|\\b(Are|Were|Have|Do|are|were) " + ONE
            + "|\\b" + ONE + "[.:?;,]? (They|These|Those|Both|both|these|those|they)\\b");

    private final Words words = Words.english(LengthUnit.CM);

    private static boolean isFor(String key, List<String> keys, boolean several) {
        for (Map.Entry<String, Boolean> other : OTHER.entrySet()) {
            if (key.endsWith(other.getKey())) {
                return other.getValue() == several;
            }
            if (keys.contains(key + other.getKey())) {
                return other.getValue() != several;
            }
        }
        return true;
    }

    private String said(String key, List<String> list) {
        String line = words.bundle().getString(key);
        Map<String, Object> values = new HashMap<>(TypicalValues.of(key, line, 1));
        Matcher place = LIST.matcher(line);
        while (place.find()) {
            values.put(place.group(1), list);
        }
        return words.of(key, values);
    }

    @Test
    void aVerbBesideAListFitsOneAndTwo() {
        List<String> keys =
                List.copyOf(new TreeSet<>(Collections.list(words.bundle().getKeys())));
        List<String> faulty = new ArrayList<>();
        int lists = 0;
        for (String key : keys) {
            if (LIST.matcher(words.bundle().getString(key)).find()) {
                lists++;
                String one = said(key, List.of(ONE));
                String two = said(key, TWO);
                if (isFor(key, keys, false) && BESIDE_ONE.matcher(one).find()) {
                    faulty.add(key + "=" + one);
                }
                if (isFor(key, keys, true) && BESIDE_TWO.matcher(two).find()) {
                    faulty.add(key + "=" + two);
                }
            }
        }
        assertThat(lists).isGreaterThan(50);
        assertThat(faulty).isEmpty();
    }

    @Test
    void theFaultsAreFound() {
        assertThat("Front and Back is sewn").containsPattern(BESIDE_TWO);
        assertThat("Is Front and Back sewn over others?").containsPattern(BESIDE_TWO);
        assertThat("Front and Back changed").doesNotContainPattern(BESIDE_TWO);
        assertThat("If Front share the amount").containsPattern(BESIDE_ONE);
        assertThat("None is known of Front: these take more").containsPattern(BESIDE_ONE);
        assertThat("Changed: Front. All else stays").doesNotContainPattern(BESIDE_ONE);
    }
}
