package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is no piece of cloth any more. */
class SimpleTest {
    private static final Outline SQUARE = Sketch.outline("0,0 100,0 100,100 0,100");
    private static final Outline CROSSED = Sketch.outline("0,0 100,0 0,101 100,100");

    private static String code(Outline before, Piece after) {
        Refusal direct = catchThrowableOfType(Refusal.class, () -> Simple.require(before, after));
        Refusal stitched = catchThrowableOfType(Refusal.class, () -> Simple.require(before, StitchOutline.of(after)));
        assertThat(stitched == null ? "" : stitched.code()).isEqualTo(direct == null ? "" : direct.code());
        return direct == null ? "" : direct.code();
    }

    @Test
    void turnedInsideOutOrCrossingItself() {
        for (LineKind drawn : LineKind.values()) {
            Piece square = Piece.bare("p", SQUARE).toBuilder().drawn(drawn, 5).build();
            assertThat(code(SQUARE, square)).isEmpty();
            assertThat(code(SQUARE.reversed(), square.withOutline(SQUARE.reversed())))
                    .isEmpty();
            assertThat(code(SQUARE.reversed(), square)).isEqualTo("outline-crosses-itself");
            assertThat(code(SQUARE, square.withOutline(CROSSED))).isEqualTo("outline-crosses-itself");
        }
    }

    /** Many drawings come crossed, and are not held to what they never were. */
    @Test
    void whatWasCrossedMayStayCrossed() {
        assertThat(Simple.stays(CROSSED, CROSSED)).isEqualTo(CROSSED.signedArea() != 0);
        assertThat(Simple.stays(CROSSED, CROSSED.reversed())).isFalse();
    }

    @Test
    void aDartsPointThatWasInsideStaysInside() {
        Dart dart = new Dart(
                "d", new Point(40, 0), new Point(60, 0), new Point(50, 80), Optional.empty(), Optional.empty());
        Piece low = Piece.bare("p", Sketch.outline("0,0 100,0 100,70 0,70")).toBuilder()
                .darts(List.of(dart))
                .build();
        assertThat(code(SQUARE, low)).isEqualTo("dart-point-left-out");
        assertThat(code(low.outline(), low)).isEmpty();
    }
}
