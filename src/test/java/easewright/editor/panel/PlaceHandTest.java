package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.text.LengthUnit;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;

class PlaceHandTest {
    private static KeyEvent pressed(KeyCode code) {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false);
    }

    /** Whoever stops asking, the mark of the place pointed at last goes from the table. */
    @Test
    void nothingIsPointedAtOnceNoPlaceIsAskedFor() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        PlaceHand hand = new PlaceHand(session);
        session.picking().askBeginning("slash", "Slash", at -> {}, () -> {});
        assertThat(hand.key(pressed(KeyCode.N))).isTrue();
        assertThat(hand.place()).isPresent();
        session.picking().stop();
        assertThat(hand.place()).isEmpty();
        assertThat(hand.key(pressed(KeyCode.N))).as("no key is for a place").isFalse();
    }
}
