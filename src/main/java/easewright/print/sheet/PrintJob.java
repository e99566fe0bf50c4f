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
     * @param at       where each sheet lies among those that are joined, in the order of the pages; empty where
     *                 nothing is joined
     * @param width    of the sheets when they are joined, or of the largest one where nothing is joined, mm
     * @param height   the same
     * @param controls lengths of the control lines, mm
     * @param square   side of the test square, mm
     */
    public record Prints(
            List<Leaf> leaves,
            List<String> pieces,
            int sheets,
            List<SheetAt> at,
            double width,
            double height,
            List<Double> controls,
            double square) {
        public Prints {
            leaves = List.copyOf(leaves);
            pieces = List.copyOf(pieces);
            at = List.copyOf(at);
            controls = List.copyOf(controls);
        }
    }

    /** Row and column of a sheet, counted from 0. */
    public record SheetAt(int row, int column) {}

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
        return order.paper().tiled() ? new TiledSheets(job).prints() : WholeSheets.prints(job);
    }
}
