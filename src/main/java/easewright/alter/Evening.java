package easewright.alter;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.GarmentMeasures;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.measure.StitchLines;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes both seam lines of every pair that a seam change moved change by the same length. The same amount on two seams
 * of different slant makes their lengths drift (worked example W4). Where the change moved an end of them, one is made
 * longer and the other as much shorter there, each in its own direction, as one does who walks the seam and trues its
 * hem. Where all ends are fixed, the two share the amount unevenly, up to one to three; where that does not do it, the
 * seam that changed less is bowed on the way to the level. Fixed points, and the directions there, stay. What a change
 * puts on last, its opposite takes off first, so that it comes back exactly.
 */
final class Evening {
    /** Seam lines and girths are met within this, mm. */
    private static final double CLOSE = 1e-9;

    private static final double PROMISED = 1e-6;

    /** A drift so small is not worth a bow, mm; the promise is 0.02. */
    private static final double ENOUGH = 0.01;

    /** How often the amount is halved in looking for the largest that works. */
    private static final int HALVINGS = 10;

    private final Pattern before;
    private final SeamChange plain;
    private final Which which;
    private final GarmentMeasures was;
    private final StitchLines lines;
    private final SeamPairs seams;

    /**
     * Which stretch is bowed.
     *
     * @param other  of the seam that changed more, else of the other
     * @param shorter the shorter of the two on which the change dies away
     */
    private record Which(boolean other, boolean shorter) {
        static final List<Which> ALL =
                List.of(new Which(false, false), new Which(true, false), new Which(false, true), new Which(true, true));
    }

    /**
     * @param plain the change without evening
     */
    Evening(Pattern before, SeamChange plain) {
        this(before, plain, Which.ALL.get(0));
    }

    private Evening(Pattern before, SeamChange plain, Which which) {
        this.which = which;
        this.before = before;
        this.plain = plain;
        this.was = Measures.of(before);
        this.lines = new StitchLines(was);
        this.seams = new SeamPairs(before, was, lines);
    }

    /** The edge that is to be bowed: the one that changed less, or the other. */
    private EdgeRef bowed(SeamPairs.Pair pair) {
        boolean first = Math.abs(pair.first().change()) < Math.abs(pair.second().change());
        return first != which.other() ? pair.first().edge() : pair.second().edge();
    }

    /** The change with its seam lines made even and its girth exact all the same. */
    Altered done() throws Refusal {
        try {
            return with(plain.amount());
        } catch (Refusal why) {
            if (why.code().equals("even-not-possible")) {
                throw Bisect.largest(why, plain.amount(), HALVINGS, this::with);
            }
            throw why;
        }
    }

    private Altered with(double amount) throws Refusal {
        SeamChange change = plain.withAmount(amount);
        Optional<SeamChange> shared = new UnevenShares(bare(), change).solved();
        if (shared.isPresent()) {
            Altered done = new Evening(before, shared.get(), Which.ALL.get(0)).solved();
            if (bendsNoMore(done.pattern(), change)) {
                return told(done, shared.get());
            }
        }
        return bowed(change);
    }

    /** The same without the lines that ride on the pieces: seams drift alike, and carrying the lines is half the work. */
    private Evening bare() {
        boolean none = before.pieces().stream().allMatch(p -> p.riders().isEmpty());
        return none
                ? this
                : new Evening(
                        before.withPieces(before.pieces().stream()
                                .map(p -> p.toBuilder().riders(List.of()).build())
                                .toList()),
                        plain);
    }

    private boolean bendsNoMore(Pattern done, SeamChange change) throws Refusal {
        Pattern plainly = plainly(before, change.amount()).pattern();
        for (Share share : shares(change)) {
            if (inflections(done, share.edge()) > inflections(plainly, share.edge())) {
                return false;
            }
        }
        return true;
    }

    private Altered told(Altered done, SeamChange shared) {
        return new Altered(
                done.pattern(), done.moved(), Remedy.both(done.findings(), UnevenShares.findings(before, shared)));
    }

    private Altered bowed(SeamChange change) throws Refusal {
        Refusal first = null;
        for (Which which : Which.ALL) {
            try {
                return new Evening(new Evening(before, change, which).parted(), change, which).solved();
            } catch (Refusal not) {
                first = first == null ? not : first;
            }
        }
        throw first;
    }

    /** By how much the two edges of each pair whose ends are all fixed drift apart under a change. */
    List<UnevenShares.Drift> drifts(SeamChange change) throws Refusal {
        List<UnevenShares.Drift> drifts = new ArrayList<>();
        for (SeamPairs.Pair pair : seams.moved(new SeamWork(before, change, lines).tried())) {
            if (pair.fixed()) {
                drifts.add(new UnevenShares.Drift(
                        pair.first().edge(), pair.second().edge(), pair.drift()));
            }
        }
        return drifts;
    }

