package easewright.measure;

import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What need not be measured again of a pattern in several sizes: the sizes all of whose pieces are the same objects. A
 * size also depends on what other pieces are called and which levels they are marked with, so that nothing is taken
 * over where any of that has changed. For one measuring and not thread-safe.
 */
final class KnownSizes {
    private final Map<String, SizeMeasures> sizes;
    private final KnownWalks walks;

    private KnownSizes(Map<String, SizeMeasures> sizes, KnownWalks walks) {
        this.sizes = sizes;
        this.walks = walks;
    }

    /** Of a pattern that was never measured. */
    static KnownSizes none() {
        return new KnownSizes(Map.of(), KnownWalks.none());
    }

    /**
     * @param before   the pattern that was measured
     * @param measured what it measured
     * @param now      the changed pattern
     * @param pieces   its pieces, measured
     */
    static KnownSizes of(Pattern before, GarmentMeasures measured, Pattern now, List<PieceMeasures> pieces) {
        KnownWalks walks = new KnownWalks(measured, pieces);
        List<PieceMeasures> old = measured.pieces();
        boolean alike = pieces.size() == old.size()
                && now.levels().equals(before.levels())
                && now.mates().equals(before.mates());
        Set<String> touched = new HashSet<>();
        for (int i = 0; alike && i < pieces.size(); i++) {
            if (pieces.get(i) != old.get(i)) {
                Piece is = pieces.get(i).stitch().piece();
                alike = is.size().isPresent() && alike(old.get(i).stitch().piece(), is);
                is.size().ifPresent(touched::add);
            }
        }
        Map<String, SizeMeasures> kept = new HashMap<>();
        for (SizeMeasures size : alike ? measured.sizes() : List.<SizeMeasures>of()) {
            if (!touched.contains(size.size())) {
                kept.put(size.size(), size);
            }
        }
        return new KnownSizes(kept, walks);
    }

    private static boolean alike(Piece was, Piece is) {
        return was.id().equals(is.id())
                && was.name().equals(is.name())
                && was.size().equals(is.size())
                && was.side() == is.side()
                && was.levels().stream()
                        .map(LevelMark::level)
                        .toList()
                        .equals(is.levels().stream().map(LevelMark::level).toList());
    }

    Optional<SizeMeasures> size(String size) {
        return Optional.ofNullable(sizes.get(size));
    }

    KnownWalks walks() {
        return walks;
    }
}
