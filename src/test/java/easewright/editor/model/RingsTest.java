package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Cloth;
import easewright.pattern.Level;
import easewright.text.LengthUnit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Body and garment as rings, and what is said of them. */
class RingsTest extends SkirtSession {
    @Test
    void ringsShowTheGapToScale() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(900), "Hip girth");
        Rings.Ring ring = Rings.of(session.desk().reading(), session.desk().words()).rings().stream()
                .filter(r -> r.level().equals("hip"))
                .findFirst()
                .orElseThrow();
        assertThat(ring.gap()).isCloseTo((hip().finished() - 900) / (2 * Math.PI), within(1e-9));
        assertThat(ring.words()).contains("90");
    }

    /** So that a change is seen where it is made: at the garment. */
    @Test
    void theBodyIsDrawnAsLargeBeforeAndAfterAChange() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(1000), "Hip girth");
        session.setBody(session.desk().pattern().level("waist").orElseThrow(), OptionalDouble.of(740), "Waist girth");
        Rings before = Rings.of(session.desk().shownReading(), session.desk().words());
        session.want(wanted().withAmount(30));
        Rings after = Rings.of(session.desk().shownReading(), session.desk().words());
        assertThat(garment(after)).isGreaterThan(garment(before) + 4);
        assertThat(after.widest()).isEqualTo(before.widest()).isGreaterThan(garment(after));
    }

    private static double garment(Rings rings) {
        return rings.rings().stream().mapToDouble(Rings.Ring::garment).max().orElseThrow();
    }

    /** A number, its fraction and its unit never stand on different lines. */
    @Test
    void lengthsInTheRingsAreNotBroken() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setUnit(LengthUnit.INCH);
        session.setBody(hip, OptionalDouble.of(34.5 * 25.4), "Hip girth");
        assertThat(Rings.of(session.desk().reading(), session.desk().words()).rings())
                .filteredOn(r -> r.level().equals("hip"))
                .singleElement()
                .satisfies(r -> assertThat(r.words())
                        .contains("body 34\u00a01/2\u00a0in")
                        .doesNotContainPattern("\\d (\\d|in)"));
    }

    /** What a cloth is stretched by is told of the girth, as it is measured, not of the radius: 3 cm of 105. */
    @Test
    void aGarmentSmallerThanTheBodyIsStretchedByWhatItLacks() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(hip().finished() + 30), "Hip girth");
        assertThat(Rings.of(session.desk().reading(), session.desk().words()).rings())
                .as("a woven")
                .filteredOn(r -> r.level().equals("hip"))
                .singleElement()
                .satisfies(r -> assertThat(r.words()).contains("3\u00a0cm smaller", "not known to stretch"));
        session.setCloth(Cloth.knit(40));
        assertThat(Rings.of(session.desk().reading(), session.desk().words()).rings())
                .filteredOn(r -> r.level().equals("hip"))
                .singleElement()
                .satisfies(
                        r -> assertThat(r.words()).contains("3\u00a0cm smaller").endsWith("stretched by 2.9\u00a0%."));
    }
}
