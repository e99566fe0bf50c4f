package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.mark.MateEdits;
import easewright.measure.Cutting;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FollowUpTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @Test
    void aWiderWaistAsksForALongerWaistbandAndTakingItMakesItFit() throws Exception {
        session.open(OpenedSample.skirt());
        assertThat(FollowUp.isAsked(session.desk())).isFalse();
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        session.keep();
        assertThat(FollowUp.isAsked(session.desk())).isTrue();
        List<FollowUp> offers = FollowUp.of(session.desk());
        assertThat(offers).isNotEmpty();
        assertThat(offers.get(0).words()).doesNotContain("editor.").doesNotContain("{");
        assertThat(offers.get(0).words())
                .startsWith("Seam \u201cwaistband\u201d is 2\u00a0cm too long on Front and Back. To make it fit: ");
        assertThat(NoLongerFits.words(session.desk(), offers.subList(0, 1)))
                .isEqualTo("Waistband no longer fits: 2\u00a0cm\u00a0too\u00a0short.");
        assertThat(Notes.of(session.desk()))
                .as("one fault has one sign")
                .filteredOn(n -> n.seam().equals(Optional.of("waistband")))
                .extracting(Notes.Note::severity)
                .containsExactly(NoLongerFits.severity(session.desk(), offers.subList(0, 1)))
                .containsExactly(Severity.FAULT);
        double drifted = worstDrift();
        assertThat(drifted).isGreaterThan(5);
        session.edit(offers.get(0).presses().get(0).result());
        assertThat(worstDrift()).isCloseTo(0, within(1.0));
        session.undo();
        assertThat(worstDrift()).isCloseTo(drifted, within(1e-9));
    }

    private void openKnit() throws Exception {
        session.open(OpenedSample.of("knit-top"));
        session.chooseLevel("hip");
    }

    /** More at the back alone, of a garment whose sides were alike. */
    private void widenTheBackAlone(double mm) {
        EdgeRef front = session.desk().holds().stream()
                .map(Hold::edge)
                .filter(e -> session.desk()
                        .pattern()
                        .piece(e.piece())
                        .orElseThrow()
                        .name()
                        .contains("ront"))
                .findFirst()
                .orElseThrow();
        session.want(
                session.desk().wanted().orElseThrow().withLeftOut(Set.of(front)).withAmount(mm));
    }

    private double hip() {
        return session.desk().reading().measures().girth("hip").orElseThrow().finished();
    }

    @Test
    void aSeamChangedOnOneSideAloneIsOfferedTheOther() throws Exception {
        openKnit();
        double hip = hip();
        widenTheBackAlone(40);
        Effect.Line drifted = Effect.of(session.desk()).lines().stream()
                .filter(l -> l.kind() == Effect.Kind.DRIFTED)
                .findFirst()
                .orElseThrow();
        assertThat(drifted.partners()).hasSize(1);
        assertThat(drifted.words()).doesNotContain("Once you keep");
        assertThat(Partners.words(session.desk(), drifted.partners())).isEqualTo("Choose Front, side too");
        Wanted alone = session.desk().wanted().orElseThrow();
        session.want(Partners.taking(alone, drifted.partners()));
        assertThat(session.desk().wanted().orElseThrow().leftOut()).isEmpty();
        assertThat(Effect.of(session.desk()).lines()).noneMatch(l -> l.kind() == Effect.Kind.DRIFTED);

        session.want(alone.withEven(true));
        assertThat(session.desk().refusedTrial().orElseThrow().refusal().code()).isEqualTo("even-one-side");
        assertThat(Partners.leftOut(session.desk())).isEqualTo(drifted.partners());
        session.want(alone);
        session.keep();

        assertThat(worstDrift()).isGreaterThan(Cutting.WORKS);
        FollowUp offer = FollowUp.of(session.desk()).stream()
                .filter(f -> f.seam().equals("side seam"))
                .findFirst()
                .orElseThrow();
        assertThat(offer.presses())
                .extracting(p -> p.label().key())
                .containsExactly("editor.follow.instead", "editor.follow.longer");
        assertThat(offer.words()).contains("Front, side").doesNotContain("{").doesNotContain("editor.");
        assertThat(offer.words())
                .as("which side to look at, and no sign to be made out")
                .containsPattern("^Seam .side seam.: it is [0-9.]+\u00a0cm too long on Back, since")
                .doesNotContain("+", "\u2212", " off");
        assertThat(Notes.of(session.desk()))
                .filteredOn(n -> n.seam().equals(Optional.of("side seam")))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.words()).doesNotContain("True the seam");
                    assertThat(Notes.pointed(session.desk(), "side seam")
                                    .orElseThrow()
                                    .lines())
                            .hasSizeGreaterThan(1);
                });
        session.edit(offer.presses().get(0).result());
        assertThat(worstDrift()).isLessThanOrEqualTo(Cutting.SAME);
        assertThat(hip()).as("the same amount in all").isCloseTo(hip + 40, within(0.01));
        assertThat(session.desk().pattern().changes()).hasSize(1);
        assertThat(FollowUp.of(session.desk())).isEmpty();
    }

    /** At its seam with the front, which is left out. */
    private void widenTheBackOnTheLeft() {
        EdgeRef front = session.desk().holds().stream()
                .map(Hold::edge)
                .filter(e -> e.piece().contains("front"))
                .findFirst()
                .orElseThrow();
        session.want(session.desk()
                .wanted()
                .orElseThrow()
                .withLeftOut(Set.of(front))
                .withSide(Side.LEFT)
                .withAmount(40));
    }

    /** On one side of the garment alone, too: shared there, or the other piece matched there. */
    @Test
    void aSeamChangedOnOneSideOfTheGarmentIsOfferedTheOtherThere() throws Exception {
        openKnit();
        widenTheBackOnTheLeft();
        assertThat(Effect.of(session.desk()).lines())
                .as("a seam that is parted by the change itself drifts as any")
                .anySatisfy(l -> {
                    assertThat(l.kind()).isEqualTo(Effect.Kind.DRIFTED);
                    assertThat(l.words()).contains("side seam left");
                })
                .noneMatch(l -> l.words().contains("side seam right"));
        assertThat(session.desk().shownTrial().orElseThrow().findings())
                .anySatisfy(f -> assertThat(f.code()).isEqualTo("mate-drifted"));
        session.keep();
        assertThat(worstDrift()).isGreaterThan(Cutting.WORKS);
        FollowUp offer = FollowUp.of(session.desk()).stream()
                .filter(f -> f.seam().equals("side seam left"))
                .findFirst()
                .orElseThrow();
        assertThat(offer.presses())
                .extracting(p -> p.label().key())
                .as("made in another way, or matched by what was not changed")
                .containsExactly("editor.follow.instead", "editor.follow.longer");
        assertThat(offer.words()).contains("Front, side");
        for (FollowUp.Press press : offer.presses()) {
            session.tryOut(press);
            assertThat(session.kept())
                    .as("what was kept before is said no more")
                    .isEmpty();
            session.keep();
            assertThat(worstDrift()).isLessThanOrEqualTo(Cutting.SAME);
            assertThat(FollowUp.of(session.desk())).isEmpty();
            assertThat(session.desk().pattern().pieces())
                    .extracting(p -> p.name())
                    .contains("Front left", "Front right");
            session.undo();
        }
    }

    /** A seam that a change has parted is found again under the name that it was given since. */
    @Test
    void aPartedSeamThatWasNamedAnewKeepsItsNameAndItsOffer() throws Exception {
        openKnit();
        widenTheBackOnTheLeft();
        session.keep();
        session.edit(MateEdits.rename(session.desk().pattern(), "side seam left", "near side"));
        FollowUp offer = FollowUp.of(session.desk()).get(0);
        assertThat(offer.seam()).isEqualTo("near side");
        assertThat(offer.presses().get(0).label().key()).isEqualTo("editor.follow.instead");
        session.edit(offer.presses().get(0).result());
        assertThat(worstDrift()).isLessThanOrEqualTo(Cutting.SAME);
        Recasting.on(session, Course.of(session.desk()).withAmount(0, 30));
        assertThat(session.desk().pattern().mates())
                .extracting(Mate::name)
                .contains("near side", "side seam right")
                .doesNotContain("side seam left");
    }

    /** Front and back of one slant fit, and so there is nothing to be done otherwise. */
    @Test
    void nothingIsOfferedWhereSeamsFit() throws Exception {
        openKnit();
        session.want(session.desk().wanted().orElseThrow().withAmount(40));
        session.keep();
        assertThat(FollowUp.of(session.desk())).isEmpty();
    }

    private double worstDrift() {
        return session.desk().reading().measures().mates().stream()
                .mapToDouble(m -> Math.abs(m.drift()))
                .max()
                .orElseThrow();
    }
}
