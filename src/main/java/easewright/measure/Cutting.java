package easewright.measure;

/**
 * How exactly a pattern need be kept, since cloth is marked, cut and sewn no more exactly (Threads 200, in
 * docs/sources.md 3; docs/decisions/0125-the-same-for-cutting.md).
 */
public final class Cutting {
    /** "I keep my patterns true to 1/16 inch", rounded, mm: what is off by no more is the same for cutting. */
    public static final double SAME = 1.5;

    /** "Many sewers find accuracy to 1/8 inch works" (the same place), rounded, mm. */
    public static final double WORKS = 3;

    private Cutting() {}

    /** Whether nobody need do anything about lengths that differ by so much, mm; with a plus or a minus. */
    public static boolean same(double off) {
        return Math.abs(off) <= SAME;
    }

    /** Whether many sewers accept lengths that differ by so much, mm; with a plus or a minus. */
    public static boolean works(double off) {
        return Math.abs(off) <= WORKS;
    }
}
