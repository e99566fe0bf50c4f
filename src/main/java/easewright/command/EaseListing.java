package easewright.command;

import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.print.Reading;
import easewright.print.SourceNotes;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The ease sheet for a terminal: the figures of all levels first, then what tables say of each, then the sources. */
final class EaseListing {
    private final PrintWriter out;
    private final Page page;
    private final Words words;
    private final EaseText text;

    /** Whether the command says what the garment is. */
    private final boolean garmentGiven;

    EaseListing(PrintWriter out, Words words, boolean garmentGiven) {
        this.garmentGiven = garmentGiven;
        this.out = out;
        this.page = new Page(out);
        this.words = words;
        this.text = new EaseText(words);
    }

    void print(Reading reading) {
        EaseSheet sheet = reading.sheet();
        if (sheet.lines().isEmpty()) {
            return;
        }
        page.text(cloth(reading));
        page.text(words.of("ease.lengths", Map.of("unit", words.unitName())));
        page.line();
        figures(sheet);
        SourceNotes notes = new SourceNotes(words);
        stretch(sheet, notes);
        boolean headed = false;
        for (Map.Entry<Said, List<String>> each : told(sheet, notes).entrySet()) {
            page.line();
            if (!headed) {
                page.text(words.of("ease.tables"));
            }
            headed = true;
            String levels = String.join("; ", each.getValue());
            String ease = each.getKey().ease();
            page.text("  ", ease.isEmpty() ? levels : words.of("ease.level", Map.of("level", levels, "ease", ease)));
            each.getKey().lines().forEach(line -> page.text("    ", line));
        }
        sources(sheet, notes);
    }

    /** What sources say of a knit. */
    private void stretch(EaseSheet sheet, SourceNotes notes) {
        List<String> lines = text.cloth(sheet, notes);
        if (!lines.isEmpty()) {
            page.line();
            page.text(text.stretches(sheet));
            lines.forEach(line -> page.text("  ", line));
        }
    }

    /** What is said of an ease, which several levels or sizes may share. */
    private record Said(String ease, List<String> lines) {
        /** Spelt out for a short run, as in {@link easewright.geom.Point}. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Said s && ease.equals(s.ease) && lines.equals(s.lines);
        }

        @Override
        public int hashCode() {
            return 31 * ease.hashCode() + lines.hashCode();
        }
    }

    /** What tables say, with the levels and sizes of which they say it. */
    private Map<Said, List<String>> told(EaseSheet sheet, SourceNotes notes) {
        Map<Said, List<String>> told = new LinkedHashMap<>();
        for (EaseLine line : sheet.lines()) {
            List<String> lines = text.told(sheet, line, notes);
            if (!lines.isEmpty()) {
                told.computeIfAbsent(new Said(text.ease(line.ease()), lines), said -> new ArrayList<>())
                        .add(text.title(line.girth()));
            }
        }
        return told;
    }

    private String cloth(Reading reading) {
        List<String> garment = reading.sheet().garment().words();
        String cloth = words.of(reading.pattern().cloth().knit() ? "ease.cloth.knit" : "ease.cloth.woven");
        String key = garment.isEmpty()
                ? "ease.garment.unknown"
                : reading.pattern().garment().isEmpty()
                        ? "ease.garment.by-marks"
                        : garmentGiven ? "ease.garment.stated" : "ease.garment.by-file";
        return words.of(key, Map.of("garment", garment, "cloth", cloth));
    }

    private void figures(EaseSheet sheet) {
        Table table = new Table()
                .head(
                        "",
                        words.of("ease.head.body"),
                        words.of("ease.head.garment"),
                        words.of("ease.head.ease"),
                        words.of("ease.head.percent"),
                        words.of("ease.head.wish"),
                        "");
        for (EaseLine line : sheet.lines()) {
            boolean known = line.ease().isPresent();
            table.row(
                    text.title(line.girth()),
                    line.body().isPresent() ? words.figure(line.body().getAsDouble()) : "",
                    words.figure(GirthText.finished(line, words)),
                    known ? words.signedFigure(line.ease().getAsDouble()) : "",
                    known ? Words.number(EaseText.percent(line, words), 1) : "",
                    words.bare(text.wished(line)),
                    text.wish(line));
        }
        table.print(out);
        if (EaseText.wishForSizes(sheet)) {
            page.line();
            page.text(words.of("ease.wish-sizes"));
        }
    }

    private void sources(EaseSheet sheet, SourceNotes notes) {
        List<String> lines = notes.lines();
        if (lines.isEmpty()) {
            return;
        }
        page.line();
        page.text(words.of("ease.sources"));
        for (String line : lines) {
            int space = line.indexOf(' ') + 1;
            page.text("  " + line.substring(0, space), line.substring(space));
        }
        if (EaseText.nearlyMet(sheet)) {
            page.text("  ", words.of("ease.nearly-met"));
        }
    }
}
