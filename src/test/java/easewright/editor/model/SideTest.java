package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.mark.EdgeEdits;
import easewright.editor.mark.SeamsView;
import easewright.measure.Girth;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import easewright.pattern.SidePair;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A change on one side, tried and kept in the editor. */
class SideTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private void open(int sample, String level) throws Exception {
        Sample garment = Sample.all().get(sample);
        session.open(Opened.of(new OpenFile(garment.read(), Optional.empty(), garment.fileName())));
        session.chooseLevel(level);
    }

    private Girth hip() {
        return session.desk().shownReading().measures().girth("hip").orElseThrow();
    }

    private Wanted wanted() {
        return session.desk().wanted().orElseThrow();
    }

    @Test
    void oneHipIsTriedKeptAndUndone() throws Exception {
        open(0, "hip");
        Pattern before = session.desk().pattern();
        double was = hip().finished();
        session.want(wanted().withSide(Side.LEFT).withAmount(20));
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(HereWords.outcome(session.desk()))
                .startsWith("Left side only.")
                .contains("2\u00a0sewn seam edges move by +1\u00a0cm each")
                .contains("Left 54.5\u00a0cm, right 52.5\u00a0cm");
        session.keep();
        assertThat(hip().on(Side.LEFT)).isCloseTo(was / 2 + 20, within(1e-6));
        assertThat(hip().on(Side.RIGHT)).isCloseTo(was / 2, within(1e-6));
        session.want(wanted().withSide(Side.LEFT)
                .withLeftOut(Set.of(EdgeRef.of("skirt-front-left", "side")))
                .withAmount(10));
        session.keep();
        assertThat(hip().on(Side.LEFT)).isCloseTo(was / 2 + 30, within(1e-6));
        session.undo();
        session.undo();
        assertThat(session.desk().pattern()).isSameAs(before);
    }

    /** Two halves that were one on the fold are joined there, but nothing is sewn. */
    @Test
    void theFoldThatWasIsNoSeam() throws Exception {
        open(0, "hip");
        int seams = SeamsView.of(session.desk()).seams().size();
        session.want(wanted().withSide(Side.LEFT).withAmount(20));
        session.keep();
        Pattern parted = session.desk().pattern();
        assertThat(parted.mates()).filteredOn(m -> SidePair.isFold(parted, m)).hasSize(1);
        assertThat(SeamsView.of(session.desk()).seams())
                .hasSizeGreaterThan(seams)
                .noneMatch(s -> s.name().contains("fold"));
        // With an allowance it is one: the garment is to have a seam there.
        Mate fold = parted.mates().stream()
                .filter(m -> SidePair.isFold(parted, m))
                .findFirst()
                .orElseThrow();
        Pattern sewn = parted;
        for (EdgeRef ref : List.of(fold.first().get(0), fold.second().get(0))) {
            sewn = EdgeEdits.allowance(sewn, ref.piece(), ref.edge(), OptionalDouble.of(15));
        }
        session.edit(sewn);
        assertThat(SeamsView.of(session.desk()).seams())
                .extracting(SeamsView.Seam::name)
                .contains(fold.name());
    }

    /** What was told in the trial is to be seen as long as it is so. */
    @Test
    void onceKeptTheSidesAndHowThePiecesAreCutStayTold() throws Exception {
        open(0, "hip");
        assertThat(told()).noneMatch(t -> t.contains("right 5"));
        assertThat(notes()).noneMatch(n -> n.contains("printed side up"));
        session.want(wanted().withSide(Side.LEFT).withAmount(20));
        session.keep();
        assertThat(told()).hasSize(2).allMatch(t -> t.toLowerCase(Locale.ROOT).contains("left 54.5 cm, right 52.5 cm"));
        assertThat(notes())
                .anyMatch(n -> n.contains("Front is no longer cut on the fold"))
                .anyMatch(n -> n.contains("Back is now two"));
        session.undo();
        assertThat(told()).noneMatch(t -> t.contains("right 5"));
        assertThat(notes()).noneMatch(n -> n.contains("printed side up"));
    }

    /** What the page Ease and the rings say of the hip. */
    private List<String> told() {
        List<String> told = new ArrayList<>();
        EasePage.of(session.desk()).rows().stream()
                .filter(r -> r.name().equals("hip"))
                .forEach(r -> told.add(r.verdict()));
        Rings.of(session.desk().reading(), session.desk().words()).rings().stream()
                .filter(r -> r.level().equals("hip"))
                .forEach(r -> told.add(r.words()));
        return told.stream().map(t -> t.replace('\u00a0', ' ')).toList();
    }

    private List<String> notes() {
        return Notes.of(session.desk()).stream().map(Notes.Note::words).toList();
    }

    @Test
    void aLimbWithTwoPiecesAsksForItsSide() throws Exception {
        open(1, "upper arm");
        session.want(wanted().withSide(Side.RIGHT).withAmount(6));
        session.keep();
        assertThat(session.desk().reading().sheet().lines())
                .extracting(l -> l.name())
                .contains("upper arm left", "upper arm right");
        session.want(wanted().withSide(Side.BOTH).withAmount(6));
        assertThat(session.desk().refusedTrial().orElseThrow().refusal().code()).isEqualTo("side-needed");
        session.want(wanted().withSide(Side.LEFT).withAmount(6));
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(HereWords.outcome(session.desk())).contains("upper arm");
    }

    /** Beside a page that is read there is one line for it, which says the side as well. */
    @Test
    void theShortLineSaysTheSide() throws Exception {
        open(0, "hip");
        session.want(wanted().withSide(Side.LEFT).withAmount(20));
        assertThat(HereWords.brief(session.desk()))
                .hasValue("hip: ease 5\u00a0cm \u2192 7\u00a0cm, to the hem, left only");
    }
}
