package easewright.print.report;

import easewright.ease.EaseLine;
import easewright.print.EaseText;
import easewright.print.GirthText;
import easewright.print.report.Part.Grid;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The table of ease in a report: a row for each girth, with what it was before where something was changed. */
final class EaseRows {
    /** Where there is nothing to be told. */
    static final String NONE = "\u2013";

    private final Words words;
    private final EaseText easeText;

    EaseRows(Words words) {
        this.words = words;
        this.easeText = new EaseText(words);
    }

    /** The girths as they are. */
    Grid plain(List<EaseLine> now) {
        List<List<String>> rows = new ArrayList<>();
        for (EaseLine line : now) {
            rows.add(List.of(
                    easeText.title(line.girth()),
                    body(line),
                    words.length(GirthText.finished(line, words)),
                    ease(line),
                    percent(line),
                    wish(line)));
        }
        return new Grid(head(words, "level", "body", "garment", "ease", "percent", "wish"), rows, 1);
    }

    /** The girths as they are beside what they were. */
    Grid compared(List<EaseLine> old, List<EaseLine> now) {
        List<List<String>> rows = new ArrayList<>();
        for (EaseLine line : now) {
            Optional<EaseLine> was = old.stream().filter(line::sameAs).findFirst();
            rows.add(List.of(
                    easeText.title(line.girth()),
                    body(line),
                    was.map(w -> words.length(GirthText.finished(w, words))).orElse(NONE),
                    words.length(GirthText.finished(line, words)),
                    was.map(this::ease).orElse(NONE),
                    ease(line),
                    percent(line),
                    wish(line)));
        }
        return new Grid(
                head(words, "level", "body", "before", "after", "ease-before", "ease-after", "percent", "wish"),
                rows,
                1);
    }

    /** Headings of columns. */
    static List<String> head(Words words, String... keys) {
        return Arrays.stream(keys).map(key -> words.of("report.column." + key)).toList();
    }

    private String body(EaseLine line) {
        return line.body().isPresent() ? words.length(line.body().getAsDouble()) : NONE;
    }

    /** The ease of a girth with its sign. */
    String ease(EaseLine line) {
        return line.ease().isPresent() ? words.signed(line.ease().getAsDouble()) : NONE;
    }

    private String percent(EaseLine line) {
        return line.percent().isPresent() ? easeText.percent(line) : NONE;
    }

    private String wish(EaseLine line) {
        if (line.wish().isEmpty()) {
            return NONE;
        }
        String wish = easeText.wished(line);
        String how = easeText.wish(line);
        return how.isEmpty() ? wish : words.of("report.wish", Map.of("wish", wish, "how", how));
    }
}
