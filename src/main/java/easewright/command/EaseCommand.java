package easewright.command;

import easewright.print.Reading;
import java.io.PrintWriter;

/** {@code ease FILE}: body, garment and ease at each level. */
final class EaseCommand extends Look {
    EaseCommand() {
        super("ease");
    }

    @Override
    void print(Reading reading, Source source, PrintWriter out) {
        if (!reading.sheet().lines().isEmpty()) {
            new EaseListing(out, source.words(), source.garment().isPresent()).print(reading);
            out.println();
        }
    }
}
