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

    public Optional<Girth> girth(String level) {
        return girths.stream().filter(g -> g.level().name().equals(level)).findFirst();
    }

    public Optional<MateWalk> mate(String name) {
        return mates.stream().filter(m -> m.mate().name().equals(name)).findFirst();
    }
}
