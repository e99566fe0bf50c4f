package easewright.alter;

import static easewright.alter.TruingTest.assertGone;
import static easewright.alter.TruingTest.sample;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.measure.GarmentMeasures;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The drafts themselves are true, and after a change whatever is found untrue can be put right by itself. */
class TruingSamplesTest {
    /** The drafts themselves are true. */
    @ParameterizedTest
    @ValueSource(strings = {"skirt", "skirt-sizes", "trousers", "bodice", "knit-top"})
    void samplesAreTrue(String name) throws Exception {
        assertThat(Truing.proposals(sample(name))).isEmpty();
    }

    /** Each proposal can be taken alone, leaves girths as they are, is recorded, made again and taken back. */
    @ParameterizedTest
    @CsvSource({"skirt, hip", "trousers, hip", "bodice, bust", "knit-top, hip", "untrue, bust"})
    void everyProposalStandsAlone(String name, String level) throws Exception {
        Pattern before = name.equals("untrue")
                ? SvgFile.read(Path.of("src/test/resources/command/untrue-bodice.svg"))
                        .pattern()
                : SeamChange.at(level, 60)
                        .withTaper(Taper.STRAIGHT)
                        .apply(sample(name))
                        .pattern();
        assertThat(Truing.proposals(before)).isNotEmpty();
        GarmentMeasures was = Measures.of(before);
        for (Proposal proposal : Truing.proposals(before)) {
            Pattern after = proposal.apply(before).pattern();
            assertGone(after, proposal);
            for (Girth girth : Measures.of(after).girths()) {
                assertThat(girth.finished())
                        .as("%s, %s", proposal.truing().target(), girth.level().name())
                        .isCloseTo(was.girth(girth.level().name()).orElseThrow().finished(), within(0.01));
            }
            ChangeNote note = after.changes().get(after.changes().size() - 1);
            Alteration again = Ways.from(note);
            assertThat(again.note()).isEqualTo(note);
            Pattern twice = again.apply(before).pattern();
            Pattern back = again.opposite().orElseThrow().apply(after).pattern();
            for (int i = 0; i < before.pieces().size(); i++) {
                assertThat(twice.pieces().get(i)).isEqualTo(after.pieces().get(i));
                assertThat(Worst.apart(
                                back.pieces().get(i).outline(),
                                before.pieces().get(i).outline()))
                        .as("%s", proposal.truing().target())
                        .isLessThan(1e-6);
            }
        }
    }

    @Test
    void protectedEdgesAreNamedAndOtherwiseRefused() throws Exception {
        // Its armhole meets a slanted side seam level.
        Pattern bodice = SvgFile.read(Path.of("src/test/resources/command/untrue-bodice.svg"))
                .pattern();
        Proposal armhole = Truing.proposals(bodice).stream()
                .filter(p -> p.finding().values().containsValue("armhole"))
                .findFirst()
                .orElseThrow();
        assertThat(armhole.protectedEdges()).containsExactly("Front/armhole", "Back/armhole");
        Refusal refusal = catchThrowableOfType(
                Refusal.class,
                () -> Trued.join(
                                "side seam",
                                armhole.truing().target().get("end").equals("end"))
                        .apply(bodice));
        assertThat(refusal.code()).isEqualTo("edge-protected");
    }

    /** On random pieces drawn by their cutting line a truing keeps its promises or is refused with a reason. */
    @Test
    void onCuttingLinesItIsExactOrRefused() throws Exception {
        int done = 0;
        for (long seed = 1; seed <= 60; seed++) {
            List<Level> levels = List.of(Level.of("mid", LevelKind.HIP), Level.of("top", LevelKind.WAIST));
            Pattern before = Cloths.pattern(levels, new RandomCut(seed).piece("front"));
            for (Proposal proposal : Truing.proposals(before)) {
                Pattern after;
                try {
                    after = proposal.apply(before).pattern();
                } catch (Refusal refusal) {
                    assertThat(refusal.code()).as("seed %d", seed).isNotBlank();
                    continue;
                }
                done++;
                assertGone(after, proposal);
                for (Level level : levels) {
                    assertThat(Cloths.girth(after, level.name()))
                            .as("seed %d", seed)
                            .isCloseTo(Cloths.girth(before, level.name()), within(0.01));
                }
                Pattern back = Ways.from(after.changes().get(0))
                        .opposite()
                        .orElseThrow()
                        .apply(after)
                        .pattern();
                assertThat(Worst.apart(
                                back.pieces().get(0).outline(),
                                before.pieces().get(0).outline()))
                        .as("seed %d", seed)
                        .isLessThan(1e-6);
            }
        }
        assertThat(done).isGreaterThan(20);
    }
}
