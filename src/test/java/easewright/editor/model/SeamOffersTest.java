package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.mark.SeamsView;
import easewright.measure.Measures;
import easewright.pattern.Severity;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A skirt whose front was drawn 8 mm shorter at the side than its back: ways out, tried before they are kept. */
class SeamOffersTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openDrawnUnequal() throws Exception {
        open("L400,722 L655,730", "400 722");
    }

    private void open(String line, String mark) throws Exception {
        String drawn = Files.readString(Path.of("sample-pieces/skirt.svg"))
                .replace("L400,730 L655,730", line)
                .replace("\"400 730\"", "\"" + mark + "\"")
                .replace("via=\"527.5 730\"", "via=\"527.5 726\"");
        SvgFile file = SvgFile.read(drawn.getBytes(StandardCharsets.UTF_8), "unequal.svg");
        session.open(Opened.of(new OpenFile(file, Optional.empty(), "unequal.svg")));
    }

    private FollowUp offer() {
        List<FollowUp> offers = FollowUp.of(session.desk());
        assertThat(offers).hasSize(1);
        return offers.get(0);
    }

    private List<String> labels() {
        return offer().presses().stream()
                .map(p -> p.label().in(session.desk().words()).replace('\u00a0', ' '))
                .toList();
    }

    private double drift() {
        return session.desk()
                .shownReading()
                .measures()
                .mate("side seam")
                .orElseThrow()
                .drift();
    }

    @Test
    void eachWayOutStandsOnItsPressWithItsFigure() {
        assertThat(offer().changed()).as("it was drawn so").isFalse();
        assertThat(offer().words().replace('\u00a0', ' '))
                .isEqualTo("Seam \u201cside seam\u201d does not fit: 60.79 cm on Front, 61.59 cm on Back.");
        assertThat(labels())
                .containsExactly(
                        "Lengthen Front, side by 0.8 cm", "Shorten Back, side by 0.8 cm", "Mark 0.8 cm to ease in");
        assertThat(offer().care().replace('\u00a0', ' '))
                .contains("The hem end gives way, as is common practice")
                .contains("up to 1.3 cm is usual");
        session.setUnit(LengthUnit.INCH);
        assertThat(labels())
                .as("what 23 15/16 in and 24 1/4 in differ by")
                .startsWith("Lengthen Front, side by 5/16 in");
    }

    @Test
    void whatIsPressedIsTriedAndDoneOnlyWhenKept() {
        for (FollowUp.Press press : offer().presses()) {
            double before = drift();
            int steps = session.desk().history().states().size();
            session.tryOut(press);
            Desk trying = session.desk();
            assertThat(trying.shownTrial()).isPresent();
            assertThat(trying.history().states()).hasSize(steps);
            assertThat(drift()).isCloseTo(0, within(1e-6));
            assertThat(HereWords.outcome(trying)).endsWith("No girth changes.").doesNotContain("editor.", "{");
            assertThat(Effect.of(trying).lines())
                    .anySatisfy(l -> {
                        assertThat(l.kind()).isEqualTo(Effect.Kind.FITS);
                        assertThat(l.words()).startsWith("Fits now: \u201cside seam\u201d, which was \u22120.8");
                    })
                    .noneMatch(l -> l.kind() == Effect.Kind.DRIFTED);
            session.undo();
            assertThat(session.desk().trial()).isEmpty();
            assertThat(drift()).isEqualTo(before);

            session.tryOut(press);
            session.keep();
            assertThat(session.desk().trial()).isEmpty();
            assertThat(drift()).isCloseTo(0, within(1e-6));
            assertThat(session.kept().orElseThrow().words(session.desk()))
                    .contains(press.tried().in(session.desk().words()))
                    .contains(press.isMark() ? "the page Marks" : "The page Changes");
            assertThat(session.desk().pattern().changes()).hasSize(press.isMark() ? 0 : 1);
            assertThat(FollowUp.of(session.desk())).isEmpty();
            session.undo();
            assertThat(drift()).isEqualTo(before);
        }
    }

    /** An amount that is begun takes the place of what was tried, and nothing of it is left. */
    @Test
    void anotherWishTakesThePlaceOfWhatIsTried() {
        session.tryOut(offer().presses().get(0));
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        assertThat(session.desk().shownTrial().orElseThrow().offer()).isEmpty();
        assertThat(drift()).isCloseTo(-8, within(0.5));
        session.leave();
        assertThat(session.desk().pattern().changes()).isEmpty();
    }

    /** A change that is kept is one like any other: it is saved, and can be switched off after opening the file again. */
    @Test
    void whatIsKeptCanBeTakenBackAfterTheFileIsOpenedAgain() throws Exception {
        double before = drift();
        session.tryOut(offer().presses().get(0));
        session.keep();
        byte[] written =
                session.desk().file().orElseThrow().svg().write(session.desk().pattern());
        session.open(Opened.of(new OpenFile(SvgFile.read(written, "again.svg"), Optional.empty(), "again.svg")));
        assertThat(drift()).isCloseTo(0, within(1e-3));
        session.recast(Course.of(session.desk()).switched(0, false));
        assertThat(drift()).isCloseTo(before, within(1e-3));
    }

    @Test
    void tooMuchToBeEasedInIsNotOfferedAsEase() throws Exception {
        open("L400,700 L655,730", "400 700");
        assertThat(labels()).containsExactly("Lengthen Front, side by 3 cm", "Shorten Back, side by 3 cm");
        assertThat(offer().care()).contains("too much to be eased in");
    }

    /** @param pairs what is drawn in the sample, each followed by what is drawn instead */
    private void openNest(String... pairs) throws Exception {
        String nest = Files.readString(Path.of("sample-pieces/skirt-sizes.svg"));
        for (int i = 0; i < pairs.length; i += 2) {
            assertThat(nest).contains(pairs[i]);
            nest = nest.replace(pairs[i], pairs[i + 1]);
        }
        SvgFile file = SvgFile.read(nest.getBytes(StandardCharsets.UTF_8), "nest.svg");
        session.open(Opened.of(new OpenFile(file, Optional.empty(), "nest.svg")));
    }

    /** One length to ease in is marked for all sizes, so it is offered where it is right in all of them. */
    @Test
    void easingInIsOfferedInANestWhereAllSizesDifferAlike() throws Exception {
        openNest("<mate name=\"waistband\" ease=\"10\">", "<mate name=\"waistband\">");
        assertThat(labels()).contains("Mark 1 cm to ease in");
        session.tryOut(offer().presses().stream()
                .filter(FollowUp.Press::isMark)
                .findFirst()
                .orElseThrow());
        session.keep();
        assertThat(Measures.of(session.desk().pattern()).mates())
                .filteredOn(walk -> walk.mate().name().equals("waistband"))
                .hasSize(3)
                .allSatisfy(walk -> assertThat(walk.drift()).isCloseTo(0, within(1e-2)));
        assertThat(FollowUp.of(session.desk())).isEmpty();
    }

    @Test
    void easingInIsNotOfferedInANestWhereOneSizeDiffers() throws Exception {
        openNest(
                "L394.475,730 L643.95,730", "L394.475,738 L643.95,730",
                "\"394.475 730\"", "\"394.475 738\"",
                "519.2125000000001 730", "519.2125 734");
        assertThat(labels()).isNotEmpty().noneMatch(l -> l.startsWith("Mark"));
        assertThat(offer().care()).contains("sizes differ by unequal lengths");
    }

    /** A difference of 1 mm is the same for cutting, and one of nothing is offered to nobody. */
    @Test
    void whatIsTheSameForCuttingIsNotOffered() throws Exception {
        open("L400,729 L655,730", "400 729");
        assertThat(FollowUp.isAsked(session.desk())).isFalse();
        assertThat(FollowUp.of(session.desk())).isEmpty();
        open("L400,728 L655,730", "400 728");
        assertThat(labels()).startsWith("Lengthen Front, side by 0.2 cm");
    }

    @Test
    void everySeamThatDoesNotFitHasAWayOut() {
        assertThat(Notes.of(session.desk()))
                .filteredOn(n -> n.severity() == Severity.FAULT && n.seam().isPresent())
                .isNotEmpty()
                .allSatisfy(n -> assertThat(FollowUp.of(session.desk()))
                        .extracting(FollowUp::seam)
                        .contains(n.seam().orElseThrow()));
    }

    /** "Take 0 cm instead" helps nobody. */
    @Test
    void anAmountThatIsShownAsNothingIsNotOffered() {
        Words cm = Words.english(LengthUnit.CM);
        Words inches = Words.english(LengthUnit.INCH);
        assertThat(Trial.Refused.shown(OptionalDouble.of(-0.04), cm)).isEmpty();
        assertThat(Trial.Refused.shown(OptionalDouble.of(-0.06), cm)).hasValue(-0.06);
        assertThat(Trial.Refused.shown(OptionalDouble.of(0.7), inches)).isEmpty();
        assertThat(Trial.Refused.shown(OptionalDouble.of(0.9), inches)).hasValue(0.9);
        assertThat(Trial.Refused.shown(OptionalDouble.empty(), cm)).isEmpty();
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
        SvgFile file = SvgFile.read(drawn.getBytes(StandardCharsets.UTF_8), "dress.svg");
        session.open(Opened.of(new OpenFile(file, Optional.empty(), "dress.svg")));
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        session.keep();
        assertThat(session.desk().pattern().changes()).hasSize(1);
        assertThat(offer().seam()).isEqualTo("waist seam");
        assertThat(offer().presses()).isNotEmpty();
        assertThat(offer().changed()).isTrue();
    }

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
        SvgFile file = SvgFile.read(drawn.getBytes(StandardCharsets.UTF_8), "dress.svg");
        session.open(Opened.of(new OpenFile(file, Optional.empty(), "dress.svg")));
        session.chooseLevel("waist");
    }

    private void widenTheWaist(double mm) {
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        session.keep();
        assertThat(FollowUp.of(session.desk())).hasSize(1);
    }

    /** Who has widened one side wants it wider: what keeps that stands first, and what takes it back is last and says so. */
    @Test
    void whatKeepsAChangeIsOfferedBeforeWhatTakesItBack() throws Exception {
        openADress();
        widenTheWaist(20);
        assertThat(labels())
                .containsExactly(
                        "Lengthen Bodice, waist by 1 cm",
                        "Mark 1 cm to ease in",
                        "Take the change back here: shorten Skirt, waist by 1 cm");
        for (FollowUp.Press press : offer().presses()) {
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
        assertThat(labels()).contains("Mark 3.5 cm to gather").last().asString().startsWith("Take the change back");
        assertThat(offer().care()).contains("gathered, pleated or tucked").doesNotContain("too much");
    }

    /** Evening makes both sides of a seam change alike; where one does not change at all, it says that it cannot. */
    @Test
    void eveningSaysWhyASeamStillDrifts() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20).withEven(true));
        String why = "Waistband does not change with it";
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(Effect.of(session.desk()).lines())
                .anySatisfy(l -> assertThat(l.words()).contains(why));
        session.want(session.desk().wanted().orElseThrow().withEven(false));
        assertThat(Effect.of(session.desk()).lines()).noneMatch(l -> l.words().contains(why));
    }

    /** The band goes on 3 cm beyond the waist, as bands with an underlap do: nobody eases that in. */
    @Test
    void whatABandIsLongerMayBeItsUnderlap() throws Exception {
        String drawn = Files.readString(Path.of("sample-pieces/skirt.svg"))
                .replace("from=\"810 895\" via=\"425 895\"", "from=\"840 895\" via=\"440 895\"")
                .replace("via=\"830 895\" to=\"810 895\"", "via=\"845 895\" to=\"840 895\"");
        SvgFile file = SvgFile.read(drawn.getBytes(StandardCharsets.UTF_8), "longer.svg");
        session.open(Opened.of(new OpenFile(file, Optional.empty(), "longer.svg")));
        assertThat(labels()).contains("Underlap of 3 cm at its right end", "Underlap of 3 cm at its left end");
        assertThat(offer().care()).contains("sewn to nothing");
        assertThat(SeamsView.of(session.desk()).seams())
                .filteredOn(s -> s.underlap().isPresent())
                .extracting(SeamsView.Seam::name)
                .containsExactly("waistband");
        double was =
                session.desk().reading().measures().girth("waist").orElseThrow().finished();
        FollowUp.Press right = offer().presses().stream()
                .filter(p -> p.label().key().endsWith("underlap.RIGHT"))
                .findFirst()
                .orElseThrow();
        session.tryOut(right);
        assertThat(HereWords.outcome(session.desk()).replace('\u00a0', ' '))
                .startsWith("3 cm of Waistband is underlap.");
        session.keep();
        assertThat(session.desk()
                        .reading()
                        .measures()
                        .mate("waistband")
                        .orElseThrow()
                        .drift())
                .isCloseTo(0, within(1e-3));
        assertThat(session.desk()
                        .reading()
                        .measures()
                        .girth("waist")
                        .orElseThrow()
                        .finished())
                .isCloseTo(was, within(1e-6));
        assertThat(SeamsView.of(session.desk()).seams())
                .allMatch(s -> s.underlap().isEmpty());
    }
}
