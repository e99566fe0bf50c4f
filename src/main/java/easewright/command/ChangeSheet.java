package easewright.command;

import easewright.measure.Girth;
import easewright.measure.MateWalk;
import easewright.pattern.Side;
import easewright.print.EaseText;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.Optional;

/** What a change did, as text: every girth and every mate before and after. */
final class ChangeSheet {
    private final PrintWriter out;
    private final Words words;

    ChangeSheet(PrintWriter out, Words words) {
        this.out = out;
        this.words = words;
    }

    void print(Reading before, Reading after) {
        out.println(words.of("sheet.girths-changed"));
        Table girths = new Table();
        girths.row("", words.of("sheet.before"), words.of("sheet.after"), words.of("sheet.by"));
        for (Girth girth : after.measures().girths()) {
            Optional<Girth> old = before.measures().girth(girth);
            double was = old.map(Girth::finished).orElse(girth.finished());
            girths.row(
                    new EaseText(words).title(girth),
                    words.length(was),
                    words.length(girth.finished()),
                    words.signed(girth.finished() - was));
            if (girth.sided() && girth.side() == Side.BOTH) {
                side(girths, girth, old, Side.LEFT);
                side(girths, girth, old, Side.RIGHT);
            }
        }
        girths.print(out);
        if (after.measures().mates().isEmpty()) {
            return;
        }
        out.println();
        out.println(words.of("sheet.mates-changed"));
        Table mates = new Table();
        mates.row("", words.of("sheet.before"), words.of("sheet.after"));
        for (MateWalk walk : after.measures().mates()) {
            double was = before.measures().mate(walk).map(MateWalk::drift).orElse(walk.drift());
            mates.row(MeasureSheet.title(walk, words), words.signed(was), words.signed(walk.drift()));
        }
        mates.print(out);
    }

    /** What of a girth lies on one side of the body, which is half of it where both are cut alike. */
    private void side(Table girths, Girth girth, Optional<Girth> old, Side side) {
        double now = girth.on(side);
        double was = old.map(o -> o.on(side)).orElse(now);
        girths.row(
                "  " + words.of("sheet.side." + side.name()),
                words.length(was),
                words.length(now),
                words.signed(now - was));
    }
}
