package easewright.print.report;

import easewright.ease.EaseLine;
import easewright.measure.MateWalk;
import easewright.pattern.Cloth;
import easewright.pattern.Finding;
import easewright.pattern.MateSides;
import easewright.pattern.SidePair;
import easewright.print.Cautions.Caution;
import easewright.print.ChangeWords;
import easewright.print.EaseText;
import easewright.print.InSizes;
import easewright.print.Misfit;
import easewright.print.Reading;
import easewright.print.SourceNotes;
import easewright.print.StillMissing;
import easewright.print.StillOpen;
import easewright.print.report.Part.Figure;
import easewright.print.report.Part.Figures;
import easewright.print.report.Part.Grid;
import easewright.print.report.Part.Heading;
import easewright.print.report.Part.Paragraph;
import easewright.print.report.Part.Points;
import easewright.text.Words;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a report says, from top to bottom.
 *
 * @param title  the pattern's name
 * @param byline for whom, and when
 * @param order  with which it was made
 */
public record ReportContent(String title, String byline, List<Part> parts, ReportOrder order) {
    public ReportContent {
        parts = List.copyOf(parts);
    }

    /**
     * Puts a report together.
     *
     * @param before   the pattern before the recorded changes, if there are any
     * @param findings all that is to be noticed, the weightiest first
     */
    public static ReportContent of(
            ReportOrder order,
            Optional<Reading> before,
            Reading after,
            List<Finding> findings,
            List<Caution> cautions,
            Words words) {
        Writer writer = new Writer(words);
        writer.points("print.open", StillOpen.of(after, after.pattern().pieces(), words), false);
        writer.ease(before, after);
        writer.changes(before, after);
        before.ifPresent(b -> {
            writer.sketches(b, after);
            writer.mates(b, after);
            Unchanged.of(b, after, words).ifPresent(kept -> writer.points("report.unchanged", kept, false));
        });
        writer.parts.addAll(ClothNeeded.of(order, before, after, words));
        writer.points(
                "report.cautions",
                cautions.stream()
                        .map(c -> words.of("caution." + c.code(), c.values()))
                        .toList(),
                false);
        writer.points(
                "report.findings",
                InSizes.of(findings, after.pattern()).stream()
                        .map(f -> said(f, words))
                        .toList(),
                false);
        writer.tables(after);
        String day = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH).format(order.date());
        String wearer = after.pattern().body().name();
        String byline = wearer.isBlank() ? day : words.of("print.byline", Map.of("wearer", wearer, "date", day));
        return new ReportContent(words.of("report.title", Map.of("name", order.name())), byline, writer.parts, order);
    }

    private static String said(InSizes told, Words words) {
        String severity = words.of("report.severity." + told.plain().severity().name());
        return severity + ": " + told.sentence(words);
    }

    /** Writes the parts one after the other. */
    private static final class Writer {
        /** What is understood wherever it stands. */
        private static final Set<String> MOVABLE = Set.of("report.unchanged", "report.cautions", "report.findings");

        private final Words words;
        private final EaseText easeText;
        private final EaseRows easeRows;
        private final List<Part> parts = new ArrayList<>();

        Writer(Words words) {
            this.words = words;
            this.easeText = new EaseText(words);
            this.easeRows = new EaseRows(words);
        }

        void points(String heading, List<String> texts, boolean numbered) {
            if (!texts.isEmpty()) {
                parts.add(new Heading(words.of(heading), MOVABLE.contains(heading)));
                parts.add(new Points(texts, numbered));
            }
        }

        void ease(Optional<Reading> before, Reading after) {
            List<EaseLine> now = after.sheet().lines();
            if (now.isEmpty()) {
                parts.add(new Paragraph(words.of("report.no-level"), false));
                return;
            }
            parts.add(new Heading(words.of("report.ease")));
            List<EaseLine> old = before.map(b -> b.sheet().lines()).orElse(List.of());
            List<Figure> cards = new ArrayList<>(LevelCard.of(old, now, words));
            parts.add(new Figures(cards));
            parts.add(before.isPresent() ? easeRows.compared(old, now) : easeRows.plain(now));
            StillMissing.of(after.pattern(), after.sheet(), words)
                    .ifPresent(missing -> parts.add(new Paragraph(missing, false)));
            if (EaseText.wishForSizes(after.sheet())) {
                parts.add(new Paragraph(words.of("ease.wish-sizes"), true));
            }
        }

        private List<String> head(String... keys) {
            return EaseRows.head(words, keys);
        }

        void changes(Optional<Reading> before, Reading after) {
            List<String> told = new ChangeWords(words).of(after.pattern());
            if (!told.isEmpty()) {
                points("report.changes", told, true);
            } else if (before.isEmpty()) {
                parts.add(new Paragraph(words.of("report.no-change"), false));
            }
        }

        void sketches(Reading before, Reading after) {
            PieceSketch sketch = new PieceSketch(before, after, words);
            List<Figure> figures = sketches(sketch, after, PieceSketch.HEIGHT);
            if (!figures.isEmpty()) {
                parts.add(new Heading(words.of("report.drawings")));
                parts.add(new Paragraph(words.of("report.drawings-key"), true));
                parts.add(new Figures(
                        figures,
                        PieceSketch.LOWER.stream()
                                .map(most -> sketches(sketch, after, most))
                                .toList()));
            }
        }

        private static List<Figure> sketches(PieceSketch sketch, Reading after, double most) {
            return after.pattern().pieces().stream()
                    .flatMap(p -> sketch.of(p, most).stream())
                    .toList();
        }

        void mates(Reading before, Reading after) {
            List<MateWalk> sewn = after.measures().mates().stream()
                    .filter(w -> !SidePair.isFold(after.pattern(), w.mate()))
                    .toList();
            if (sewn.isEmpty()) {
                return;
            }
            parts.add(new Heading(words.of("report.mates"), true));
            List<List<String>> rows = new ArrayList<>();
            for (MateWalk walk : sewn) {
                Optional<MateWalk> old = before.measures().before(walk);
                Words.Sides now = sides(walk);
                Optional<Words.Sides> was = old.map(w -> sidesBefore(w, walk));
                MateSides pieces = MateSides.of(after.pattern(), walk.mate());
                rows.add(List.of(
                        easeText.title(walk),
                        side(pieces.first(), fromTo(was.map(Words.Sides::first), now.first())),
                        side(pieces.second(), fromTo(was.map(Words.Sides::second), now.second())),
                        words.length(walk.mate().declaredEase()),
                        old.map(w -> Misfit.of(w, words)).orElse(EaseRows.NONE),
                        Misfit.of(walk, words)));
            }
            parts.add(new Grid(head("mate", "first", "second", "meant", "drift-before", "drift-after"), rows, 1));
            parts.add(new Paragraph(words.of("report.care"), true));
        }

        /** As they are told of the seam in the window. */
        private Words.Sides sides(MateWalk walk) {
            return words.sides(walk.first(), walk.second(), walk.mate().declaredEase());
        }

        private Words.Sides sidesBefore(MateWalk old, MateWalk now) {
            return words.sidesBefore(old.first(), old.second(), old.mate().declaredEase(), now.first(), now.second());
        }

        /** What is measured, and how long it is: in one line, or the length whole in the next. */
        private String side(List<String> pieces, String length) {
            return words.of("report.side", Map.of("pieces", pieces, "length", length.replace(' ', '\u00a0')));
        }

        private String fromTo(Optional<String> from, String to) {
            return from.filter(f -> !f.equals(to))
                    .map(f -> words.of("report.from-to", Map.of("from", f, "to", to)))
                    .orElse(to);
        }

        /** As which garment, since only tables for that were asked. */
        private void judged(Reading after) {
            List<String> garment = after.sheet().garment().words();
            if (!garment.isEmpty()) {
                String key = after.pattern().garment().isEmpty() ? "report.judged.marks" : "report.judged";
                parts.add(new Paragraph(words.of(key, Map.of("garment", garment)), true));
            }
        }

        /** What else was found out about the stretch of the cloth. */
        private void tested(Cloth cloth, List<String> told) {
            cloth.along()
                    .ifPresent(along -> told.add(words.of("report.stretches-along", Map.of("stretch.percent", along))));
            cloth.recovery()
                    .ifPresent(back -> told.add(words.of("report.springs-back", Map.of("recovery.percent", back))));
        }

        /** What each table says of each level, with its source: a class word never stands alone. */
        void tables(Reading after) {
            List<String> told = new ArrayList<>();
            SourceNotes notes = new SourceNotes(words);
            List<String> cloth = new ArrayList<>();
            after.sheet().stretch().ifPresent(s -> {
                cloth.add(words.of("report.stretches", Map.of("stretch.percent", s.stretch())));
                tested(after.pattern().cloth(), cloth);
            });
            cloth.addAll(easeText.cloth(after.sheet(), notes));
            points("report.stretch", cloth, false);
            for (EaseLine line : after.sheet().lines()) {
                easeText.told(after.sheet(), line, notes)
                        .forEach(each ->
                                told.add(easeText.title(line.girth()) + ", " + easeRows.ease(line) + ": " + each));
            }
            if (!told.isEmpty()) {
                parts.add(new Heading(words.of("report.tables")));
                judged(after);
                parts.add(new Points(told, false));
            }
            if (!notes.lines().isEmpty()) {
                points("report.sources", notes.lines(), false);
                if (EaseText.nearlyMet(after.sheet())) {
                    parts.add(new Paragraph(words.of("ease.nearly-met"), true));
                }
            }
        }
    }
}
