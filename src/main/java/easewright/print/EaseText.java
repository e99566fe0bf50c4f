package easewright.print;

import easewright.ease.Band;
import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTable;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.ease.StretchSaid;
import easewright.measure.Girth;
import easewright.measure.MateWalk;
import easewright.pattern.Side;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.PerCent;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The ease sheet in words. A class word never stands without the number, the table and its source. */
public final class EaseText {
    /** Less than this is shown as none, mm and percent alike. */
    private static final double SHOWN = 0.05;

    private final Words words;

    public EaseText(Words words) {
        this.words = words;
    }

    /** The level by name, with its limb and its size where there are several. */
    public String title(Girth girth) {
        return girth.size()
                .map(size -> words.of("sheet.in-size", Map.of("name", girth.name(), "size", size)))
                .orElse(girth.name());
    }

    /** The seam by name, with its size where there are several. */
    public String title(MateWalk walk) {
        String name = walk.mate().name();
        return walk.size()
                .map(size -> words.of("sheet.in-size", Map.of("name", name, "size", size)))
                .orElse(name);
    }

    /** What of a girth is left and what right, where they differ; empty where they do not. */
    public Optional<String> sides(Girth girth) {
        double left = girth.on(Side.LEFT);
        double right = girth.on(Side.RIGHT);
        return girth.side() == Side.BOTH && girth.sided() && Math.abs(left - right) >= SHOWN
                ? Optional.of(words.of("ease.sides", Map.of("left", left, "right", right)))
                : Optional.empty();
    }

    /** Body, finished girth and ease in one sentence, with what is left and right where they differ. */
    public String figures(EaseLine line) {
        return sides(line.girth())
                .map(sides -> words.of("ease.figures-sides", Map.of("figures", whole(line), "sides", sides)))
                .orElseGet(() -> whole(line));
    }

    private String whole(EaseLine line) {
        String finished = words.length(GirthText.finished(line, words));
        if (line.ease().isEmpty()) {
            return words.of("ease.finished-only", Map.of("finished", finished));
        }
        return words.of(
                "ease.figures",
                Map.of(
                        "body", line.body().getAsDouble(),
                        "finished", finished,
                        "ease", ease(line.ease()),
                        "percent", percent(line)));
    }

    /** An ease in the user's unit; in centimetres with inches beside it, in which most tables are kept. */
    public String ease(OptionalDouble ease) {
        if (ease.isEmpty()) {
            return "";
        }
        String own = words.signed(ease.getAsDouble());
        return words.unit() == LengthUnit.INCH
                ? own
                : own + " (" + Lengths.signed(ease.getAsDouble(), LengthUnit.INCH) + ")";
    }

    public String percent(EaseLine line) {
        return line.percent().isEmpty() ? "" : Words.number(percent(line, words), 1) + "\u00a0%";
    }

    /**
     * What is told of an ease in per cent of the body, which is known. In inches it is a whole number, reckoned from the two as
     * they are shown: a sixteenth is up to half a per cent of a limb.
     */
    public static double percent(EaseLine line, Words words) {
        double ease = line.ease().orElseThrow();
        double body = line.body().orElseThrow();
        return words.unit() == LengthUnit.INCH && words.shown(body) > 0
                ? Math.rint(words.shown(ease) / words.shown(body) * 100)
                : line.percent().orElseThrow();
    }

    /** What tables say of a level and what its ease asks of the cloth, a line each, the sources as marks of notes. */
    public List<String> told(EaseSheet sheet, EaseLine line, SourceNotes notes) {
        String level = title(line.girth());
        List<String> told = new ArrayList<>();
        for (Classed each : line.classes()) {
            told.add(classWords(each) + " "
                    + notes.mark(each.table().source(), each.table().standing(), level));
        }
        for (Minimum each : line.minimums()) {
            told.add(minimumWords(each) + " " + notes.mark(each.source(), each.standing(), level));
        }
        Optional<StretchSaid> stretch = sheet.stretch();
        if (stretch.isPresent()) {
            told.addAll(stretch(notes, level).level(stretch.get(), line));
            return told;
        }
        line.stretchNeeded().stream()
                .filter(needed -> needed >= SHOWN)
                .forEach(needed -> told.add(words.of("ease.stretch", Map.of("needed.percent", needed))));
        return told;
    }

    /** How far a knit stretches whose stretch is known. */
    public String stretches(EaseSheet sheet) {
        return new StretchText(words, (source, standing) -> "")
                .stretch(sheet.stretch().orElseThrow().stretch());
    }

    /** What sources say of the cloth, a line each; none unless it is a knit whose stretch is known. */
    public List<String> cloth(EaseSheet sheet, SourceNotes notes) {
        return sheet.stretch()
                .map(said -> stretch(notes, words.of("ease.knit.at")).cloth(said))
                .orElse(List.of());
    }

