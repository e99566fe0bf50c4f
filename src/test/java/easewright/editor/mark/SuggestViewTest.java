package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.suggest.Suggestion;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SuggestViewTest {
    private static SuggestView view(Bare bare) {
        return SuggestView.of(
                bare.session.desk(), bare.marker.suggesting().ready().orElseThrow(), bare.marker.state());
    }

    @Test
    void everythingIsInWordsPieceByPieceWithItsReason() throws SvgProblem {
        Bare bare = Bare.skirt();
        SuggestView view = view(bare);
        assertThat(view.groups())
                .extracting(SuggestView.Group::title)
                .containsExactly("Back", "Front", "Waistband", "All pieces together");
        assertThat(view.taken())
                .isEqualTo(bare.marker.suggesting().ready().orElseThrow().all().size());
        for (SuggestView.Group group : view.groups()) {
            for (SuggestView.Row row : group.rows()) {
                assertThat(row.what())
                        .doesNotContain("suggestion.")
                        .doesNotContain("{")
                        .isNotBlank();
                assertThat(row.why())
                        .doesNotContain("reason.")
                        .doesNotContain("{")
                        .isNotBlank();
            }
        }
    }

    @Test
    void nothingIsDoneUntilItIsAccepted() throws SvgProblem {
        Bare bare = Bare.skirt();
        Pattern before = bare.session.desk().pattern();
        view(bare);
        assertThat(bare.session.desk().pattern()).isSameAs(before);
        bare.marker.suggesting().accept();
        assertThat(bare.piece("Back").darts()).hasSize(2);
        assertThat(view(bare).groups()).isEmpty();
        bare.session.undo();
        assertThat(bare.session.desk().pattern()).isEqualTo(before);
    }

    @Test
    void whatIsUntickedIsLeftOut() throws SvgProblem {
        Bare bare = Bare.skirt();
        String dart = bare.marker.suggesting().ready().orElseThrow().all().stream()
                .filter(s -> s.kind() == Suggestion.Kind.DART)
                .map(Suggestion::key)
                .findFirst()
                .orElseThrow();
        bare.marker.suggesting().tick(dart, false);
        assertThat(view(bare).groups().get(0).rows())
                .filteredOn(r -> !r.taken())
                .hasSize(1);
        bare.marker.suggesting().accept();
        assertThat(bare.piece("Back").darts()).hasSize(1);
        bare.session.undo();
        bare.marker.suggesting().tickAll(false);
        assertThat(view(bare).taken()).isZero();
        assertThat(bare.marker.suggesting().ready().orElseThrow().outcome())
                .isEqualTo(bare.session.desk().pattern());
        bare.marker.suggesting().tickAll(true);
        assertThat(view(bare).taken()).isPositive();
    }

    @Test
    void onePieceAlone() throws SvgProblem {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept(view(bare).groups().get(1));
        Piece front = bare.piece("Front");
        assertThat(front.onFold()).isTrue();
        assertThat(front.edges()).hasSize(4);
        assertThat(front.darts()).hasSize(1);
        assertThat(bare.session.desk().pattern().pieces().get(0).edges()).isEmpty();
        assertThat(bare.session.desk().pattern().levels()).isEmpty();
        assertThat(view(bare).groups()).extracting(SuggestView.Group::title).doesNotContain("Front");
    }

    @Test
    void theTableShowsWhatASuggestionSpeaksOf() throws SvgProblem {
        Bare bare = Bare.skirt();
        Suggestion grain = bare.marker.suggesting().ready().orElseThrow().all().stream()
                .filter(s -> s.kind() == Suggestion.Kind.GRAIN)
                .findFirst()
                .orElseThrow();
        bare.marker.suggesting().light(grain.key());
        assertThat(MarkScenes.of(
                                bare.session.desk(),
                                bare.marker.sheet(),
                                bare.marker.lines(),
                                bare.marker.state(),
                                Optional.of(bare.marker.suggesting().ready().orElseThrow()))
                        .strong())
                .isEqualTo(grain.shown());
    }

    @Test
    void whatWasAcceptedIsSavedAndReadAgainAsTheSame() throws SvgProblem {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept();
        Pattern marked = bare.session.desk().pattern();
        Pattern again = SvgFile.read(bare.svg.write(marked), "again.svg").pattern();
        assertThat(again.pieces()).isEqualTo(marked.pieces());
        assertThat(again).isEqualTo(marked);
    }

    /** What is unticked takes others with it and may bring new ones; none of that moves what stands in the list. */
    @Test
    void whateverIsUntickedTheListKeepsItsOrder() throws Exception {
        Random random = new Random(20261127);
        int gone = 0;
        for (int i = 0; i < 6; i++) {
            Bare bare = Bare.of(Files.readString(Path.of("src/test/resources/bare/yoke-blouse.svg")));
            SuggestView shown = view(bare);
            for (int k = 0; k < 4; k++) {
                List<String> before = keys(shown);
                String key = before.get(random.nextInt(before.size()));
                bare.marker.suggesting().tick(key, random.nextInt(3) == 0);
                SuggestView fresh = view(bare);
                shown = fresh.inPlacesOf(shown, "gone");
                assertThat(keys(shown)).containsSubsequence(before).containsAll(keys(fresh));
                assertThat(shown.taken()).isEqualTo(fresh.taken());
                List<String> offered = keys(fresh);
                for (SuggestView.Group group : shown.groups()) {
                    for (SuggestView.Row row : group.rows()) {
                        assertThat(row.offered()).isEqualTo(offered.contains(row.key()));
                        assertThat(row.taken() && !row.offered()).isFalse();
                        gone += row.offered() ? 0 : 1;
                    }
                }
            }
        }
        assertThat(gone).isPositive();
    }

    private static List<String> keys(SuggestView view) {
        return view.groups().stream()
                .flatMap(g -> g.rows().stream().map(SuggestView.Row::key))
                .toList();
    }
}
