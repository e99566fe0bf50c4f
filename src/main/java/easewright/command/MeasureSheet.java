package easewright.command;

import easewright.measure.EdgeLength;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.MateWalk;
import easewright.measure.PastCentre;
import easewright.measure.PieceMeasures;
import easewright.pattern.Piece;
import easewright.pattern.SidePair;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The measures of a pattern as text. */
final class MeasureSheet {
    private final PrintWriter out;
    private final Page page;
    private final Words words;

    MeasureSheet(PrintWriter out, Words words) {
        this.out = out;
        this.page = new Page(out);
        this.words = words;
    }

    void print(Reading reading) {
        page.text(words.of(
                "sheet.scale." + reading.pattern().scale().proof(),
                Map.of("scale.number", reading.pattern().scale().mmPerUnitX())));
        page.text(words.of("sheet.lengths", Map.of("unit", words.unitName())));
        if (!reading.pattern().garment().isEmpty()) {
            page.text(words.of(
                    "sheet.garment", Map.of("garment", reading.pattern().garment())));
        }
        for (PieceMeasures measured : reading.measures().pieces()) {
            piece(measured.stitch().piece(), measured, reading);
        }
        girths(reading);
        mates(reading);
    }

    private void piece(Piece piece, PieceMeasures measured, Reading reading) {
        page.line();
        page.text(heading(piece));
        if (measured.edges().isEmpty() && measured.levels().isEmpty()) {
            page.text("  ", words.of("sheet.unmarked"));
            return;
        }
        boolean darts = measured.edges().stream().anyMatch(e -> e.dartMm() > 0)
                || measured.levels().stream().anyMatch(w -> w.dartIntake() > 0);
        Table table = new Table()
                .head(
                        words.of("sheet.edge"),
                        words.of("sheet.use"),
                        words.of("sheet.length"),
                        darts ? words.of("sheet.darts") : "");
        for (EdgeLength edge : measured.edges()) {
            String role = words.name("role", edge.role());
            String use = role.equals(edge.edge()) ? "" : role;
            table.row(edge.edge(), use, words.figure(edge.mm()), figure(edge.dartMm()));
            double past = PastCentre.mm(measured, edge.edge());
            if (past > 0) {
                table.row(words.of("sheet.to-centre"), "", words.figure(edge.mm() - past), "");
            }
        }
        GirthText told = new GirthText(words, reading.pattern());
        for (LevelWidth width : measured.levels()) {
            table.row(
                    words.of("sheet.at-level", Map.of("level", width.level())),
                    "",
                    words.bare(told.width(reading.measures(), width)),
                    figure(width.dartIntake()));
        }
        table.print(out);
    }

    private String figure(double mm) {
        return mm > 0 ? words.figure(mm) : "";
    }

    private String heading(Piece piece) {
        String cut = piece.onFold()
                ? "sheet.piece.fold"
                : piece.times() == 1 ? "sheet.piece.one" : piece.times() == 2 ? "sheet.piece.pair" : "sheet.piece";
        return words.forSide(words.of(cut, Map.of("piece", piece.name(), "times", piece.times())), piece.side());
    }

    private void girths(Reading reading) {
        if (reading.measures().girths().isEmpty()) {
            return;
        }
        page.line();
        page.text(words.of("sheet.girths"));
        Table table = new Table();
        EaseText text = new EaseText(words);
        GirthText told = new GirthText(words, reading.pattern());
        boolean rounded = false;
        for (Girth girth : reading.measures().girths()) {
            List<String> parts = new ArrayList<>();
            List<String> widths = told.widths(girth);
            for (int i = 0; i < widths.size(); i++) {
                LevelWidth part = girth.parts().get(i);
                parts.add(reading.pieceName(part.pieceId()) + "\u00a0" + words.bare(widths.get(i))
                        + "\u00a0\u00d7\u00a0" + part.count());
            }
            boolean exact = told.addsUp(girth);
            rounded |= !exact && !parts.isEmpty();
            String sign = exact ? "= " : "\u2248 ";
            table.row(
                    text.title(girth),
                    words.figure(told.finished(girth)),
                    parts.isEmpty() ? "" : sign + String.join(" + ", parts));
        }
        table.print(out);
        if (rounded) {
            page.text("  ", words.of("sheet.rounded"));
        }
    }

    private void mates(Reading reading) {
        List<MateWalk> sewn = reading.measures().mates().stream()
                .filter(w -> !SidePair.isFold(reading.pattern(), w.mate()))
                .toList();
        if (sewn.isEmpty()) {
            return;
        }
        page.line();
        page.text(words.of("sheet.mates"));
        Table table = new Table()
                .head(
                        "",
                        words.of("sheet.first"),
                        words.of("sheet.second"),
                        words.of("sheet.meant"),
                        words.of("sheet.misfit"));
        for (MateWalk walk : sewn) {
            Words.Sides told =
                    words.sides(walk.first(), walk.second(), walk.mate().declaredEase());
            table.row(
                    new EaseText(words).title(walk),
                    words.bare(told.first()),
                    words.bare(told.second()),
                    words.bare(told.meant()),
                    words.bare(told.off()));
        }
        table.print(out);
    }
}
