package easewright.editor.mark;

import easewright.alter.OneChange;
import easewright.alter.OtherLine;
import easewright.alter.Replay;
import easewright.alter.Step;
import easewright.alter.StepRefused;
import easewright.editor.model.Desk;
import easewright.editor.model.Session;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.print.ChangeWords;
import easewright.suggest.Sheet;
import easewright.suggest.TwoLines;
import easewright.svg.Strokes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is said of a drawing whose pieces were changed already: the changes are taken out, it is said of what is drawn, and
 * they are made again on what that is now. One that cannot be made there, or has nothing left to do there, is switched off
 * and stays in its place in the list.
 *
 * @param pattern what came of it
 * @param piece   id of the piece of which it was said; empty where it is gone
 * @param again   how many changes were made again
 * @param off     those that had to be switched off, in words
 * @param why     why the first of them was
 */
public record SaidLater(Pattern pattern, Optional<String> piece, int again, List<String> off, String why) {
    public SaidLater {
        off = List.copyOf(off);
    }

    /** What is said, of the sheet as it is drawn. */
    @FunctionalInterface
    public interface Saying {
        /** The pattern after it. */
        Pattern of(Sheet drawn) throws MarkRefused;
    }

    /**
     * That a line is sewn or cut, or that both lines of a piece change places.
     *
     * @param swap whether they are to change places
     * @throws MarkRefused {@code said-after-change}, {@code line-gone}, {@code line-of-several}, {@code line-open}
     */
    public static SaidLater line(Desk desk, Sheet sheet, OtherLines.Other other, boolean swap) throws MarkRefused {
        Sheet drawn = drawn(desk, sheet);
        OtherLines.Other there = there(drawn, other);
        // What it lies in now may be a copy for one side only, which is not drawn.
        Piece before =
                there.piece().flatMap(id -> piece(drawn, id)).orElseThrow(() -> new MarkRefused("line-gone", Map.of()));
        String was = desk.file()
                .map(f -> Strokes.outlineOf(f.svg().drawing(), before.id()))
                .orElse(before.id());
        OtherLines.Said said =
                swap ? OtherLines.changed(drawn.pattern(), there, was) : OtherLines.said(drawn.pattern(), there, was);
        Optional<OtherLine> otherLine = Optional.of(said.piece())
                .filter(id -> !id.equals(before.id()))
                .map(id -> new OtherLine(before, id, TwoLines.across(before, there.line())));
        return again(desk, said.pattern(), Optional.of(said.piece()), otherLine);
    }

    /**
     * That a line is a piece of its own.
     *
     * @throws MarkRefused {@code said-after-change}
     */
    public static SaidLater ownPiece(Desk desk, Sheet sheet, OtherLines.Other other) throws MarkRefused {
        Sheet drawn = drawn(desk, sheet);
        Pattern said = OtherLines.ownPiece(drawn, there(drawn, other));
        return again(desk, said, Optional.of(other.id()), Optional.empty());
    }

    /**
     * That an outline is no piece. A copy for one side only is no outline that is drawn: it goes with its change.
     *
     * @throws MarkRefused {@code said-after-change}, {@code piece-in-changes}
     */
    public static SaidLater noPiece(Desk desk, Sheet sheet, String piece) throws MarkRefused {
        Sheet drawn = drawn(desk, sheet);
        if (piece(drawn, piece).isEmpty()) {
            String name = EdgeEdits.piece(desk.pattern(), piece).name();
            throw new MarkRefused("piece-in-changes", Map.of("piece", name));
        }
        Pattern said = PieceEdits.noPiece(drawn.pattern(), piece);
        return again(desk, said, Optional.empty(), Optional.empty());
    }

    /** The sheet as it was before any change, with what was marked since. */
    private static Sheet drawn(Desk desk, Sheet sheet) throws MarkRefused {
        Pattern pattern = desk.pattern();
        try {
            Pattern bare = new Replay(pattern, desk.history().states()).to(List.of());
            return new Sheet(bare, sheet.loose(), sheet.captions(), sheet.layers());
        } catch (StepRefused refused) {
            String which = new ChangeWords(desk.words()).brief(refused.note(), pattern);
            throw new MarkRefused("said-after-change", Map.of("which", which));
        }
    }

    /** By id alone, since another piece may bear it as its name. */
    private static Optional<Piece> piece(Sheet drawn, String id) {
        return drawn.pattern().pieces().stream().filter(p -> p.id().equals(id)).findFirst();
    }

    private static OtherLines.Other there(Sheet drawn, OtherLines.Other other) throws MarkRefused {
        return OtherLines.on(drawn).stream()
                .filter(o -> o.id().equals(other.id()))
                .findFirst()
                .orElseThrow(() -> new MarkRefused("line-gone", Map.of()));
    }

    private static SaidLater again(Desk desk, Pattern said, Optional<String> piece, Optional<OtherLine> otherLine) {
        List<String> off = new ArrayList<>();
        String why = "";
        Pattern now = said;
        int again = 0;
        for (OneChange change : OneChange.course(Step.course(desk.pattern()))) {
            List<Step> steps = change.steps().stream()
                    .map(s -> otherLine.map(o -> o.of(s)).orElse(s))
                    .toList();
            List<Step> course = Step.course(now);
            String not = "";
            try {
                // What has nothing left to do is set aside there, so that the course is to be read anew.
                Pattern made = new Replay(now, List.of()).to(joined(course, steps));
                boolean does = made.changes().size() > now.changes().size();
                now = made;
                again += does ? 1 : 0;
                not = change.on() && !does ? desk.words().of("editor.said.again-nothing") : "";
            } catch (StepRefused refused) {
                not = desk.words().problem(refused.why().code(), refused.why().values());
                List<Step> without = steps.stream().map(s -> s.switched(false)).toList();
                now = now.withAside(Step.aside(joined(course, without)));
            }
            if (!not.isEmpty()) {
                why = off.isEmpty() ? not : why;
                String which = new ChangeWords(desk.words()).brief(change.note(), desk.pattern());
                // Several stand in one sentence.
                off.add(which.replaceFirst("\\.$", ""));
            }
        }
        return new SaidLater(now, piece, again, off, why);
    }

    private static List<Step> joined(List<Step> first, List<Step> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }

    /** Makes it the present pattern, as one step that can be undone, and tells what became of the changes. */
    public void edit(Session session) {
        session.edit(pattern);
        if (!off.isEmpty()) {
            session.say(true, "editor.said.again-off", Map.of("off", off, "why", why));
        } else if (again > 0) {
            session.say(false, "editor.said.again", Map.of("count", again));
        }
    }
}
