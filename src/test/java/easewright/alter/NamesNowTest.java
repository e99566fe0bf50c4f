package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.pattern.Edge;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamesNowTest {
    private static Pattern sample(String name) throws Exception {
        return SvgFile.read(Samples.files().get(name + ".svg").getBytes(StandardCharsets.UTF_8), name)
                .pattern();
    }

    @ParameterizedTest
    @ValueSource(strings = {"skirt", "bodice", "trousers", "knit-top"})
    void whatWasRenamedHasItsNewNameInAnEarlierState(String name) throws Exception {
        Pattern then = sample(name);
        Pattern now = RenamingTest.allOtherwise(then);
        Pattern called = NamesNow.of(then, now);
        assertThat(called).isNotEqualTo(then);
        assertThat(called.pieces()).isEqualTo(now.pieces());
        assertThat(called.mates()).isEqualTo(now.mates());
        assertThat(NamesNow.of(then, then)).isSameAs(then);
    }

    /** With an edge more or less it cannot be told which is which: each keeps the name it had. */
    @Test
    void namesAreGivenOnlyWhereThePieceHasAsManyEdges() throws Exception {
        Pattern then = sample("skirt");
        Pattern renamed = RenamingTest.allOtherwise(then);
        Piece first = renamed.pieces().get(0);
        List<Edge> fewer = first.edges().subList(1, first.edges().size());
        Pattern called = NamesNow.of(then, renamed.withPiece(first.withEdges(fewer)));
        assertThat(called.pieces().get(0)).isEqualTo(then.pieces().get(0));
        assertThat(called.pieces().get(1)).isEqualTo(renamed.pieces().get(1));
    }
}
