package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.SeamChange;
import easewright.alter.Truing;
import easewright.pattern.Pattern;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A dress drawn by hand with both its lines, whose armholes are cut 12.5 to 17.3 mm away from where they are sewn. */
class HandDrawnAllowanceTest {
    @Test
    void whatTheHandDrewUnevenIsNotToldAsUnevenAfterAChange() throws Exception {
        Bare dress = Bare.of(Files.readString(Path.of("src/test/resources/bare/double.svg")));
        dress.marker.suggesting().accept();
        for (String level : new String[] {"waist", "hip"}) {
            Pattern changed = SeamChange.at(level, 30)
                    .apply(dress.session.desk().pattern())
                    .pattern();
            assertThat(Truing.proposals(changed))
                    .extracting(p -> p.finding().code())
                    .isNotEmpty()
                    .doesNotContain("allowance-uneven");
        }
    }
}
