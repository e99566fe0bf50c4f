package easewright.editor.mark;

import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.LevelSeams;
import easewright.measure.Measures;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Lays the lines of a level so that they meet at the seams that it comes to. */
public final class LevelMeetings {
    /** What is missed by less than this is missed by no more, mm. */
    private static final double SAME = 0.01;

    private LevelMeetings() {}

    /**
     * Lays a level so that it meets at every seam that it comes to: from its first piece on, each piece follows the one
     * it is sewn to.
     */
    public static Pattern meet(Pattern pattern, String level) {
        return meet(pattern, level, Set.of());
    }

    /** The same where some pieces keep it as it lies, by their ids: the others follow them. */
    public static Pattern meet(Pattern pattern, String level, Set<String> kept) {
        Set<String> settled = new HashSet<>(kept);
        Pattern now = pattern;
        Pattern alone = alone(now, level);
        GarmentMeasures measured = Measures.of(alone);
        Optional<LevelSeams.Meeting> next = next(alone, measured, level, settled);
        while (next.isPresent()) {
            LevelSeams.Meeting meeting = next.get();
            boolean second = !settled.contains(meeting.second());
            if (!Cutting.same(meeting.off())) {
                now = second
                        ? LevelEdits.place(now, meeting.second(), level, meeting.onSecond())
                        : LevelEdits.place(now, meeting.first(), level, meeting.onFirst());
            }
            settled.add(meeting.first());
            settled.add(meeting.second());
            Pattern before = alone;
            alone = alone(now, level);
            measured = Measures.again(alone, before, measured);
            next = next(alone, measured, level, settled);
        }
        return now;
    }

    /**
     * The same where it helps: fewer seams, or less, are missed then. Straight lines cannot meet at both seams of two
     * pieces whose corners lie at different heights.
     */
    public static Optional<Pattern> better(Pattern pattern, String level, Set<String> kept) {
        double[] now = missed(pattern, level);
        return Stream.of(kept, Set.<String>of())
                .map(k -> meet(pattern, level, k))
                .filter(met -> isLess(missed(met, level), now))
                .findFirst();
    }

    /** At how many seams a level misses itself, and by how much at most, mm. */
    private static double[] missed(Pattern pattern, String level) {
        Pattern alone = alone(pattern, level);
        double[] off = meetings(alone, Measures.of(alone), level).stream()
                .filter(m -> !m.meets())
                .mapToDouble(m -> Math.abs(m.off()))
                .toArray();
        return new double[] {off.length, DoubleStream.of(off).max().orElse(0)};
    }

    private static boolean isLess(double[] met, double[] now) {
        return met[0] < now[0] || met[0] == now[0] && now[1] - met[1] > SAME;
    }

    /** A seam of which one piece is settled and the other is not, or at first any. */
    private static Optional<LevelSeams.Meeting> next(
            Pattern alone, GarmentMeasures measured, String level, Set<String> settled) {
        List<LevelSeams.Meeting> open = meetings(alone, measured, level).stream()
                .filter(m -> !settled.contains(m.first()) || !settled.contains(m.second()))
                .toList();
        return open.stream()
                .filter(m -> settled.contains(m.first()) || settled.contains(m.second()))
                .findFirst()
                .or(() -> open.stream().findFirst());
    }

    /** The pattern as if it had only this level, so that only this one is measured. */
    static Pattern alone(Pattern pattern, String level) {
        return pattern.withLevels(pattern.level(level).stream().toList());
    }

    /** The seams that a level comes to on both sides, in every size. */
    static List<LevelSeams.Meeting> meetings(Pattern pattern, GarmentMeasures measures, String level) {
        List<LevelSeams.Meeting> all = new ArrayList<>();
        boolean several = PatternPart.severalSizes(pattern);
        for (Pattern garment : PatternPart.garments(pattern)) {
            Optional<String> size =
                    PatternPart.sizes(garment).stream().findFirst().filter(s -> several);
            all.addAll(LevelSeams.of(garment, size.map(measures::inSize).orElse(measures)));
        }
        return all.stream().filter(m -> m.level().equals(level)).toList();
    }
}
