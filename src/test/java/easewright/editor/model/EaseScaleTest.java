package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.text.LengthUnit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EaseScaleTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private EaseScale scale(String level) {
        return EasePage.of(session.desk()).rows().stream()
                .filter(r -> r.level().name().equals(level))
                .findFirst()
                .orElseThrow()
                .scale();
    }

    private void open(String garment) throws Exception {
        session.open(OpenedSample.of(garment));
    }

    private void tryAt(String level, double mm) {
        session.chooseLevel(level);
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        assertThat(session.desk().shownTrial()).as("%s at %s", mm, level).isPresent();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60, -20, -1, 0.5, 10, 30, 40, 160})
    void theScaleHoldsStillUnderATrial(double mm) throws Exception {
        open("skirt");
        EaseScale before = scale("hip");
        tryAt("hip", mm);
        EaseScale now = scale("hip");
        assertThat(now.from()).isEqualTo(before.from());
        assertThat(now.to()).isEqualTo(before.to());
        assertThat(now.now().orElseThrow()).isCloseTo(before.now().orElseThrow() + mm, within(0.01));
        assertThat(now.beyond(now.now().orElseThrow())).isEqualTo(mm == 160 ? 1 : mm == -60 ? -1 : 0);
        assertThat(mm == 160 && now.showsBand())
                .as("a class wholly beyond the bar")
                .isFalse();
    }

    /** The same figures stand on the same bar, whatever was shown before; it holds the whole of the class. */
    @Test
    void theScaleDependsOnTheFiguresAlone() throws Exception {
        open("skirt");
        EaseScale before = scale("hip");
        session.setUnit(LengthUnit.INCH);
        session.setUnit(LengthUnit.CM);
        assertThat(scale("hip")).isEqualTo(before);
        for (double mm : new double[] {10, 20, 30, 60, 120}) {
            tryAt("hip", mm);
            session.keep();
            EaseScale kept = scale("hip");
            assertThat(kept.bandTo().orElse(kept.to())).as("kept %s", mm).isLessThanOrEqualTo(kept.to());
            assertThat(kept.beyond(kept.now().orElseThrow())).isZero();
            session.undo();
            assertThat(scale("hip")).isEqualTo(before);
        }
    }

    /** Where a wish is reached by a change that is kept, the bar does not jump. */
    @Test
    void theScaleStaysWhenAWishIsReached() throws Exception {
        open("skirt");
        double ease = scale("hip").now().orElseThrow();
        session.setWish("hip", OptionalDouble.of(ease + 30));
        EaseScale wished = scale("hip");
        tryAt("hip", 30);
        session.keep();
        assertThat(scale("hip").from()).isEqualTo(wished.from());
        assertThat(scale("hip").to()).isEqualTo(wished.to());
    }

    @Test
    void theEndsAreRoundFiguresInTheUnit() throws Exception {
        open("knit-top");
        for (LengthUnit unit : new LengthUnit[] {LengthUnit.CM, LengthUnit.INCH}) {
            session.setUnit(unit);
            for (EaseRow row : EasePage.of(session.desk()).rows()) {
                for (double end : new double[] {row.scale().from(), row.scale().to()}) {
                    assertThat(end / unit.mm() - Math.rint(end / unit.mm()))
                            .as("%s %s", row.name(), end)
                            .isCloseTo(0, within(1e-9));
                }
            }
        }
    }

    /** Whatever the ease is called, it lies in the band of that class; also where a source gives one figure for each. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 5, 10, 14, 19, 30, 50})
    void theEaseLiesInTheBandOfItsClass(double mm) throws Exception {
        open("skirt");
        for (String level : new String[] {"waist", "hip"}) {
            if (mm > 0) {
                tryAt(level, mm);
            }
            EaseScale scale = scale(level);
            double ease = scale.now().orElseThrow();
            if (scale.bandFrom().isPresent()) {
                assertThat(ease)
                        .isBetween(
                                scale.bandFrom().getAsDouble() - 0.06,
                                scale.bandTo().orElse(Double.MAX_VALUE) + 0.06);
                if (scale.bandTo().orElse(Double.MAX_VALUE) <= scale.bandFrom().getAsDouble()) {
                    assertThat(ease)
                            .as("the one figure itself")
                            .isCloseTo(scale.bandFrom().getAsDouble(), within(0.06));
                }
            }
            session.leave();
        }
    }

    /** A table of percentages: the T-shirt's bust, −3 of 87 cm, is within the class it is given. */
    @Test
    void aClassByPercentHasItsPlaceByTheBody() throws Exception {
        open("knit-top");
        EaseScale scale = scale("bust");
        assertThat(scale.bandFrom()).isPresent();
        assertThat(scale.now().orElseThrow())
                .isBetween(scale.bandFrom().orElseThrow(), scale.bandTo().orElseThrow());
        double body = 870;
        assertThat(scale.bandFrom().orElseThrow() / body * 100).isBetween(-15.0, -3.0);
    }

    @Test
    void withoutABodyThereIsAScaleAndNoMark() throws Exception {
        open("skirt");
        var hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.empty(), "Hip girth");
        assertThat(scale("hip").now()).isEmpty();
        assertThat(scale("hip").to()).isGreaterThan(scale("hip").from());
    }

    /** Where the zero of several bars stands in one line, the figure at the left end is that of the end. */
    @Test
    void bothEndsOfABarHaveTheirFigures() throws Exception {
        open("knit-top");
        for (String level : new String[] {"bust", "waist", "hip", "upper arm"}) {
            EaseScale scale = scale(level);
            assertThat(scale.figures()).as(level).contains(scale.begins(), 0.0, scale.to());
            assertThat(scale.figures())
                    .as(level)
                    .allMatch(mm -> mm == 0 || scale.share(mm) == 0 || scale.share(mm) == 1);
        }
        session.setUnit(LengthUnit.INCH);
        for (String level : new String[] {"bust", "waist", "hip", "upper arm"}) {
            assertThat(Math.IEEEremainder(scale(level).begins(), 25.4 / 2))
                    .as(
                            "%s begins at a figure that anybody reads: %s in",
                            level, scale(level).begins() / 25.4)
                    .isCloseTo(0, within(1e-6));
        }
    }

    /** An ease that meets the least as near as a tape shows is marked on it; one that falls short, before it. */
    @Test
    void whatCountsAsMetIsNotMarkedAsShort() throws Exception {
        open("skirt");
        EaseScale hip = scale("hip");
        double least = hip.least().orElseThrow();
        assertThat(hip.now().orElseThrow()).isLessThan(least);
        assertThat(hip.marked(hip.now().orElseThrow())).isEqualTo(least);
        assertThat(hip.marked(hip.shortOf().orElseThrow())).isEqualTo(least);
        assertThat(hip.marked(least - 2)).isEqualTo(least - 2);
        assertThat(hip.marked(least + 0.4)).isEqualTo(least + 0.4);
    }
}
