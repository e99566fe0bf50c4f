package easewright.command;

import easewright.print.Reading;
import java.io.PrintWriter;

/** {@code measure FILE}: pieces, edges, levels, girths, mates, findings. */
final class MeasureCommand extends Look {
    MeasureCommand() {
        super("measure");
    }

    @Override
    void print(Reading reading, Source source, PrintWriter out) {
        new MeasureSheet(out, source.words()).print(reading);
        out.println();
    }
}
