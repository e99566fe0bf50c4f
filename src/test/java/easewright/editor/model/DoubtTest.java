package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Ways;
import easewright.text.LengthUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DoubtTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void open() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
    }

    @Test
    void aUsualAmountIsNotQuestioned() {
        assertThat(Doubt.of(session.desk(), 24)).isEmpty();
        assertThat(Doubt.of(session.desk(), -100)).isEmpty();
    }

    @Test
    void millimetresTypedAsCentimetresAreGuessed() {
        Doubt doubt = Doubt.of(session.desk(), 240).orElseThrow();
        assertThat(doubt.words()).contains("+24", "105").doesNotContain("{");
        assertThat(doubt.rather().orElseThrow()).isCloseTo(24, within(1e-9));
        session.setUnit(LengthUnit.INCH);
        assertThat(Doubt.of(session.desk(), 24 * 25.4).orElseThrow().rather().orElseThrow())
                .isCloseTo(24, within(1e-9));
    }

    /** The answer says in which unit the number is meant; in inches it would look like a guess out of nowhere. */
    @Test
    void theAnswerInInchesSaysThatMillimetresAreMeant() {
        session.setUnit(LengthUnit.INCH);
        assertThat(Doubt.no(24, session.desk().words())).isEqualTo("No, 24\u00a0mm (about 15/16\u00a0in)");
        assertThat(Doubt.no(-24, session.desk().words())).isEqualTo("No, \u221224\u00a0mm (about \u221215/16\u00a0in)");
        session.setUnit(LengthUnit.CM);
        assertThat(Doubt.no(24, session.desk().words())).isEqualTo("No, +2.4\u00a0cm");
    }

    @Test
    void lengthIsQuestionedByItsOwnMeasure() {
        session.want(session.desk()
                .wanted()
                .orElseThrow()
                .withOther(Ways.of("lengthen").map(OtherWay::of)));
        assertThat(Doubt.of(session.desk(), 250)).isEmpty();
        assertThat(Doubt.of(session.desk(), -2000)).isPresent();
        assertThat(Doubt.of(session.desk(), -2000).orElseThrow().rather().orElseThrow())
                .isCloseTo(-200, within(1e-9));
    }
}
