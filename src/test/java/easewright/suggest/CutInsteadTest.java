package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.ReadOptions;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A skirt with words above its pieces, whose true scale is known by a test square only. */
class CutInsteadTest {
    private static final double TRUE = 25.4 / 72;

    private static Sheet sheet(double mmPerUnit, String without) throws Exception {
        String svg = Files.readString(Path.of("src/test/resources/bare/skirt-words-above.svg"));
        return sheet(svg.replace(without, ""), mmPerUnit);
    }

    private static Sheet sheet(String svg, double mmPerUnit) throws SvgProblem {
        SvgFile file = SvgFile.read(
                svg.getBytes(StandardCharsets.UTF_8), "skirt.svg", ReadOptions.AS_FILED.withScale(mmPerUnit));
        return new Sheet(file.pattern(), file.loose(file.pattern()), file.texts());
    }

    private static Piece called(Pattern pattern, String name) {
        return pattern.piece(name)
                .orElseThrow(() -> new AssertionError(
                        pattern.pieces().stream().map(Piece::name).toList()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {25.4 / 96, TRUE, 1, 0.05})
    void wordsAboveAPieceNameItAtEveryScale(double mmPerUnit) throws Exception {
        Pattern named = Suggestions.named(sheet(mmPerUnit, "no such words"));
        assertThat(named.pieces()).extracting(Piece::name).contains("Front", "Back", "Waistband");
    }

    @Test
    void whatIsWrittenAboveSaysHowOftenItIsCut() throws Exception {
        Pattern all = Suggestions.of(sheet(TRUE, "no such words"), Set.of()).outcome();
        assertThat(called(all, "Back").times()).isEqualTo(2);
        assertThat(called(all, "Back").onFold()).isFalse();
        assertThat(called(all, "Front").onFold()).isTrue();
    }

    @Test
    void whereAGuessedFoldIsUntickedASeamIsOfferedAndAllElseStays() throws Exception {
        Sheet sheet = sheet(TRUE, "BACK  cut 2  centre back seam");
        Suggestions all = Suggestions.of(sheet, Set.of());
        CutCount fold = all.all().stream()
                .filter(CutCount.class::isInstance)
                .map(CutCount.class::cast)
                .filter(c -> c.onFold() && !c.shown().isEmpty())
                .findFirst()
                .orElseThrow();
        Suggestions without = Suggestions.of(sheet, Set.of(fold.key()));
        Piece was = all.outcome().piece(fold.piece()).orElseThrow();
        Piece is = without.outcome().piece(fold.piece()).orElseThrow();
        assertThat(was.onFold()).isTrue();
        assertThat(is.times()).isEqualTo(2);
        assertThat(is.onFold()).isFalse();
        assertThat(is.edges()).anyMatch(e -> e.role() == EdgeRole.CENTRE);
        List<LevelMark> levels = was.levels();
        assertThat(levels).isNotEmpty();
        for (LevelMark level : levels) {
            LevelMark now = is.level(level.level()).orElseThrow();
            assertThat(now.through().isPresent()).isEqualTo(level.through().isPresent());
            level.through()
                    .ifPresent(p ->
                            assertThat(now.through().orElseThrow().distance(p)).isCloseTo(0, within(0.1)));
        }
        assertThat(without.outcome().mates()).hasSameSizeAs(all.outcome().mates());
        Suggestion instead = without.all().stream()
                .filter(s -> s instanceof CutCount c && c.instead())
                .findFirst()
                .orElseThrow();
        Piece bare = Suggestions.of(sheet, Set.of(fold.key(), instead.key()))
                .outcome()
                .piece(fold.piece())
                .orElseThrow();
        assertThat(bare.times()).isEqualTo(1);
        assertThat(bare.onFold()).isFalse();
    }
}
