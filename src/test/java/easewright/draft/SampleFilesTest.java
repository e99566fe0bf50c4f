package easewright.draft;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sample files read back as what was drafted. */
class SampleFilesTest {
    static Stream<Draft> drafts() {
        return Samples.drafts().stream();
    }

    private static byte[] bytes(Draft draft) throws SvgProblem {
        return Samples.svg(draft.draft()).getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void readBackAsDrafted(Draft draft) throws SvgProblem {
        Pattern drafted = draft.draft().pattern();
        SvgFile file = SvgFile.read(bytes(draft), "sample.svg");
        Pattern read = file.pattern();
        assertThat(file.marked()).isTrue();
        assertThat(file.findings()).isEmpty();
        // Notches on curves are kept to 0.0001 mm and snap back to the curve; all else is the same to the last bit.
        assertThat(read.withPieces(List.of())).isEqualTo(drafted.withPieces(List.of()));
        for (Piece piece : drafted.pieces()) {
            Piece same = read.piece(piece.id()).orElseThrow();
            assertThat(same.toBuilder().notches(piece.notches()).build()).isEqualTo(piece);
            for (int i = 0; i < piece.notches().size(); i++) {
                assertThat(same.notches()
                                .get(i)
                                .at()
                                .distance(piece.notches().get(i).at()))
                        .isLessThan(2e-4);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void writtenUnchangedIsByteIdentical(Draft draft) throws SvgProblem {
        byte[] bytes = bytes(draft);
        SvgFile file = SvgFile.read(bytes, "sample.svg");
        assertThat(file.write(file.pattern())).isEqualTo(bytes);
    }
}
