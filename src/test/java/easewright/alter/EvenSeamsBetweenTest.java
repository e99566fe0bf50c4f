package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.EvenSeamsPropertiesTest.sewnAtTheSides;
import static easewright.alter.EvenSeamsTest.LEVELS;
import static easewright.alter.EvenSeamsTest.half;
import static easewright.alter.EvenSeamsTest.moved;
import static easewright.alter.EvenSeamsTest.sewn;
import static easewright.alter.EvenSeamsTest.side;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Seams evened between two fixed points, where no end can give way. */
class EvenSeamsBetweenTest {
    /**
     * Fixed at waist and hem, the seams share the amount so that both change alike: with x of an inch on a slant s over 8 in
     * and 14 in below, √((s + x)² + 8²) + √(x² + 14²) grows by the same on both, solved here by halving.
     */
    @Test
    void w4BetweenFixedEndsIsSharedUnevenly() throws Refusal {
        Piece alone = half("alone", 1);
        for (boolean third : new boolean[] {false, true}) {
            Pattern two = sewn(half("front", 1.5), half("back", 0.75));
            Pattern before = third
                    ? pattern(LEVELS, two.pieces().get(0), two.pieces().get(1), alone)
                            .withMates(two.mates())
                    : two;
            for (double inch : new double[] {1, 0.4}) {
                double amount = 2 * INCH * inch * (third ? 1.5 : 1);
                SeamChange change =
                        SeamChange.at("hip", amount).withTaper(Taper.STRAIGHT).evened();
                Altered altered = change.apply(before);
                double front = taken(inch);
                assertThat(moved(before, altered, 0)).isCloseTo(front * INCH, within(1e-3));
                assertThat(moved(before, altered, 1)).isCloseTo((inch - front) * INCH, within(1e-3));
                assertThat(side(altered.pattern(), 0) - side(before, 0))
                        .isCloseTo(side(altered.pattern(), 1) - side(before, 1), within(0.01));
                assertThat(girth(altered.pattern(), "hip") - girth(before, "hip"))
                        .isCloseTo(amount, within(1e-6));
                double whole = third ? 1.5 : 1;
                assertThat(percent(altered, "front")).isCloseTo(100 * front / inch / whole, within(0.01));
                assertThat(percent(altered, "back")).isCloseTo(100 * (inch - front) / inch / whole, within(0.01));
                if (third) {
                    assertThat(percent(altered, "alone")).isCloseTo(100 / 3.0, within(1e-6));
                }
                assertThat(altered.pattern().changes()).containsExactly(change.note());
            }
        }
    }

