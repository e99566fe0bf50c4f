package easewright.alter;

/** The one rule for amounts of changes. */
final class Amounts {
    private Amounts() {}

    static void require(double amount) {
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("The amount of a change must be a number");
        }
    }
}
