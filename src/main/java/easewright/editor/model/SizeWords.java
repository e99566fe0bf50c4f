package easewright.editor.model;

import easewright.alter.Refusal;
import easewright.alter.SizeUp;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the change does beside what a larger (or smaller) size would have done, in words.
 *
 * @param levels the levels that were changed, among which the person chooses
 * @param level  the one of them at which the two ways are compared; empty where there is none
 * @param intro  what is compared
 * @param own    the size of the file's own that is compared; empty where the pieces are scaled
 * @param larger whether that other size is a larger one
 * @param other  what that other size is called
 * @param lines  empty where there is nothing to compare yet
 */
public record SizeWords(
        List<String> levels,
        Optional<String> level,
        String intro,
        Optional<String> own,
        boolean larger,
        String other,
        List<Line> lines) {
    /** Changes smaller than this are none at the cutting table, mm. */
    private static final double NONE = 0.25;

    /** A size that differs by less than this share is the same one. */
    private static final double SAME_SIZE = 5e-4;

    public SizeWords {
        levels = List.copyOf(levels);
        lines = List.copyOf(lines);
    }

    /**
     * One measure; both changes are signed figures in the unit of the column, or "the same".
     *
     * @param asked whether this is a girth that was to change: it is no drift
     * @param here  by the change
     * @param size  by the other size
     * @param said  all of it in a sentence, for those who do not see the columns
     */
    public record Line(String name, boolean asked, String before, Cell here, Cell size, String said) {}

    /** One change. */
    public record Cell(String words, boolean same) {}

    /** Compared at the level at work if that was changed, or else at the one that was changed most. */
    public static SizeWords of(Desk desk) {
        return of(desk, Optional.empty());
    }

    /**
     * Compared at a level.
     *
     * @param chosen by the person; what was not changed counts for nothing
     */
    public static SizeWords of(Desk desk, Optional<String> chosen) {
        Words words = desk.words();
        Pattern before = desk.shownTrial().isPresent() ? desk.pattern() : AsDrawn.of(desk);
        List<ChangeNote> changes = desk.shown().changes();
        Optional<String> atWork = desk.wanted().map(Wanted::level);
        if (atWork.isEmpty() || changes.equals(before.changes())) {
            return nothing(words.of("editor.size.none"));
        }
        List<String> levels =
                ChangedLevels.of(desk.shown(), changes.size() - before.changes().size());
        Optional<String> level = chosen.filter(levels::contains)
                .or(() -> atWork.filter(levels::contains))
                .or(() -> ChangedLevels.most(levels, before, desk.shown(), desk.size()))
                .or(() -> atWork);
        try {
            SizeUp size = SizeUp.of(before, desk.shown(), level.get(), desk.size());
            double by = size.wholeBy() - 1;
            if (Math.abs(by) < SAME_SIZE) {
                return nothing(words.of("editor.size.no-girth", Map.of("level", level.get())), levels, level);
            }
            String other = words.of(
                    "editor.size.other." + (size.own().isPresent() ? "own" : by > 0 ? "larger" : "smaller"),
                    Map.of("size", size.own().orElse("")));
            List<Line> lines = new ArrayList<>();
            for (SizeUp.Line line : size.lines()) {
                boolean asked = line.kind() == SizeUp.Kind.GIRTH
                        && (line.name().equals(level.get()) || levels.contains(line.name()));
                lines.add(line(line, asked, other, words));
            }
            String key = size.own().isPresent() ? "editor.size.intro.own" : "editor.size.intro";
            String intro = words.of(
                    key + (by > 0 ? ".larger" : ".smaller"),
                    Map.of(
                            "level", level.get(),
                            "girth", size.target(),
                            "size", size.own().orElse(""),
                            "by.percent", Math.abs(by) * 100));
            List<Line> shown = desk.unit() == LengthUnit.INCH ? lines : aligned(lines);
            return new SizeWords(levels, level, intro, size.own(), by > 0, other, shown);
        } catch (Refusal refusal) {
            return nothing(words.problem(refusal.code(), refusal.values()), levels, level);
        }
    }

    private static SizeWords nothing(String why) {
        return nothing(why, List.of(), Optional.empty());
    }

    private static SizeWords nothing(String why, List<String> levels, Optional<String> level) {
        return new SizeWords(levels, level, why, Optional.empty(), true, "", List.of());
    }

    private static Line line(SizeUp.Line line, boolean asked, String other, Words words) {
        String key = line.kind() == SizeUp.Kind.EDGES
                ? "editor.size.edges." + line.name()
                : "editor.size." + line.kind().name().toLowerCase(java.util.Locale.ROOT);
        String name = words.of(key, Map.of("name", line.name()));
        double here = line.local() - line.before();
        double size = line.whole() - line.before();
        String said = words.of(
                "editor.size.said",
                Map.of(
                        "name", name,
                        "before", line.before(),
                        "here", said(here, words),
                        "other", other,
                        "size", said(size, words)));
        return new Line(name, asked, words.figure(line.before()), cell(here, words), cell(size, words), said);
    }

    private static Cell cell(double change, Words words) {
        boolean same = isNone(change);
        return new Cell(same ? words.of("editor.size.same") : words.signedFigure(change), same);
    }

    private static String said(double change, Words words) {
        return isNone(change) ? words.of("editor.size.same") : words.signed(change);
    }

    private static boolean isNone(double change) {
        return Math.abs(change) < NONE;
    }

    /** Decimals with as many places; the lengths by themselves, and both columns of changes alike, since they are compared. */
    private static List<Line> aligned(List<Line> lines) {
        List<String> before = AlignedFigures.of(lines.stream().map(Line::before).toList());
        List<String> changes = AlignedFigures.of(
                Stream.concat(lines.stream().map(Line::here), lines.stream().map(Line::size))
                        .map(Cell::words)
                        .toList());
        List<String> here = changes.subList(0, lines.size());
        List<String> size = changes.subList(lines.size(), changes.size());
        List<Line> aligned = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            aligned.add(new Line(
                    line.name(),
                    line.asked(),
                    before.get(i),
                    new Cell(here.get(i), line.here().same()),
                    new Cell(size.get(i), line.size().same()),
                    line.said()));
        }
        return aligned;
    }
}
