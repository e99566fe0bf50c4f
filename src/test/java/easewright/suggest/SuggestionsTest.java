package easewright.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.BodiceDraft;
import easewright.draft.Draft;
import easewright.draft.Garment;
import easewright.draft.KnitTopDraft;
import easewright.draft.SampleBodies;
import easewright.draft.Samples;
import easewright.draft.SkirtDraft;
import easewright.draft.TrouserDraft;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is suggested for drawings whose truth is known. */
class SuggestionsTest {
    static Sheet sheet(String svg) throws SvgProblem {
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "bare.svg");
        return new Sheet(file.pattern(), file.loose(file.pattern()), file.texts());
    }

    private static Pattern truth(Garment garment) throws SvgProblem {
        return SvgFile.read(Samples.svg(garment).getBytes(StandardCharsets.UTF_8), "truth.svg")
                .pattern();
    }

    @Test
    void theSamplesWithoutTheirMarks() throws SvgProblem {
        HitRates rates = new HitRates();
        for (Draft draft : Samples.drafts()) {
            Garment garment = draft.draft();
            String bare = Samples.svg(garment).replaceFirst("(?s)<metadata>.*</metadata>", "");
            Suggestions made = Suggestions.of(sheet(bare), Set.of());
            rates.compare(garment.id(), truth(garment), made.outcome());
        }
        nearlyAll(rates);
    }

    @Test
    void theSamplesWithTheirMarksNeedNone() throws SvgProblem {
        for (Draft draft : Samples.drafts()) {
            assertThat(Suggestions.of(sheet(Samples.svg(draft.draft())), Set.of())
                            .all())
                    .isEmpty();
        }
    }

    private static List<Draft> drafts() {
        Random random = new Random(20260114);
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double more = random.nextInt(5) * 8;
            drafts.add(new SkirtDraft(SampleBodies.MAREN, 40 + more, 15 + more / 4, 480 + 3 * more));
            drafts.add(new BodiceDraft(SampleBodies.MAREN, 80 + more, 40 + more / 2, 45 + more / 4));
            drafts.add(new TrouserDraft(SampleBodies.INES, 40 + more, 10 + more / 4, 200 + more));
            drafts.add(new KnitTopDraft(SampleBodies.TOVE, -40 + more, 60 + more, -20 + more, 30 + more / 4));
        }
        return drafts;
    }

    private interface Drawn {
        String of(Pattern truth, String title, BareSheet.Hand hand) throws SvgProblem;
    }

    private static HitRates rates(BareSheet.Hand hand, Drawn drawn) throws SvgProblem {
        HitRates rates = new HitRates();
        for (Draft draft : drafts()) {
            Garment garment = draft.draft();
            Pattern truth = hand == BareSheet.Hand.ASKEW
                    ? Turned.of(truth(garment), 30, new Random(garment.id().hashCode()))
                    : truth(garment);
            Suggestions made = Suggestions.of(sheet(drawn.of(truth, garment.title(), hand)), Set.of());
            rates.compare(garment.id(), truth, made.outcome());
        }
        return rates;
    }

    @ParameterizedTest
    @EnumSource(BareSheet.Hand.class)
    void bareSheetsInOtherHands(BareSheet.Hand hand) throws SvgProblem {
        nearlyAll(rates(hand, BareSheet::of));
    }

    /** Where nothing is written, form has to tell, or every girth is half a girth. */
    @ParameterizedTest
    @EnumSource(BareSheet.Hand.class)
    void bareSheetsThatSayNothingOfHowOftenPiecesAreCut(BareSheet.Hand hand) throws SvgProblem {
        HitRates rates = rates(hand, BareSheet::withoutCounts);
        assertThat(rates.of("goes round").rate())
                .as("%s%n%s", rates, rates.missed())
                .isGreaterThan(0.95);
        assertThat(rates.of("cut").rate()).as("%s%n%s", rates, rates.missed()).isGreaterThan(0.8);
    }

    /** A suggestion that is mostly right is a help; one that is often wrong is work. */
    private static void nearlyAll(HitRates rates) {
        for (String kind :
                List.of("piece", "stitching line", "name", "cut", "grain", "edge ends", "edge role", "dart")) {
            assertThat(rates.of(kind).rate())
                    .as("%s in %s%n%s", kind, rates, rates.missed())
                    .isGreaterThan(0.95);
        }
        for (String kind : List.of("edge name", "notch", "level", "mate", "mate ease")) {
            assertThat(rates.of(kind).rate())
                    .as("%s in %s%n%s", kind, rates, rates.missed())
                    .isGreaterThan(0.9);
            assertThat(rates.of(kind).wrong)
                    .as("%s in %s%n%s", kind, rates, rates.missed())
                    .isLessThan(3);
        }
    }
}