    List<Share> shares(SeamChange change) throws Refusal {
        return new SeamWork(before, change, lines).shares();
    }

    boolean same(EdgeRef one, EdgeRef other) {
        return one.edge().equals(other.edge()) && before.piece(one.piece()).equals(before.piece(other.piece()));
    }

    /** The pattern with every seam parted that is going to be bowed. */
    private Pattern parted() throws Refusal {
        Altered trial = plainly(before, plain.amount());
        Pattern parted = before;
        for (SeamPairs.Pair pair : seams.moved(trial)) {
            Optional<Point> at = pair.fixed() && Math.abs(pair.drift()) > ENOUGH
                    ? SeamBow.parting(seams.run(bowed(pair), trial).orElseThrow(), which.shorter())
                    : Optional.empty();
            if (at.isPresent()) {
                Piece piece = parted.piece(bowed(pair).piece()).orElseThrow();
                Outline whole = piece.outline();
                parted = parted.withPiece(piece.toBuilder()
                        .outline(whole.splitAt(SlashPlaces.near(whole, at.get())))
                        .original(Optional.of(piece.original().orElse(whole)))
                        .build());
            }
        }
        return parted;
    }

    private Altered solved() throws Refusal {
        double base = girth(before);
        double asked = Root.of(
                a -> girth(by(a).pattern()) - base - plain.amount(),
                -plain.amount(),
                plain.amount(),
                CLOSE,
                PROMISED,
                Refusal.of("even-not-met"));
        return by(asked);
    }

    private double girth(Pattern pattern) {
        return Measures.again(pattern, before, was, lines)
                .girth(plain.level())
                .orElseThrow()
                .finished();
    }

    private Altered by(double amount) throws Refusal {
        Altered trial = plainly(before, amount);
        List<SeamPairs.Pair> pairs = seams.moved(trial);
        if (pairs.isEmpty()) {
            throw Refusal.of("even-without-mate");
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
        return new SeamWork(pattern, plain.withAmount(amount), lines).done();
    }

    /** Spreading first and evening then; pinching takes the evening off first. */
    private Altered with(double amount, List<Remedy> remedies) throws Refusal {
        if (amount > 0) {
            return with(plainly(before, amount), remedies);
        }
        // By next to nothing the change only makes its fixed points ends of segments, as they are afterwards.
        Pattern ready = plainly(before, Double.MIN_NORMAL).pattern();
        Altered evened = with(new Altered(ready, List.of(), List.of()), remedies);
        Altered last = plainly(evened.pattern(), amount);
        List<Moved> moved = new ArrayList<>(last.moved());
        moved.addAll(evened.moved());
        return new Altered(last.pattern(), moved, Remedy.both(evened.findings(), last.findings()));
    }

    private static Altered with(Altered start, List<Remedy> remedies) throws Refusal {
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
        EdgeRef ref = bowed(pair);
        double drift = pair.drift();
        Refusal not = Refusal.of("even-not-possible")
                .with("mate", pair.walk().mate().name())
                .with("drift.signed", drift);
        Moved moved = seams.run(ref, trial).orElseThrow();
        boolean spreads = amount > 0;
        double one = drift(amount, others, new Remedy.Bowed(ref, moved, which.shorter(), spreads, 1), pair);
        double other = drift(amount, others, new Remedy.Bowed(ref, moved, which.shorter(), spreads, -1), pair);
        double way = (one - other) * drift < 0 ? 1 : -1;
        try {
            double found = Root.of(
                    mm -> drift(amount, others, new Remedy.Bowed(ref, moved, which.shorter(), spreads, mm), pair),
                    drift,
                    way,
                    CLOSE,
                    ENOUGH,
                    not);
            Remedy bow = new Remedy.Bowed(ref, moved, which.shorter(), spreads, found);
            List<Remedy> all = new ArrayList<>(others);
            all.add(bow);
            if (inflections(with(amount, all).pattern(), ref) > inflections(trial.pattern(), ref)) {
                throw not;
            }
            return bow;
        } catch (Refusal bent) {
            throw not;
        }
    }

    private static int inflections(Pattern pattern, EdgeRef ref) {
        Piece piece = pattern.piece(ref.piece()).orElseThrow();
        return SeamBow.inflections(piece.edge(ref.edge()).orElseThrow().on(piece.outline()));
    }

    /** By how much more the first seam line of a pair changes than the second. */
    private double drift(double amount, List<Remedy> others, Remedy tried, SeamPairs.Pair pair) throws Refusal {
        List<Remedy> all = new ArrayList<>(others);
        all.add(tried);
        GarmentMeasures is = Measures.again(with(amount, all).pattern(), before, was, lines);
        return is.mates().stream()
                        .filter(w -> w.mate().equals(pair.walk().mate()))
                        .mapToDouble(MateWalk::drift)
                        .findFirst()
                        .orElseThrow()
                - pair.walk().drift();
    }
}
