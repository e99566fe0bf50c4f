package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who sees the window or a page is told what to press, who types commands is told the option. */
class WhoIsSpokenToTest {
    private static final String COMMAND = ".command";
    private static final String MAC = ".mac";

    /** Options, files of the repository and of the command line, and commands by name. */
    private static final Pattern TYPED =
            Pattern.compile("--|docs/|me\\.txt|\\.json|\\b[A-Z]+_[A-Z_]+\\b|-o OUT|-X[a-z]|\\b[Tt]he command ");

    private final Words words = Words.english(LengthUnit.CM);

    @Test
    void noLineForTheWindowOrForPaperNamesAnOptionOrAFileOfTheCommandLine() throws IOException {
        Set<String> elsewhere = SeenLines.literals(false);
        List<String> seen = keys().stream()
                .filter(key -> !key.endsWith(COMMAND) && SeenLines.isSeen(key, elsewhere))
                .toList();
        assertThat(seen).hasSizeGreaterThan(1100);
        assertThat(seen)
                .filteredOn(key -> TYPED.matcher(words.bundle().getString(key)).find())
                .as("lines of the window that speak of the command line")
                .isEmpty();
    }

    @Test
    void whatIsLeftToTheCommandLineIsShownThere() throws IOException {
        Set<String> elsewhere = SeenLines.literals(false);
        Set<String> commands = SeenLines.literals(true);
        assertThat(keys())
                .filteredOn(key ->
                        key.startsWith("problem.") && !key.endsWith(COMMAND) && !SeenLines.isSeen(key, elsewhere))
                .isNotEmpty()
                .allSatisfy(key -> assertThat(commands).contains(key.substring("problem.".length())));
    }

    /** A wording of its own stands beside the line it takes the place of. */
    @Test
    void everyWordingOfItsOwnHasALineToStandFor() {
        Map<String, String> own = new TreeMap<>();
        keys().stream()
                .filter(key -> key.endsWith(COMMAND) || key.endsWith(MAC))
                .forEach(key -> own.put(key, key.substring(0, key.lastIndexOf('.'))));
        assertThat(own).hasSizeGreaterThan(10);
        own.forEach((key, plain) -> {
            assertThat(words.bundle().keySet()).as(key).contains(plain);
            assertThat(words.bundle().getString(key))
                    .as(key)
                    .isNotEqualTo(words.bundle().getString(plain));
        });
    }

    @Test
    void theSameFindingIsSaidToEachInTheirOwnWords() {
        Finding offer = Finding.of("fit-offer", Severity.NOTE, "")
                .with("edges", List.of("band/top"))
                .with("by.signed", 12.0);
        assertThat(words.of(offer)).contains("band/top by +1.2\u00a0cm").contains("page True");
        assertThat(words.forCommands().of(offer))
                .contains("band/top by +1.2\u00a0cm")
                .contains("--method edge-length")
                .doesNotContain("page True");
        Finding other = Finding.of("mate-nearer", Severity.NOTE, "").with("mate", "side \"seam\"");
        assertThat(words.of(other)).startsWith("Seam \u201cside \"seam\"\u201d: ");
        assertThat(words.forCommands().of(other)).startsWith("Seam \"side \"seam\"\": ");
    }

    /** Who sees the window asks why; in a terminal there is nothing to be asked. */
    @Test
    void whatGoesBeyondALineIsToldToWhoAsksOrTypes() {
        Finding little = Finding.of("mate-drifted-little", Severity.NOTE, "")
                .with("mate", "side")
                .with("one", List.of("front/side"))
                .with("other", List.of("back/side"))
                .with("first.signed", 0.5)
                .with("second.signed", 0.0)
                .with("was.signed", 0.0)
                .with("now.signed", 0.5);
        assertThat(words.of(little)).endsWith("Too little to matter.").doesNotContain("Threads");
        assertThat(words.why(little).orElseThrow()).endsWith("(Threads 200).");
        assertThat(words.forCommands().of(little))
                .endsWith("Too little to matter. "
                        + words.forCommands().why(little).orElseThrow());
        // Its wording for commands says all of it by itself.
        Finding apart = Finding.of("levels-apart", Severity.CAUTION, "front").with("level", "hip");
        assertThat(words.why(apart)).isPresent();
        assertThat(words.forCommands().of(apart)).doesNotContain("As it lies");
        assertThat(words.why(Finding.of("no-outlines", Severity.NOTE, ""))).isEmpty();
    }

