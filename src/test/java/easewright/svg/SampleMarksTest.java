package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Draft;
import easewright.draft.Garment;
import easewright.draft.Samples;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sample garments, marked, through a file and back. */
class SampleMarksTest {
    static List<Garment> garments() {
        return Samples.drafts().stream().map(Draft::draft).toList();
    }

    @ParameterizedTest
    @MethodSource("garments")
    void marksOfASampleComeBackEqual(Garment garment) throws SvgProblem {
        SvgFile file = SvgFile.read(Samples.svg(garment).getBytes(StandardCharsets.UTF_8), garment.id());
        Pattern wanted = garment.pattern().withScale(file.pattern().scale());
        byte[] written = file.write(wanted);
        SvgFile again = SvgFile.read(written, garment.id());
        assertThat(again.findings()).isEmpty();
        assertThat(again.write(again.pattern())).isEqualTo(written);
        assertThat(again.pattern().pieces().stream()
                        .mapToInt(p -> p.edges().size())
                        .sum())
                .isEqualTo(
                        wanted.pieces().stream().mapToInt(p -> p.edges().size()).sum());
        for (int corner : new int[] {0, 1, 2}) {
            Pattern moved = SvgFileTest.moved(again.pattern(), corner, new Point(0.3, -0.2));
            SvgFile after = SvgFile.read(again.write(moved), garment.id());
            assertThat(after.pattern()
                            .pieces()
                            .subList(1, after.pattern().pieces().size()))
                    .isEqualTo(moved.pieces().subList(1, moved.pieces().size()));
        }
    }
}
