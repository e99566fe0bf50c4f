package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What is seen and told of one change in several sizes of a nest, and what it asks for in each. */
class AlsoInToldTest extends NestAtWork {
    /** The pieces that will change are clear on the table at once, and told with their widths. */
    @Test
    void whatIsTickedIsSeenOnTheTableAndInTheSheet() {
        also("14");
        assertThat(clear()).containsExactlyInAnyOrder("10", "14");
        want(w -> w.withAmount(24));
        assertThat(new TableScenes()
                        .of(session.desk()).pieces().stream()
                                .filter(p -> !p.moved().isEmpty())
                                .map(p -> p.piece().name()))
                .containsExactly("Back 10", "Front 10", "Back 14", "Front 14");
        EaseRow row = EasePage.of(session.desk()).rows().get(1);
        assertThat(row.verdict(session.desk().words())).endsWith("in 10 and 14");
        assertThat(row.brief(session.desk().words()))
                .as("the verdict tells of both")
                .startsWith("7.4\u00a0cm is ")
                .isEqualTo(row.brief());
        assertThat(row.told(session.desk().words())).contains("Size 14: garment 112.8\u00a0cm, ease 7.4\u00a0cm.");
        assertThat(HereWords.outcome(session.desk())).contains("The same in each of these sizes.");
        assertThat(HereWords.title(session.desk())).endsWith("in 2 sizes");
        assertThat(Effect.of(session.desk()).lines().get(0).words())
                .isEqualTo("Moved: Back side, hem longer; Front side, hem longer.");
        assertThat(Effect.of(session.desk()).lines().get(1).words()).contains("all other sizes");
        also();
        assertThat(clear()).containsExactly("10");
        assertThat(EasePage.of(session.desk()).rows().get(1).others()).isEmpty();
    }

    private Set<String> clear() {
        return new TreeSet<>(new TableScenes()
                .of(session.desk()).pieces().stream()
                        .filter(p -> !p.aside())
                        .flatMap(p -> p.piece().size().stream())
                        .toList());
    }

    @Test
    void whereSizesComeOutUnlikeEachIsTold() {
        session.chooseSize("14");
        want(w -> w.withAmount(10));
        session.keep();
        session.chooseSize("10");
        also("12", "14");
        want(w -> w.withAmount(20));
        assertThat(HereWords.outcome(session.desk()))
                .contains("hip, sizes 10 and 12: ease from 5\u00a0cm to 7\u00a0cm.")
                .contains("hip, size 14: ease from 6\u00a0cm to 8\u00a0cm.");
        assertThat(EasePage.of(session.desk())
                        .rows()
                        .get(1)
                        .brief(session.desk().words()))
                .contains("Ease in size 12: 7\u00a0cm, in size 14: 8\u00a0cm.");
    }

    /** Both sides of a seam change unlike where one is left out, in every size. */
    @Test
    void whatDriftsIsFoundInEverySize() {
        also("14");
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))).withAmount(60));
        assertThat(session.desk().shownTrial().orElseThrow().findings())
                .filteredOn(f -> f.code().startsWith("mate-drifted"))
                .extracting(f -> f.values().get("size"))
                .containsExactly("10", "14");
        assertThat(Effect.of(session.desk()).lines())
                .extracting(Effect.Line::words)
                .anyMatch(l -> l.contains("side seam, size 10"))
                .anyMatch(l -> l.contains("side seam, size 14"));
        assertThat(PatternPart.sizes(session.desk().shown())).isEqualTo(SIZES);
    }

    /** What is offered to make a seam fit makes the change in another way in every size. */
    @Test
    void whatIsMadeOtherwiseIsMadeSoInEverySize() {
        also("14");
        want(w -> w.withLeftOut(Set.of(EdgeRef.of("skirt-front-10", "side"))).withAmount(60));
        session.keep();
        session.tryOut(FollowUp.of(session.desk()).stream()
                .flatMap(f -> f.presses().stream())
                .filter(p -> p.label().equals(new Said("editor.follow.instead", Map.of())))
                .findFirst()
                .orElseThrow());
        assertThat(session.desk().sizesTaking()).containsExactly("10", "14");
        session.keep();
        assertThat(Course.of(session.desk()).lines())
                .singleElement()
                .matches(l -> l.words().startsWith("In sizes 10 and 14: hip: +6"));
        assertThat(session.desk().pattern().changes())
                .extracting(n -> n.settings().get("edge.2"))
                .containsExactly("skirt-front-10/side", "skirt-front-14/side");
        assertThat(Measures.of(session.desk().pattern()).mates())
                .as("every seam fits again")
                .allMatch(m -> Math.abs(m.drift()) < 1);
    }

    /** What a change in one size asks for does not hide that the same seam is off in another, where it was drawn so. */
    @Test
    void aSeamIsCaredForInEachSize() {
        Pattern pattern = session.desk().pattern();
        session.edit(pattern.withMates(pattern.mates().stream()
                .map(m -> m.name().equals("waistband") ? new Mate(m.name(), m.first(), m.second(), 30) : m)
                .toList()));
        session.chooseSize("14");
        session.chooseLevel("waist");
        want(w -> w.withAmount(60));
        session.keep();
        session.chooseSize("10");
        assertThat(FollowUp.of(session.desk()))
                .filteredOn(f -> f.seam().equals("waistband"))
                .extracting(f -> f.size().orElseThrow())
                .containsExactly("14", "10");
    }

    @Test
    void theOtherSizeIsNamedInTheComparison() {
        want(w -> w.withAmount(20));
        SizeWords compared = SizeWords.of(session.desk());
        assertThat(compared.other()).isEqualTo("Size 12");
        assertThat(compared.lines()).allMatch(l -> l.said().contains(" Size 12: "));
    }

    /** The heading has no room for many names; what is heard has. */
    @Test
    void manySizesAreCountedInTheHeading() {
        Pattern nest = session.desk().pattern();
        List<Piece> pieces = new ArrayList<>(nest.pieces());
        for (String size : List.of("16", "18")) {
            nest.pieces().stream()
                    .filter(p -> p.size().equals(Optional.of("14")))
                    .map(p -> p.toBuilder()
                            .id(p.id() + "-" + size)
                            .name(p.plainName() + " " + size)
                            .size(Optional.of(size))
                            .riders(List.of())
                            .build())
                    .forEach(pieces::add);
        }
        session.edit(nest.withPieces(pieces));
        also("12", "14", "16", "18");
        assertThat(HereWords.title(session.desk())).endsWith("in 5 sizes");
        assertThat(HereWords.amount(session.desk())).endsWith("in sizes 10, 12, 14, 16 and 18");
    }
}
