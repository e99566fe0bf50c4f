package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes the changes of a pattern anew in another course: one left out, one by another amount, two in another order.
 * What has been marked since, body, wishes and cloth stay. The given pattern is never altered.
 */
public final class Replay {
    private final Pattern pattern;
    private final List<Pattern> known;

    /**
     * @param known patterns of earlier moments, oldest first: with them a change is taken back to the last bit; without
     *              them by its opposite, within 1e-6 mm
     */
    public Replay(Pattern pattern, List<Pattern> known) {
        this.pattern = pattern;
        this.known = List.copyOf(known);
    }

    /**
     * Whether two neighbouring steps may change places. Length is settled before width (E-372, docs/sources.md 4.4),
     * so that no width is moved in front of a length.
     */
    public static boolean mayChangePlaces(Step earlier, Step later) {
        return !earlier.isLength() || later.isLength();
    }

    /**
     * The pattern as the course has it.
     *
     * @throws StepRefused if a change to be taken back has no opposite, or a later one cannot be made any more
     */
    public Pattern to(List<Step> course) throws StepRefused {
        List<ChangeNote> wanted =
                course.stream().filter(Step::on).map(Step::note).toList();
        int kept = 0;
        int most = Math.min(wanted.size(), pattern.changes().size());
        while (kept < most && wanted.get(kept).equals(pattern.changes().get(kept))) {
            kept++;
        }
        boolean same = kept == wanted.size() && kept == pattern.changes().size();
        Retrace.Way way = same ? new Retrace.Way(pattern, LevelsSince.START) : before(kept);
        Pattern now = way.back();
        Map<String, String> given = given(now, kept);
        List<Step> anew = wanted.subList(kept, wanted.size()).stream()
                .map(note -> new Step(note, true))
                .toList();
        List<Integer> earlier = LevelsSince.earlier(pattern.changes(), wanted, kept);
        List<Boolean> does = new ArrayList<>(Collections.nCopies(kept, true));
        for (OneChange change : OneChange.course(anew)) {
            Pattern made = applied(now, change, does, way.since(), earlier.get(does.size() - kept));
            now = RejoinedNames.called(RejoinedNames.asNow(made, pattern), given, false);
        }
        return RejoinedNames.called(now, given, true).withAside(Step.aside(without(course, does)));
    }

    /** What does nothing any more is not in the list of what was made: it stays in the course, set aside. */
    private static List<Step> without(List<Step> course, List<Boolean> does) {
        List<Step> steps = new ArrayList<>();
        int made = 0;
        for (Step step : course) {
            steps.add(step.switched(step.on() && does.get(made++)));
        }
        return steps;
    }

    /**
     * Of several sizes that refuse the one is told that bears least.
     *
     * @param does    is told of each step whether it does anything
     * @param since   which levels it may not know of
     * @param earlier how many changes had been made before it
     */
    private static Pattern applied(
            Pattern pattern, OneChange change, List<Boolean> does, LevelsSince since, int earlier) throws StepRefused {
        Pattern now = pattern;
        Optional<StepRefused> refused = Optional.empty();
        for (Step step : change.steps()) {
            try {
                Pattern next = since.made(now, Ways.from(step.note()), earlier);
                does.add(next.changes().size() > now.changes().size());
                now = next;
            } catch (Refusal refusal) {
                if (refused.isEmpty() || refusal.allowsLessThan(refused.get().why())) {
                    refused = Optional.of(new StepRefused(step.note(), refusal));
                }
            }
        }
        if (refused.isPresent()) {
            throw refused.get();
        }
        return now;
    }

    /** What seams that later changes parted are called now, by the names that those changes give. */
    private Map<String, String> given(Pattern before, int kept) {
        if (before.pieces().size() == pattern.pieces().size()) {
            return Map.of();
        }
        try {
            Pattern made = forward(before, pattern.changes(), kept);
            return RejoinedNames.sewnAlike(made, pattern) ? RejoinedNames.given(made, pattern) : Map.of();
        } catch (Refusal cannotBeMadeAgain) {
            return Map.of();
        }
    }

    /** The present pattern with only its first changes made. */
    private Retrace.Way before(int kept) throws StepRefused {
        Pattern bare = pattern.withAside(List.of());
        if (kept == bare.changes().size()) {
            return asMade(bare);
        }
        List<ChangeNote> prefix = bare.changes().subList(0, kept);
        List<Optional<Piece>> exact = new ArrayList<>();
        bare.pieces().forEach(p -> exact.add(Optional.empty()));
        for (int i = known.size() - 1; i >= 0; i--) {
            if (known.get(i).changes().size() != kept) {
                continue;
            }
            Pattern then = NamesNow.of(known.get(i), bare);
            if (!then.changes().equals(prefix)) {
                continue;
            }
            Optional<Pattern> whole = whole(then, bare, kept);
            if (whole.isPresent()) {
                return asMade(bare.withPieces(whole.get().pieces())
                        .withMates(whole.get().mates())
                        .withChanges(prefix));
            }
            if (sameIds(then, bare) && matches(then, bare, kept, exact)) {
                return asMade(
                        bare.withPieces(exact.stream().flatMap(Optional::stream).toList())
                                .withChanges(prefix));
            }
        }
        return retraced(bare, kept, exact);
    }

