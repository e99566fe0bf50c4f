package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** The ways out that are offered for the one seam on a desk that does not fit. */
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
}
