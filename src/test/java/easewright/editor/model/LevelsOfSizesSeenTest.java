package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.paint.TableScene;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where levels of more than one size are to be seen, each says of which it is. */
class LevelsOfSizesSeenTest {
    private final Session session = new Session(LengthUnit.INCH, false);
    private final TableScenes scenes = new TableScenes();

    @BeforeEach
    void openTheNest() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        session.open(Opened.of(new OpenFile(SvgFile.read(nest), Optional.of(nest), "skirt-sizes.svg")));
        session.chooseLevel("hip");
    }

    private List<TableScene.PieceSight> withLevels() {
        return scenes.of(session.desk()).pieces().stream()
                .filter(p -> !p.levels().isEmpty())
                .toList();
    }

    private static void assertSaid(TableScene.PieceSight sight) {
        String size = sight.piece().size().orElseThrow();
        assertThat(sight.levels()).allSatisfy(level -> {
            assertThat(level.label()).startsWith(level.level() + " " + size + ": ");
            assertThat(level.size()).contains(size);
        });
    }

    @Test
    void ofOneSizeAloneNothingIsSaid() {
        assertThat(withLevels())
                .hasSize(2)
                .allSatisfy(sight -> assertThat(sight.levels()).allSatisfy(level -> {
                    assertThat(level.size()).isEmpty();
                    assertThat(level.label()).startsWith(level.level() + " ").doesNotContain(":");
                }));
    }

    @Test
    void ofThoseTickedBesideItEachSaysItsSizeAndNoLongerOnceTheTickIsGone() {
        session.want(session.desk().wanted().orElseThrow().withAlsoIn(Set.of("14")));
        assertThat(withLevels()).hasSize(4).allSatisfy(LevelsOfSizesSeenTest::assertSaid);
        session.want(session.desk().wanted().orElseThrow().withAlsoIn(Set.of()));
        ofOneSizeAloneNothingIsSaid();
    }

    @Test
    void whileMarksAreMadeThoseOfAllSizesAreSeen() {
        scenes.forMarks(true, Optional.empty());
        assertThat(withLevels()).hasSize(6).allSatisfy(LevelsOfSizesSeenTest::assertSaid);
    }
}
