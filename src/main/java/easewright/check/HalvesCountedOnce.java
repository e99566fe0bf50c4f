package easewright.check;

import easewright.ease.EaseLine;
import easewright.measure.BothSides;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Pieces that look like one half, counted once in a girth around the body: most likely the girth lacks the other
 * halves. Said where no body girth is known yet; with one, {@link BodyGoneRound} judges by the measure.
 */
final class HalvesCountedOnce implements Rule {
    private static final Set<EdgeRole> OF_A_HALF = Set.of(EdgeRole.FOLD, EdgeRole.CENTRE, EdgeRole.CROTCH);

    /** Bands have none of these, and need not be alike at both ends. */
    private static final Set<EdgeRole> OF_A_BODY = Set.of(EdgeRole.HEM, EdgeRole.SHOULDER, EdgeRole.ARMHOLE);

    @Override
    public List<Finding> look(Sight sight) {
        List<Finding> findings = new ArrayList<>();
        // A piece lies at several levels, and to hold it against its mirror image takes long.
        Map<String, Optional<Piece>> known = new HashMap<>();
        for (EaseLine line : sight.sheet().lines()) {
            if (line.body().isPresent() || line.level().limb()) {
                continue;
            }
            List<String> halves = line.girth().parts().stream()
                    .filter(part -> part.count() == 1 && part.side() == Side.BOTH)
                    .flatMap(part -> known.computeIfAbsent(part.pieceId(), id -> half(id, sight)).stream())
                    .map(Piece::name)
                    .toList();
            if (!halves.isEmpty()) {
                findings.add(line.girth()
                        .named(Finding.of("halves-counted-once", Severity.CAUTION, "")
                                .with("finished", line.finished())
                                .with("pieces", halves)));
            }
        }
        return findings;
    }

    private static Optional<Piece> half(String id, Sight sight) {
        return sight.pattern().piece(id).filter(HalvesCountedOnce::looksLikeHalf);
    }

    private static boolean looksLikeHalf(Piece piece) {
        return has(piece, OF_A_HALF) || has(piece, OF_A_BODY) && !BothSides.on(piece);
    }

    private static boolean has(Piece piece, Set<EdgeRole> roles) {
        return piece.edges().stream().anyMatch(e -> roles.contains(e.role()));
    }
}
