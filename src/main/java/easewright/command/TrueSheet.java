package easewright.command;

import easewright.alter.Altered;
import easewright.alter.Moved;
import easewright.alter.Proposal;
import easewright.alter.Refusal;
import easewright.alter.TrueUp.Tried;
import easewright.alter.Truing;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.print.FindingWords;
import easewright.text.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Places that are or were untrue, as text and as JSON: what is wrong, what moves, what that costs. */
final class TrueSheet {
    /** How often a moved run is looked at. */
    private static final int LOOKS = 24;

    private final Pattern before;
    private final Words words;

    /**
     * @param before the pattern before anything was put right, which names the places
     */
    TrueSheet(Pattern before, Words words) {
        this.before = before;
        this.words = words;
    }

    /**
     * @param offered the places are only shown, each as it would be put right alone; else it was done
     */
    void print(PrintWriter out, List<Tried> all, boolean offered) {
        Page page = new Page(out);
        if (all.isEmpty()) {
            page.text(words.of("command.all-true"));
            return;
        }
        page.text(words.of(offered ? "command.untrue" : "command.trued"));
        for (int i = 0; i < all.size(); i++) {
            Tried tried = all.get(i);
            Proposal proposal = tried.proposal();
            String label = String.format("%3d  ", i + 1);
            String indent = "     ";
            page.line();
            page.text(label, TruePlace.of(proposal, before));
            page.text(indent, said(proposal));
            tried.done().ifPresent(done -> page.text(indent, movedWords(proposal, done, offered)));
            if (offered && !proposal.protectedEdges().isEmpty()) {
                String known = String.join(", ", proposal.protectedEdges());
                page.text(indent, words.of("command.true-protected", Map.of("edges", known)));
            }
            tried.refusal().ifPresent(r -> page.text(indent, refused(r)));
        }
        if (offered) {
            page.line();
            page.text(words.of("command.true-how"));
        }
    }

    private String said(Proposal proposal) {
        String said = FindingWords.sentence(proposal.finding(), words);
        return Truing.isLittle(proposal.finding()) ? said + " " + words.of("true.little") : said;
    }

    private String refused(Refusal refusal) {
        return words.of("command.true-refused", Map.of("reason", words.problem(refusal.code(), refusal.values())));
    }

    private String movedWords(Proposal proposal, Altered done, boolean offered) {
        List<String> sentences = new ArrayList<>();
        for (Map.Entry<String, List<Moved>> each : byPiece(done).entrySet()) {
            double most =
                    each.getValue().stream().mapToDouble(TrueSheet::most).max().orElse(0);
            double over = each.getValue().stream()
                    .mapToDouble(m -> m.before().length())
                    .sum();
            String line = offered ? "command.true-moves" : "command.true-moved";
            sentences.add(words.of(
                    words.isLessThanTapeShows(most) ? line + ".little" : line,
                    Map.of("piece", each.getKey(), "most", most, "over", over)));
        }
        for (Finding finding : done.findings()) {
            if (finding.code().startsWith("trued-length")) {
                sentences.add(words.of("command.true-length", withPiece(finding)));
            }
        }
        boolean notch = proposal.finding().code().equals("notches-apart");
        return sentences.isEmpty()
                ? words.of(notch ? "command.true-notch" : "command.true-line-beside")
                : String.join(" ", sentences);
    }

    private Map<String, List<Moved>> byPiece(Altered done) {
        Map<String, List<Moved>> all = new LinkedHashMap<>();
        done.moved()
                .forEach(m ->
                        all.computeIfAbsent(name(m), n -> new ArrayList<>()).add(m));
        return all;
    }

    private static Map<String, Object> withPiece(Finding finding) {
        return Map.of(
                "piece", finding.piece(),
                "edge", finding.values().get("edge"),
                "by.signed", finding.values().get("by.signed"));
    }

    private String name(Moved moved) {
        return before.piece(moved.pieceId()).map(Piece::name).orElse(moved.pieceId());
    }

    /** How far the run lies from where it was at most, mm. */
    private static double most(Moved moved) {
        double most = 0;
        double length = moved.after().length();
        for (int k = 0; k <= LOOKS; k++) {
            most = Math.max(
                    most,
                    moved.before()
                            .nearest(moved.after().pointAtLength(length * k / LOOKS))
                            .distance());
        }
        return most;
    }

    void put(Node.Rows rows, List<Tried> all) {
        for (int i = 0; i < all.size(); i++) {
            Tried tried = all.get(i);
            Proposal proposal = tried.proposal();
            Node node = rows.addObject()
                    .put("number", i + 1)
                    .put("place", TruePlace.of(proposal, before))
                    .put("code", proposal.finding().code())
                    .put("message", words.of(proposal.finding()))
                    .put("protected", proposal.protectedEdges())
                    .put("possible", tried.done().isPresent());
            tried.refusal().ifPresent(r -> node.put("reason", words.problem(r.code(), r.values())));
            Node.Rows moves = node.putArray("moves");
            tried.done()
                    .map(Altered::moved)
                    .orElse(List.of())
                    .forEach(moved -> moves.addObject()
                            .put("piece", name(moved))
                            .put("most_mm", most(moved))
                            .put("over_mm", moved.before().length()));
        }
    }
}
