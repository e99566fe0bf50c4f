package easewright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Alteration;
import easewright.alter.Altered;
import easewright.alter.Refusal;
import easewright.alter.SeamChange;
import easewright.check.Checks;
import easewright.ease.EaseTables;
import easewright.geom.Segment;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.svg.SvgFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The whole road on the sample files: bytes in, one local change, bytes out, and measured again from those bytes. */
class MainJobTest {
    private static final Path SAMPLES = Path.of("sample-pieces");

    @Test
    void hipSpreadOnTheSkirtLeavesTheWaistAlone() throws Exception {
        Job job = new Job("skirt.svg", SeamChange.at("hip", 24));

        assertThat(job.gain("hip")).isCloseTo(24, within(0.01));
        assertThat(job.gain("waist")).isEqualTo(0);
        job.assertUntouched(EdgeRole.WAIST);
        job.assertDartsUntouched();
        assertThat(job.drifts()).as("side seams were walked again").isNotEmpty();
    }

    @Test
    void hipSpreadCarriedToTheHemLeavesTheWaistAlone() throws Exception {
        Job job = new Job("skirt.svg", SeamChange.at("hip", 24).carriedToHem());

        assertThat(job.gain("hip")).isCloseTo(24, within(0.01));
        assertThat(job.gain("waist")).isEqualTo(0);
        job.assertUntouched(EdgeRole.WAIST);
        job.assertDartsUntouched();
    }

    @Test
    void thighSpreadOnTheTrousersLeavesCrotchAndWaistAlone() throws Exception {
        Job job = new Job("trousers.svg", SeamChange.at("thigh", 24));

        assertThat(job.gain("thigh")).isCloseTo(24, within(0.01));
        assertThat(job.gain("waist")).isEqualTo(0);
        job.assertUntouched(EdgeRole.WAIST);
        job.assertUntouched(EdgeRole.CROTCH);
        job.assertDartsUntouched();
    }

    @Test
    void bustSpreadOnTheBodiceLeavesArmholeNeckAndShoulderAlone() throws Exception {
        Job job = new Job("bodice.svg", SeamChange.at("bust", 24));

        assertThat(job.gain("bust")).isCloseTo(24, within(0.01));
        job.assertUntouched(EdgeRole.ARMHOLE);
        job.assertUntouched(EdgeRole.NECK);
        job.assertUntouched(EdgeRole.SHOULDER);
        job.assertDartsUntouched();
    }

    @Test
    void waistPinchThroughTheSideSeamsLeavesTheHipAlone() throws Exception {
        Job job = new Job("skirt.svg", SeamChange.at("waist", -15));

        assertThat(job.gain("waist")).isCloseTo(-15, within(0.01));
        assertThat(job.gain("hip")).isEqualTo(0);
        job.assertDartsUntouched();
    }

    @Test
    void bustPinchOnTheKnitTopLeavesTheArmholeAlone() throws Exception {
        Job job = new Job("knit-top.svg", SeamChange.at("bust", -20));

        assertThat(job.gain("bust")).isCloseTo(-20, within(0.01));
        job.assertUntouched(EdgeRole.ARMHOLE);
    }

    @Test
    void pinchPastADartPointIsRefusedWithTheLargestAmountThatWorks() throws Exception {
        Pattern skirt = SvgFile.read(SAMPLES.resolve("skirt.svg")).pattern();

        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> SeamChange.at("hip", -900).apply(skirt));

        assertThat(refusal.code()).isEqualTo("dart-point-left-out");
        double largest = refusal.largest().orElseThrow();
        assertThat(largest).isBetween(-900.0, -100.0);
        assertThat(SeamChange.at("hip", largest).apply(skirt).pattern()).isNotEqualTo(skirt);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void writingWithoutAChangeGivesTheSameBytes(Path sample) throws Exception {
        SvgFile file = SvgFile.read(sample);

        assertThat(file.marked()).isTrue();
        assertThat(file.findings()).isEmpty();
        assertThat(file.write(file.pattern())).isEqualTo(Files.readAllBytes(sample));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void samplesPassTheirOwnChecks(Path sample) throws Exception {
        Pattern pattern = SvgFile.read(sample).pattern();
        GarmentMeasures measures = Measures.of(pattern);

        assertThat(measures.findings()).isEmpty();
        assertThat(Checks.of(pattern, measures, EaseTables.standard())).noneMatch(f -> f.severity() == Severity.FAULT);
    }

    static Stream<Path> samples() throws Exception {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.filter(f -> f.toString().endsWith(".svg")).sorted().toList().stream();
        }
    }

    /** A change made to a sample and read back from the written bytes. */
    private static final class Job {
        private final Pattern before;
        private final Pattern after;
        private final GarmentMeasures was;
        private final GarmentMeasures is;

        Job(String sample, Alteration change) throws Exception {
            SvgFile file = SvgFile.read(SAMPLES.resolve(sample));
            before = file.pattern();
            Altered altered = change.apply(before);
            after = SvgFile.read(file.write(altered.pattern()), "written " + sample)
                    .pattern();
            was = Measures.of(before);
            is = Measures.of(after);
        }

        double gain(String level) {
            return girth(is, level) - girth(was, level);
        }

        private static double girth(GarmentMeasures measures, String level) {
            return measures.girths().stream()
                    .filter(g -> g.level().name().equals(level))
                    .findFirst()
                    .orElseThrow()
                    .finished();
        }

        /** Every edge of the role has exactly the segments it had, to the last bit, after the trip through the file. */
        void assertUntouched(EdgeRole role) {
            int seen = 0;
            for (Piece piece : before.pieces()) {
                for (Edge edge : piece.edges()) {
                    if (edge.role() == role) {
                        Piece now = after.piece(piece.id()).orElseThrow();
                        Edge same = now.edge(edge.name()).orElseThrow();
                        List<Segment> had = edge.on(piece.outline()).segments();
                        assertThat(same.on(now.outline()).segments())
                                .as(piece.name() + "/" + edge.name())
                                .isEqualTo(had);
                        seen++;
                    }
                }
            }
            assertThat(seen).as("edges of role " + role).isPositive();
        }

        void assertDartsUntouched() {
            for (Piece piece : before.pieces()) {
                assertThat(after.piece(piece.id()).orElseThrow().darts()).isEqualTo(piece.darts());
            }
        }

        List<Finding> drifts() {
            return Checks.compare(before, was, after, is, EaseTables.standard()).stream()
                    .filter(f -> f.code().startsWith("mate"))
                    .toList();
        }
    }
}
