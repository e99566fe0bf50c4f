package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Pattern;
import easewright.suggest.Suggestions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MarkProgressTest {
    @Test
    void aSkirtWithoutItsHipIsNotMarkedThrough() throws Exception {
        Bare bare = Bare.of(Files.readString(Path.of("src/test/resources/lines/dart-cut-in.svg")));
        Pattern all = Suggestions.of(bare.marker.sheet(), Set.of()).outcome();
        Pattern withoutHip =
                Suggestions.of(bare.marker.sheet(), Set.of("level hip")).outcome();
        assertThat(all.level("hip")).isPresent();
        assertThat(withoutHip.level("hip")).isEmpty();
        // The back dips at its centre; at the side seam both lie as far below the waist.
        assertThat(all.pieces().stream().flatMap(p -> p.level("hip").stream()))
                .extracting(l -> l.through().orElseThrow().y())
                .containsExactly(248.0, 248.0);
        assertThat(MarkProgress.isDone(MarkState.Step.LEVELS, MarkState.OFF, all))
                .isTrue();
        assertThat(MarkProgress.isDone(MarkState.Step.LEVELS, MarkState.OFF, withoutHip))
                .isFalse();
    }
}
