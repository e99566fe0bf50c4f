package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Finds what makes both seam lines of every pair change by the same length, and the amount with which the girth is exact
 * all the same: pairs of which the change moved an end are drawn out there, the others bowed.
 */
final class RemedySearch {
    /** Seam lines and girths are met within this, mm. */
    private static final double CLOSE = 1e-9;

    private static final double PROMISED = 1e-6;

    /** A drift so small is not worth a bow, mm; the promise is 0.02. */
    private static final double ENOUGH = 0.01;

    private final SeamPairs seams;
    private final Pattern before;
    private final SeamChange change;
    private final BowPlace place;

    /**
     * @param change the change without evening
     * @param place  where a pair is bowed whose ends are all fixed
     */
    RemedySearch(SeamPairs seams, SeamChange change, BowPlace place) {
        this.seams = seams;
        this.before = seams.before();
        this.change = change;
        this.place = place;
    }

    /** The same on the pattern with every seam parted that is going to be bowed. */
    RemedySearch parted() throws Refusal {
        Altered trial = plainly(before, change.amount());
        Pattern parted = before;
        for (SeamPairs.Pair pair : seams.moved(trial)) {
            Optional<Point> at = pair.fixed() && Math.abs(pair.drift()) > ENOUGH
                    ? SeamBow.parting(seams.run(place.edge(pair), trial).orElseThrow(), place.shorter())
                    : Optional.empty();
            if (at.isPresent()) {
                Piece piece = parted.piece(place.edge(pair).piece()).orElseThrow();
                Outline whole = piece.outline();
                parted = parted.withPiece(piece.toBuilder()
                        .outline(whole.splitAt(SlashPlaces.near(whole, at.get())))
                        .original(Optional.of(piece.original().orElse(whole)))
                        .build());
            }
        }
        return parted == before ? this : new RemedySearch(SeamPairs.of(parted), change, place);
    }

    /**
     * The change with its remedies.
     *
     * @throws Refusal if no amount and no remedies meet girth and seams
     */
    Altered solved() throws Refusal {
        double base = girth(before);
        double asked = Root.of(
                a -> girth(by(a).pattern()) - base - change.amount(),
                -change.amount(),
                change.amount(),
                CLOSE,
                PROMISED,
                Refusal.of("even-not-met"));
        return by(asked);
    }

    private double girth(Pattern pattern) {
        return measured(pattern).girth(change.level()).orElseThrow().finished();
    }

    private Altered by(double amount) throws Refusal {
        Altered trial = plainly(before, amount);
        List<SeamPairs.Pair> pairs = seams.moved(trial);
        if (pairs.isEmpty()) {
            throw seams.unpaired(trial);
        }
        List<Remedy> remedies = new ArrayList<>();
        for (SeamPairs.Pair pair : pairs) {
            if (Math.abs(pair.drift()) > (pair.fixed() ? ENOUGH : CLOSE)) {
                remedies.add(pair.fixed() ? bow(amount, remedies, pair, trial) : drawOut(amount, remedies, pair));
            }
        }
        return with(amount, remedies);
    }

    private Altered plainly(Pattern pattern, double amount) throws Refusal {
        return new SeamWork(pattern, change.withAmount(amount), seams.lines()).done();
    }

    /** Spreading first and evening then; pinching takes the evening off first. */
    private Altered with(double amount, List<Remedy> remedies) throws Refusal {
        if (amount > 0) {
            return remedied(plainly(before, amount), remedies);
        }
        // By next to nothing the change only makes its fixed points ends of segments, as they are afterwards.
        Pattern ready = plainly(before, Double.MIN_NORMAL).pattern();
        Altered evened = remedied(new Altered(ready, List.of(), List.of()), remedies);
        Altered last = plainly(evened.pattern(), amount);
        List<Moved> moved = new ArrayList<>(last.moved());
        moved.addAll(evened.moved());
        return new Altered(last.pattern(), moved, Remedy.both(evened.findings(), last.findings()));
    }

    private static Altered remedied(Altered start, List<Remedy> remedies) throws Refusal {
        Altered now = start;
        for (Remedy remedy : remedies) {
            now = remedy.on(now);
        }
        return now;
    }

    private Remedy drawOut(double amount, List<Remedy> others, SeamPairs.Pair pair) throws Refusal {
        double found = Root.of(
                mm -> drift(amount, others, drawnOut(pair, mm), pair),
                pair.drift(),
                -pair.drift() / 2,
                CLOSE,
                PROMISED,
                Refusal.of("even-not-met"));
        return drawnOut(pair, found);
    }

    private Remedy drawnOut(SeamPairs.Pair pair, double mm) {
        List<Remedy.End> ends = new ArrayList<>();
        pair.first()
                .movedAtEnd()
                .ifPresent(atEnd -> ends.add(new Remedy.End(pair.first().edge(), atEnd, mm)));
        pair.second()
                .movedAtEnd()
                .ifPresent(atEnd -> ends.add(new Remedy.End(pair.second().edge(), atEnd, -mm)));
        return new Remedy.DrawnOut(ends);
    }

    private Remedy bow(double amount, List<Remedy> others, SeamPairs.Pair pair, Altered trial) throws Refusal {
        EdgeRef ref = place.edge(pair);
        Moved moved = seams.run(ref, trial).orElseThrow();
        DoubleFunction<Remedy> by = mm -> new Remedy.Bowed(ref, moved, place.shorter(), amount > 0, mm);
        double drift = pair.drift();
        double one = drift(amount, others, by.apply(1), pair);
        double other = drift(amount, others, by.apply(-1), pair);
        double way = (one - other) * drift < 0 ? 1 : -1;
        try {
            double found = Root.of(
                    mm -> drift(amount, others, by.apply(mm), pair), drift, way, CLOSE, ENOUGH, notPossible(pair));
            Remedy bow = by.apply(found);
            Pattern bowed = with(amount, and(others, bow)).pattern();
            if (SeamBow.inflections(bowed, ref) <= SeamBow.inflections(trial.pattern(), ref)) {
                return bow;
            }
        } catch (Refusal tooMuch) {
            throw notPossible(pair);
        }
        throw notPossible(pair);
    }

    private static Refusal notPossible(SeamPairs.Pair pair) {
        return Refusal.of("even-not-possible")
                .with("mate", pair.walk().mate().name())
                .with("drift.signed", pair.drift());
    }

    private static List<Remedy> and(List<Remedy> others, Remedy last) {
        List<Remedy> all = new ArrayList<>(others);
        all.add(last);
        return all;
    }

    /**
     * By how much more the first seam line of a pair changes than the second.
     *
     * @throws Refusal also if the remedy bends a seam so much that it has no stitching line any more
     */
    private double drift(double amount, List<Remedy> others, Remedy tried, SeamPairs.Pair pair) throws Refusal {
        Pattern remedied = with(amount, and(others, tried)).pattern();
        return measured(remedied).mates().stream()
                        .filter(w -> w.mate().equals(pair.walk().mate()))
                        .findFirst()
                        .orElseThrow(() -> notPossible(pair))
                        .drift()
                - pair.walk().drift();
    }

    private GarmentMeasures measured(Pattern pattern) {
        return Measures.again(pattern, before, seams.was(), seams.lines());
    }
}
