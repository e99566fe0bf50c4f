package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.check.Checks;
import easewright.ease.EaseTables;
import easewright.measure.Measures;
import easewright.measure.PieceMeasures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
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

    @ParameterizedTest
    @MethodSource("samples")
    void whatIsSaidOfAPullIsWhatALookAtEverythingSays(Sample sample) throws Exception {
        Pattern pattern = sample.read().pattern();
        List<Trial.Shown> pulls = pulls(pattern);
        assertThat(pulls).isNotEmpty();
        for (Trial.Shown pull : pulls) {
            Pattern after = pull.altered().pattern();
            List<Finding> expected = new ArrayList<>(pull.altered().findings());
            expected.addAll(Checks.compare(pattern, Measures.of(pattern), after, Measures.of(after), TABLES));
            assertThat(pull.findings()).isEqualTo(expected);
            assertThat(pull.reading().measures().girths())
                    .isEqualTo(Measures.of(after).girths());
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
