package easewright.editor.model;

import easewright.alter.Refusal;
import easewright.alter.Replay;
import easewright.alter.SizeUp;
import easewright.alter.StepRefused;
import easewright.pattern.Pattern;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the change does beside what a larger (or smaller) size would have done, in words.
 *
 * @param intro  what is compared
 * @param own    the size of the file's own that is compared; empty where the pieces are scaled
 * @param larger whether that other size is a larger one
 * @param lines  empty where there is nothing to compare yet
 */
public record SizeWords(String intro, Optional<String> own, boolean larger, List<Line> lines) {
    /** Changes smaller than this are none at the cutting table, mm. */
    private static final double NONE = 0.25;

    /** A size that differs by less than this share is the same one. */
    private static final double SAME_SIZE = 5e-4;

    public SizeWords {
        lines = List.copyOf(lines);
    }

    /**
     * One measure; both changes are signed figures in the unit of the column, or "the same".
     *
     * @param asked whether this is what shall change
     * @param here  by the change
     * @param size  by the other size
     * @param said  all of it in a sentence, for those who do not see the columns
     */
    public record Line(String name, boolean asked, String before, Cell here, Cell size, String said) {}

    /** One change. */
    public record Cell(String words, boolean same) {}

    public static SizeWords of(Desk desk) {
        Words words = desk.words();
        Pattern before = desk.shownTrial().isPresent() ? desk.pattern() : unchanged(desk);
        Optional<String> level = desk.wanted().map(Wanted::level);
        if (level.isEmpty() || desk.shown().changes().equals(before.changes())) {
            return nothing(words.of("editor.size.none"));
        }
        try {
            SizeUp size = SizeUp.of(before, desk.shown(), level.get(), desk.size());
            double by = size.wholeBy() - 1;
            if (Math.abs(by) < SAME_SIZE) {
                return nothing(words.of("editor.size.no-girth", Map.of("level", level.get())));
            }
            List<Line> lines = new ArrayList<>();
            for (SizeUp.Line line : size.lines()) {
                boolean asked = line.kind() == SizeUp.Kind.GIRTH && line.name().equals(level.get());
                lines.add(line(line, asked, words));
            }
            String key = size.own().isPresent() ? "editor.size.intro.own" : "editor.size.intro";
            String intro = words.of(
                    key + (by > 0 ? ".larger" : ".smaller"),
                    Map.of(
                            "level", level.get(),
                            "girth", size.target(),
                            "size", size.own().orElse(""),
                            "by.percent", Math.abs(by) * 100));
            return new SizeWords(intro, size.own(), by > 0, aligned(lines));
        } catch (Refusal refusal) {
            return nothing(words.problem(refusal.code(), refusal.values()));
        }
    }

    private static SizeWords nothing(String why) {
        return new SizeWords(why, Optional.empty(), true, List.of());
    }

    /** The pattern without its changes, as it is marked now. */
    private static Pattern unchanged(Desk desk) {
        try {
            return new Replay(desk.pattern(), desk.history().states()).to(List.of());
        } catch (StepRefused notToBeRetraced) {
            return desk.pattern();
        }
    }

    private static Line line(SizeUp.Line line, boolean asked, Words words) {
        String key = "editor.size." + line.kind().name().toLowerCase(java.util.Locale.ROOT);
        String name = words.of(key, Map.of("name", line.name()));
        double here = line.local() - line.before();
        double size = line.whole() - line.before();
        String said = words.of(
                "editor.size.said",
                Map.of("name", name, "before", line.before(), "here", said(here, words), "size", said(size, words)));
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

    /** The lengths by themselves, and both columns of changes alike, since they are compared. */
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
