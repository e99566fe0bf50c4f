package easewright.bench;

import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.LengthUnit;
import java.util.Locale;
import java.util.Optional;

/**
 * How much memory each step takes that can be undone: as many changes as wanted are kept one after another, as the
 * editor keeps them, and the heap in use after collecting is compared. {@code java … easewright.bench.UndoMemory STEPS}.
 */
public final class UndoMemory {
    private UndoMemory() {}

    /** Prints a line for each pattern. */
    public static void main(String[] args) throws SvgProblem {
        int steps = Integer.parseInt(args[0]);
        for (LineKind drawn : LineKind.values()) {
            report("12 gores, 2,000 segments, " + drawn, Sheets.drawing(Gores.skirt(12, 2000, drawn)), steps);
        }
        report("nest of 200 pieces, one of 10 sizes changed", Sheets.nest(200), steps);
    }

    private static void report(String what, byte[] svg, int steps) throws SvgProblem {
        long empty = used();
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "undo.svg"), Optional.empty(), "undo.svg")));
        session.chooseLevel("hip");
        change(session, 5);
        long opened = used();
        for (int i = 0; i < steps; i++) {
            change(session, i % 2 == 0 ? 10 : -10);
        }
        long after = used();
        Pattern pattern = session.desk().pattern();
        System.out.printf(
                Locale.ROOT,
                "%s: open %.2f MB, each of %d steps %.1f kB (%d pieces, %d changes)%n",
                what,
                (opened - empty) / 1e6,
                steps,
                (after - opened) / 1e3 / steps,
                pattern.pieces().size(),
                pattern.changes().size());
    }

    private static void change(Session session, double mm) {
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        Pattern before = session.desk().pattern();
        session.keep();
        if (session.desk().pattern() == before) {
            throw new IllegalStateException("The change was refused: " + session.desk().trial());
        }
    }

    /** Bytes in use once nothing more can be collected. */
    private static long used() {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            System.gc();
            least = Math.min(
                    least, Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory());
        }
        return least;
    }
}
