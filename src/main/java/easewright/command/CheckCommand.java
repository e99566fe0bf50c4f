package easewright.command;

import easewright.print.Reading;
import java.io.PrintWriter;

/** {@code check FILE}: everything that is to be noticed. */
final class CheckCommand extends Look {
    CheckCommand() {
        super("check");
    }

    @Override
    void print(Reading reading, Source source, PrintWriter out) {
        // What is to be noticed is all there is to say.
    }
}
