package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.Minimum;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the ease sheet says of an ease at a glance agrees with all it lists of it, whatever the ease. */
class VerdictAgreesTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private void open(String sample) throws Exception {
        session.open(OpenedSample.of(sample));
    }

    private double finished(Level level) {
        return session.desk()
                .reading()
                .measures()
                .girth(level.name())
                .orElseThrow()
                .finished();
    }

    private EaseRow row(Level level) {
        return EasePage.of(session.desk()).rows().stream()
                .filter(r -> r.level().equals(level))
                .findFirst()
                .orElseThrow();
    }

    /** Whatever the ease: "less than any source" never stands above a source's word for just that ease. */
    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice", "knit-top"})
    void theVerdictAgreesWithTheClassBelowIt(String sample) throws Exception {
        open(sample);
        String less = session.desk().words().of("editor.ease.tight");
        String smaller = session.desk().words().of("editor.ease.smaller");
        for (var level : session.desk().pattern().levels()) {
            session.setWish(level.name(), OptionalDouble.empty());
            for (int ease = -60; ease <= 160; ease += 4) {
                double finished = finished(level);
                session.setBody(level, OptionalDouble.of(finished - ease), level.name());
                EaseRow row = row(level);
                boolean classed = row.classes().stream().anyMatch(c -> !c.startsWith("below"));
                assertThat(row.standing() == EaseRow.Standing.TIGHT)
                        .as("%s %s %s", level.name(), ease, row)
                        .isEqualTo(row.verdict().equals(ease < 0 ? smaller : less));
                assertThat(classed && row.verdict().equals(less))
                        .as("%s %s %s", level.name(), ease, row)
                        .isFalse();
                assertThat(row.standing() == EaseRow.Standing.DISPUTED && !classed)
                        .as("%s %s %s", level.name(), ease, row)
                        .isFalse();
            }
        }
    }

    /**
     * One rule: an ease is hatched, and sources are said to ask for more, where it misses the least that each of them asks
     * for. With a wish that is met so it is said below the verdict, which is never a caution.
     */
    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice"})
    void verdictBarAndListTellTheSame(String sample) throws Exception {
        open(sample);
        for (var level : session.desk().pattern().levels()) {
            double finished = finished(level);
            for (int tenths = 0; tenths <= 900; tenths += 4) {
                double ease = tenths / 10.0;
                session.setBody(level, OptionalDouble.of(finished - ease), level.name());
                session.setWish(level.name(), OptionalDouble.of(ease));
                EaseRow row = row(level);
                List<Minimum> asked = session.desk().reading().sheet().lines().stream()
                        .filter(l -> l.name().equals(level.name()))
                        .flatMap(l -> l.minimums().stream())
                        .toList();
                String as = level.name() + " " + ease + " " + row.verdict();
                assertThat(row.verdict()).as(as).isEqualTo("\u2713 as wished");
                assertThat(row.brief().contains("ask for"))
                        .as(as)
                        .isEqualTo(!asked.isEmpty() && asked.stream().allMatch(m -> m.isMissedBy(ease)));
                assertThat(row.scale().shortOf().isPresent()
                                && ease < row.scale().shortOf().getAsDouble() - 1e-6)
                        .as(as)
                        .isEqualTo(!asked.isEmpty() && asked.stream().allMatch(m -> m.isMissedBy(ease)));
                Words words = session.desk().words();
                assertThat(row.near().isEmpty())
                        .as(as)
                        .isEqualTo(asked.stream()
                                .filter(m -> m.isNearlyMetBy(ease))
                                .allMatch(m -> words.coarse(m.low()).equals(words.length(ease))));
            }
        }
    }

    /** What the samples wish for is not less than every source asks for. */
    @ParameterizedTest
    @CsvSource({"skirt", "trousers", "bodice", "knit-top"})
    void theSamplesAskForEnough(String sample) throws Exception {
        open(sample);
        assertThat(EasePage.of(session.desk()).rows()).isNotEmpty().allSatisfy(row -> {
            assertThat(row.brief()).as(row.name()).doesNotContain("ask for");
            assertThat(row.scale().shortOf().orElse(-1000))
                    .as(row.name())
                    .isLessThanOrEqualTo(row.scale().now().orElseThrow() + 1e-6);
        });
    }
}
