package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Cloths;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import java.util.List;
import org.junit.jupiter.api.Test;

class EasedInTest {
    private static final double INCH = 25.4;

    private static Pattern pattern(String role, String other) {
        List<Point> square = List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100));
        return Cloths.pattern(
                        List.of(),
                        Cloths.polygon("one", square, "a " + role + ", b OTHER, c OTHER, d OTHER"),
                        Cloths.polygon("two", square, "a " + other + ", b OTHER, c OTHER, d OTHER"))
                .withMates(
                        List.of(new Mate("seam", List.of(EdgeRef.of("one", "a")), List.of(EdgeRef.of("two", "a")), 0)));
    }

    private static EasedIn judged(Pattern pattern, double first, double second) {
        return EasedIn.of(pattern, pattern.mates().get(0), first, second);
    }

    /** Shoulders, waists in their bands and elbows take 1/4 to 1/2 in (docs/sources.md 3). */
    @Test
    void aSeamIsEasedByHalfAnInchAtMost() {
        Pattern seam = pattern("SEAM", "SEAM");
        assertThat(EasedIn.most(seam, seam.mates().get(0))).isCloseTo(INCH / 2, within(1e-9));
        assertThat(judged(seam, 400 + INCH / 2, 400)).isEqualTo(EasedIn.POSSIBLE);
        assertThat(judged(seam, 400, 400 + INCH / 2)).isEqualTo(EasedIn.POSSIBLE);
        assertThat(judged(seam, 401 + INCH / 2, 400)).isEqualTo(EasedIn.TOO_MUCH);
        assertThat(judged(seam, 400, 401 + INCH / 2)).isEqualTo(EasedIn.TOO_MUCH);
    }

    /** 1.25 to 1.75 in, and never shorter than the armhole (docs/sources.md 3). */
    @Test
    void aCapIsEasedByMoreAndNeverStretched() {
        for (boolean capFirst : new boolean[] {true, false}) {
            Pattern sleeve = capFirst ? pattern("CAP", "ARMHOLE") : pattern("ARMHOLE", "CAP");
            assertThat(judged(sleeve, capFirst ? 490 : 450, capFirst ? 450 : 490))
                    .isEqualTo(EasedIn.POSSIBLE);
            assertThat(judged(sleeve, capFirst ? 500 : 450, capFirst ? 450 : 500))
                    .isEqualTo(EasedIn.TOO_MUCH);
            assertThat(judged(sleeve, capFirst ? 447 : 450, capFirst ? 450 : 447))
                    .isEqualTo(EasedIn.CAP_SHORT);
        }
    }

    /** Half as long again is gathered, and nobody drew it by mistake. */
    @Test
    void muchMoreIsFullness() {
        Pattern seam = pattern("SEAM", "SEAM");
        assertThat(judged(seam, 600, 400)).isEqualTo(EasedIn.GATHERED);
        assertThat(judged(seam, 400, 600)).isEqualTo(EasedIn.GATHERED);
        assertThat(judged(seam, 499, 400)).isEqualTo(EasedIn.TOO_MUCH);
    }
}
