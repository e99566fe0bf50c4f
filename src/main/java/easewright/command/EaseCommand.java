package easewright.command;

import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.print.Reading;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;

/** {@code ease FILE}: body, garment and ease at each level. */
final class EaseCommand extends Look {
    EaseCommand() {
        super("ease");
    }

    @Override
    boolean tells(Finding finding) {
        return finding.code().equals("levels-not-marked");
    }

    @Override
    void print(Reading reading, Source source, PrintWriter out) {
        if (reading.sheet().lines().isEmpty()) {
            whatToDo(reading, source, new Page(out));
        } else {
            new EaseListing(out, source.words(), source.garment().isPresent()).print(reading);
        }
        out.println();
    }

    /** Without a level there is no sheet; what is missing is said, and how to go on. */
    private static void whatToDo(Reading reading, Source source, Page page) {
        Words words = source.words();
        List<String> pieces =
                reading.pattern().pieces().stream().map(Piece::name).toList();
        Map<String, Object> values = Map.of("file", source.file().toString(), "count", pieces.size(), "pieces", pieces);
        page.text(words.of(pieces.size() == 1 ? "ease.no-level.one" : "ease.no-level", values));
        page.line();
        page.text(words.of("ease.no-level.next"));
        page.line();
        page.text("  ", words.of("ease.no-level.line", values));
    }
}
