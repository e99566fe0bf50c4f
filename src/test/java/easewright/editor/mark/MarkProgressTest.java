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
        assertThat(MarkProgress.isDone(MarkState.Step.LEVELS, MarkState.OFF, all))
                .isTrue();
        assertThat(MarkProgress.isDone(MarkState.Step.LEVELS, MarkState.OFF, withoutHip))
                .isFalse();
    }
}
