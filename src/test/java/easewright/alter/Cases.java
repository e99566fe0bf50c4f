package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.Pattern;
import java.util.function.LongFunction;

/** Random changes of random patterns, each named by its seed, and what must hold of every one of them. */
final class Cases {
    private Cases() {}

    /** A change to be made. */
    record Case<A extends Alteration>(Pattern before, A change) {}

    /** What must hold of a change that was made. */
    interface Property<A extends Alteration> {
        void on(long seed, Pattern before, A change, Altered after) throws Refusal;
    }

    /** Makes each change; at most one in five may be refused, and each refusal must say why. */
    static <A extends Alteration> void all(long firstSeed, int asked, LongFunction<Case<A>> make, Property<A> property)
            throws Refusal {
        int cases = RandomCloth.cases(asked);
        int refused = 0;
        for (long seed = firstSeed; seed < firstSeed + cases; seed++) {
            Case<A> one = make.apply(seed);
            Altered after;
            try {
                after = one.change().apply(one.before());
            } catch (Refusal refusal) {
                assertThat(refusal.code()).as("seed %d", seed).isNotBlank();
                refused++;
                continue;
            }
            property.on(seed, one.before(), one.change(), after);
        }
        assertThat(refused).as("refused of %d", cases).isLessThan(cases / 5);
    }
}
