package easewright.svg.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StatesTogetherTest {
    private static void comeBack(List<byte[]> states) throws IOException {
        List<byte[]> back = StatesTogether.unpacked(StatesTogether.packed(states));
        assertThat(back).hasSameSizeAs(states);
        for (int i = 0; i < states.size(); i++) {
            assertThat(back.get(i)).isEqualTo(states.get(i));
        }
    }

    /** Also where there are no tags to cut at, as in a packed drawing, or nothing at all. */
    @Test
    void anyStatesComeBackByteForByte() throws IOException {
        Random random = new Random(11);
        comeBack(List.of());
        for (int run = 0; run < 200; run++) {
            List<byte[]> states = new ArrayList<>();
            for (int i = random.nextInt(5); i >= 0; i--) {
                byte[] state = new byte[random.nextInt(60)];
                random.nextBytes(state);
                for (int at = 0; at < state.length; at++) {
                    state[at] = random.nextInt(4) == 0 ? (byte) '>' : (byte) (run % 2 == 0 ? state[at] : 'a');
                }
                states.add(state);
            }
            comeBack(states);
        }
    }

    @Test
    void whatStatesHaveInCommonIsStoredOnce() {
        Random random = new Random(12);
        List<String> elements = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            elements.add("<path id='p" + i + "' d='M" + random.nextDouble() + " " + random.nextDouble() + " h"
                    + random.nextDouble() + " v" + random.nextDouble() + " z'/>");
        }
        List<byte[]> states = new ArrayList<>();
        for (int step = 0; step < 100; step++) {
            int changed = random.nextInt(elements.size());
            elements.set(changed, elements.get(changed).replaceFirst("M[^ ]*", "M" + random.nextDouble()));
            states.add(String.join("\n", elements).getBytes(StandardCharsets.UTF_8));
        }
        int one = StatesTogether.packed(states.subList(0, 1)).length;
        assertThat(StatesTogether.packed(states).length).isLessThan(3 * one);
    }
}
