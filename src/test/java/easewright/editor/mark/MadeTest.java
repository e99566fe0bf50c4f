package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.text.LengthUnit;
import easewright.text.Words;
import org.junit.jupiter.api.Test;

class MadeTest {
    private static String words(Pattern before, Pattern after) {
        return new Made(before, after)
                .words(after, Words.english(LengthUnit.CM))
                .orElse("")
                .replace('\u00a0', ' ');
    }

    @Test
    void onlyPiecesOnWhichSomethingWasMadeAreCounted() throws Exception {
        Pattern bare = Bare.twoPieces().session.desk().pattern();
        Pattern cut = bare.withPieces(bare.pieces().stream()
                .map(p -> p.id().equals("front") ? p.toBuilder().cut(2, false).build() : p)
                .toList());
        assertThat(words(bare, cut)).startsWith("Marks made: pieces 1.");
        Pattern edged = EdgeEdits.split(cut, "back", new Point(400, 100));
        assertThat(words(bare, edged)).startsWith("Marks made: pieces 2.");
        assertThat(words(cut, edged)).startsWith("Marks made: pieces 1.");
        Pattern level = LevelEdits.add(edged, "hip", LevelKind.HIP);
        assertThat(words(edged, level)).startsWith("Marks made: levels 1.");
        assertThat(words(edged, edged)).isEmpty();
    }
}
