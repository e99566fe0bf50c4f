package easewright.print.sheet;

import easewright.ease.EaseLine;
import easewright.pattern.ChangeNote;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.pattern.SidePair;
import easewright.print.ChangeWords;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.print.MovedBy;
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
    private final MovedBy moved;
    private final PrintOrder order;
    private final Words words;

    /** @param moved what each piece was moved by */
    PieceLabel(Reading reading, MovedBy moved, PrintOrder order, Words words) {
        this.reading = reading;
        this.moved = moved;
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
     * @param size the piece's size, or empty
     */
    List<Line> lines(Piece piece, CutLine cut, String size) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(piece.name(), piece.name().length() > LONG ? 7 : 10, true));
        Optional<SidePair> pair = SidePair.with(reading.pattern(), piece);
        lines.add(new Line(cutting(piece, pair, words), 6, true));
        if (piece.side() != Side.BOTH) {
            lines.add(Line.plain(words.of("print.label.side." + piece.side().name())));
        }
        if (!size.isEmpty()) {
            lines.add(Line.plain(words.of("print.label.size", Map.of("size", size))));
        }
        boolean half = pair.filter(SidePair::halves).isPresent();
        lines.add(Line.plain(words.of(
                cut.stitched()
                        ? "print.label.allowance"
                        : half ? "print.label.no-allowance.half" : "print.label.no-allowance")));
        if (piece.grain().isEmpty()) {
            lines.add(Line.plain(words.of("print.label.no-grain")));
        }
        for (LevelMark mark : piece.levels()) {
            if (mark.counts()) {
                ease(mark.level(), piece).ifPresent(text -> lines.add(Line.plain(text)));
            }
        }
        changes(piece).forEach(text -> lines.add(Line.plain(text)));
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

    /** How often, and whether on the fold; of a left or right piece that was one for both sides, which way up. */
    static String cutting(Piece piece, Optional<SidePair> pair, Words words) {
        if (pair.isPresent()) {
            String side = pair.get().halves() ? "half" : piece.onFold() ? "side-fold" : "side";
            return words.of(
                    "print.cut." + side,
                    Map.of(
                            "times", piece.times(),
                            "other", pair.get().other(piece).name()));
        }
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
                .map(line ->
                        ease(line, piece.side() != Side.BOTH && !line.level().limb()));
    }

    /** @param half whether the piece is for one side, of a girth that goes round both */
    private String ease(EaseLine line, boolean half) {
        if (line.ease().isEmpty()) {
            return words.of(
                    "print.label.finished",
                    Map.of(
                            "level",
                            half ? words.of("print.label.whole", Map.of("level", line.name())) : line.name(),
                            "finished",
                            GirthText.finished(line, words)));
        }
        return words.of(
                "print.label.ease",
                Map.of(
                        "level",
                        half ? words.of("print.label.whole", Map.of("level", line.name())) : line.name(),
                        "ease.signed",
                        line.ease().getAsDouble(),
                        "of.percent",
                        line.percent().isPresent() ? EaseText.percent(line, words) : 0.0,
                        "finished",
                        GirthText.finished(line, words)));
    }

    private List<String> changes(Piece piece) {
        Pattern pattern = reading.pattern();
        if (pattern.changes().isEmpty()) {
            return List.of();
        }
        List<ChangeNote> notes = moved.piece(piece);
        if (notes.isEmpty()) {
            return List.of(words.of("print.label.unchanged"));
        }
        List<String> told = new ArrayList<>();
        ChangeWords change = new ChangeWords(words);
        for (ChangeNote note : notes.subList(0, Math.min(CHANGES_TOLD, notes.size()))) {
            told.add(words.of("print.label.changed", Map.of("change", change.brief(note, pattern))));
        }
        if (notes.size() > CHANGES_TOLD) {
            told.add(words.of("print.label.more", Map.of("count", notes.size() - CHANGES_TOLD)));
        }
        return told;
    }
}
