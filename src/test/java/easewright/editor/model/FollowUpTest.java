package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.text.LengthUnit;
import java.util.List;
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
        double drifted = worstDrift();
        assertThat(drifted).isGreaterThan(5);
        session.edit(offers.get(0).result());
        assertThat(worstDrift()).isCloseTo(0, within(1.0));
        session.undo();
        assertThat(worstDrift()).isCloseTo(drifted, within(1e-9));
    }

    private double worstDrift() {
        return session.desk().reading().measures().mates().stream()
                .mapToDouble(m -> Math.abs(m.drift()))
                .max()
                .orElseThrow();
    }
}
