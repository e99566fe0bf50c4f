package easewright.command;

import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;

/** {@code check FILE}: everything that is to be noticed. */
final class CheckCommand extends Look {
    CheckCommand() {
        super("check");
    }

    @Override
    void print(Reading reading, Noticed noticed, PrintWriter out, Words words) {
        if (noticed.all().isEmpty()) {
            out.println(words.of("command.nothing-noticed"));
        } else {
            noticed.print(out, words);
        }
    }
}
