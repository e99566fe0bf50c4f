package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.geom.Cubic;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A piece on the fold that a change on one side has made into halves: lines go on across the middle as across a seam. */
class HalvesTruingTest {
    /** The skirt with its front in halves, the waist of the left one turned at the middle by so many degrees. */
    private static Pattern bent(double degrees) throws Exception {
        byte[] svg = Samples.files().get("skirt.svg").getBytes(StandardCharsets.UTF_8);
        Pattern halves = Within.of(new Scope(Optional.empty(), Side.LEFT), SeamChange.at("hip", 8))
                .apply(SvgFile.read(svg, "skirt").pattern())
                .pattern();
        Piece left = halves.piece("skirt-front-left").orElseThrow();
        Edge waist = left.edges().stream()
                .filter(e -> e.role() == EdgeRole.WAIST)
                .findFirst()
                .orElseThrow();
        Edge middle = left.edges().stream()
                .filter(e -> e.role() == EdgeRole.CENTRE)
                .findFirst()
                .orElseThrow();
        boolean atStart =
                waist.from().distance(middle.from()) < 1e-6 || waist.from().distance(middle.to()) < 1e-6;
        Point corner = atStart ? waist.from() : waist.to();
        List<Segment> segments = new ArrayList<>();
        for (Segment s : left.outline().segments()) {
            boolean here = atStart ? s.start().equals(corner) : s.end().equals(corner);
            segments.add(here ? turned(s, atStart, Math.toRadians(degrees)) : s);
        }
        return halves.withPiece(left.withOutline(new Outline(segments)));
    }

    private static Segment turned(Segment s, boolean atStart, double turn) {
        Cubic c = s instanceof Cubic cubic
                ? cubic
                : new Cubic(
                        s.start(),
                        s.start().towards(s.end(), 1 / 3.0),
                        s.start().towards(s.end(), 2 / 3.0),
                        s.end());
        return atStart
                ? new Cubic(
                        c.start(), c.start().plus(c.control1().minus(c.start()).turned(turn)), c.control2(), c.end())
                : new Cubic(
                        c.start(),
                        c.control1(),
                        c.end().plus(c.control2().minus(c.end()).turned(turn)),
                        c.end());
    }

    @Test
    void theWaistIsTruedAcrossTheMiddle() throws Exception {
        Random random = new Random(91);
        for (int i = 0; i < 6; i++) {
            Pattern before = bent((random.nextBoolean() ? 1 : -1) * (2 + 8 * random.nextDouble()));
            List<Proposal> across = Truing.proposals(before).stream()
                    .filter(p -> "Front fold".equals(p.truing().target().get(Trued.MATE)))
                    .toList();
            assertThat(across).hasSize(1);
            Pattern after =
                    across.get(0).truing().acceptingProtected().apply(before).pattern();
            assertThat(Math.toDegrees(JoinTruer.joint(
                                    SewnCopy.of(after, Measures.of(after)),
                                    across.get(0).truing())
                            .missing()))
                    .isCloseTo(0, within(0.1));
            assertThat(after.piece("skirt-front"))
                    .as("the half that is square stays as it is")
                    .isEqualTo(before.piece("skirt-front"));
            assertThat(Cloths.girth(after, "waist")).isCloseTo(Cloths.girth(before, "waist"), within(0.01));
            assertThat(Cloths.girth(after, "hip")).isCloseTo(Cloths.girth(before, "hip"), within(0.01));
        }
        assertThat(Truing.proposals(bent(0)))
                .noneMatch(p -> "Front fold".equals(p.truing().target().get(Trued.MATE)));
    }
}
