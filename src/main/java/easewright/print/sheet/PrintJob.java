package easewright.print.sheet;

import easewright.print.Cautions.Caution;
import easewright.print.Reading;
import easewright.print.ink.Leaf;
import easewright.text.Words;
import java.util.List;
import java.util.Optional;

/** Makes the pages of a full-scale print. */
public final class PrintJob {
    private PrintJob() {}

    /**
     * The pages, and what can be measured on them.
     *
     * @param sheets   number of sheets that carry the pattern (a tiled print has one more, with the plan)
     * @param across   sheets side by side, of a tiled print; else 1
     * @param down     sheets one below the other
     * @param controls lengths of the control lines, mm
     * @param square   side of the test square, mm
     */
    public record Prints(
            List<Leaf> leaves,
            List<String> pieces,
            int sheets,
            int across,
            int down,
            List<Double> controls,
            double square) {
        public Prints {
            leaves = List.copyOf(leaves);
            pieces = List.copyOf(pieces);
            controls = List.copyOf(controls);
        }
    }

    /**
     * Fills an order.
     *
     * @param before   the pattern before the recorded changes, if there are any
     * @param cautions shown beside the pattern
     * @throws PrintProblem where nothing sound can be printed
     */
    public static Prints of(
            PrintOrder order, Optional<Reading> before, Reading after, List<Caution> cautions, Words words)
            throws PrintProblem {
        Job job = Job.of(order, before, after, cautions, words);
        if (order.projector()) {
            return new ProjectorSheet(job).prints();
        }
        return order.paper().tiled() ? new TiledSheets(job).prints() : new WholeSheets(job).prints();
    }
}
