package easewright.alter;

import java.util.Optional;

/** A change by an amount that is taken back by the same amount with the other sign. */
sealed interface ByAmount extends Alteration
        permits SeamChange, CentreChange, ParallelSlash, DartIntake, DartToSeam, SleeveWidth, EdgeLength, Lengthen {
    /** In mm; what it is of, the way says. */
    double amount();

    @Override
    default Optional<Alteration> opposite() {
        return Optional.of(withAmount(-amount()));
    }
}
