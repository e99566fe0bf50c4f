package easewright.alter;

import static easewright.alter.OneSideTest.on;
import static easewright.alter.OneSideTest.sample;
import static easewright.alter.OneSideTest.side;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.measure.Girth;
import easewright.measure.Measures;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How pieces become left and right ones for a change on one side, and what cannot. */
class OneSidePartsTest {
    @BeforeAll
    static void draft() throws Exception {
        OneSideTest.draft();
    }

    @Test
    void aSecondChangePartsNothingAgainAndMayBeOnEitherSide() throws Exception {
        Pattern once =
                on(Side.LEFT, SeamChange.at("hip", 10)).apply(sample("skirt")).pattern();
        Pattern twice = on(Side.RIGHT, SeamChange.at("hip", 6)).apply(once).pattern();
        assertThat(twice.pieces())
                .extracting(Piece::id)
                .isEqualTo(once.pieces().stream().map(Piece::id).toList());
        assertThat(side(twice, "hip", Side.LEFT) - side(once, "hip", Side.LEFT)).isCloseTo(0, within(1e-9));
        assertThat(side(twice, "hip", Side.RIGHT) - side(once, "hip", Side.RIGHT))
                .isCloseTo(6, within(1e-6));
        Pattern both = SeamChange.at("hip", 8).apply(twice).pattern();
        assertThat(side(both, "hip", Side.LEFT) - side(twice, "hip", Side.LEFT)).isCloseTo(4, within(1e-6));
    }

    @Test
    void takenBackItIsAsBeforeAndWithinTheSessionTheVeryPieces() throws Exception {
        Pattern before = sample("skirt");
        Pattern after = on(Side.LEFT, SeamChange.at("hip", 10)).apply(before).pattern();
        Pattern back = Retrace.to(after, 0);
        assertThat(side(back, "hip", Side.LEFT)).isCloseTo(side(before, "hip", Side.LEFT), within(1e-6));
        List<Step> off = List.of(Step.course(after).get(0).switched(false));
        assertThat(new Replay(after, List.of(before)).to(off).pieces()).isEqualTo(before.pieces());
        assertThat(new Replay(after, List.of(before)).to(off).mates()).isEqualTo(before.mates());
        Pattern alone = new Replay(after, List.of()).to(off);
        assertThat(side(alone, "hip", Side.LEFT)).isCloseTo(side(before, "hip", Side.LEFT), within(1e-6));
        Alteration read = Ways.from(after.changes().get(0));
        assertThat(read).isEqualTo(on(Side.LEFT, SeamChange.at("hip", 10)));
    }

    @Test
    void inOneSizeOnOneSide() throws Exception {
        Pattern nest = sample("skirt-sizes");
        Pattern after = Within.of(new Scope(Optional.of("12"), Side.RIGHT), SeamChange.at("hip", 12))
                .apply(nest)
                .pattern();
        for (Piece piece : nest.pieces()) {
            if (!piece.size().equals(Optional.of("12"))) {
                assertThat(after.piece(piece.id()).orElseThrow()).isSameAs(piece);
            }
        }
        List<Girth> hips = Measures.of(after).girths().stream()
                .filter(g -> g.level().name().equals("hip"))
                .toList();
        assertThat(hips).hasSize(3);
        assertThat(hips.get(1).on(Side.RIGHT) - hips.get(1).on(Side.LEFT)).isCloseTo(12, within(1e-6));
        assertThat(Measures.of(after).findings()).isEmpty();
        assertThat(Measures.of(after).mates()).hasSize(6 + 2).allMatch(m -> Math.abs(m.drift()) < 0.1);
    }

    @Test
    void whatHasNoMeaningOrCannotBePartedIsRefused() {
        Pattern skirt = sample("skirt");
        assertRefused(
                "one-side-centre",
                skirt,
                CentreChange.parallel("hip", 10, easewright.pattern.EdgeRef.of("skirt-back", "centre back")));
        Piece three = skirt.piece("skirt-back").orElseThrow().toBuilder()
                .cut(3, false)
                .build();
        assertRefused("one-side-odd", skirt.withPiece(three), SeamChange.at("hip", 10));
        Piece front = skirt.piece("skirt-front").orElseThrow();
        Piece foldless = front.withEdges(
                front.edges().stream().filter(e -> !e.name().equals("fold")).toList());
        assertRefused("one-side-no-fold", skirt.withPiece(foldless), SeamChange.at("hip", 10));
    }

    private static void assertRefused(String code, Pattern pattern, Alteration change) {
        assertThatThrownBy(() -> on(Side.LEFT, change).apply(pattern))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.code()).isEqualTo(code));
    }

    @Test
    void zeroChangesNothing() throws Exception {
        Pattern skirt = sample("skirt");
        assertThat(on(Side.LEFT, SeamChange.at("hip", 0)).apply(skirt).pattern())
                .isSameAs(skirt);
    }

    /** A front with its centre at the left of the sheet is the wearer's left; a back the wearer's right. */
    @Test
    void whichSideIsDrawnIsSeenWhereItCan() throws Exception {
        assertThat(SideSeen.of(sample("skirt").piece("Back").orElseThrow())).isEqualTo(new SideSeen(Side.RIGHT, true));
        assertThat(SideSeen.of(sample("skirt").piece("Front").orElseThrow())).isEqualTo(new SideSeen(Side.RIGHT, true));
        Altered sleeve = on(Side.LEFT, SleeveWidth.at("upper arm", 10)).apply(sample("bodice"));
        assertThat(sleeve.findings()).extracting(Finding::code).contains("side-assumed", "sides-parted");
        Altered hip = on(Side.LEFT, SeamChange.at("hip", 10)).apply(sample("skirt"));
        assertThat(hip.findings())
                .extracting(Finding::code)
                .contains("sides-parted-fold")
                .doesNotContain("side-assumed");
    }
}
