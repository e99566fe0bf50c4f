package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.model.EasePage;
import easewright.editor.model.EaseRow;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WishOfferTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private EaseRow row(String level) {
        return EasePage.of(session.desk()).rows().stream()
                .filter(r -> r.level().name().equals(level))
                .findFirst()
                .orElseThrow();
    }

    private boolean isOnPurpose(String level) {
        assertThat(row(level).standing()).isEqualTo(EaseRow.Standing.AWAY);
        return WishOffer.isOnPurpose(row(level), session.desk());
    }

    private void wishMore(String level, double mm) {
        session.setWish(level, OptionalDouble.of(row(level).scale().now().orElseThrow() + mm));
    }

    /** What is tried at the hip is no reason to be silent about the bust. */
    @Test
    void onlyWhatIsTriedIsAwayOnPurpose() throws Exception {
        session.open(OpenedSample.of("bodice"));
        wishMore("bust", 30);
        wishMore("waist", 50);
        assertThat(isOnPurpose("bust")).isFalse();
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        assertThat(session.desk().shownTrial()).isPresent();
        assertThat(row("bust").missing().orElseThrow()).isCloseTo(30, within(0.05));
        assertThat(isOnPurpose("bust")).isFalse();
        assertThat(isOnPurpose("waist")).isTrue();
    }

    @Test
    void moreThanWasWishedMissesNothing() throws Exception {
        session.open(OpenedSample.of("bodice"));
        wishMore("bust", -30);
        assertThat(isOnPurpose("bust")).isTrue();
    }
}
