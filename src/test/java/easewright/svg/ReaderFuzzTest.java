package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The first seeds of the fuzzer, and every input by which it once found a fault. */
class ReaderFuzzTest {
    private static final Path FOUND = Path.of("src/test/resources/fuzz");

    static List<String> found() throws IOException {
        try (Stream<Path> files = Files.list(FOUND)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".txt"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("found")
    void whatOnceFailedHolds(String name) throws Exception {
        String reader = name.substring(0, name.indexOf('-')).toUpperCase(Locale.ROOT);
        FuzzChecks.check(FuzzCases.Reader.valueOf(reader), Files.readString(FOUND.resolve(name)));
    }

    @ParameterizedTest
    @EnumSource(FuzzCases.Reader.class)
    void theFirstSeedsHold(FuzzCases.Reader reader) throws Exception {
        for (long seed = 0; seed < 150; seed++) {
            String input = FuzzCases.of(reader, seed);
            try {
                FuzzChecks.check(reader, input);
            } catch (Exception | AssertionError failure) {
                throw new AssertionError(reader + " seed " + seed + ": " + input, failure);
            }
        }
    }

    @Test
    void aSeedAlwaysGivesTheSameInput() {
        assertThat(FuzzCases.of(FuzzCases.Reader.PATH, 7)).isEqualTo(FuzzCases.of(FuzzCases.Reader.PATH, 7));
    }
}
