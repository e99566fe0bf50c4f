package easewright.measure;

import easewright.pattern.Finding;
import java.util.List;
import java.util.Optional;

/** What a whole pattern measures; pieces, girths and mates in the pattern's order. */
public record GarmentMeasures(
        List<PieceMeasures> pieces, List<Girth> girths, List<MateWalk> mates, List<Finding> findings) {
    public GarmentMeasures {
        pieces = List.copyOf(pieces);
        girths = List.copyOf(girths);
        mates = List.copyOf(mates);
        findings = List.copyOf(findings);
    }

    public Optional<PieceMeasures> piece(String id) {
        return pieces.stream().filter(p -> p.pieceId().equals(id)).findFirst();
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
        return new GarmentMeasures(
                pieces,
                girths.stream().filter(g -> g.size().equals(Optional.of(size))).toList(),
                mates.stream().filter(m -> m.size().equals(Optional.of(size))).toList(),
                findings);
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
}
