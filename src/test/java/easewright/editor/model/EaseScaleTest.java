package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.text.LengthUnit;
import java.util.Optional;
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
        Sample sample = Sample.all().stream()
                .filter(s -> s.id().equals(garment))
                .findFirst()
                .orElseThrow();
        session.open(Opened.of(new OpenFile(sample.read(), Optional.empty(), sample.fileName())));
    }

    private void tryAt(String level, double mm) {
        session.chooseLevel(level);
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        assertThat(session.desk().shownTrial()).as("%s at %s", mm, level).isPresent();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60, -20, -1, 0.5, 10, 30, 60, 160})
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

    /** Kept, the change is no longer a trial, and the bar stands as it stood; beyond its end it grows, and stays so. */
    @Test
    void theScaleDoesNotJumpWhenAChangeIsKept() throws Exception {
        open("skirt");
        EaseScale held = scale("hip");
        double to = held.to();
        for (double mm : new double[] {10, 20, 15, -30}) {
            tryAt("hip", mm);
            held = scale("hip").on(held);
            assertThat(held.to()).isEqualTo(to);
            session.keep();
            held = scale("hip").on(held);
            assertThat(held.to()).as("kept %s", mm).isEqualTo(to);
            assertThat(held.from()).isZero();
        }
        tryAt("hip", 200);
        session.keep();
        held = scale("hip").on(held);
        assertThat(held.to()).isGreaterThan(scale("hip").now().orElseThrow());
        double grown = held.to();
        session.undo();
        assertThat(scale("hip").on(held).to()).isEqualTo(grown);
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
}
