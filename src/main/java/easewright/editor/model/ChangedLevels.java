package easewright.editor.model;

import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** At which levels a pattern was to be changed: what changes there is no drift. */
final class ChangedLevels {
    private static final Set<Way.Aim> GIRTHS = EnumSet.of(Way.Aim.GIRTH, Way.Aim.GAP);

    private ChangedLevels() {}

    /**
     * The names of those levels in the order of the pattern, each once.
     *
     * @param last how many of the changes are meant, counted from the last one
     */
    static List<String> of(Pattern changed, int last) {
        List<ChangeNote> notes = changed.changes();
        List<String> named = notes.subList(Math.max(0, notes.size() - last), notes.size()).stream()
                .flatMap(ChangedLevels::named)
                .toList();
        return changed.levels().stream()
                .map(level -> level.name())
                .filter(named::contains)
                .toList();
    }

    /** A way has one level at which it changes the girth, if it changes any: its first. */
    private static Stream<String> named(ChangeNote note) {
        return Ways.of(note.method())
                .filter(way -> GIRTHS.contains(way.aim()))
                .map(Way::settings)
                .orElse(List.of())
                .stream()
                .filter(setting -> setting.kind() == Setting.Kind.LEVEL)
                .limit(1)
                .flatMap(setting -> Stream.ofNullable(note.settings().get(setting.key())));
    }

    /** Of several levels the one whose girth differs most, in the size at work; empty if there are none. */
    static Optional<String> most(List<String> levels, Pattern before, Pattern after, Optional<String> size) {
        if (levels.size() < 2) {
            return levels.stream().findFirst();
        }
        GarmentMeasures was = measures(before, size);
        GarmentMeasures is = measures(after, size);
        return levels.stream().max(Comparator.comparingDouble(level -> Math.abs(girth(is, level) - girth(was, level))));
    }

    private static GarmentMeasures measures(Pattern pattern, Optional<String> size) {
        return Measures.of(
                size.isPresent() ? PatternPart.ofSize(pattern, size.get()).alone() : pattern);
    }

    private static double girth(GarmentMeasures measures, String level) {
        return measures.girth(level).map(girth -> girth.finished()).orElse(0.0);
    }
}
