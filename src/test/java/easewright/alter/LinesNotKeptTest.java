package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The way back in files that do not tell how the lines beside the outlines were drawn, as they were written before. */
class LinesNotKeptTest {
    private static SvgFile sample(String garment) throws Exception {
        return SvgFile.read(Path.of("sample-pieces", garment + ".svg"));
    }

    /** Saved, with what is noted of the lines as drawn taken out, and opened again. */
    private static Pattern older(SvgFile file, Pattern pattern) throws SvgProblem {
        String svg = new String(file.write(pattern), StandardCharsets.UTF_8);
        String without = svg.replaceAll("\\soriginal=\"[^\"]*\"", "");
        assertThat(without).isNotEqualTo(svg);
        Pattern older = SvgFile.read(without.getBytes(StandardCharsets.UTF_8), "older.svg")
                .pattern();
        assertThat(older.pieces())
                .allMatch(p -> p.riders().stream().allMatch(r -> r.original().isEmpty()))
                .anyMatch(p -> p.original().isPresent());
        return older;
    }

    private static void assertSame(Pattern is, Pattern was) {
        assertThat(is.changes()).isEqualTo(was.changes());
        for (int i = 0; i < was.pieces().size(); i++) {
            Piece one = is.pieces().get(i);
            Piece other = was.pieces().get(i);
            assertThat(Likeness.same(one, other)).isTrue();
            assertThat(Likeness.sameLines(one.riders(), other.riders(), 0.35)).isTrue();
        }
    }

    private static Pattern changed(Pattern pattern, String level, double amount) throws Refusal {
        return SeamChange.at(level, amount).apply(pattern).pattern();
    }

    @ParameterizedTest
    @CsvSource({"skirt, hip, 20", "trousers, thigh, 30", "bodice, bust, 12"})
    void aChangeIsTakenBack(String garment, String level, double amount) throws Exception {
        SvgFile file = sample(garment);
        Pattern now = older(file, changed(file.pattern(), level, amount));
        assertSame(new Replay(now, List.of()).to(List.of()), file.pattern());
        assertSame(Retrace.to(now, 0), file.pattern());
    }

    @ParameterizedTest
    @CsvSource({"skirt, hip, 20, 12", "trousers, thigh, 30, 12", "bodice, bust, 12, 8"})
    void soIsOneBeforeAnotherThatNotesTheLinesAsTheFirstLeftThem(
            String garment, String level, double first, double second) throws Exception {
        SvgFile file = sample(garment);
        Pattern once = older(file, changed(file.pattern(), level, first));
        Pattern twice = SvgFile.read(file.write(changed(once, level, second)), "twice.svg")
                .pattern();
        assertThat(twice.changes()).hasSize(2);
        Replay replay = new Replay(twice, List.of());
        assertSame(replay.to(List.of()), file.pattern());
        assertSame(replay.to(Step.course(once)), once);
    }
}
