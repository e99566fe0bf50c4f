package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.suggest.Suggestions;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

    /** What is not marked yet is gone to first; where nothing is missing, to the first part, to be looked over. */
    @Test
    void onceSuggestionsAreTakenWhatIsMissingIsGoneTo() throws Exception {
        Bare bare = Bare.skirt();
        Pattern before = bare.session.desk().pattern();
        Made made = bare.marker.suggesting().accept().orElseThrow();
        Pattern marked = bare.session.desk().pattern();
        assertThat(MarkProgress.afterSuggestions(bare.marker.state(), marked)).isEqualTo(MarkState.Step.PIECES);
        assertThat(MarkProgress.afterSuggestions(bare.marker.state(), marked.withMates(List.of())))
                .isEqualTo(MarkState.Step.SEAMS);
        assertThat(made.before()).isEqualTo(before);
        assertThat(made.words(marked, bare.session.desk().words()).orElseThrow())
                .startsWith("Marks made: pieces\u00a0" + marked.pieces().size() + ", ")
                .contains("seams\u00a0" + marked.mates().size());
        assertThat(made.words(before, bare.session.desk().words()))
                .as("once something else is done")
                .isEmpty();
    }

    /** A tick says that nothing is missing or off: not where a seam stands in red below it. */
    @Test
    void aSeamThatIsOffTakesItsTick() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        assertThat(MarkProgress.isRight(MarkState.Step.SEAMS, MarkState.OFF, session.desk()))
                .isTrue();
        Mate mate = session.desk().pattern().mates().get(0);
        Mate off = new Mate(mate.name(), mate.first(), mate.second(), mate.declaredEase() + 6);
        session.edit(session.desk().pattern().withMates(List.of(off)));
        assertThat(SeamsView.of(session.desk()).seams()).noneMatch(SeamsView.Seam::fits);
        assertThat(MarkProgress.isDone(
                        MarkState.Step.SEAMS, MarkState.OFF, session.desk().pattern()))
                .isTrue();
        assertThat(MarkProgress.isRight(MarkState.Step.SEAMS, MarkState.OFF, session.desk()))
                .isFalse();
    }
}
