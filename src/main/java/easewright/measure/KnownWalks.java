package easewright.measure;

import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The mates of a pattern measured before that need not be walked again, since all their pieces are the same objects. For
 * one measuring and not thread-safe: what was asked for is kept.
 */
final class KnownWalks {
    private final GarmentMeasures measured;

    /** Ids of the pieces that are not the same objects any more. */
    private final Set<String> gone = new HashSet<>();

    private final boolean allKept;
    private final Map<Optional<String>, Map<Mate, MateWalk>> walks = new HashMap<>();

    /**
     * @param measured what the pattern measured before
     * @param now      the pieces of the changed pattern, measured
     */
    KnownWalks(GarmentMeasures measured, List<PieceMeasures> now) {
        this.measured = measured;
        Set<PieceMeasures> same = Collections.newSetFromMap(new IdentityHashMap<>());
        for (int i = 0; i < measured.pieces().size(); i++) {
            PieceMeasures old = measured.pieces().get(i);
            if (i < now.size() && now.get(i) == old) {
                continue;
            }
            // Mostly each piece is where it was, and few are others.
            if (same.isEmpty()) {
                same.addAll(now);
            }
            if (!same.contains(old)) {
                gone.add(old.pieceId());
            }
        }
        // A name that stands for a piece might stand for another one now.
        allKept = gone.isEmpty() && now.size() == measured.pieces().size();
    }

    /** Of a pattern that was never measured. */
    static KnownWalks none() {
        return new KnownWalks(new GarmentMeasures(List.of(), List.of(), List.of(), List.of(), List.of()), List.of());
    }

    private boolean kept(List<EdgeRef> refs) {
        for (EdgeRef ref : refs) {
            if (gone.contains(ref.piece()) || measured.piece(ref.piece()).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    Optional<MateWalk> walk(Mate mate, Optional<String> size) {
        MateWalk walk = walks.computeIfAbsent(size, this::walks).get(mate);
        boolean kept = walk != null && (allKept || (kept(mate.first()) && kept(mate.second())));
        return kept ? Optional.of(walk) : Optional.empty();
    }

    /** Those of one size, or of a pattern in one size only. */
    private Map<Mate, MateWalk> walks(Optional<String> size) {
        List<MateWalk> all = measured.mates();
        for (SizeMeasures own : measured.sizes()) {
            if (size.isPresent() && own.size().equals(size.get())) {
                all = own.mates();
            }
        }
        Map<Mate, MateWalk> found = new IdentityHashMap<>();
        for (MateWalk walk : all) {
            if (walk.size().equals(size)) {
                found.put(walk.mate(), walk);
            }
        }
        return found;
    }
}
