package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Curve;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The corner that a hinged slash leaves in the seam at its hinge is offered to be blended; the seam keeps its length. */
class HingeBlendTest {
    private static final List<Level> LEVELS = List.of(Level.of("mid", LevelKind.HIP), Level.of("top", LevelKind.WAIST));
    private static final int CASES = Integer.getInteger("cases", 15);

    private static Pattern slashed(RandomCut random, Piece piece) throws Refusal {
        Curve side = piece.edge("side").orElseThrow().on(piece.outline());
        String across = piece.edge("fold").isPresent() ? "fold" : "inseam";
        Curve other = piece.edge(across).orElseThrow().on(piece.outline());
        String moves = piece.edge("hem").isPresent() ? "hem" : "top";
        return new HingedSlash(
                        piece.id(),
                        side.pointAtLength(side.length() * random.between(0.3, 0.7)),
                        other.pointAtLength(other.length() * random.between(0.3, 0.7)),
                        random.between(8, 18),
                        piece.edge(moves).orElseThrow().from(),
                        true)
                .apply(Cloths.pattern(LEVELS, piece))
                .pattern();
    }

    private static double side(GarmentMeasures measures) {
        return measures.piece("front").orElseThrow().edge("side").orElseThrow().mm();
    }

    @ParameterizedTest
    @EnumSource(LineKind.class)
    void hingeCornersAreOfferedAndBlended(LineKind drawn) {
        Worst lengths = new Worst(drawn + " length of a blended hinge seam, mm");
        int offered = 0;
        int done = 0;
        for (long seed = 1; seed <= CASES; seed++) {
            RandomCut random = new RandomCut(seed);
            Piece piece = random.piece("front");
            Pattern slashed;
            try {
                slashed = slashed(
                        random,
                        drawn == LineKind.CUTTING
                                ? piece
                                : piece.toBuilder().drawn(drawn, 10).build());
            } catch (Refusal throughDart) {
                continue;
            }
            for (Proposal proposal : Truing.proposals(slashed)) {
                if (proposal.truing().matter() != Trued.Matter.BLENDED_CORNER
                        || !proposal.truing().target().get("edge").equals("front/side")) {
                    continue;
                }
                offered++;
                try {
                    Pattern after = proposal.apply(slashed).pattern();
                    lengths.meet(seed, Math.abs(side(Measures.of(after)) - side(Measures.of(slashed))));
                    assertThat(Truing.proposals(after))
                            .as("seed %d", seed)
                            .noneMatch(p ->
                                    p.truing().target().equals(proposal.truing().target()));
                    done++;
                } catch (Refusal noRoom) {
                    assertThat(noRoom.code()).isIn("no-room-to-true", "truing-costs-girth");
                }
            }
        }
        assertThat(offered).isGreaterThan(CASES / 2);
        assertThat(done).isGreaterThan(offered * 4 / 5);
        lengths.within(0.001);
    }
}
