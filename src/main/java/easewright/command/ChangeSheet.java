package easewright.command;

import easewright.measure.EdgeLength;
import easewright.measure.Girth;
import easewright.measure.MateWalk;
import easewright.measure.PieceMeasures;
import easewright.pattern.Side;
import easewright.pattern.SidePair;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.print.Reading;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a change did, as text: girths, sewn lengths and what does not fit, before and after. */
final class ChangeSheet {
    /** Half of what is shown: less reads as no change. */
    private static final double SHOWN = 0.05;

    /** A seam is off where more than a rounded drawing may show without any change, mm. */
    private static final double OFF = 0.15;

    private final PrintWriter out;
    private final Page page;
    private final Words words;
    private boolean begun;

    ChangeSheet(PrintWriter out, Words words) {
        this.out = out;
        this.page = new Page(out);
        this.words = words;
    }

    void print(Reading before, Reading after) {
        Table girths = table();
        for (Girth girth : after.measures().girths()) {
            Optional<Girth> old = before.measures().girth(girth);
            double is = told(girth, after);
            row(
                    girths,
                    new EaseText(words).title(girth),
                    old.map(o -> told(o, before)).orElse(is),
                    is);
            if (girth.sided() && girth.side() == Side.BOTH) {
                side(girths, girth, old, Side.LEFT);
                side(girths, girth, old, Side.RIGHT);
            }
        }
        print("sheet.girths-changed", girths);
        Table lengths = table();
        for (PieceMeasures piece : after.measures().pieces()) {
            SidePair.before(before.pattern(), after.pattern(), piece.stitch().piece())
                    .flatMap(p -> before.measures().piece(p.id()))
                    .ifPresent(was -> lengths(lengths, was, piece));
        }
        print("sheet.lengths-changed", lengths);
        mates(before, after);
    }

    /** As it is told beside body and ease, mm; in centimetres, which this table tells finer, as it is. */
    private double told(Girth girth, Reading reading) {
        return words.unit() == LengthUnit.INCH
                ? new GirthText(words, reading.pattern()).finished(girth)
                : girth.finished();
    }

    private void lengths(Table table, PieceMeasures before, PieceMeasures after) {
        for (EdgeLength edge : after.edges()) {
            double was = before.edge(edge.edge()).map(EdgeLength::mm).orElse(edge.mm());
            if (Math.abs(edge.mm() - was) >= SHOWN) {
                row(table, after.stitch().piece().name() + ", " + edge.edge(), was, edge.mm());
            }
        }
    }

    private double off(MateWalk walk) {
        return words.off(walk.first(), walk.second(), walk.mate().declaredEase());
    }

    private void mates(Reading before, Reading after) {
        List<MateWalk> mates = after.measures().mates().stream()
                .filter(w -> !SidePair.isFold(after.pattern(), w.mate()))
                .toList();
        if (mates.isEmpty()) {
            return;
        }
        Table table = table();
        for (MateWalk walk : mates) {
            double was = before.measures().before(walk).map(this::off).orElseGet(() -> off(walk));
            if (Math.abs(was) > OFF || Math.abs(walk.drift()) > OFF) {
                row(table, new EaseText(words).title(walk), was, off(walk));
            }
        }
        if (table.isEmpty()) {
            page.line();
            page.text(words.of("sheet.mates-fit"));
        } else {
            print("sheet.mates-changed", table);
        }
    }

    /** What of a girth lies on one side of the body, which is half of it where both are cut alike. */
    private void side(Table girths, Girth girth, Optional<Girth> old, Side side) {
        double now = girth.on(side);
        row(
                girths,
                "  " + words.of("sheet.side." + side.name()),
                old.map(o -> o.on(side)).orElse(now),
                now);
    }

    private Table table() {
        return new Table().head("", words.of("sheet.before"), words.of("sheet.after"), words.of("sheet.by"));
    }

    private void row(Table table, String name, double was, double is) {
        if (words.unit() == LengthUnit.INCH) {
            Words.Sides told = words.sides(is, was, 0);
            table.row(name, words.bare(told.second()), words.bare(told.first()), words.bare(told.off()));
            return;
        }
        table.row(name, words.compared(was), words.compared(is), words.signedCompared(is - was));
    }

    private void print(String title, Table table) {
        if (!table.isEmpty()) {
            if (begun) {
                page.line();
            }
            begun = true;
            page.text(words.of(title, Map.of("unit", words.unitName())));
            table.print(out);
        }
    }
}
