package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.suggest.KnownLength;
import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import easewright.svg.Drawing;
import easewright.svg.StatedLengths;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How large the drawing is and why that is believed, in words.
 *
 * @param proved   whether lengths may be trusted
 * @param headline what holds
 * @param size     how large page and largest piece come out by it; empty where there is no piece
 * @param checks   lines that can be checked with a ruler, and what that proves
 * @param offers   scales to choose from, the likeliest first
 * @param lines    lines that can be measured, for whoever would rather choose than click
 * @param stated   what is asked about lengths stated in numbers before another scale is set; empty where there are none
 * @param locked   why the scale cannot be set now; empty if it can
 */
public record ScaleView(
        boolean proved,
        String headline,
        String size,
        List<Choice> checks,
        List<Offer> offers,
        List<Choice> lines,
        Optional<Stated> stated,
        String locked) {
    /** A scale to choose. */
    public record Offer(String words, String take, double mmPerUnit) {}

    /**
     * Lengths that people stated rather than drew.
     *
     * @param ask  what is asked about them
     * @param keep the answer that they are what the paper says
     * @param move the answer that they were taken from the drawing
     */
    public record Stated(String ask, String keep, String move) {}

    /** A line to measure. */
    public record Choice(String words, Line line) {
        @Override
        public String toString() {
            return words;
        }
    }

    public ScaleView {
        checks = List.copyOf(checks);
        offers = List.copyOf(offers);
        lines = List.copyOf(lines);
    }

    public static ScaleView of(Desk desk, Sheet drawn) {
        // Pieces without marks are spoken of by the words written on them.
        Sheet sheet = new Sheet(Suggestions.named(drawn), drawn.loose(), drawn.captions());
        Words words = desk.words();
        if (sheet.pattern().pieces().isEmpty() && sheet.loose().isEmpty()) {
            return nothing(words);
        }
        Scale scale = desk.pattern().scale();
        boolean proved = scale.proof() != Scale.Proof.UNPROVED;
        List<KnownLength> known = KnownLength.on(sheet);
        boolean doubted = known.stream().anyMatch(k -> k.stated().isPresent() && !k.agrees());
        String why = switch (scale.proof()) {
            case PHYSICAL_SIZE -> doubted ? "doubted" : "by-file";
            case KNOWN_LINE -> doubted ? "by-line.doubted" : "by-line";
            case UNPROVED -> "unproved";
        };
        boolean changed = !desk.pattern().changes().isEmpty();
        List<Offer> offers = new ArrayList<>();
        if (!changed) {
            known.forEach(k -> offer(k, scale, words).ifPresent(offers::add));
            if (!proved) {
                offers.addAll(UsualScales.of(desk, sheet));
            }
        }
        return new ScaleView(
                proved && !doubted,
                words.of("editor.scale." + why),
                size(desk, sheet, words),
                proved ? checks(known, scale.proof(), sheet, words) : List.of(),
                offers,
                lines(known, sheet, words),
                changed ? Optional.empty() : stated(desk, words),
                changed ? words.of("editor.scale.locked") : "");
    }

    /** Where nothing is drawn, there is no line to ask for. */
    private static ScaleView nothing(Words words) {
        return new ScaleView(
                false,
                words.of("editor.scale.empty"),
                "",
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                words.of("editor.scale.empty.remedy"));
    }

    private static String size(Desk desk, Sheet sheet, Words words) {
        Scale scale = desk.pattern().scale();
        Optional<Piece> largest = UsualScales.largest(sheet);
        if (largest.isEmpty()) {
            return "";
        }
        double by = scale.mmPerUnitX() / sheet.pattern().scale().mmPerUnitX();
        double tall = largest.get().outline().box().height() * by;
        String piece = largest.get().name();
        if (scale.proof() == Scale.Proof.UNPROVED) {
            return words.of("editor.scale.size.assumed", Map.of("piece", piece, "tall", tall));
        }
        Optional<Drawing> drawing = desk.file().map(f -> f.svg().drawing());
        Optional<Double> page = drawing.flatMap(d ->
                d.page().map(p -> p.width() * scale.mmPerUnitX() / d.scale().mmPerUnitX()));
        return page.isPresent()
                ? words.of("editor.scale.size.page", Map.of("page", page.get(), "piece", piece, "tall", tall))
                : words.of("editor.scale.size", Map.of("piece", piece, "tall", tall));
    }

    /** A square or ruler with words beside it proves the scale; one that agrees already needs no offer. */
    private static Optional<Offer> offer(KnownLength known, Scale scale, Words words) {
        if (known.stated().isEmpty() || known.agrees() && scale.proof() != Scale.Proof.UNPROVED) {
            return Optional.empty();
        }
        double stated = known.stated().getAsDouble();
        String key = known.square() ? "editor.scale.square" : "editor.scale.ruler";
        return Optional.of(new Offer(
                words.of(
                        key,
                        Map.of(
                                "words",
                                known.words(),
                                "drawn",
                                known.drawn(),
                                "of.percent",
                                100 * known.drawn() / stated)),
                words.of("editor.scale.take", Map.of("stated", asWritten(known, stated))),
                scale.mmPerUnitX() * stated / known.drawn()));
    }

    /** The length as it stands on the drawing, which is what a ruler is held against; the length itself where more is said. */
    private static Object asWritten(KnownLength known, double stated) {
        try {
            Lengths.parse(known.words(), LengthUnit.MM);
        } catch (Unreadable notALength) {
            return stated;
        }
        return Lengths.saysItsUnit(known.words()) ? Lengths.together(known.words()) : stated;
    }

    /** What another scale means for allowances and the like cannot be known, only asked. */
    private static Optional<Stated> stated(Desk desk, Words words) {
        List<Double> lengths = StatedLengths.of(desk.pattern());
        if (lengths.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Object> values = Map.of("count", lengths.size(), "length", lengths.get(0));
        return Optional.of(new Stated(
                words.of("editor.scale.stated", values),
                words.of("editor.scale.stated.keep"),
                words.of("editor.scale.stated.move")));
    }

    /** A length may be the very one from which the scale was set: then it measures what it says, and proves nothing. */
    private static List<Choice> checks(List<KnownLength> known, Scale.Proof proof, Sheet sheet, Words words) {
        List<KnownLength> agreeing = known.stream().filter(KnownLength::agrees).toList();
        boolean set = proof == Scale.Proof.KNOWN_LINE && !agreeing.isEmpty();
        List<Choice> checks = new ArrayList<>();
        if (set) {
            checks.add(check("editor.scale.check.set", agreeing.get(0), words));
        }
        agreeing.stream()
                .skip(set ? 1 : 0)
                .findFirst()
                .map(k -> check("editor.scale.check.agrees", k, words))
                .or(() -> longest(sheet)
                        .map(c -> new Choice(
                                words.of(
                                        "editor.scale.check.line",
                                        Map.of(
                                                "piece",
                                                c.words(),
                                                "drawn",
                                                c.line().length())),
                                c.line())))
                .ifPresent(checks::add);
        return checks;
    }

    private static Choice check(String key, KnownLength known, Words words) {
        return new Choice(words.of(key, Map.of("words", known.words(), "drawn", known.drawn())), known.line());
    }

    /** The longest straight line on any piece, with the piece's name. */
    private static Optional<Choice> longest(Sheet sheet) {
        return sheet.pattern().pieces().stream()
                .flatMap(p -> longest(p).map(line -> new Choice(p.name(), line)).stream())
                .max(Comparator.comparingDouble(c -> c.line().length()));
    }

    private static Optional<Line> longest(Piece piece) {
        return piece.outline().segments().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .max(Comparator.comparingDouble(Segment::length));
    }

    private static List<Choice> lines(List<KnownLength> known, Sheet sheet, Words words) {
        List<Choice> lines = new ArrayList<>();
        for (KnownLength k : known) {
            String key = k.square() ? "editor.scale.line.square" : "editor.scale.line.ruler";
            lines.add(new Choice(words.of(key, Map.of("words", k.words())).strip(), k.line()));
        }
        for (Piece piece : sheet.pattern().pieces()) {
            longest(piece)
                    .ifPresent(line -> lines.add(
                            new Choice(words.of("editor.scale.line.piece", Map.of("piece", piece.name())), line)));
        }
        return lines;
    }
}