    /** What a list is part of is a sentence: its last has an "and" before it, and its lengths their signs. */
    @Test
    void listsInSentencesEndWithAnAnd() {
        Finding two = Finding.of("fit-offer-girth", Severity.NOTE, "")
                .with("levels", List.of("waist", "high hip", "hip"))
                .with("by.signed", List.of(10.0, -5.0, 20.0));
        assertThat(words.of(two))
                .isEqualTo("That would change the girth at waist, high hip and hip"
                        + " by +1\u00a0cm, \u22120.5\u00a0cm and +2\u00a0cm.");
        assertThat(words.listed(List.of("hip"))).isEqualTo("hip");
        assertThat(words.listed(List.of())).isEmpty();
    }

    /** A button, page or way that a sentence names is called so where it stands. */
    @Test
    void whatASentenceSaysToPressIsThereToBePressed() {
        Set<String> labels = new TreeSet<>();
        keys().forEach(key -> labels.add(words.bundle().getString(key)));
        Pattern named = Pattern.compile("\"([A-Z][^\"{]*)\"|\\bpages? ([A-Z][a-z]+)|, under ([A-Z][a-z]+)");
        Map<String, String> said = new TreeMap<>();
        keys().stream()
                .filter(key -> !key.startsWith("methods.") && !key.startsWith("problem.draft-"))
                .forEach(key -> named.matcher(words.bundle().getString(key))
                        .results()
                        .flatMap(m -> Stream.of(m.group(1), m.group(2), m.group(3)))
                        .filter(Objects::nonNull)
                        .forEach(name -> said.put(name, key)));
        assertThat(said.keySet()).contains("Keep it", "Slash and spread", "Marks", "Scale");
        said.forEach((name, key) -> assertThat(labels).as("%s of %s", name, key).contains(name));
    }

    /** What a Mac calls its keys stands on them: no line names another one. */
    @Test
    void keysAreCalledWhatStandsOnThem() {
        Words mac = words.onMac();
        List<String> shown = keys().stream()
                .filter(key -> key.startsWith("editor.") && !key.endsWith(MAC))
                .toList();
        assertThat(shown).allSatisfy(key -> assertThat(mac.of(key)).as(key).doesNotContainPattern("\\b(Ctrl|Alt)\\b"));
        assertThat(shown)
                .allSatisfy(key -> assertThat(words.of(key)).as(key).doesNotContainPattern("\\b(Cmd|Option)\\b"));
        assertThat(mac.of("editor.save.hint")).endsWith("Cmd+S");
        assertThat(mac.of("editor.redo.hint")).endsWith("Cmd+Shift+Z");
        assertThat(mac.of("editor.page.ease.hint")).endsWith("Option+2");
        assertThat(words.of("editor.redo.hint")).endsWith("Ctrl+Y");
    }

    /** Only the command line is spoken to in its own words, and it always is. */
    @Test
    void theRoomsChooseTheirWords() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path source : SeenLines.sources()) {
            String text = Files.readString(source);
            boolean command = SeenLines.isCommand(source);
            String name = source.getFileName().toString();
            if (!command && text.contains("forCommands(") && !name.equals("Words.java")) {
                wrong.add(name);
            }
            // The report is paper, whoever asks for it.
            if (command
                    && text.contains("Words.english(")
                    && !Set.of("Main.java", "Commands.java", "OnPaper.java").contains(name)) {
                wrong.add(name);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private List<String> keys() {
        List<String> keys = new ArrayList<>(Collections.list(words.bundle().getKeys()));
        Collections.sort(keys);
        return keys;
    }
}
