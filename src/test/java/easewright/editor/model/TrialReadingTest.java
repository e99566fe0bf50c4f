package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.Truing;
import easewright.check.Checks;
import easewright.draft.Samples;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.measure.PieceMeasures;
import easewright.pattern.Finding;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a pull works out anew, and that leaving out what did not change leaves nothing out. */
class TrialReadingTest {
    private static final EaseTables TABLES = EaseTables.standard();

    static List<Sample> samples() {
        return Sample.all();
    }

    private static List<Trial.Shown> pulls(Pattern pattern) {
        Reading reading = Reading.of(pattern);
        List<Trial.Shown> shown = new ArrayList<>();
        for (var level : pattern.levels()) {
            for (double amount : new double[] {-15, 4, 30}) {
                Wanted wanted = Wanted.at(level.name(), level.kind()).withAmount(amount);
                Trial.of(pattern, reading, wanted, Optional.empty())
                        .filter(Trial.Shown.class::isInstance)
                        .map(Trial.Shown.class::cast)
                        .ifPresent(shown::add);
            }
        }
        return shown;
    }

    /** Without places that can be made true: they are told of what is kept, on a page that is about nothing else. */
    private static List<Finding> kept(List<Finding> all) {
        return all.stream().filter(f -> !Truing.tells(f)).toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void whatIsSaidOfAPullIsWhatALookAtEverythingSays(Sample sample) throws Exception {
        Pattern pattern = sample.read().pattern();
        List<Trial.Shown> pulls = pulls(pattern);
        assertThat(pulls).isNotEmpty();
        for (Trial.Shown pull : pulls) {
            Pattern after = pull.altered().pattern();
            List<Finding> expected = new ArrayList<>(pull.altered().findings());
            expected.addAll(kept(Checks.compare(pattern, Measures.of(pattern), after, Measures.of(after), TABLES)));
            assertThat(pull.findings()).isEqualTo(expected);
            assertThat(pull.reading().measures().girths())
                    .isEqualTo(Measures.of(after).girths());
        }
    }

    /** In a nest only the size at work is measured again; what is said must be what a look at all sizes says. */
    @Test
    void inANestAPullSaysWhatALookAtAllSizesSays() throws Exception {
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        Pattern pattern = SvgFile.read(svg, "nest.svg").pattern().withWish("hip", 60);
        GarmentMeasures whole = Measures.of(pattern);
        Reading reading = Reading.of(pattern, TABLES, Optional.of("12"));
        for (double amount : new double[] {-15, 4, 250}) {
            Wanted wanted = Wanted.at("hip", LevelKind.HIP).withAmount(amount);
            Trial.Shown pull = (Trial.Shown)
                    Trial.of(pattern, reading, wanted, Optional.empty()).orElseThrow();
            Pattern after = pull.altered().pattern();
            GarmentMeasures now = Measures.of(after);
            List<Finding> expected = new ArrayList<>(pull.altered().findings());
            expected.addAll(kept(Checks.compare(
                    pattern,
                    whole.inSize("12"),
                    EaseSheet.of(pattern, whole.inSize("12"), TABLES.fitting(pattern)),
                    after,
                    now.inSize("12"),
                    EaseSheet.of(after, now.inSize("12"), TABLES.fitting(after)))));
            assertThat(pull.findings()).isEqualTo(expected);
            GarmentMeasures measured = pull.reading().measures();
            assertThat(measured.girths()).isEqualTo(now.inSize("12").girths());
            assertThat(measured.mates()).isEqualTo(now.inSize("12").mates());
            assertThat(measured.findings()).isEqualTo(now.findings());
            assertThat(pull.reading().wishes()).isEqualTo(SizeWishes.of(after, now));
        }
    }

    @Test
    void piecesThatDidNotChangeKeepTheirMeasures() throws Exception {
        Pattern pattern = samples().get(0).read().pattern();
        Reading reading = Reading.of(pattern);
        Wanted wanted = pulls(pattern).get(0).wanted();
        Trial.Shown pull = (Trial.Shown)
                Trial.of(pattern, reading, wanted, Optional.empty()).orElseThrow();
        int kept = 0;
        for (int i = 0; i < pattern.pieces().size(); i++) {
            Piece now = pull.altered().pattern().pieces().get(i);
            if (now == pattern.pieces().get(i)) {
                PieceMeasures old = reading.measures().pieces().get(i);
                assertThat(pull.reading().measures().pieces().get(i)).isSameAs(old);
                kept++;
            }
        }
        assertThat(kept).isBetween(1, pattern.pieces().size() - 1);
    }
}
