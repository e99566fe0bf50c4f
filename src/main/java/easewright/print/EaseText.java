package easewright.print;

import easewright.ease.Classed;
import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.ease.Minimum;
import easewright.measure.Girth;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The ease sheet in words. A class word never stands without the number, the table and its source. */
public final class EaseText {
    private final Words words;

    public EaseText(Words words) {
        this.words = words;
    }

    /** The whole sheet, a block of lines a level. */
    public List<String> lines(EaseSheet sheet) {
        List<String> all = new ArrayList<>();
        for (EaseLine line : sheet.lines()) {
            if (!all.isEmpty()) {
                all.add("");
            }
            all.add(title(line.girth()));
            all.add("  " + figures(line));
            details(line).forEach(detail -> all.add("    " + detail));
        }
        return all;
    }

    /** The level by name, with its limb and its size where there are several. */
    public String title(Girth girth) {
        return girth.size()
                .map(size -> words.of("sheet.in-size", Map.of("name", girth.name(), "size", size)))
                .orElse(girth.name());
    }

    /** Body, finished girth and ease in one sentence. */
    public String figures(EaseLine line) {
        String finished = words.length(line.finished());
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

    /** An ease in the user's unit and, since tables are kept in either, in centimetres or inches beside it. */
    public String ease(OptionalDouble ease) {
        if (ease.isEmpty()) {
            return "";
        }
        LengthUnit other = words.unit() == LengthUnit.INCH ? LengthUnit.CM : LengthUnit.INCH;
        return words.signed(ease.getAsDouble()) + " (" + Lengths.signed(ease.getAsDouble(), other) + ")";
    }

    public String percent(EaseLine line) {
        return line.percent().isEmpty() ? "" : Words.number(line.percent().getAsDouble(), 1) + "\u00a0%";
    }

    /** Classes, minimums, stretch and wish, a line each. */
    public List<String> details(EaseLine line) {
        List<String> details = new ArrayList<>();
        line.classes().forEach(c -> details.add(classed(c)));
        line.minimums().forEach(m -> details.add(minimum(m)));
        line.stretchNeeded()
                .ifPresent(needed -> details.add(words.of("ease.stretch", Map.of("needed", Words.number(needed, 1)))));
        if (line.wish().isPresent()) {
            double missing = line.missing().orElse(0);
            String key = line.missing().isEmpty()
                    ? "ease.wish"
                    : Math.abs(missing) < 0.05 ? "ease.wish-met" : missing > 0 ? "ease.wish-missing" : "ease.wish-over";
            details.add(words.of(key, Map.of("wish", line.wish().getAsDouble(), "missing", Math.abs(missing))));
        }
        return details;
    }

    /** What a table calls an ease, with the table's garment, source and standing. */
    public String classed(Classed classed) {
        return words.of(
                "ease.class." + classed.where().name(),
                Map.of(
                        "word", classed.word(),
                        "garment", classed.table().garment(),
                        "source", classed.table().source(),
                        "standing", classed.table().standing()));
    }

    /** A least wearing ease with its source and standing. */
    public String minimum(Minimum minimum) {
        String range = minimum.high().isPresent() && minimum.high().getAsDouble() > minimum.low()
                ? words.length(minimum.low()) + " \u2013 "
                        + words.length(minimum.high().getAsDouble())
                : words.length(minimum.low());
        return words.of(
                minimum.note().isEmpty() ? "ease.minimum" : "ease.minimum-for",
                Map.of(
                        "range", range,
                        "note", minimum.note(),
                        "source", minimum.source(),
                        "standing", minimum.standing()));
    }
}
