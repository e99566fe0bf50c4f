package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.mark.SeamsView;
import easewright.measure.Measures;
import easewright.pattern.Severity;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Files;
import java.nio.file.Path;
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
        session.open(OpenedSample.drawn(drawn, "unequal.svg"));
    }

    /** Between what is the same for cutting and what does not fit all pages say one thing. */
    @Test
    void aSeamThatManySewersAcceptIsSoOnEveryPage() throws Exception {
        open("L400,727.5 L655,730", "400 727.5");
        assertThat(Math.abs(Offered.sideSeamOff(session.desk()))).isBetween(1.5, 3.0);
        assertThat(Offered.only(session.desk()).words())
                .contains("Many sewers accept that")
                .doesNotContain("does not fit");
        SeamsView.Seam seam = SeamsView.of(session.desk()).seams().stream()
                .filter(s -> s.name().equals("side seam"))
                .findFirst()
                .orElseThrow();
        assertThat(seam.fits()).isFalse();
        assertThat(seam.verdict())
                .contains("too long. Many sewers accept that.")
                .doesNotContain("\u2713");
        assertThat(session.desk().reading().findings())
                .filteredOn(f -> f.code().equals("mate-drift"))
                .hasSize(1);
    }

    @Test
    void eachWayOutStandsOnItsPressWithItsFigure() {
        assertThat(Offered.only(session.desk()).changed()).as("it was drawn so").isFalse();
        assertThat(Offered.only(session.desk()).words().replace('\u00a0', ' '))
                .isEqualTo("Seam \u201cside seam\u201d does not fit: 60.8 cm on Front, 61.6 cm on Back.");
        assertThat(Offered.labels(session.desk()))
                .containsExactly(
                        "Lengthen Front, side by 0.8 cm", "Shorten Back, side by 0.8 cm", "Mark 0.8 cm to ease in");
        assertThat(Offered.only(session.desk()).care().replace('\u00a0', ' '))
                .contains("The hem end gives way, as is common practice")
                .contains("up to 1.3 cm is usual");
        session.setUnit(LengthUnit.INCH);
        assertThat(Offered.labels(session.desk()))
                .as("what 23 15/16 in and 24 1/4 in differ by")
                .startsWith("Lengthen Front, side by 5/16 in");
    }

    @Test
    void whatIsPressedIsTriedAndDoneOnlyWhenKept() {
        for (FollowUp.Press press : Offered.only(session.desk()).presses()) {
            double before = Offered.sideSeamOff(session.desk());
            int steps = session.desk().history().states().size();
            session.tryOut(press);
            Desk trying = session.desk();
            assertThat(trying.shownTrial()).isPresent();
            assertThat(trying.history().states()).hasSize(steps);
            assertThat(Offered.sideSeamOff(session.desk())).isCloseTo(0, within(1e-6));
            assertThat(HereWords.outcome(trying)).endsWith("No girth changes.").doesNotContain("editor.", "{");
            assertThat(Effect.of(trying).lines())
                    .anySatisfy(l -> {
                        assertThat(l.kind()).isEqualTo(Effect.Kind.FITS);
                        assertThat(l.words()).startsWith("Fits now: \u201cside seam\u201d, 0.8\u00a0cm off before");
                    })
                    .noneMatch(l -> l.kind() == Effect.Kind.DRIFTED);
            session.undo();
            assertThat(session.desk().trial()).isEmpty();
            assertThat(Offered.sideSeamOff(session.desk())).isEqualTo(before);

            session.tryOut(press);
            session.keep();
            assertThat(session.desk().trial()).isEmpty();
            assertThat(Offered.sideSeamOff(session.desk())).isCloseTo(0, within(1e-6));
            assertThat(session.kept().orElseThrow().words(session.desk()))
                    .contains(press.tried().in(session.desk().words()))
                    .contains(press.isMark() ? "the page Marks" : "The page Changes");
            assertThat(session.desk().pattern().changes()).hasSize(press.isMark() ? 0 : 1);
            assertThat(FollowUp.of(session.desk())).isEmpty();
            session.undo();
            assertThat(Offered.sideSeamOff(session.desk())).isEqualTo(before);
        }
    }

    /** An amount that is begun takes the place of what was tried, and nothing of it is left. */
    @Test
    void anotherWishTakesThePlaceOfWhatIsTried() {
        session.tryOut(Offered.only(session.desk()).presses().get(0));
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        assertThat(session.desk().shownTrial().orElseThrow().offer()).isEmpty();
        assertThat(Offered.sideSeamOff(session.desk())).isCloseTo(-8, within(0.5));
        session.leave();
        assertThat(session.desk().pattern().changes()).isEmpty();
    }

    /** A change that is kept is one like any other: it is saved, and can be switched off after opening the file again. */
    @Test
    void whatIsKeptCanBeTakenBackAfterTheFileIsOpenedAgain() throws Exception {
        double before = Offered.sideSeamOff(session.desk());
        session.tryOut(Offered.only(session.desk()).presses().get(0));
        session.keep();
        byte[] written =
                session.desk().file().orElseThrow().svg().write(session.desk().pattern());
        session.open(Opened.of(new OpenFile(SvgFile.read(written, "again.svg"), Optional.empty(), "again.svg")));
        assertThat(Offered.sideSeamOff(session.desk())).isCloseTo(0, within(1e-3));
        Recasting.on(session, Course.of(session.desk()).switched(0, false));
        assertThat(Offered.sideSeamOff(session.desk())).isCloseTo(before, within(1e-3));
    }

    @Test
    void tooMuchToBeEasedInIsNotOfferedAsEase() throws Exception {
        open("L400,700 L655,730", "400 700");
        assertThat(Offered.labels(session.desk()))
                .containsExactly("Lengthen Front, side by 3 cm", "Shorten Back, side by 3 cm");
        assertThat(Offered.only(session.desk()).care()).contains("too much to be eased in");
    }

    /** @param pairs what is drawn in the sample, each followed by what is drawn instead */
    private void openNest(String... pairs) throws Exception {
        String nest = Files.readString(Path.of("sample-pieces/skirt-sizes.svg"));
        for (int i = 0; i < pairs.length; i += 2) {
            assertThat(nest).contains(pairs[i]);
            nest = nest.replace(pairs[i], pairs[i + 1]);
        }
        session.open(OpenedSample.drawn(nest, "nest.svg"));
    }

    /** One length to ease in is marked for all sizes, so it is offered where it is right in all of them. */
    @Test
    void easingInIsOfferedInANestWhereAllSizesDifferAlike() throws Exception {
        openNest("<mate name=\"waistband\" ease=\"10\">", "<mate name=\"waistband\">");
        assertThat(Offered.labels(session.desk())).contains("Mark 1 cm to ease in");
        session.tryOut(Offered.only(session.desk()).presses().stream()
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
        assertThat(Offered.labels(session.desk())).isNotEmpty().noneMatch(l -> l.startsWith("Mark"));
        assertThat(Offered.only(session.desk()).care()).contains("sizes differ by unequal lengths");
    }

    /** A difference of 1 mm is the same for cutting, and one of nothing is offered to nobody. */
    @Test
    void whatIsTheSameForCuttingIsNotOffered() throws Exception {
        open("L400,729 L655,730", "400 729");
        assertThat(FollowUp.isAsked(session.desk())).isFalse();
        assertThat(FollowUp.of(session.desk())).isEmpty();
        open("L400,728 L655,730", "400 728");
        assertThat(Offered.labels(session.desk())).startsWith("Lengthen Front, side by 0.2 cm");
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

    /** The band goes on 3 cm beyond the waist, as bands with an underlap do: nobody eases that in. */
    @Test
    void whatABandIsLongerMayBeItsUnderlap() throws Exception {
        String drawn = Files.readString(Path.of("sample-pieces/skirt.svg"))
                .replace("from=\"810 895\" via=\"425 895\"", "from=\"840 895\" via=\"440 895\"")
                .replace("via=\"830 895\" to=\"810 895\"", "via=\"845 895\" to=\"840 895\"");
        session.open(OpenedSample.drawn(drawn, "longer.svg"));
        assertThat(Offered.labels(session.desk()))
                .contains("Underlap of 3 cm at its right end", "Underlap of 3 cm at its left end");
        assertThat(Offered.only(session.desk()).care()).contains("sewn to nothing");
        assertThat(SeamsView.of(session.desk()).seams())
                .filteredOn(s -> s.underlap().isPresent())
                .extracting(SeamsView.Seam::name)
                .containsExactly("waistband");
        double was =
                session.desk().reading().measures().girth("waist").orElseThrow().finished();
        FollowUp.Press right = Offered.only(session.desk()).presses().stream()
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
