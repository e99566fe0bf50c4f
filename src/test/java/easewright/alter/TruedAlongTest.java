package easewright.alter;

import static easewright.alter.Panels.only;
import static easewright.alter.Panels.slanted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.measure.StitchOutline;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What lies on a trued line and beside it goes along; other sizes do not. */
class TruedAlongTest {
    private static Piece trued(Piece piece) throws Refusal {
        Pattern pattern = Cloths.pattern(List.of(), piece);
        return only(pattern, "corner-not-square")
                .apply(pattern)
                .pattern()
                .pieces()
                .get(0);
    }

    @Test
    void notchesOnTheLineGoAlongAndComeBack() throws Refusal {
        double slope = Math.tan(Math.toRadians(3));
        Piece before = slanted("front", 600, 87, 90).toBuilder()
                .notches(List.of(
                        new Notch("near", new Point(20, 20 * slope)),
                        new Notch("far", new Point(150, 150 * slope)),
                        new Notch("inside", new Point(20, 30))))
                .build();
        Pattern pattern = Cloths.pattern(List.of(), before);
        Altered done = only(pattern, "corner-not-square").apply(pattern);
        Piece after = done.pattern().pieces().get(0);
        Point near = after.notches().get(0).at();
        assertThat(after.outline().nearest(near).distance()).isLessThan(1e-6);
        assertThat(near.x()).isCloseTo(20, within(1e-6));
        assertThat(near.y()).isLessThan(20 * slope - 0.1);
        assertThat(after.notches().subList(1, 3)).isEqualTo(before.notches().subList(1, 3));
        Trued made = (Trued) Ways.from(done.pattern().changes().get(0));
        assertThat(made.back()).isFalse();
        Trued taken = (Trued) made.opposite().orElseThrow();
        assertThat(taken.back()).isTrue();
        assertThat(taken.opposite()).contains(made);
        Altered again = taken.apply(done.pattern());
        assertThat(again.findings()).as("taking back has nothing to tell").isEmpty();
        Piece back = again.pattern().pieces().get(0);
        assertThat(back.notches().get(0).at().distance(before.notches().get(0).at()))
                .isLessThan(1e-9);
        assertThat(Math.abs(back.outline().signedArea()))
                .isCloseTo(Math.abs(before.outline().signedArea()), within(1e-9));
    }

    private static double astray(Outline line, Outline other) {
        double most = 0;
        for (Segment s : line.segments()) {
            for (double t = 0; t < 1; t += 0.1) {
                most = Math.max(most, other.nearest(s.at(t)).distance());
            }
        }
        return most;
    }

    /** The cutting line beside a stitching line stays at its allowance, whichever way round it is drawn. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void cuttingLineBesideItStaysAtItsAllowance(boolean reversed) throws Refusal {
        Piece plain = slanted("front", 600, 87, 90).toBuilder()
                .drawn(LineKind.STITCHING, 10)
                .build();
        Outline around = Around.of(plain, true).orElseThrow();
        Rider cut = new Rider("cut", Rider.Kind.PARALLEL, (reversed ? around.reversed() : around).segments());
        Rider mark =
                new Rider("mark", Rider.Kind.ATTACHED, List.of(around.segments().get(0)));
        Piece before = plain.toBuilder().riders(List.of(cut, mark)).build();
        Piece after = trued(before);
        Outline now = new Outline(after.riders().get(0).segments());
        assertThat(now.segments()).isNotEqualTo(cut.segments());
        assertThat(Math.signum(now.signedArea())).isEqualTo(Math.signum(new Outline(cut.segments()).signedArea()));
        double most = 0;
        for (Segment s : after.edge("waist").orElseThrow().on(after.outline()).segments()) {
            for (double t = 0; t < 1; t += 0.1) {
                // Nearer to the fold it is the fold that is nearest.
                if (s.at(t).x() > 11 && s.at(t).x() < 185) {
                    most = Math.max(most, Math.abs(now.nearest(s.at(t)).distance() - 10));
                }
            }
        }
        assertThat(most).isLessThan(0.02);
    }

    /** A stitching line drawn inside a cutting line is the line that was trued. */
    @Test
    void stitchingLineInsideIsTheTruedOne() throws Refusal {
        Piece plain = slanted("front", 600, 87, 90).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .build();
        Rider stitch = new Rider(
                "stitch", Rider.Kind.PARALLEL, StitchOutline.of(plain).outline().segments());
        Piece after = trued(plain.toBuilder().riders(List.of(stitch)).build());
        Outline sewn = StitchOutline.of(after).outline();
        Outline drawn = new Outline(after.riders().get(0).segments());
        assertThat(astray(drawn, sewn)).isLessThan(0.005);
        assertThat(drawn.segments()).isNotEqualTo(stitch.segments());
    }

    @Test
    void otherSizesStayTheSame() throws Refusal {
        Piece ten = slanted("front 10", 600, 90, 90).toBuilder()
                .size(Optional.of("10"))
                .build();
        Piece twelve = slanted("front 12", 600, 87, 90).toBuilder()
                .size(Optional.of("12"))
                .build();
        Piece both = slanted("pocket", 200, 90, 90);
        Pattern pattern = Cloths.pattern(List.of(), ten, twelve, both);
        Proposal proposal = only(pattern, "corner-not-square");
        assertThat(proposal.size()).contains("12");
        Pattern after = proposal.apply(pattern).pattern();
        assertThat(after.pieces().get(0)).isSameAs(ten);
        assertThat(after.pieces().get(1)).isNotEqualTo(twelve);
        assertThat(after.pieces().get(2)).isSameAs(both);
        assertThat(Truing.proposals(after)).isEmpty();
        assertThat(Truing.proposals(pattern, Measures.of(pattern), List.of(ten)))
                .isEmpty();
        assertThat(Truing.proposals(pattern, Measures.of(pattern), List.of(twelve, both)))
                .hasSize(1);
    }
}
