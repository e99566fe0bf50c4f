package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.suggest.CutCount;
import easewright.suggest.Reason;
import easewright.suggest.StitchingLine;
import easewright.suggest.Suggestion;
import easewright.suggest.Suggestions;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What is suggested, in words, piece by piece and then for the whole garment.
 *
 * @param intro what this is about
 * @param taken how many are ticked
 */
public record SuggestView(String intro, List<Group> groups, int taken) {
    public SuggestView {
        groups = List.copyOf(groups);
    }

    /**
     * The suggestions about one piece, or about several together.
     *
     * @param piece id of the piece as it will be; empty for the whole garment
     */
    public record Group(String piece, String title, List<Row> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One suggestion.
     *
     * @param what  what it says
     * @param why   why
     * @param guess whether it is no more than a guess
     */
    public record Row(String key, String what, String why, boolean guess, boolean taken) {}

    public static SuggestView of(Desk desk, Suggestions suggestions, MarkState state) {
        Words words = desk.words();
        Pattern outcome = suggestions.outcome();
        Map<String, String> becomes = new HashMap<>();
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        int taken = 0;
        for (Suggestion suggestion : suggestions.all()) {
            boolean ticked = !state.leftOut().contains(suggestion.key());
            taken += ticked ? 1 : 0;
            String piece = suggestion instanceof Suggestion.OnPiece on ? on.piece() : "";
            if (suggestion instanceof StitchingLine line && ticked) {
                becomes.put(line.piece(), line.after().id());
            }
            rows.computeIfAbsent(becomes.getOrDefault(piece, piece), p -> new ArrayList<>())
                    .add(row(suggestion, ticked, words));
        }
        List<Row> whole = rows.remove("");
        List<Group> groups = new ArrayList<>();
        rows.forEach((piece, list) -> groups.add(new Group(piece, title(piece, outcome, desk.pattern()), list)));
        if (whole != null) {
            groups.add(new Group("", words.of("editor.suggest.whole"), whole));
        }
        String intro = words.of(groups.isEmpty() ? "editor.suggest.none" : "editor.suggest.intro");
        return new SuggestView(intro, groups, taken);
    }

    private static String title(String piece, Pattern outcome, Pattern present) {
        return outcome.piece(piece)
                .or(() -> present.piece(piece))
                .map(Piece::name)
                .orElse(piece);
    }

    private static Row row(Suggestion suggestion, boolean taken, Words words) {
        Reason reason = suggestion.reason();
        return new Row(
                suggestion.key(),
                words.of("suggestion." + kind(suggestion), suggestion.values()),
                words.of("reason." + reason.code(), reason.values()),
                !reason.isLikely(),
                taken);
    }

    private static String kind(Suggestion suggestion) {
        String kind = suggestion.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        if (suggestion instanceof CutCount cut && cut.onFold()) {
            return kind + ".fold";
        }
        if (suggestion instanceof StitchingLine line && line.after().drawn() == LineKind.CUTTING) {
            return kind + ".cutting";
        }
        return kind;
    }
}