    /** How much of some inches the seam of the greater slant takes. */
    private static double taken(double inch) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double share = (low + high) / 2;
            double more = grows(1.5, inch * share) - grows(0.75, inch * (1 - share));
            if (more > 0) {
                high = share;
            } else {
                low = share;
            }
        }
        return inch * low;
    }

    private static double grows(double slant, double by) {
        return Math.hypot(slant + by, 8) - Math.hypot(slant, 8) + Math.hypot(by, 14) - 14;
    }

    private static double percent(Altered altered, String piece) {
        return altered.findings().stream()
                .filter(f -> f.code().equals("seam-share") && f.piece().equals(piece))
                .mapToDouble(f -> (Double) f.values().get("part.percent"))
                .findFirst()
                .orElseThrow();
    }

    /** Two random pieces sewn at their sides, and a change of both that is not evened. */
    private record Drawn(Pattern before, SeamChange plain) {
        static Drawn of(long seed) {
            RandomCloth random = new RandomCloth(seed);
            Piece one = random.piece("front");
            Piece two = RandomCloth.mapped(random.piece("back"), Affine.translation(1000, 0));
            Pattern before = sewnAtTheSides(one, two);
            SeamChange plain = SeamChange.at("level", random.between(-50, 60))
                    .withTaper(random.chance(0.5) ? Taper.SMOOTH : Taper.STRAIGHT);
            return new Drawn(before, plain);
        }
    }

    /** Between fixed points no end can give way: shares or a bow do it, without a new bend, or the largest amount is said. */
    @Test
    void betweenFixedPointsItIsExactOrRefusedWithTheLargestAmount() throws Refusal {
        Worst girth = new Worst("even between fixed points, girth, mm");
        Worst drift = new Worst("even between fixed points, drift, mm");
        Worst tangents = new Worst("even between fixed points, tangents at fixed points");
        int cases = RandomCloth.cases(30);
        int made = 0;
        for (long seed = 1; seed <= cases; seed++) {
            Drawn drawn = Drawn.of(seed);
            Pattern before = drawn.before();
            SeamChange plain = drawn.plain();
            Pattern drifted = plain.apply(before).pattern();
            Pattern after;
            try {
                after = plain.evened().apply(before).pattern();
            } catch (Refusal refusal) {
                assertThat(refusal.code()).as("seed %d", seed).isEqualTo("even-not-possible");
                double largest = refusal.largest().orElseThrow();
                assertThat(largest * plain.amount()).as("seed %d", seed).isGreaterThanOrEqualTo(0);
                assertThat(Math.abs(largest)).as("seed %d", seed).isLessThan(Math.abs(plain.amount()));
                continue;
            }
            made++;
            girth.meet(seed, Math.abs(girth(after, "level") - girth(before, "level") - plain.amount()));
            drift.meet(seed, Math.abs(Measures.of(after).mates().get(0).drift()));
            for (int i = 0; i < 2; i++) {
                Curve is = sideLine(after, i);
                Curve was = sideLine(drifted, i);
                assertThat(SeamBow.inflections(is)).as("seed %d", seed).isLessThanOrEqualTo(SeamBow.inflections(was));
                if (plain.taper() == Taper.SMOOTH) {
                    tangents.meet(seed, turn(is, sideLine(before, i), false));
                    tangents.meet(seed, turn(is, sideLine(before, i), true));
                }
            }
        }
        assertThat(made).isGreaterThan(cases * 2 / 3);
        girth.within(1e-6);
        drift.within(0.02);
        tangents.within(1e-6);
    }

    /** Which of the two seams is bowed, and where: by the lesser bow, and on the shorter stretches only for want of a longer. */
    @Test
    void theSeamThatNeedsTheLesserBowIsBowed() throws Refusal {
        int choices = 0;
        int shorter = 0;
        for (long seed = 1; seed <= 60; seed++) {
            Drawn drawn = Drawn.of(seed);
            Pattern before = drawn.before();
            SeamChange plain = drawn.plain();
            OptionalDouble made = bow(() -> plain.evened().apply(before));
            if (made.isEmpty() || made.getAsDouble() == 0) {
                continue;
            }
            List<OptionalDouble> longer = List.of(bow(before, plain, true, false), bow(before, plain, false, false));
            List<OptionalDouble> last = List.of(bow(before, plain, true, true), bow(before, plain, false, true));
            choices += longer.stream().allMatch(OptionalDouble::isPresent) ? 1 : 0;
            shorter += longer.stream().noneMatch(OptionalDouble::isPresent) ? 1 : 0;
            double expected = least(longer).orElseGet(() -> least(last).orElseThrow());
            assertThat(made.getAsDouble()).as("seed %d", seed).isEqualTo(expected);
        }
        assertThat(choices).as("both could be bowed").isPositive();
        assertThat(shorter).as("only the shorter stretch could").isPositive();
    }

    private interface Made {
        Altered make() throws Refusal;
    }

    private static OptionalDouble bow(Pattern before, SeamChange plain, boolean first, boolean shorter) {
        return bow(() -> new RemedySearch(SeamPairs.of(before), plain, new BowPlace(first, shorter))
                .parted()
                .solved());
    }

    private static OptionalDouble bow(Made made) {
        try {
            return OptionalDouble.of(Evening.bow(made.make()));
        } catch (Refusal refusal) {
            return OptionalDouble.empty();
        }
    }

    private static OptionalDouble least(List<OptionalDouble> bows) {
        return bows.stream()
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min();
    }

    private static Curve sideLine(Pattern pattern, int piece) {
        Piece of = pattern.pieces().get(piece);
        return of.edge("side").orElseThrow().on(of.outline());
    }

    /** By how much the directions of two lines differ at one end. */
    private static double turn(Curve one, Curve two, boolean atEnd) {
        Point a = direction(one, atEnd);
        Point b = direction(two, atEnd);
        return Math.abs(Math.atan2(a.cross(b), a.dot(b)));
    }

    private static Point direction(Curve line, boolean atEnd) {
        return atEnd
                ? line.segments().get(line.segments().size() - 1).tangent(1)
                : line.segments().get(0).tangent(0);
    }
}