    /** The same, each with its source and standing behind it. */
    public List<String> cloth(EaseSheet sheet) {
        StretchText text = new StretchText(
                words,
                (source, standing) -> words.of("ease.in-brackets", Map.of("source", words.known(source, standing))));
        return sheet.stretch().map(text::cloth).orElse(List.of());
    }

    private StretchText stretch(SourceNotes notes, String level) {
        return new StretchText(words, (source, standing) -> notes.mark(source, standing, level));
    }

    /**
     * What is wished, with its plus or minus, as finely as it was asked for; what a part of the body comes to as any length.
     * Empty where nothing is.
     */
    public String wished(EaseLine line) {
        if (line.wish().isEmpty()) {
            return "";
        }
        double mm = line.wish().getAsDouble();
        String told = line.wishPercent().isPresent() ? words.length(mm) : words.entered(mm);
        return mm > 0 && !told.equals(words.entered(0)) ? "+" + told : told;
    }

    /** How the ease stands to the wish, with the part of the body that was wished where that was said; empty for none. */
    public String wish(EaseLine line) {
        String how = standing(line);
        if (line.wishPercent().isEmpty()) {
            return how;
        }
        Map<String, String> part =
                Map.of("part", PerCent.shown(line.wishPercent().getAsDouble()), "how", how);
        return words.of(how.isEmpty() ? "ease.wish-part" : "ease.wish-part.how", part);
    }

    private String standing(EaseLine line) {
        if (line.wish().isEmpty() || line.missing().isEmpty()) {
            return "";
        }
        double missing = line.missing().getAsDouble();
        String key = Math.abs(missing) < SHOWN ? "ease.wish-met" : missing > 0 ? "ease.wish-missing" : "ease.wish-over";
        return words.of(key, Map.of("missing", Math.abs(missing)));
    }

    /** Whether one wish stands beside several sizes. */
    public static boolean wishForSizes(EaseSheet sheet) {
        return sheet.lines().stream()
                        .filter(line -> line.wish().isPresent())
                        .flatMap(line -> line.size().stream())
                        .distinct()
                        .count()
                > 1;
    }

    /** Whether a printed figure was taken as met although the ease falls a little short of it. */
    public static boolean nearlyMet(EaseSheet sheet) {
        return sheet.lines().stream()
                .filter(line -> line.ease().isPresent())
                .anyMatch(line -> line.minimums().stream()
                        .anyMatch(m -> m.isNearlyMetBy(line.ease().getAsDouble())));
    }

    /** What a table calls an ease, with the table's garment, source and standing. */
    public String classed(Classed classed) {
        return sourced(
                classWords(classed), classed.table().source(), classed.table().standing());
    }

    /** A least wearing ease with its source and standing. */
    public String minimum(Minimum minimum) {
        return sourced(minimumWords(minimum), minimum.source(), minimum.standing());
    }

    private String sourced(String said, String source, String standing) {
        return words.of("ease.sourced", Map.of("said", said, "source", words.known(source, standing)));
    }

    /** From how much ease on the tightest class of a table begins. */
    public String begins(EaseTable table) {
        return figure(table.bands().get(0).from(), table);
    }

    private String figure(double of, EaseTable table) {
        return table.percent() ? Words.number(of, 1) + "\u00a0%" : words.coarse(of);
    }

    private String classWords(Classed classed) {
        List<Band> bands = classed.table().bands();
        Band lowest = bands.get(0);
        Band highest = bands.get(bands.size() - 1);
        boolean below = classed.where() == Classed.Where.BELOW;
        double ends = highest.to().orElse(highest.from());
        String said = words.of(
                "ease.class." + classed.where().name(),
                Map.of(
                        "word", below ? lowest.word() : classed.word().isEmpty() ? highest.word() : classed.word(),
                        "end", below ? begins(classed.table()) : figure(ends, classed.table())));
        String garment = classed.table().garment();
        return isAny(garment) ? said : words.of("ease.for", Map.of("said", said, "garment", garment));
    }

    private String minimumWords(Minimum minimum) {
        boolean range = minimum.high().isPresent() && minimum.high().getAsDouble() > minimum.low();
        String said = range
                ? words.of(
                        "ease.minimum.range",
                        Map.of(
                                "low",
                                words.bare(words.coarse(minimum.low())),
                                "high",
                                minimum.high().getAsDouble()))
                : words.of("ease.minimum", Map.of("low", minimum.low()));
        List<String> when = new ArrayList<>();
        if (!isAny(minimum.garment())) {
            when.add(minimum.garment());
        }
        if (!minimum.note().isEmpty()) {
            when.add(words.retold(minimum.note()));
        }
        return when.isEmpty() ? said : words.of("ease.for", Map.of("said", said, "garment", String.join("; ", when)));
    }

    private static boolean isAny(String garments) {
        return new Garment(List.of("\u2014")).fits(garments);
    }
}
