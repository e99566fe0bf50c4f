package easewright.measure;

import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The mates of a pattern measured before that need not be walked again, since all their pieces are the same objects. */
final class KnownWalks {
    static final KnownWalks NONE = new KnownWalks();

    private final Map<Mate, List<MateWalk>> walks = new IdentityHashMap<>();

    private KnownWalks() {}

    /**
     * @param measured what the pattern measured before
     * @param now      the pieces of the changed pattern, measured
     */
    KnownWalks(GarmentMeasures measured, List<PieceMeasures> now) {
        Set<PieceMeasures> same = Collections.newSetFromMap(new IdentityHashMap<>());
        same.addAll(now);
        // A name that stands for a piece might stand for another one now.
        Map<String, Boolean> kept = new HashMap<>();
        for (PieceMeasures piece : measured.pieces()) {
            kept.put(piece.pieceId(), same.contains(piece));
        }
        boolean allKept = !kept.containsValue(false) && now.size() == kept.size();
        for (MateWalk walk : measured.mates()) {
            if (allKept || (all(walk.mate().first(), kept) && all(walk.mate().second(), kept))) {
                walks.computeIfAbsent(walk.mate(), m -> new ArrayList<>()).add(walk);
            }
        }
    }

    private static boolean all(List<EdgeRef> refs, Map<String, Boolean> kept) {
        for (EdgeRef ref : refs) {
            if (!kept.getOrDefault(ref.piece(), false)) {
                return false;
            }
        }
        return true;
    }

    Optional<MateWalk> walk(Mate mate, Optional<String> size) {
        for (MateWalk walk : walks.getOrDefault(mate, List.of())) {
            if (walk.size().equals(size)) {
                return Optional.of(walk);
            }
        }
        return Optional.empty();
    }
}