    private static Retrace.Way asMade(Pattern then) {
        return new Retrace.Way(then, LevelsSince.START);
    }

    private Retrace.Way retraced(Pattern bare, int kept, List<Optional<Piece>> exact) throws StepRefused {
        try {
            return joined(bare, kept, exact);
        } catch (StepRefused refused) {
            // What was changed on both sides before they were parted can be taken back once they are one again.
            int parting = lastOnOneSide(bare);
            Pattern whole =
                    parting > kept ? new Replay(bare, known).before(parting).back() : bare;
            if (sameIds(whole, bare)) {
                throw refused;
            }
            return new Replay(whole, known).before(kept);
        }
    }

    /** The number of the last change on one side only; −1 where there is none. */
    private static int lastOnOneSide(Pattern pattern) {
        int last = pattern.changes().size() - 1;
        while (last >= 0 && Scope.of(pattern.changes().get(last)).side() == Side.BOTH) {
            last--;
        }
        return last;
    }

    private static Retrace.Way joined(Pattern bare, int kept, List<Optional<Piece>> exact) throws StepRefused {
        Retrace.Way way = retraced(bare, kept);
        Pattern back = way.back();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < back.pieces().size(); i++) {
            pieces.add(exact.get(i).orElse(back.pieces().get(i)));
        }
        List<ChangeNote> later = bare.changes().subList(kept, bare.changes().size());
        return new Retrace.Way(new Rejoined(bare, later).of(back.withPieces(pieces)), way.since());
    }

    /**
     * The state then, where a later change made left and right pieces and going forward from then gives exactly what is
     * now but for names: a seam that was eased otherwise since would be lost.
     */
    private static Optional<Pattern> whole(Pattern then, Pattern now, int kept) {
        if (sameIds(then, now)) {
            return Optional.empty();
        }
        try {
            Pattern made = forward(then, now.changes(), kept);
            if (!sameIds(made, now)) {
                return Optional.empty();
            }
            Pattern again = RejoinedNames.asNow(made, now);
            boolean same = again.pieces().equals(now.pieces()) && RejoinedNames.sewnAlike(again, now);
            return same ? Optional.of(RejoinedNames.before(then, made, now)) : Optional.empty();
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    private static boolean sameIds(Pattern one, Pattern other) {
        return one.pieces().stream()
                .map(Piece::id)
                .toList()
                .equals(other.pieces().stream().map(Piece::id).toList());
    }

    /**
     * Goes forward from an earlier moment and remembers, for each piece that comes out as it is now, what it was then.
     * Whether that holds for all pieces: then nothing has been marked since.
     */
    private static boolean matches(Pattern then, Pattern now, int kept, List<Optional<Piece>> exact) {
        Pattern again;
        try {
            again = forward(then, now.changes(), kept);
        } catch (Refusal refusal) {
            return false;
        }
        boolean all = true;
        for (int i = 0; i < now.pieces().size(); i++) {
            Piece is = now.pieces().get(i);
            Optional<Piece> was = then.pieces().stream()
                    .filter(p -> p.id().equals(is.id()))
                    .findFirst()
                    .filter(p -> again.piece(is.id()).map(is::equals).orElse(false));
            if (exact.get(i).isEmpty()) {
                exact.set(i, was);
            }
            all &= exact.get(i).isPresent();
        }
        return all;
    }

    private static Pattern forward(Pattern then, List<ChangeNote> changes, int kept) throws Refusal {
        Pattern again = then;
        for (ChangeNote note : changes.subList(kept, changes.size())) {
            again = Ways.from(note).apply(again).pattern();
        }
        return again;
    }

    /** Back along the changes, and forward again to prove that this was the way it came. */
    private static Retrace.Way retraced(Pattern now, int kept) throws StepRefused {
        Optional<Retrace.Way> proved = Retrace.proved(now, kept);
        if (proved.isPresent()) {
            return proved.get();
        }
        throw new StepRefused(inTheWay(now, kept), Refusal.of("change-one-way"));
    }

    /** The first change that cannot be taken back so that those behind it still come to what is now. */
    private static ChangeNote inTheWay(Pattern now, int kept) {
        List<ChangeNote> changes = now.changes();
        int back = changes.size();
        while (back - 1 > kept && Retrace.isProved(now, back - 1)) {
            back--;
        }
        return changes.get(back - 1);
    }
}
