package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.text.LengthUnit;
import org.junit.jupiter.api.Test;

/** Seams that fitted until a change was made on one side of them: what is offered keeps the change or takes it back. */
class ChangedSeamOffersTest {
    private final Session session = new Session(LengthUnit.CM, false);

    /** A bodice with a neck and an armhole above its waist, and a skirt sewn to it, both of 200 mm on the fold. */
    private void openADress() throws Exception {
        String drawn = "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='1000mm' viewBox='0 0 800 1000'>"
                + "<path id='up' d='M0,40 L70,0 L190,20 L220,120 L200,400 L110,400 L100,300 L90,400 L0,400 Z'/>"
                + "<path id='down' d='M0,420 H180 L210,600 V900 H0 Z'/>"
                + "<metadata><marks xmlns='urn:easewright:marks:1'><scale across='1' down='1' proof='physical-size'/>"
                + "<level name='waist' kind='waist'/>"
                + "<piece ref='up' name='Bodice' line='stitching' allowance='0' cut='1' fold='yes' box='0 0 220 400'>"
                + "<edge name='neck' role='neck' from='0 40' via='35 20' to='70 0'/>"
                + "<edge name='shoulder' role='shoulder' from='70 0' via='130 10' to='190 20'/>"
                + "<edge name='armhole' role='armhole' from='190 20' via='205 70' to='220 120'/>"
                + "<edge name='side' role='seam' from='220 120' via='210 260' to='200 400'/>"
                + "<edge name='waist' role='waist' from='200 400' via='150 400' to='0 400'/>"
                + "<edge name='fold' role='fold' from='0 400' via='0 200' to='0 40'/>"
                + "<dart name='dart' edge='waist' mouth='110 400' point='100 300' mouth2='90 400'/></piece>"
                + "<piece ref='down' name='Skirt' line='stitching' allowance='0' cut='1' fold='yes' box='0 420 210 900'>"
                + "<edge name='waist' role='waist' from='0 420' via='100 420' to='180 420'/>"
                + "<edge name='side' role='seam' from='180 420' via='195 510' to='210 900'/>"
                + "<edge name='fold' role='fold' from='0 900' via='0 500' to='0 420'/>"
                + "<at level='waist' along='waist'/></piece>"
                + "<mate name='waist seam'><first piece='up' edge='waist'/><second piece='down' edge='waist'/></mate>"
                + "</marks></metadata></svg>";
        session.open(OpenedSample.drawn(drawn, "dress.svg"));
        session.chooseLevel("waist");
    }

    private void widenTheWaist(double mm) {
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        session.keep();
        assertThat(FollowUp.of(session.desk())).hasSize(1);
    }

    /** A bodice on a skirt: the waist of the skirt alone is made wider, and the seam had fitted before. */
    @Test
    void whatAChangeBroughtIsToldBesideIt() throws Exception {
        String drawn = "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='800mm' viewBox='0 0 800 800'>"
                + "<path id='up' d='M0,0 H200 V300 H0 Z'/><path id='down' d='M0,320 H200 V700 H0 Z'/>"
                + "<metadata><marks xmlns='urn:easewright:marks:1'><scale across='1' down='1' proof='physical-size'/>"
                + "<level name='waist' kind='waist'/>"
                + "<piece ref='up' name='Bodice' line='stitching' allowance='0' cut='1' fold='yes' box='0 0 200 300'>"
                + "<edge name='side' role='seam' from='200 0' via='200 150' to='200 300'/>"
                + "<edge name='waist' role='waist' from='200 300' via='100 300' to='0 300'/>"
                + "<edge name='fold' role='fold' from='0 300' via='0 150' to='0 0'/>"
                + "<at level='waist' along='waist' counts='no'/></piece>"
                + "<piece ref='down' name='Skirt' line='stitching' allowance='0' cut='1' fold='yes' box='0 320 200 700'>"
                + "<edge name='waist' role='waist' from='0 320' via='100 320' to='200 320'/>"
                + "<edge name='side' role='seam' from='200 320' via='200 500' to='200 700'/>"
                + "<edge name='fold' role='fold' from='0 700' via='0 500' to='0 320'/>"
                + "<at level='waist' along='waist'/></piece>"
                + "<mate name='waist seam'><first piece='up' edge='waist'/><second piece='down' edge='waist'/></mate>"
                + "</marks></metadata></svg>";
        session.open(OpenedSample.drawn(drawn, "dress.svg"));
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        session.keep();
        assertThat(session.desk().pattern().changes()).hasSize(1);
        assertThat(Offered.only(session.desk()).seam()).isEqualTo("waist seam");
        assertThat(Offered.only(session.desk()).presses()).isNotEmpty();
        assertThat(Offered.only(session.desk()).changed()).isTrue();
    }

    /** Who has widened one side wants it wider: what keeps that stands first, and what takes it back is last and says so. */
    @Test
    void whatKeepsAChangeIsOfferedBeforeWhatTakesItBack() throws Exception {
        openADress();
        widenTheWaist(20);
        assertThat(Offered.labels(session.desk()))
                .containsExactly(
                        "Lengthen Bodice, waist by 1 cm",
                        "Mark 1 cm to ease in",
                        "Take the change back here: shorten Skirt, waist by 1 cm");
        for (FollowUp.Press press : Offered.only(session.desk()).presses()) {
            session.tryOut(press);
            session.keep();
            assertThat(session.desk()
                            .reading()
                            .measures()
                            .mate("waist seam")
                            .orElseThrow()
                            .drift())
                    .isCloseTo(0, within(1e-6));
            session.undo();
        }
    }

    /** Too much to be eased in is gathered, if it was widened on purpose. */
    @Test
    void whatWasWidenedByMuchMayBeGathered() throws Exception {
        openADress();
        widenTheWaist(70);
        assertThat(Offered.labels(session.desk()))
                .contains("Mark 3.5 cm to gather")
                .last()
                .asString()
                .startsWith("Take the change back");
        assertThat(Offered.only(session.desk()).care())
                .contains("gathered, pleated or tucked")
                .doesNotContain("too much");
    }

    /** Evening makes both sides of a seam change alike; where one does not change at all, it says that it cannot. */
    @Test
    void eveningSaysWhyASeamStillDrifts() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20).withEven(true));
        String why = "it leaves out Waistband";
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(Effect.of(session.desk()).lines())
                .anySatisfy(l -> assertThat(l.words()).contains(why));
        session.want(session.desk().wanted().orElseThrow().withEven(false));
        assertThat(Effect.of(session.desk()).lines()).noneMatch(l -> l.words().contains(why));
    }
}
