package easewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A command line that is read plainly means the very same to the manual, which understands every form. */
class PlainReaderTest {
    private static final Grammar GRAMMAR = new ChangeCommand().grammar();
    private static final List<String> WORDS = List.of(
            "a.svg",
            "b.svg",
            "--at",
            "hip",
            "--by",
            "-15mm",
            "+2 cm",
            "-",
            "--json",
            "--edge",
            "front/side=2",
            "--edge=back/side",
            "--keep",
            "-o",
            "--output",
            "--unit=mm",
            "--json=true",
            "-h",
            "--",
            "--taper",
            "",
            "--keep=",
            "-oc.svg",
            "--colour",
            "--carry",
            "-x");

    private final Manual manual = new Manual(
            List.of(GRAMMAR), new Voice(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter())));

    private Optional<Given> manually(List<String> words) {
        List<String> line = new ArrayList<>(words);
        line.add(0, GRAMMAR.command());
        try {
            return manual.read(line);
        } catch (Misuse e) {
            return Optional.empty();
        }
    }

    @Test
    void agreesWithTheManualOnWhateverItReads() {
        Random random = new Random(20240611);
        int plain = 0;
        for (int i = 0; i < 4000; i++) {
            List<String> words = new ArrayList<>();
            for (int n = random.nextInt(7); n >= 0; n--) {
                words.add(WORDS.get(random.nextInt(WORDS.size())));
            }
            Optional<Given> read = PlainReader.read(GRAMMAR, words);
            if (read.isPresent()) {
                plain++;
                assertThat(read).as("%s", words).isEqualTo(manually(words));
            }
        }
        assertThat(plain).isGreaterThan(100);
    }

    @Test
    void everyDocumentedLineIsPlain() {
        for (String line : List.of(
                "s.svg --at hip --by +24mm --try",
                "s.svg --at hip --by -15mm -o t.svg --overwrite",
                "s.svg --at=hip --by=-15mm --edge front/side=2 --edge back/side --output=t.svg")) {
            List<String> words = List.of(line.split(" "));
            assertThat(PlainReader.read(GRAMMAR, words)).as(line).isPresent().isEqualTo(manually(words));
        }
    }

    @Test
    void leavesEveryOtherFormToTheManual() {
        for (String line : List.of(
                "",
                "--help",
                "s.svg t.svg",
                "s.svg --at",
                "s.svg -ot.svg",
                "s.svg --json --json",
                "s.svg --at --by",
                "s.svg --by -mm",
                "-- s.svg")) {
            List<String> words = line.isEmpty() ? List.of() : List.of(line.split(" "));
            assertThat(PlainReader.read(GRAMMAR, words)).as(line).isEmpty();
        }
        assertThat(manually(List.of("s.svg", "-ot.svg")).orElseThrow().texts("--output"))
                .containsExactly("t.svg");
    }
}
