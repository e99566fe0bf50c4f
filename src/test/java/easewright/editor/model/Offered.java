package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** The one seam on a desk that does not fit, and the ways out that are offered for it. */
final class Offered {
    private Offered() {}

    static FollowUp only(Desk desk) {
        List<FollowUp> offers = FollowUp.of(desk);
        assertThat(offers).hasSize(1);
        return offers.get(0);
    }

    /** What stands on its presses, with plain spaces. */
    static List<String> labels(Desk desk) {
        return only(desk).presses().stream()
                .map(p -> p.label().in(desk.words()).replace('\u00a0', ' '))
                .toList();
    }

    /** By how much the side seam of the skirt is off, as it is shown, mm. */
    static double sideSeamOff(Desk desk) {
        return desk.shownReading().measures().mate("side seam").orElseThrow().drift();
    }
}
