package easewright.editor.model;

import easewright.alter.Truing;
import easewright.check.Once;
import easewright.ease.EaseLine;
import easewright.measure.MateWalk;
import easewright.pattern.Finding;
import easewright.pattern.Severity;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which findings are told of what is to be seen: what is told elsewhere, or is overtaken by what is tried, is left out,
 * and of several about one thing all but the weightiest.
 */
final class NotesTold {
    /** What tells by how much a seam does not fit. */
    static final Set<String> MISFITS = Set.of("mate-mismatch", "mate-drift");

    /** What tells that lines of one level do not meet at a seam. */
    private static final Set<String> LEVELS_APART =
            Set.of("levels-apart", "levels-apart-straight", "levels-apart-eased");

    /** What tells that an ease is less than is asked for. */
    private static final Set<String> SHORT_OF_EASE = Set.of("ease-below-minimum", "ease-below-some-minimum");

    private NotesTold() {}

    /** The weightiest first, before they are put into words. */
    static List<Finding> of(Desk desk) {
        Stream<Finding> file = desk.file().stream()
                .flatMap(f -> f.svg().findings(desk.pattern()).stream())
                .map(f -> closed(f, desk));
        Stream<Finding> trial = desk.shownTrial().stream().flatMap(t -> t.findings().stream());
        Stream<Finding> words = desk.file().stream().flatMap(f -> f.svg().oldWords(desk.shown()).stream());
        Stream<Finding> lines = desk.file().stream().flatMap(f -> BesideLines.of(f, desk.pattern()));
        Stream<Finding> kept = desk.shownTrial().isPresent() ? Stream.empty() : AsDrawn.protectedSince(desk).stream();
        Stream<Finding> read = desk.reading().findings().stream().filter(f -> !isOvertaken(f, desk));
        List<Finding> untold = Stream.of(trial, file, lines, read, kept, words)
                .flatMap(s -> s)
                .filter(f -> !Truing.tells(f))
                .toList();
        List<Finding> all = BesideLines.once(Once.of(untold), desk.pattern()).stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
        Set<String> told = new HashSet<>();
        return all.stream()
                .filter(finding -> subject(finding).map(told::add).orElse(true))
                .toList();
    }

    /** Whether it tells of an ease, a seam or levels as they were, while another is tried: what they are now, the trial tells. */
    private static boolean isOvertaken(Finding finding, Desk desk) {
        Optional<Trial.Shown> trial = desk.shownTrial();
        Object size = finding.values().get("size");
        if (trial.isEmpty() || size != null && !desk.size().map(size::equals).orElse(false)) {
            return false;
        }
        if (LEVELS_APART.contains(finding.code())) {
            return trial.get().findings().stream().anyMatch(now -> isOfSameLevels(now, finding));
        }
        Reading was = desk.reading();
        Reading is = trial.get().reading();
        if (finding.values().get("mate") instanceof String mate) {
            Optional<MateWalk> walk = was.measures().mate(mate);
            return MISFITS.contains(finding.code())
                    && walk.isPresent()
                    && !walk.map(MateWalk::drift)
                            .equals(is.measures().mate(mate).map(MateWalk::drift));
        }
        return finding.values().get("level") instanceof String level
                && SHORT_OF_EASE.contains(finding.code())
                && was.sheet().lines().stream()
                        .filter(line -> line.girth().title().equals(level))
                        .findFirst()
                        .map(line -> isOther(line, is))
                        .orElse(false);
    }

    /** Whether both tell of one level that does not meet at one seam, by whatever it is off. */
    private static boolean isOfSameLevels(Finding one, Finding other) {
        return LEVELS_APART.contains(one.code())
                && Stream.of("level", "seam", "size")
                        .allMatch(what -> Objects.equals(
                                one.values().get(what), other.values().get(what)));
    }

    /** Whether the ease is another there, on either side where left and right have each their own by now. */
    private static boolean isOther(EaseLine line, Reading there) {
        return there.sheet().lines().stream()
                .filter(now -> line.girth().sameAs(now.girth()))
                .noneMatch(now -> now.ease().equals(line.ease()));
    }

    /** A seam, or the ease at a level, of which one note is enough. */
    private static Optional<String> subject(Finding finding) {
        if (finding.values().get("mate") instanceof String mate
                && !finding.code().startsWith("fit-offer")) {
            return Optional.of("mate " + mate);
        }
        if (finding.values().get("level") instanceof String level && SHORT_OF_EASE.contains(finding.code())) {
            return Optional.of("ease " + level);
        }
        return Optional.empty();
    }

    /** A line that did not close in the file is the outline of a piece now: the user has closed it. */
    private static Finding closed(Finding finding, Desk desk) {
        return Notes.openLine(finding)
                .flatMap(desk.pattern()::piece)
                .map(piece -> Finding.of("outline-closed-by-line", Severity.NOTE, piece.name())
                        .with("gap", finding.values().get("gap")))
                .orElse(finding);
    }
}
