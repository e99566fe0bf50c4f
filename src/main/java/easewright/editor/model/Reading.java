package easewright.editor.model;

import easewright.check.Checks;
import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.measure.StitchLines;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import java.util.List;
import java.util.Optional;

/**
 * All that can be read off a pattern: its measures, its ease sheet and what is to be noticed. Where the pattern comes in
 * several sizes, girths, seams and ease are those of one of them.
 *
 * @param size   the size looked at; empty where the pattern comes in one
 * @param wishes how every size stands to the wishes, where the pattern comes in several
 * @param tables all ease tables there are; the sheet goes by those of them that are for the garment
 */
public record Reading(
        GarmentMeasures measures,
        EaseSheet sheet,
        List<Finding> findings,
        Optional<String> size,
        SizeWishes wishes,
        EaseTables tables) {
    public Reading {
        findings = List.copyOf(findings);
    }

    /** Of a pattern without pieces, before there is any: nothing was looked at, and no table is needed. */
    static Reading ofNothing(Pattern nothing) {
        GarmentMeasures measures = Measures.of(nothing);
        EaseTables none = EaseTables.none();
        EaseSheet sheet = EaseSheet.of(nothing, measures, none);
        return new Reading(measures, sheet, List.of(), Optional.empty(), SizeWishes.NONE, none);
    }

    /** Reads everything, as the report does, with the tables that came with the program. */
    public static Reading of(Pattern pattern) {
        return of(pattern, EaseTables.standard(), Optional.empty());
    }

    /** Reads everything, in the size wanted, or else in the first. */
    public static Reading of(Pattern pattern, EaseTables tables, Optional<String> wanted) {
        easewright.print.Reading whole = easewright.print.Reading.of(pattern, tables.fitting(pattern));
        Optional<String> size = size(pattern, wanted);
        return size.isEmpty()
                ? new Reading(whole.measures(), whole.sheet(), whole.findings(), size, SizeWishes.NONE, tables)
                : inSize(pattern, whole.measures(), whole.findings(), size.get(), tables);
    }

    private static Reading inSize(
            Pattern pattern, GarmentMeasures measures, List<Finding> findings, String size, EaseTables tables) {
        GarmentMeasures own = measures.inSize(size);
        EaseSheet sheet = EaseSheet.of(pattern, own, tables.fitting(pattern));
        return new Reading(own, sheet, findings, Optional.of(size), SizeWishes.of(pattern, measures), tables);
    }

    private static Optional<String> size(Pattern pattern, Optional<String> wanted) {
        List<String> sizes = PatternPart.sizes(pattern);
        return sizes.size() < 2
                ? Optional.empty()
                : wanted.filter(sizes::contains).or(() -> Optional.of(sizes.get(0)));
    }

    /**
     * What a change brought about: protected edges that changed, mates that drifted, whatever is to be noticed now but
     * places that can be made true.
     *
     * @param read    everything that was read off the pattern before, as {@link #of} does
     * @param several what is read of the sizes that changed
     */
    static List<Finding> drift(Pattern before, Reading read, Pattern after, SeveralRead several) {
        Reading was = several.before();
        Reading is = several.after();
        return Checks.tried(before, was.measures, was.sheet, read.findings, after, is.measures, is.sheet);
    }

    /** What was read off the pattern with the girths, seams and ease of several sizes. */
    Reading inSizes(Pattern pattern, List<String> several) {
        GarmentMeasures own = measures.inSizes(several);
        return new Reading(own, EaseSheet.of(pattern, own, tables.fitting(pattern)), findings, size, wishes, tables);
    }

    /** Reads only what a hand needs to follow a drag: widths and ease, without the slower checks. */
    public static Reading quick(Pattern pattern) {
        return quick(pattern, Measures.of(pattern), Optional.empty(), EaseTables.standard());
    }

    /** The same for a pattern of which most pieces are those of one that was read already. */
    static Reading quick(Pattern pattern, Pattern before, Reading read, StitchLines lines) {
        return quick(pattern, Measures.again(pattern, before, read.measures(), lines), read.size(), read.tables());
    }

    private static Reading quick(
            Pattern pattern, GarmentMeasures measures, Optional<String> wanted, EaseTables tables) {
        Optional<String> size = size(pattern, wanted);
        return size.isEmpty()
                ? new Reading(
                        measures,
                        EaseSheet.of(pattern, measures, tables.fitting(pattern)),
                        List.of(),
                        size,
                        SizeWishes.NONE,
                        tables)
                : inSize(pattern, measures, List.of(), size.get(), tables);
    }
}
