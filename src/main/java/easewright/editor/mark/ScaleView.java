package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Segment;
import easewright.pattern.LineKind;
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
 * @param leads    whether the first of them is much likelier than the others
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
        boolean leads,
        List<Choice> lines,
        Optional<Stated> stated,
        String locked) {
    /** Scales that differ by less, relatively, are one: no pen shows the difference. */
    private static final double SAME = 0.005;

    /** A closed line inside that is at least so large a part of the outline is where the piece is sewn. */
    private static final double SEWN = 0.75;

    /**
     * A scale to choose.
     *
     * @param marked the square or ruler by which it would be set
     */
    public record Offer(String words, String take, double mmPerUnit, Optional<KnownLength> marked) {
        private boolean isAs(Offer other) {
            return Math.abs(mmPerUnit / other.mmPerUnit - 1) < SAME;
        }
    }

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
            known.forEach(k -> offer(k, sheet, scale, words).ifPresent(offers::add));
        }
        boolean leads = !offers.isEmpty() || UsualScales.isLikely(desk);
        if (!changed && !proved) {
            List<Offer> surer = List.copyOf(offers);
            UsualScales.of(desk, sheet).stream()
                    .filter(usual -> surer.stream().noneMatch(usual::isAs))
                    .forEach(offers::add);
        }
        return new ScaleView(
                proved && !doubted,
                why.equals("by-line") ? byLine(scale, words) : words.of("editor.scale." + why),
                size(desk, sheet, words),
                proved ? checks(known, scale, sheet, words) : List.of(),
                offers,
                leads,
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
                false,
                List.of(),
                Optional.empty(),
                words.of("editor.scale.empty.remedy"));
    }

    private static String byLine(Scale scale, Words words) {
        if (scale.from().isEmpty()) {
            return words.of("editor.scale.by-line");
        }
        Scale.From from = scale.from().get();
        return switch (from.what()) {
            case SQUARE -> words.of("editor.scale.by-line.square", Map.of("words", from.words()));
            case RULER -> words.of("editor.scale.by-line.ruler", Map.of("words", from.words()));
            case LINE -> words.of("editor.scale.by-line.set");
        };
    }

    private static String size(Desk desk, Sheet sheet, Words words) {
        Scale scale = desk.pattern().scale();
        Optional<Piece> largest = UsualScales.largest(sheet);
        if (largest.isEmpty()) {
            return "";
        }
        double by = scale.mmPerUnitX() / sheet.pattern().scale().mmPerUnitX();
        double tall = largest.get().outline().box().height() * by;
        if (scale.proof() == Scale.Proof.UNPROVED) {
            return words.of(
                    "editor.scale.size.assumed", Map.of("piece", largest.get().name(), "tall", tall));
        }
        String tells = tells(largest.get(), tall, words);
        Optional<Drawing> drawing = desk.file().map(f -> f.svg().drawing());
        Optional<Double> page = drawing.flatMap(d ->
                d.page().map(p -> p.width() * scale.mmPerUnitX() / d.scale().mmPerUnitX()));
        return page.isPresent()
                ? words.of("editor.scale.size.page", Map.of("page", page.get(), "size", tells))
                : words.of("editor.scale.size", Map.of("size", tells));
    }

    /** How tall a piece is, mm, and with what. */
    private static String tells(Piece piece, double tall, Words words) {
        boolean cut = piece.drawn() == LineKind.CUTTING && piece.allowance() > 0 || isSewnInside(piece);
        return words.of(
                cut ? "editor.scale.tall.cut" : "editor.scale.tall", Map.of("piece", piece.name(), "tall", tall));
    }

    /** Whether a line inside shows where it is sewn, so that the outline is where it is cut. */
    private static boolean isSewnInside(Piece piece) {
        Box whole = piece.outline().box();
        return piece.riders().stream().anyMatch(rider -> {
            Box box = rider.segments().stream()
                    .map(Segment::box)
                    .reduce(Box::union)
                    .orElseThrow();
            return box.width() > SEWN * whole.width() && box.height() > SEWN * whole.height();
        });
    }

    /** A square or ruler with words beside it proves the scale; one that agrees already needs no offer. */
    private static Optional<Offer> offer(KnownLength known, Sheet sheet, Scale scale, Words words) {
        if (known.stated().isEmpty() || known.agrees() && scale.proof() != Scale.Proof.UNPROVED) {
            return Optional.empty();
        }
        double stated = known.stated().getAsDouble();
        String key = known.square() ? "editor.scale.square" : "editor.scale.ruler";
        String measures = words.of(key, Map.of("words", known.words(), "drawn", known.drawn()));
        Object written = asWritten(known, stated);
        String then = UsualScales.largest(sheet)
                .map(p -> tells(p, p.outline().box().height() * stated / known.drawn(), words))
                .map(size -> " " + words.of("editor.scale.then", Map.of("stated", written, "size", size)))
                .orElse("");
        return Optional.of(new Offer(
                measures + then,
                words.of("editor.scale.take", Map.of("stated", written)),
                scale.mmPerUnitX() * stated / known.drawn(),
                Optional.of(known)));
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
    private static List<Choice> checks(List<KnownLength> known, Scale scale, Sheet sheet, Words words) {
        List<KnownLength> agreeing = known.stream()
                .filter(k -> k.agrees() && !ScaleSource.is(scale, k))
                .toList();
        boolean set = scale.proof() == Scale.Proof.KNOWN_LINE && scale.from().isEmpty() && !agreeing.isEmpty();
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
