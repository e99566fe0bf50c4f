package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.LevelSeams;
import easewright.measure.Measures;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Levels where their pieces are sewn together, what is to be eased in being spread evenly along the seam. */
class LevelsMeetTest extends HalfOfSkirt {
    /** So long a half with its hip so far below the upper edge, mm. */
    private static Piece half(String id, double length, double hip) {
        return half(id, List.of(new Point(0, 0), new Point(200, 0), new Point(200, length), new Point(0, length)))
                .withLevels(List.of(LevelMark.through("hip", new Point(50, hip))));
    }

    private static List<String> told(double ease, double front, double back) {
        return codes(pattern(ease, half("front", 400 + ease, front), half("back", 400, back))).stream()
                .filter(c -> c.startsWith("levels-apart"))
                .toList();
    }

    @Test
    void withNothingToEaseInLevelsLieOnOneAnother() {
        assertThat(told(0, 200, 202.9)).isEmpty();
        assertThat(told(0, 203.2, 200)).containsExactly("levels-apart");
    }

    /** In the middle of the seam half of what is to be eased in lies above. */
    @Test
    void whatIsEasedInIsSpreadEvenly() {
        assertThat(told(4, 202, 200)).isEmpty();
        assertThat(told(4, 204, 200)).as("all of it above").isEmpty();
        assertThat(told(4, 200, 200)).as("all of it below").isEmpty();
        assertThat(told(4, 206, 200)).as("0.6 cm apart").containsExactly("levels-apart-eased");
        assertThat(told(4, 194, 200)).as("as much the other way").containsExactly("levels-apart-eased");
        assertThat(told(4, 192.8, 200))
                .as("the ease beside it does not tell why")
                .containsExactly("levels-apart");
        assertThat(told(-4, 198, 200)).isEmpty();
        assertThat(told(-4, 194, 200)).containsExactly("levels-apart-eased");
        assertThat(told(12, 212, 200)).as("much, all of it above").containsExactly("levels-apart-eased");
    }

    /** Held to their lengths: so far along the one as, in proportion, along the other. */
    @Test
    void howFarTheyMissIsAMatterOfProportion() {
        Random random = new Random(71);
        for (int i = 0; i < 200; i++) {
            double ease = 16 * random.nextDouble() - 8;
            double front = 60 + 280 * random.nextDouble();
            double back = 60 + 280 * random.nextDouble();
            Pattern sewn = pattern(ease, half("front", 400 + ease, front), half("back", 400, back));
            LevelSeams.Meeting meeting = LevelSeams.of(sewn, Measures.of(sewn)).get(0);
            double off = (back / 400 - front / (400 + ease)) * (400 + ease);
            assertThat(meeting.off()).isCloseTo(off, within(1e-6));
            assertThat(meeting.onFirst().y()).isCloseTo(front + off, within(1e-6));
            assertThat(meeting.onSecond().y()).isCloseTo(front / (400 + ease) * 400, within(1e-6));
            assertThat(meeting.least()).isBetween(0.0, Math.abs(off) + 1e-9);
        }
    }
}
