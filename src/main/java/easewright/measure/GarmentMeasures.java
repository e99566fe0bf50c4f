package easewright.measure;

import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Side;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a whole pattern measures; pieces, girths and mates in the pattern's order. Immutable. */
public final class GarmentMeasures {
    private final List<PieceMeasures> pieces;
    private final List<Girth> girths;
    private final List<MateWalk> mates;
    private final List<Finding> findings;

    /** Each size on its own, where the pattern comes in several; kept also where one of them is looked at. */
    private final List<SizeMeasures> sizes;

    /** Pieces by their ids. Whoever works it out finds the same, so that nobody has to wait for anybody. */
    private volatile Map<String, PieceMeasures> byId;

    GarmentMeasures(
            List<PieceMeasures> pieces,
            List<Girth> girths,
            List<MateWalk> mates,
            List<Finding> findings,
            List<SizeMeasures> sizes) {
        this.pieces = List.copyOf(pieces);
        this.girths = List.copyOf(girths);
        this.mates = List.copyOf(mates);
        this.findings = List.copyOf(findings);
        this.sizes = List.copyOf(sizes);
    }

    public List<PieceMeasures> pieces() {
        return pieces;
    }

    public List<Girth> girths() {
        return girths;
    }

    public List<MateWalk> mates() {
        return mates;
    }

    public List<Finding> findings() {
        return findings;
    }

    List<SizeMeasures> sizes() {
        return sizes;
    }

    public Optional<PieceMeasures> piece(String id) {
        Map<String, PieceMeasures> known = byId;
        if (known == null) {
            known = new HashMap<>();
            for (PieceMeasures piece : pieces) {
                known.putIfAbsent(piece.pieceId(), piece);
            }
            byId = known;
        }
        return Optional.ofNullable(known.get(id));
    }

    /** The girth at a level; empty where there is none, or one for each of several sizes or limbs. */
    public Optional<Girth> girth(String level) {
        Girth found = null;
        for (Girth girth : girths) {
            if (girth.level().name().equals(level)) {
                if (found != null) {
                    return Optional.empty();
                }
                found = girth;
            }
        }
        return Optional.ofNullable(found);
    }

    /** The same pieces with the girths and seams of one size only. */
    public GarmentMeasures inSize(String size) {
        return inSizes(List.of(size));
    }

    /** The same pieces with the girths and seams of every size, also where those of one of them are looked at. */
    public GarmentMeasures inEverySize() {
        return sizes.isEmpty()
                ? this
                : inSizes(sizes.stream().map(SizeMeasures::size).toList());
    }

    /** The same pieces with the girths and seams of some sizes only, in the pattern's order. */
    public GarmentMeasures inSizes(Collection<String> some) {
        List<SizeMeasures> own =
                sizes.stream().filter(s -> some.contains(s.size())).toList();
        return new GarmentMeasures(
                pieces,
                own.stream().flatMap(s -> s.girths().stream()).toList(),
                own.stream().flatMap(s -> s.mates().stream()).toList(),
                findings,
                sizes);
    }

    /** The girth at the same level of the same size and limb. */
    public Optional<Girth> girth(Girth like) {
        return girths.stream().filter(g -> g.sameAs(like)).findFirst();
    }

    /** The seam of this name; the first where it is sewn in several sizes. */
    public Optional<MateWalk> mate(String name) {
        return mates.stream().filter(m -> m.mate().name().equals(name)).findFirst();
    }

    /** The same seam of the same size. */
    public Optional<MateWalk> mate(MateWalk like) {
        return mates.stream().filter(m -> m.sameAs(like)).findFirst();
    }

    /**
     * A seam as it was here, of the same size: also before its pieces were made into left and right ones, while it was
     * sewn alike on both sides. Empty where there was none, or where its edges counted otherwise.
     */
    public Optional<MateWalk> before(MateWalk now) {
        String name = now.mate().name();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            String ending = " " + side.name().toLowerCase(Locale.ROOT);
            if (name.endsWith(ending) && counted(now, name).isEmpty()) {
                return counted(now, name.substring(0, name.length() - ending.length()));
            }
        }
        return counted(now, name);
    }

    private Optional<MateWalk> counted(MateWalk now, String name) {
        return mates.stream()
                .filter(w -> w.mate().name().equals(name) && w.size().equals(now.size()))
                .filter(w -> counts(w.mate().first()) == counts(now.mate().first())
                        && counts(w.mate().second()) == counts(now.mate().second()))
                .findFirst();
    }

    /** How many edges a side is sewn of: as many as before where some were made into left and right ones. */
    private static int counts(List<EdgeRef> side) {
        return side.stream().mapToInt(EdgeRef::times).sum();
    }
}
