package easewright.command;

import easewright.print.EaseText;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;

/** {@code ease FILE}: body, garment and ease at each level. */
final class EaseCommand extends Look {
    EaseCommand() {
        super("ease");
    }

    @Override
    void print(Reading reading, Noticed noticed, PrintWriter out, Words words) {
        new EaseText(words).lines(reading.sheet()).forEach(out::println);
        noticed.print(out, words);
    }
}
