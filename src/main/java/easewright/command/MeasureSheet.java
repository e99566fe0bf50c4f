package easewright.command;

import easewright.measure.EdgeLength;
import easewright.measure.Girth;
import easewright.measure.LevelWidth;
import easewright.measure.MateWalk;
import easewright.measure.PieceMeasures;
import easewright.pattern.Piece;
import easewright.print.EaseText;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The measures of a pattern as text. */
final class MeasureSheet {
    private final PrintWriter out;
    private final Words words;

    MeasureSheet(PrintWriter out, Words words) {
        this.out = out;
        this.words = words;
    }

    void print(Reading reading) {
        out.println(words.of(
                "sheet.scale." + reading.pattern().scale().proof(),
                Map.of("scale.number", reading.pattern().scale().mmPerUnitX())));
        for (PieceMeasures measured : reading.measures().pieces()) {
            piece(measured.stitch().piece(), measured);
        }
        if (!reading.measures().girths().isEmpty()) {
            out.println();
            out.println(words.of("sheet.girths"));
            Table table = new Table();
            for (Girth girth : reading.measures().girths()) {
                girth(table, girth, reading);
            }
            table.print(out);
        }
        if (!reading.measures().mates().isEmpty()) {
            out.println();
            out.println(words.of("sheet.mates"));
            Table table = new Table();
            for (MateWalk walk : reading.measures().mates()) {
                mate(table, walk);
            }
            table.print(out);
        }
    }

    private void piece(Piece piece, PieceMeasures measured) {
        out.println();
        out.println(words.of("sheet.piece", Map.of("piece", piece.name(), "count", timesInGarment(piece))));
        Table table = new Table();
        for (EdgeLength edge : measured.edges()) {
            String darts = edge.dartMm() > 0 ? words.of("sheet.beside-darts", Map.of("dart", edge.dartMm())) : "";
            table.row(edge.edge(), role(edge), words.length(edge.mm()), darts);
        }
        for (LevelWidth width : measured.levels()) {
            String darts =
                    width.dartIntake() > 0 ? words.of("sheet.beside-darts", Map.of("dart", width.dartIntake())) : "";
            table.row(words.of("sheet.at-level", Map.of("level", width.level())), "", words.length(width.net()), darts);
        }
        table.print(out);
    }

    /** How often the drawn shape is in one garment: a shape on the fold stands for two halves. */
    static int timesInGarment(Piece piece) {
        return piece.times() * (piece.onFold() ? 2 : 1);
    }

    static String role(EdgeLength edge) {
        return edge.role().name().toLowerCase(Locale.ROOT);
    }

    private void girth(Table table, Girth girth, Reading reading) {
        List<String> parts = new ArrayList<>();
        for (LevelWidth part : girth.parts()) {
            parts.add(reading.pieceName(part.pieceId()) + " " + words.length(part.net()) + " \u00d7 " + part.count());
        }
        String sum = parts.isEmpty() ? "" : "= " + String.join(" + ", parts);
        table.row(new EaseText(words).title(girth), words.length(girth.finished()), sum);
    }

    /** The seam by name, with its size where there are several. */
    static String title(MateWalk walk, Words words) {
        String name = walk.mate().name();
        return walk.size()
                .map(size -> words.of("sheet.in-size", Map.of("name", name, "size", size)))
                .orElse(name);
    }

    private void mate(Table table, MateWalk walk) {
        table.row(
                title(walk, words),
                words.length(walk.first()),
                words.length(walk.second()),
                words.of("sheet.declared-ease", Map.of("ease", walk.mate().declaredEase())),
                words.of("sheet.drift", Map.of("drift.signed", walk.drift())));
    }
}
