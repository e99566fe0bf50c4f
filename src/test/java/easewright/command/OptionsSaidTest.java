package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a line tells someone to type can be typed. */
class OptionsSaidTest {
    private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");
    private static final Pattern METHOD = Pattern.compile("--method ([a-z-]+)");
    private static final List<String> COMMANDS =
            List.of("measure", "ease", "change", "true", "methods", "check", "print", "report", "draft");

    private static final Words WORDS = Words.english(LengthUnit.CM).forCommands();

    private static Set<String> said(Pattern form, int group) {
        Set<String> found = new TreeSet<>();
        for (String key : Collections.list(WORDS.bundle().getKeys())) {
            form.matcher(WORDS.bundle().getString(key))
                    .results()
                    .map(m -> m.group(group))
                    .forEach(found::add);
        }
        return found;
    }

    @Test
    void everyOptionThatIsNamedIsThere() {
        Set<String> known = new TreeSet<>();
        for (String command : COMMANDS) {
            OPTION.matcher(Run.of(command, "--help").out())
                    .results()
                    .map(MatchResult::group)
                    .forEach(known::add);
        }
        assertThat(known).contains("--scale", "--overwrite", "--help");
        assertThat(said(OPTION, 0)).hasSizeGreaterThan(20).isSubsetOf(known);
    }

    @Test
    void everyMethodThatIsNamedIsThere() {
        String methods = Run.of("methods").out();
        assertThat(said(METHOD, 1))
                .isNotEmpty()
                .allSatisfy(method -> assertThat(methods).contains("--method " + method + "\n"));
    }
}
