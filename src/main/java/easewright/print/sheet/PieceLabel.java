package easewright.print.sheet;

import easewright.alter.Scope;
import easewright.ease.EaseLine;
import easewright.pattern.ChangeNote;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.print.ChangeWords;
import easewright.print.Reading;
import easewright.text.Words;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is written on a piece: its name, how it is cut, the ease at its levels, what was changed, for whom and when. */
final class PieceLabel {
    /** Changes beyond this many are only counted: a label is no list. */
    private static final int CHANGES_TOLD = 3;

    /** Names with more letters than this are set smaller. */
    private static final int LONG = 24;

    private final Reading reading;
    private final PrintOrder order;
    private final Words words;

    PieceLabel(Reading reading, PrintOrder order, Words words) {
        this.reading = reading;
        this.order = order;
        this.words = words;
    }

    /**
     * One line of a label.
     *
     * @param size mm
     */
    record Line(String text, double size, boolean bold) {
        static Line plain(String text) {
            return new Line(text, 4.2, false);
        }
    }

    /**
     * The lines, the most needed first.
     *
     * @param size    the piece's size, or empty
     * @param changed whether the piece differs from how it was before the recorded changes
     */
    List<Line> lines(Piece piece, CutLine cut, String size, boolean changed) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(piece.name(), piece.name().length() > LONG ? 7 : 10, true));
        lines.add(new Line(cutting(piece, words), 6, true));
        if (!size.isEmpty()) {
            lines.add(Line.plain(words.of("print.label.size", Map.of("size", size))));
        }
        lines.add(Line.plain(words.of(cut.stitched() ? "print.label.allowance" : "print.label.no-allowance")));
        if (piece.grain().isEmpty()) {
            lines.add(Line.plain(words.of("print.label.no-grain")));
        }
        for (LevelMark mark : piece.levels()) {
            if (mark.counts()) {
                ease(mark.level(), piece).ifPresent(text -> lines.add(Line.plain(text)));
            }
        }
        changes(piece, changed).forEach(text -> lines.add(Line.plain(text)));
        String wearer = reading.pattern().body(piece.size()).name();
        String whose = wearer.isBlank() ? "" : words.of("print.label.for", Map.of("wearer", wearer)) + ", ";
        lines.add(Line.plain(order.name() + ", " + whose + day(order.date())));
        return lines;
    }

    static List<Line> enlarged(List<Line> lines, double times) {
        return lines.stream()
                .map(l -> new Line(l.text(), l.size() * times, l.bold()))
                .toList();
    }

    /** How often, and whether on the fold. */
    static String cutting(Piece piece, Words words) {
        String key = piece.onFold() ? "fold" : piece.times() == 1 ? "one" : piece.times() == 2 ? "pair" : "several";
        return words.of("print.cut." + key, Map.of("times", piece.times()));
    }

    static String day(LocalDate date) {
        return DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH).format(date);
    }

    /** The ease of the girth that the piece is part of, which is that of its own size. */
    private Optional<String> ease(String level, Piece piece) {
        return reading.sheet().lines().stream()
                .filter(l -> l.level().name().equals(level))
                .filter(l -> l.girth().parts().stream()
                        .anyMatch(part -> part.pieceId().equals(piece.id())))
                .findFirst()
                .map(this::ease);
    }

    private String ease(EaseLine line) {
        if (line.ease().isEmpty()) {
            return words.of("print.label.finished", Map.of("level", line.name(), "finished", line.finished()));
        }
        return words.of(
                "print.label.ease",
                Map.of(
                        "level", line.name(),
                        "ease.signed", line.ease().getAsDouble(),
                        "of.percent", line.percent().orElse(0),
                        "finished", line.finished()));
    }

    private List<String> changes(Piece piece, boolean changed) {
        Pattern pattern = reading.pattern();
        if (pattern.changes().isEmpty()) {
            return List.of();
        }
        if (!changed) {
            return List.of(words.of("print.label.unchanged"));
        }
        List<String> told = new ArrayList<>();
        List<ChangeNote> notes =
                pattern.changes().stream().filter(n -> touches(n, piece)).toList();
        ChangeWords change = new ChangeWords(words);
        for (ChangeNote note : notes.subList(0, Math.min(CHANGES_TOLD, notes.size()))) {
            told.add(words.of("print.label.changed", Map.of("change", change.brief(note, pattern))));
        }
        if (notes.size() > CHANGES_TOLD) {
            told.add(words.of("print.label.more", Map.of("count", notes.size() - CHANGES_TOLD)));
        }
        return told;
    }

    /** Whether a change names the piece, or names none and works at a level that the piece has. */
    private static boolean touches(ChangeNote note, Piece piece) {
        Scope scope = Scope.of(note);
        boolean elsewhere = scope.size().isPresent() && !scope.size().equals(piece.size())
                || !scope.side().belongsTo(piece.side());
        if (elsewhere) {
            return false;
        }
        List<String> named = note.settings().entrySet().stream()
                .filter(e -> e.getKey().startsWith("piece") || e.getKey().startsWith("edge"))
                .map(e -> e.getKey().startsWith("edge") && e.getValue().contains("/")
                        ? e.getValue().substring(0, e.getValue().lastIndexOf('/'))
                        : e.getValue())
                .toList();
        if (named.isEmpty()) {
            return piece.level(note.settings().getOrDefault("level", "")).isPresent();
        }
        // A copy for the other side is named in records as the piece that it is a copy of.
        String ending = PieceCopy.ending(piece.side());
        return named.contains(piece.id())
                || named.contains(piece.name())
                || named.stream().anyMatch(n -> PieceCopy.id(n, ending).equals(piece.id()));
    }
}
