package easewright.alter;

import easewright.pattern.Pattern;
import java.util.List;
import java.util.Optional;

/**
 * Makes both seam lines of every pair that a seam change moved change by the same length. The same amount on two seams
 * of different slant makes their lengths drift (worked example W4). Where the change moved an end of them, one is made
 * longer and the other as much shorter there, each in its own direction, as one does who walks the seam and trues its
 * hem. Where all ends are fixed, the two share the amount unevenly, up to one to three; where that does not do it, the
 * one of them that needs the lesser bow is bowed on the way to the level. Fixed points, and the directions there, stay. What a change puts on last,
 * its opposite takes off first, so that it comes back exactly.
 */
final class Evening {
    /** How often the amount is halved in looking for the largest that works. */
    private static final int HALVINGS = 10;

    private final SeamPairs seams;
    private final SeamChange plain;
    private final UnevenShares shares;

    /**
     * @param plain the change without evening
     */
    Evening(Pattern before, SeamChange plain) {
        this.seams = SeamPairs.of(before);
        this.plain = plain;
        Pattern bare = bare(before);
        this.shares = new UnevenShares(bare == before ? seams : SeamPairs.of(bare));
    }

    /** Without the lines that ride on the pieces: seams drift alike, and carrying the lines is half the work. */
    private static Pattern bare(Pattern pattern) {
        boolean none = pattern.pieces().stream().allMatch(p -> p.riders().isEmpty());
        return none
                ? pattern
                : pattern.withPieces(pattern.pieces().stream()
                        .map(p -> p.toBuilder().riders(List.of()).build())
                        .toList());
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
        Optional<SeamChange> shared = shares.solved(change);
        if (shared.isPresent()) {
            Altered done = new RemedySearch(seams, shared.get(), new BowPlace(true, false)).solved();
            if (bendsNoMore(done.pattern(), change)) {
                return new Altered(
                        done.pattern(),
                        done.moved(),
                        Remedy.both(done.findings(), UnevenShares.findings(seams.before(), shared.get())));
            }
        }
        return bowed(change);
    }

    /** Uneven shares must not make a seam bend to and fro more often than equal ones. */
    private boolean bendsNoMore(Pattern done, SeamChange change) throws Refusal {
        SeamWork work = new SeamWork(seams.before(), change, seams.lines());
        Pattern plainly = work.done().pattern();
        for (Share share : work.shares()) {
            if (SeamBow.inflections(done, share.edge()) > SeamBow.inflections(plainly, share.edge())) {
                return false;
            }
        }
        return true;
    }

    private Altered bowed(SeamChange change) throws Refusal {
        Refusal first = null;
        Altered least = null;
        for (List<BowPlace> alike : BowPlace.ALL) {
            for (BowPlace place : alike) {
                try {
                    Altered done =
                            new RemedySearch(seams, change, place).parted().solved();
                    least = least == null || bow(done) < bow(least) ? done : least;
                } catch (Refusal not) {
                    first = first == null ? not : first;
                }
            }
            if (least != null) {
                return least;
            }
        }
        throw first;
    }

    /** By how much it bows seams in all, mm. */
    static double bow(Altered done) {
        return done.findings().stream()
                .filter(f -> f.code().equals("seam-bowed"))
                .mapToDouble(f -> Math.abs((Double) f.values().get("by.signed")))
                .sum();
    }
}
