package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.Cloth;
import easewright.text.LengthUnit;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ClothWordsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void open() throws Exception {
        session.open(OpenedSample.of("knit-top"));
    }

    private ClothWords words() {
        Desk desk = session.desk();
        return ClothWords.of(desk, Garments.of(desk.pattern(), desk.reading().tables()));
    }

    /** The sample's cloth: 50 % across, 20 % along, springs back 95 %, shrinks 5 %. */
    @Test
    void theClothIsToldApartFromTheGarment() {
        assertThat(words().known().split(" "))
                .as("broken only between its parts")
                .containsExactly(
                        "stretches\u00a050\u00a0%\u00a0across,",
                        "20\u00a0%\u00a0lengthwise,",
                        "springs\u00a0back\u00a095\u00a0%,",
                        "shrinks\u00a05\u00a0%\u00a0lengthwise");
        assertThat(words().judged()).contains("dress, bodice, top", ", going by the marks");
        session.setGarment("leggings");
        assertThat(words().judged()).isEqualTo("Garment: leggings");
        session.setCloth(new Cloth(true, NONE, NONE, NONE, NONE));
        assertThat(words().untested()).isEqualTo("stretch not tested yet");
        session.setCloth(Cloth.WOVEN);
        session.setBody(session.desk().pattern().level("hip").orElseThrow(), OptionalDouble.of(800), "Hip girth");
        session.setBody(session.desk().pattern().level("bust").orElseThrow(), OptionalDouble.of(800), "Bust girth");
        assertThat(words().known() + words().judged() + words().untested()).doesNotContain("stretch");
    }

    /** 10 cm that reach 15 cm and come back to 10.25 cm: 0.25 of 5 cm stays, 5 %. */
    @Test
    void eachTestShowsTheLengthThatWasFound() {
        assertThat(words().across().length()).isEqualTo("15\u00a0cm");
        assertThat(words().along().length()).isEqualTo("12\u00a0cm");
        assertThat(words().recovery().length()).isEqualTo("10.25\u00a0cm");
        assertThat(words().wash().length()).isEqualTo("47.5\u00a0cm");
        assertThat(words().wash().marked()).as("an example for the field").isEqualTo("50\u00a0cm");
        assertThat(words().across().marked()).isEqualTo("10\u00a0cm");
        assertThat(words().recovery().result()).isEqualTo("Springs back: 95\u00a0%");
        assertThat(words().wash().result()).isEqualTo("Shrinks lengthwise: 5\u00a0%");
        assertThat(words().wash().how())
                .as("which way, and what of the ease")
                .contains("along the grain", "ease here are as cut");
        assertThat(words().along().how()).contains("does not use it");
        assertThat(words().recovery().range()).contains("10\u00a0cm to 15\u00a0cm");
        assertThat(words().wash().range()).contains("25\u00a0cm to 50\u00a0cm");
    }

    @Test
    void whatSpringsBackIsAPartOfTheStretchAcross() {
        session.setCloth(new Cloth(true, NONE, NONE, NONE, NONE));
        assertThat(words().recovery().can()).isFalse();
        assertThat(words().recovery().result()).contains("test the stretch across first");
        session.setCloth(Cloth.knit(40));
        assertThat(words().recovery().can()).isTrue();
    }

    /** recovery % = 100(L1 - L2)/(L1 - L0), docs/sources.md 5; there and back for any cloth. Seed 11. */
    @Test
    void recoveryIsTheShareOfTheStretchTakenBack() {
        assertThat(RecoveryTest.percent(102, 40, 100).orElseThrow()).isCloseTo(95, within(1e-9));
        assertThat(RecoveryTest.percent(100, 40, 100).orElseThrow()).isCloseTo(100, within(1e-9));
        assertThat(RecoveryTest.percent(99, 40, 100)).as("shorter than it was").isEmpty();
        assertThat(RecoveryTest.percent(141, 40, 100))
                .as("longer than stretched")
                .isEmpty();
        assertThat(RecoveryTest.percent(100, 0, 100))
                .as("nothing was stretched")
                .isEmpty();
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            double stretch = 1 + random.nextDouble() * 200;
            double recovery = 100 * random.nextDouble();
            double marked = 50 + random.nextDouble() * 100;
            double rested = RecoveryTest.rested(recovery, stretch, marked);
            assertThat(RecoveryTest.percent(rested, stretch, marked).orElseThrow())
                    .isCloseTo(recovery, within(1e-6));
        }
    }

    /** The sample is 3 cm smaller at the bust; a cloth that springs back by 60 % keeps up to 1.2 cm of that. */
    @Test
    void whatDoesNotSpringBackIsToldAtTheLevel() {
        Cloth cloth = session.desk().pattern().cloth();
        session.setCloth(new Cloth(true, cloth.across(), cloth.along(), OptionalDouble.of(60), cloth.shrinkage()));
        assertThat(bust()).contains("springs back by 60\u00a0% only").contains("1.2\u00a0cm wider");
        session.setCloth(new Cloth(true, cloth.across(), cloth.along(), OptionalDouble.of(100), cloth.shrinkage()));
        assertThat(bust()).doesNotContain("springs back");
    }

    private String bust() {
        return String.join(
                " ",
                EasePage.of(session.desk()).rows().stream()
                        .filter(r -> r.level().name().equals("bust"))
                        .findFirst()
                        .orElseThrow()
                        .stretch());
    }
}
