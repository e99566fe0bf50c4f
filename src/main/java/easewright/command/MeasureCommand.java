package easewright.command;

import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;

/** {@code measure FILE}: pieces, edges, levels, girths, mates, findings. */
final class MeasureCommand extends Look {
    MeasureCommand() {
        super("measure");
    }

    @Override
    void print(Reading reading, Noticed noticed, PrintWriter out, Words words) {
        new MeasureSheet(out, words).print(reading);
        noticed.print(out, words);
    }
}
