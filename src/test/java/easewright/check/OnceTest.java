package easewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

class OnceTest {
    private static Finding seam(String code, String size) {
        return Finding.of(code, Severity.FAULT, "").with("mate", "side seam").with("size", size);
    }

    @Test
    void whatAChangeDidInOneSizeDoesNotSilenceAnother() {
        Finding drifted = seam("mate-drifted", "10");
        Finding other = seam("mate-mismatch", "12");
        assertThat(Once.of(List.of(drifted, other, seam("mate-mismatch", "10"))))
                .containsExactly(drifted, other);
    }
}
