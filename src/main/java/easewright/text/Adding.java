package easewright.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Lengths that are added up, each so and so many times, told so that who multiplies and adds them finds their sum as it is
 * told. Each is told as any length is or one step beside that; where no such steps come to the sum, in inches as few as
 * possible of them in halves of a step. Equal lengths are told alike, or else a step apart where only that comes to the sum.
 */
public final class Adding {
    /** What equal lengths may differ by, mm: less than is told of any length. */
    private static final double ALIKE = 0.02;

    /** What it costs to tell a length in halves of a step: more than rounding all of them does. */
    private static final double FINER = 1e6;

    private static final double NONE = 1e-6;

    private final double[] each;
    private final int[] times;
    private final double sum;
    private final LengthUnit unit;
    private final double[] told;

    /** @param sum as it is told, mm */
    Adding(double[] each, int[] times, double sum, LengthUnit unit) {
        this.each = each;
        this.times = times;
        this.sum = sum;
        this.unit = unit;
        this.told = told();
    }

    /** The lengths as they are told, in their order, with the unit and as many places as it takes. */
    public List<String> said() {
        return Arrays.stream(told)
                .mapToObj(mm -> unit == LengthUnit.INCH
                        ? Lengths.format(mm, unit, 25.4 / Lengths.FINEST)
                        : Lengths.exactly(mm, unit))
                .toList();
    }

    /** Whether they come to the sum: three equal parts may not, nor pieces cut twice where it is an odd half of a millimetre. */
    public boolean addsUp() {
        return off(told) < NONE;
    }

    private double off(double[] lengths) {
        double all = 0;
        for (int i = 0; i < lengths.length; i++) {
            all += lengths[i] * times[i];
        }
        return Math.abs(all - sum);
    }

    private double[] told() {
        double tape = Lengths.step(sum, unit);
        List<List<Integer>> alike = alike();
        List<List<Integer>> apart =
                IntStream.range(0, each.length).mapToObj(List::of).toList();
        // Half of a sixteenth can be seen on a tape. Half of half a millimetre, or a 64th, is no figure for anybody.
        int finest = unit == LengthUnit.INCH ? 2 : 1;
        for (List<List<Integer>> groups : List.of(alike, apart)) {
            for (int parts = 1; parts <= finest; parts++) {
                double step = tape / parts;
                Way exact = ways(groups, tape, parts).get(Math.round(sum / step));
                if (exact != null && Math.abs(Math.rint(sum / step) * step - sum) < NONE) {
                    return exact.told(groups, each.length, step);
                }
            }
        }
        double[] equal = nearest(alike, tape);
        return off(equal) < tape + NONE ? equal : nearest(apart, tape);
    }

    private double[] nearest(List<List<Integer>> groups, double tape) {
        Way nearest = new Way(0, new long[groups.size()]);
        double least = Double.POSITIVE_INFINITY;
        for (Map.Entry<Long, Way> way : ways(groups, tape, 1).entrySet()) {
            double off = Math.abs(way.getKey() * tape - sum);
            boolean nearer = off < least - NONE;
            if (nearer || off < least + NONE && way.getValue().cost < nearest.cost) {
                nearest = way.getValue();
                least = Math.min(least, off);
            }
        }
        return nearest.told(groups, each.length, tape);
    }

    /** Lengths that are equal, by their places. */
    private List<List<Integer>> alike() {
        List<List<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < each.length; i++) {
            double mm = each[i];
            List<Integer> own = groups.stream()
                    .filter(g -> Math.abs(each[g.get(0)] - mm) < ALIKE)
                    .findFirst()
                    .orElse(null);
            if (own == null) {
                own = new ArrayList<>();
                groups.add(own);
            }
            own.add(i);
        }
        return groups;
    }

    /** The cheapest way to each sum that can be come to, by how many steps that is. */
    private Map<Long, Way> ways(List<List<Integer>> groups, double tape, int parts) {
        double step = tape / parts;
        Map<Long, Way> ways = new TreeMap<>(Map.of(0L, new Way(0, new long[groups.size()])));
        for (int g = 0; g < groups.size(); g++) {
            double mm = each[groups.get(g).get(0)];
            int count = groups.get(g).stream().mapToInt(i -> times[i]).sum();
            long low = (long) Math.ceil((mm - tape) / step - NONE);
            long high = (long) Math.floor((mm + tape) / step + NONE);
            Map<Long, Way> longer = new TreeMap<>();
            for (Map.Entry<Long, Way> way : ways.entrySet()) {
                for (long steps = low; steps <= high; steps++) {
                    double off = (steps * step - mm) / tape;
                    double cost = count * off * off + (steps % parts == 0 ? 0 : FINER);
                    longer.merge(
                            way.getKey() + steps * count,
                            way.getValue().with(cost, g, steps),
                            (one, other) -> other.cost < one.cost ? other : one);
                }
            }
            ways = longer;
        }
        return ways;
    }

    /** How many steps each of the lengths is told as, and how far that is from the truth. */
    private record Way(double cost, long[] steps) {
        Way with(double more, int which, long is) {
            long[] all = steps.clone();
            all[which] = is;
            return new Way(cost + more, all);
        }

        double[] told(List<List<Integer>> groups, int count, double step) {
            double[] told = new double[count];
            for (int g = 0; g < groups.size(); g++) {
                for (int i : groups.get(g)) {
                    told[i] = steps[g] * step;
                }
            }
            return told;
        }
    }
}
