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

        private Group and(Group more) {
            List<Row> all = new ArrayList<>(rows);
            all.addAll(more.rows());
            return new Group(piece, title, all);
        }
    }

    /**
     * One suggestion.
     *
     * @param what    what it says
     * @param why     why
     * @param guess   whether it is no more than a guess
     * @param offered whether it can be ticked: what built on something that is unticked now cannot
     */
    public record Row(String key, String what, String why, boolean guess, boolean taken, boolean offered) {}

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

    /**
     * The same with everything where it was before: what is no longer offered keeps its place, and what is new comes
     * last in its group.
     *
     * @param gone said of what is no longer offered
     */
    public SuggestView inPlacesOf(SuggestView before, String gone) {
        Map<String, Group> groupOf = new HashMap<>();
        Map<String, Row> open = new LinkedHashMap<>();
        for (Group group : groups) {
            for (Row row : group.rows()) {
                groupOf.put(row.key(), group);
                open.put(row.key(), row);
            }
        }
        Map<String, Group> kept = new LinkedHashMap<>();
        for (Group old : before.groups()) {
            List<Row> rows = new ArrayList<>();
            Group now = old;
            for (Row row : old.rows()) {
                Row here = open.remove(row.key());
                rows.add(here != null ? here : new Row(row.key(), row.what(), gone, false, false, false));
                // A piece may be another one since, and called otherwise.
                now = here != null ? groupOf.get(row.key()) : now;
            }
            kept.merge(now.piece(), new Group(now.piece(), now.title(), rows), Group::and);
        }
        for (Row row : open.values()) {
            Group group = groupOf.get(row.key());
            kept.merge(group.piece(), new Group(group.piece(), group.title(), List.of(row)), Group::and);
        }
        return new SuggestView(intro, List.copyOf(kept.values()), taken);
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
                taken,
                true);
    }

    private static String kind(Suggestion suggestion) {
        String kind = suggestion.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        if (suggestion instanceof CutCount cut && cut.onFold()) {
            return kind + ".fold";
        }
        if (suggestion instanceof CutCount cut && cut.instead()) {
            return kind + ".seam";
        }
        if (suggestion instanceof StitchingLine line) {
            return kind
                    + (line.after().drawn() == LineKind.CUTTING ? ".cutting" : "")
                    + (line.isByEdge() ? ".by-edge" : "");
        }
        return kind;
    }
}
