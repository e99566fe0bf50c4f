package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SceneryTest {
    /** Ids of the rectangles that are shown. */
    private static List<String> shown(String svg) throws SvgProblem {
        return ShownIds.of(SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "drawing.svg"), "rect", Set.of());
    }

    @Test
    void whatAnEntityMadeDoesNotShiftTheNumbersOfWhatIsHidden() throws SvgProblem {
        Random random = new Random(71);
        for (int i = 0; i < 60; i++) {
            StringBuilder body = new StringBuilder();
            List<String> seen = new ArrayList<>();
            for (int k = 0; k < 12; k++) {
                if (random.nextInt(3) == 0) {
                    body.append(k == 0 ? "&two;" : "<g>&two;</g>");
                    seen.addAll(List.of("e", "e"));
                }
                boolean hidden = random.nextBoolean();
                body.append("<g><rect id='r" + k + "' width='50' height='50'" + (hidden ? " display='none'" : "")
                        + "/></g>");
                if (!hidden) {
                    seen.add("r" + k);
                }
            }
            String rect = "<rect id='e' width='50' height='50'/>";
            String svg = "<!DOCTYPE svg [<!ENTITY one \"" + rect + "\"><!ENTITY two \"&one;&one;\">]>"
                    + "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 100'>"
                    + body + "</svg>";
            assertThat(shown(svg)).as(svg).isEqualTo(seen);
        }
    }
}
