package easewright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("waist", "high hip", "hip", "thigh", "upper arm", "Back");

    @Test
    void findsWhatIsOneSlipAway() {
        assertThat(Nearest.to("hipp", KNOWN)).contains("hip");
        assertThat(Nearest.to("back", KNOWN)).contains("Back");
        assertThat(Nearest.to("thihg", KNOWN)).contains("thigh");
        assertThat(Nearest.to("upper", KNOWN)).contains("upper arm");
        assertThat(Nearest.to("wrist", List.of("hip", "bust"))).isEmpty();
        assertThat(Nearest.to("collar", KNOWN)).isEmpty();
        assertThat(Nearest.to("", KNOWN)).isEmpty();
        assertThat(Nearest.to("hip", List.of())).isEmpty();
    }

    @Test
    void oneSlipAnywhereIsForgivenInLongNames() {
        Random random = new Random(20261125);
        for (int i = 0; i < 500; i++) {
            String name = KNOWN.get(random.nextInt(KNOWN.size()));
            int at = random.nextInt(name.length());
            String slip = switch (random.nextInt(3)) {
                case 0 -> name.substring(0, at) + "z" + name.substring(at);
                case 1 -> name.substring(0, at) + "z" + name.substring(at + 1);
                default -> name.substring(0, at) + name.substring(at + 1);
            };
            assertThat(Nearest.to(slip, List.of(name))).as(slip).contains(name);
        }
    }
}
