package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RootTest {
    private static final Refusal NOT = Refusal.of("girth-not-met");

    /** Counts how often it is asked: every question costs a garment made and measured. */
    private static final class Counted implements Root.Miss {
        private final java.util.function.DoubleUnaryOperator miss;
        private int asked;

        Counted(java.util.function.DoubleUnaryOperator miss) {
            this.miss = miss;
        }

        @Override
        public double at(double amount) {
            asked++;
            return miss.applyAsDouble(amount);
        }
    }

    @Test
    void aStraightLineIsMetAtOnce() throws Refusal {
        Counted line = new Counted(x -> 3 * x - 12);
        assertThat(Root.of(line, -12, 1, 1e-9, 1e-6, NOT)).isCloseTo(4, within(1e-12));
        assertThat(line.asked).isEqualTo(2);
        Counted met = new Counted(x -> x - 5);
        assertThat(Root.of(met, -5, 5, 1e-9, 1e-6, NOT)).isEqualTo(5);
        assertThat(met.asked).isEqualTo(1);
    }

    @Test
    void aBendIsMetInAFewSteps() throws Refusal {
        Counted bend = new Counted(x -> x * x * x + x - 10);
        assertThat(Root.of(bend, -10, 1, 1e-12, 1e-9, NOT)).isCloseTo(2, within(1e-12));
        assertThat(bend.asked).isLessThan(12);
    }

    @Test
    void whatIsNeverMetIsRefused() {
        assertThat(catchThrowableOfType(Refusal.class, () -> Root.of(x -> 1, 1, 1, 1e-9, 1e-6, NOT)))
                .isSameAs(NOT);
        assertThat(catchThrowableOfType(Refusal.class, () -> Root.of(x -> x * x + 1, 1, 1, 1e-9, 1e-6, NOT)))
                .isSameAs(NOT);
        assertThat(catchThrowableOfType(Refusal.class, () -> Root.of(x -> Double.NaN, 1, 1, 1e-9, 1e-6, NOT)))
                .isSameAs(NOT);
    }

    /** Strongly bent either way: the end that stays is given half its weight, or it would take a hundred steps. */
    @Test
    void betweenTwoAmountsAStrongBendIsMetSoon() throws Refusal {
        Counted steep = new Counted(x -> Math.pow(x, 9) - 1e-3);
        double root = Math.pow(1e-3, 1 / 9.0);
        assertThat(Root.between(steep, 0, 2, 1e-13, NOT)).isCloseTo(root, within(1e-9));
        assertThat(steep.asked).isLessThan(60);
        Counted flat = new Counted(x -> 1e-3 - Math.pow(2 - x, 9));
        assertThat(Root.between(flat, 0, 2, 1e-13, NOT)).isCloseTo(2 - root, within(1e-9));
        assertThat(flat.asked).isLessThan(60);
    }

    @Test
    void betweenTwoAmountsItMustLie() throws Refusal {
        assertThat(Root.between(x -> x - 1, 0, 3, 1e-9, NOT)).isCloseTo(1, within(1e-9));
        assertThat(Root.between(x -> x, 0, 3, 1e-9, NOT)).isZero();
        assertThat(catchThrowableOfType(Refusal.class, () -> Root.between(x -> x + 1, 0, 3, 1e-9, NOT)))
                .isSameAs(NOT);
        assertThat(catchThrowableOfType(Refusal.class, () -> Root.between(x -> x - 4, 0, 3, 1e-9, NOT)))
                .isSameAs(NOT);
    }
}
