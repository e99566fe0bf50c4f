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

    /** The corner at a hinge is told as a place to be trued, unless more is to be said of it. */
    @Test
    void aCornerAtAHingeIsToldOnce() {
        Finding corner = Finding.of("corner-within-edge", Severity.NOTE, "Back").with("edge", "waist");
        Finding hinge = Finding.of("hinge-corner", Severity.NOTE, "Back").with("edge", "waist");
        Finding elsewhere = Finding.of("hinge-corner", Severity.NOTE, "Front").with("edge", "waist");
        Finding guarded = Finding.of("hinge-corner", Severity.CAUTION, "Back").with("edge", "waist");
        assertThat(Once.of(List.of(hinge, corner, elsewhere))).containsExactly(corner, elsewhere);
        assertThat(Once.of(List.of(guarded, corner))).containsExactly(guarded, corner);
        assertThat(Once.of(List.of(hinge))).containsExactly(hinge);
    }

    @Test
    void whichPieceIsMissingSaysMoreThanThatOneIs() {
        Finding which = Finding.of("level-left-out", Severity.FAULT, "Back 12").with("level", "hip (12)");
        Finding some = Finding.of("girth-not-whole", Severity.FAULT, "").with("level", "hip (12)");
        Finding small =
                Finding.of("garment-smaller-than-body", Severity.FAULT, "").with("level", "hip (12)");
        Finding other = Finding.of("girth-not-whole", Severity.FAULT, "").with("level", "hip (14)");
        assertThat(Once.of(List.of(some, small, which, other))).containsExactly(which, other);
    }
}
