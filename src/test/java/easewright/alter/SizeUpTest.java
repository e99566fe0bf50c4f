package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.pattern;
import static easewright.alter.Cloths.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

class SizeUpTest {
    /** One half of 10 in, bust girth 20 in; asked for 22 in, so every piece would grow by a tenth. */
    private static Pattern bodice() {
        Piece front = polygon(
                        "front",
                        List.of(in(0, 0), in(3, 0), in(6, 0), in(10, 8), in(10, 20), in(0, 20)),
                        "neck NECK, shoulder SHOULDER, armhole ARMHOLE, side SEAM, hem HEM, fold FOLD")
                .toBuilder()
                .cut(1, true)
                .levels(List.of(LevelMark.through("bust", in(2, 14))))
                .build();
        return pattern(List.of(Level.of("bust", LevelKind.BUST)), front);
    }

    @Test
    void localChangeLeavesAloneWhatScalingWouldChange() throws Refusal {
        Pattern before = bodice();
        Pattern local = SeamChange.at("bust", 2 * INCH).apply(before).pattern();
        SizeUp compared = SizeUp.of(before, local, "bust");
        assertThat(compared.target()).isCloseTo(22 * INCH, within(1e-6));
        assertThat(compared.acrossBy()).isCloseTo(1.1, within(1e-8));
        SizeUp.Line shoulder = line(compared, "shoulder");
        assertThat(shoulder.local()).isEqualTo(shoulder.before());
        assertThat(shoulder.across()).isCloseTo(3.3 * INCH, within(1e-6));
        SizeUp.Line armhole = line(compared, "armhole");
        assertThat(armhole.before()).isCloseTo(Math.sqrt(80) * INCH, within(1e-9));
        assertThat(armhole.local()).isEqualTo(armhole.before());
        assertThat(armhole.across()).isCloseTo(Math.sqrt(4.4 * 4.4 + 64) * INCH, within(1e-6));
        assertThat(armhole.whole()).isCloseTo(1.1 * Math.sqrt(80) * INCH, within(1e-6));
        SizeUp.Line length = line(compared, "front");
        assertThat(length.kind()).isEqualTo(SizeUp.Kind.LENGTH);
        assertThat(length.before()).isCloseTo(20 * INCH, within(1e-9));
        assertThat(length.local()).isCloseTo(20 * INCH, within(1e-9));
        assertThat(length.whole()).isCloseTo(22 * INCH, within(1e-6));
        SizeUp.Line bust = line(compared, "bust");
        assertThat(bust.across()).isCloseTo(22 * INCH, within(1e-5));
        assertThat(bust.local()).isCloseTo(22 * INCH, within(1e-6));
    }

    /** Along a slanting waist both ways of scaling reach the girth, each by its own factor. */
    @Test
    void aGirthAlongAnEdgeIsReachedByBothWaysOfScaling() throws Refusal {
        Piece front = polygon(
                        "front",
                        List.of(in(0, 0), in(10, 3), in(10, 20), in(0, 20)),
                        "waist WAIST, side SEAM, hem HEM, fold FOLD")
                .toBuilder()
                .cut(1, true)
                .levels(List.of(LevelMark.along("waist", "waist")))
                .build();
        Pattern before = pattern(List.of(Level.of("waist", LevelKind.WAIST)), front);
        Pattern local = SeamChange.at("waist", INCH).apply(before).pattern();
        SizeUp compared = SizeUp.of(before, local, "waist");
        SizeUp.Line waist = line(compared, "waist");
        assertThat(waist.across()).isCloseTo(waist.local(), within(1e-5));
        assertThat(waist.whole()).isCloseTo(waist.local(), within(1e-5));
        assertThat(compared.wholeBy()).isLessThan(compared.acrossBy() - 1e-4);
    }

    /** The length is that of the longest piece that goes round the body, along its grain; a long band says nothing of it. */
    @Test
    void theLengthIsThatOfTheLongestPieceRoundTheBody() throws Refusal {
        LevelMark hip = LevelMark.through("hip", in(1, 5));
        Piece front = Cloths.square("front", 10, EdgeRole.SEAM, EdgeRole.SEAM).withLevels(List.of(hip));
        Piece side = Cloths.square("side", 14, EdgeRole.SEAM, EdgeRole.SEAM).withLevels(List.of(hip));
        Piece back = Cloths.square("back", 12, EdgeRole.SEAM, EdgeRole.SEAM).withLevels(List.of(hip));
        Piece band = Cloths.square("band", 40, EdgeRole.SEAM, EdgeRole.SEAM);
        Piece facing = Cloths.square("facing", 30, EdgeRole.SEAM, EdgeRole.SEAM).withLevels(List.of(hip.notCounted()));
        Pattern before = pattern(List.of(Cloths.HIP), band, facing, front, side, back);
        SizeUp.Line length = length(before);
        assertThat(length.name()).isEqualTo("side");
        assertThat(length.before()).isCloseTo(14 * INCH, within(1e-9));
        // Laid on its side the piece is still 14 in long along its grain, and 10 in wide.
        Piece laid = side.toBuilder()
                .grain(new Grain(in(2, 3), in(8, 3)))
                .levels(List.of())
                .build();
        Piece lying = laid.withLevels(List.of(LevelMark.through("hip", in(5, 3))));
        assertThat(length(pattern(List.of(Cloths.HIP), lying)).before()).isCloseTo(10 * INCH, within(1e-9));
    }

    private static SizeUp.Line length(Pattern before) throws Refusal {
        Pattern local = SeamChange.at("hip", 20).apply(before).pattern();
        return SizeUp.of(before, local, "hip").lines().stream()
                .filter(l -> l.kind() == SizeUp.Kind.LENGTH)
                .findFirst()
                .orElseThrow();
    }

    private static SizeUp.Line line(SizeUp compared, String name) {
        return compared.lines().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
