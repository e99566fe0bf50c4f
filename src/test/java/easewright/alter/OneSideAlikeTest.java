package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * On one side a change does to each piece what it does on both, its mirror image on the side that is not drawn; of an
 * amount that both sides share, half. Here for the ways whose amount is no girth: shaping moved from darts into seams,
 * and slashes by their gap.
 */
class OneSideAlikeTest {
    private static Pattern skirt;

    @BeforeAll
    static void draft() throws Exception {
        byte[] svg = Samples.files().get("skirt.svg").getBytes(StandardCharsets.UTF_8);
        skirt = SvgFile.read(svg, "skirt").pattern();
    }

    private static Pattern on(Side side, Alteration change) throws Refusal {
        return Within.of(new Scope(Optional.empty(), side), change).apply(skirt).pattern();
    }

    private static double side(Pattern pattern, String level, Side side) {
        Girth girth = Measures.of(pattern).girth(level).orElseThrow();
        return girth.on(side);
    }

    private static Point along(Piece piece, String edge, double share) {
        Curve run = piece.edge(edge).orElseThrow().on(piece.outline());
        return run.pointAtLength(run.length() * share);
    }

    /** What was made on either side is what both sides have of the change, and the other side is as it was. */
    private static void assertAlike(Pattern both, Alteration change) throws Refusal {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Pattern one = on(side, change);
            int changed = 0;
            for (Piece piece : one.pieces()) {
                Piece was = skirt.piece(piece.id().replaceFirst("-(left|right)$", ""))
                        .orElseThrow();
                Piece wanted = piece.side() == side ? both.piece(was.id()).orElseThrow() : was;
                changed += wanted.outline() == was.outline() ? 0 : 1;
                if (piece.id().equals(was.id())) {
                    assertThat(Likeness.sameLine(piece.outline(), wanted.outline(), 1e-6))
                            .as("%s %s", side, piece.name())
                            .isTrue();
                }
                assertThat(length(piece)).isCloseTo(length(wanted), within(1e-5));
                assertThat(Math.abs(piece.outline().signedArea()))
                        .isCloseTo(Math.abs(wanted.outline().signedArea()), within(1e-2));
                for (Edge edge : piece.edges()) {
                    assertThat(Cloths.sewn(piece, edge.name()))
                            .as("%s %s", piece.name(), edge.name())
                            .isCloseTo(Cloths.sewn(wanted, edge.name()), within(1e-5));
                }
            }
            assertThat(changed).isPositive();
            assertThat(Worst.apart(
                            drawn(Retrace.to(one, 0)).outline(), drawn(skirt).outline()))
                    .isLessThan(1e-6);
        }
    }

    private static Piece drawn(Pattern pattern) {
        return pattern.piece("skirt-back").orElseThrow();
    }

    private static double length(Piece piece) {
        return piece.outline().segments().stream().mapToDouble(Segment::length).sum();
    }

    @Test
    void shapingMovesFromDartsIntoSeamsOnOneSide() throws Refusal {
        Random random = new Random(83);
        for (int i = 0; i < 6; i++) {
            double amount = random.nextDouble() * 24 - 8;
            Pattern both = DartToSeam.at("waist", 2 * amount).apply(skirt).pattern();
            assertAlike(both, DartToSeam.at("waist", amount));
            Pattern left = on(Side.LEFT, DartToSeam.at("waist", amount));
            for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                assertThat(side(left, "waist", side)).isCloseTo(side(skirt, "waist", side), within(1e-6));
            }
            assertThat(intake(left, Side.LEFT) - intake(left, Side.RIGHT))
                    .isCloseTo(-amount, within(0.05 * Math.abs(amount)));
        }
    }

    private static double intake(Pattern pattern, Side side) {
        return pattern.pieces().stream()
                .filter(p -> p.side() == side)
                .flatMap(p -> p.darts().stream())
                .mapToDouble(d -> d.intake())
                .sum();
    }

    @Test
    void slashesOpenByTheirGapOnOneSide() throws Refusal {
        Random random = new Random(84);
        Piece back = drawn(skirt);
        Edge seam = back.edges().stream()
                .filter(e -> e.role() == EdgeRole.SEAM)
                .findFirst()
                .orElseThrow();
        Point turning = along(back, seam.name(), 0.5);
        for (int i = 0; i < 6; i++) {
            double gap = random.nextDouble() * 30 - 6;
            Point waist = along(back, "waist", 0.1 + 0.1 * random.nextDouble());
            Point hem = along(back, "hem", 0.3 + 0.4 * random.nextDouble());
            for (Alteration slash : List.of(
                    new HingedSlash(back.id(), waist, hem, gap, turning, true),
                    new ParallelSlash(back.id(), waist, hem, gap, turning, true))) {
                assertAlike(slash.apply(skirt).pattern(), slash);
            }
        }
    }
}
