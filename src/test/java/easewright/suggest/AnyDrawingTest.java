package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whatever is drawn, suggesting ends and breaks nothing. */
class AnyDrawingTest {
    private static void suggest(SvgFile file) {
        Sheet sheet = new Sheet(file.pattern(), file.loose(file.pattern()), file.texts());
        Suggestions made = Suggestions.of(sheet, Set.of());
        assertThat(made.outcome()).isNotNull();
        KnownLength.on(sheet);
    }

    @Test
    void oddFilesThatOpen() throws IOException {
        for (String folder : List.of("hostile", "bad", "marks")) {
            try (Stream<Path> files = Files.list(Path.of("src/test/resources", folder))) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".svg")).toList()) {
                    SvgFile opened;
                    try {
                        opened = SvgFile.read(file);
                    } catch (SvgProblem e) {
                        continue;
                    }
                    assertThatCode(() -> suggest(opened)).as(file.toString()).doesNotThrowAnyException();
                }
            }
        }
    }

    /** Outlines of all forms with short and long lines strewn over them. */
    @Test
    void scribbles() throws SvgProblem {
        Random random = new Random(41);
        for (int round = 0; round < 60; round++) {
            StringBuilder body = new StringBuilder();
            for (int i = 0; i < 6; i++) {
                double x = 400 * i;
                body.append("<path d='M").append(place(random, x));
                for (int k = 0; k < 3 + random.nextInt(9); k++) {
                    body.append(
                            random.nextBoolean()
                                    ? "L" + place(random, x)
                                    : "C" + place(random, x) + place(random, x) + place(random, x));
                }
                body.append("Z'/>");
                for (int k = 0; k < 25; k++) {
                    body.append("<path d='M")
                            .append(place(random, x))
                            .append("L")
                            .append(place(random, x));
                    body.append(random.nextBoolean() ? "L" + place(random, x) : "l3 4")
                            .append("'/>");
                }
                body.append("<text x='").append(x + 100).append("' y='200' font-size='12'>front cut 2 on fold</text>");
            }
            SvgFile file = SvgFile.read(
                    ("<svg xmlns='http://www.w3.org/2000/svg' width='3000mm' height='500mm' viewBox='0 0 3000 500'>"
                                    + body + "</svg>")
                            .getBytes(StandardCharsets.UTF_8),
                    "scribble.svg");
            int number = round;
            assertThatCode(() -> suggest(file)).as("round %d", number).doesNotThrowAnyException();
        }
    }

    private static String place(Random random, double x) {
        return String.format(Locale.ROOT, " %.1f %.1f ", x + 300 * random.nextDouble(), 450 * random.nextDouble());
    }
}
