package easewright.alter;

import static easewright.alter.Cloths.INCH;
import static easewright.alter.Cloths.girth;
import static easewright.alter.Cloths.in;
import static easewright.alter.Cloths.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.BodiceDraft;
import easewright.draft.SampleBodies;
import easewright.draft.SkirtDraft;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

class CoupledTest {
    private static double drift(Pattern pattern, String mate) {
        return Measures.of(pattern).mates().stream()
                .filter(w -> w.mate().name().equals(mate))
                .mapToDouble(MateWalk::drift)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theWaistbandIsOfferedShorterByWhatTheWaistLost() throws Refusal {
        Pattern skirt = new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft().pattern();
        Pattern after = SeamChange.at("waist", -15).apply(skirt).pattern();
        List<Coupled.Offer> offers = Coupled.offers(skirt, after);
        assertThat(offers).hasSize(1);
        Coupled.Offer offer = offers.get(0);
        assertThat(offer.mate().name()).isEqualTo("waistband");
        assertThat(offer.drift()).isCloseTo(-15, within(1e-6));
        assertThat(offer.alterations()).hasSize(1);
        EdgeLength band = (EdgeLength) offer.alterations().get(0);
        assertThat(band.edge()).isEqualTo(EdgeRef.of("skirt-band", "seam"));
        assertThat(band.amount()).isCloseTo(-15, within(1e-6));
        assertThat(Cloths.sewn(offer.result(), "skirt-band", "seam") - Cloths.sewn(skirt, "skirt-band", "seam"))
                .isCloseTo(-15, within(1e-6));
        assertThat(Cloths.sewn(offer.result(), "skirt-band", "inner seam")
                        - Cloths.sewn(skirt, "skirt-band", "inner seam"))
                .isCloseTo(-15, within(1e-6));
        assertThat(drift(offer.result(), "waistband")).isCloseTo(drift(skirt, "waistband"), within(1e-6));
        assertThat(offer.girths()).isEmpty();
        // Nothing is done unasked: the offer leaves the changed pattern alone until it is made.
        assertThat(after.piece("skirt-band")).isEqualTo(skirt.piece("skirt-band"));
        // Side notches stay in proportion, and the band of the hip needs nothing.
        Piece was = skirt.piece("skirt-band").orElseThrow();
        Piece is = offer.result().piece("skirt-band").orElseThrow();
        for (int i = 0; i < was.notches().size(); i++) {
            double before = fromStart(was, was.notches().get(i));
            double now = fromStart(is, is.notches().get(i));
            if (before < 1) {
                continue;
            }
            assertThat(now / before)
                    .isCloseTo(
                            Cloths.sewn(offer.result(), "skirt-band", "seam")
                                    / Cloths.sewn(skirt, "skirt-band", "seam"),
                            within(2e-3));
        }
        assertThat(Coupled.offers(skirt, SeamChange.at("hip", 24).apply(skirt).pattern()))
                .isEmpty();
        // Nobody sews a band on anew for what cannot be cut.
        assertThat(Coupled.offers(
                        skirt, SeamChange.at("waist", -1.5).apply(skirt).pattern()))
                .isEmpty();
        assertThat(Coupled.offers(
                        skirt, SeamChange.at("waist", -1.6).apply(skirt).pattern()))
                .hasSize(1);
    }

    private static double fromStart(Piece piece, Notch notch) {
        return notch.at().distance(piece.edge("seam").orElseThrow().from());
    }

    /**
     * Worked example W12 (C-228, second-hand): a cap seam of 17 in becomes 18 in; half of the difference is added at the
     * underarm seams of bodice front and back, and the bodice is 2 in wider there.
     */
    @Test
    void w12TheBodiceIsOfferedWithItsConsequence() throws Refusal {
        Level underarm = Level.of("underarm", LevelKind.BUST);
        Piece front = bodice("front", underarm);
        Piece back = bodice("back", underarm);
        Piece sleeve = polygon(
                "sleeve",
                List.of(in(0, 0), in(7.5, -4), in(15, 0), in(14, 12), in(1, 12)),
                "back cap CAP, front cap CAP, front underarm SEAM, hem HEM, back underarm SEAM");
        assertThat(2 * 8.5 * INCH).isCloseTo(17 * INCH, within(1e-9));
        Pattern before = Cloths.pattern(List.of(underarm), front, back, sleeve)
                .withMates(List.of(new Mate(
                        "sleeve in armhole",
                        List.of(EdgeRef.of("sleeve", "back cap"), EdgeRef.of("sleeve", "front cap")),
                        List.of(EdgeRef.of("back", "armhole"), EdgeRef.of("front", "armhole")),
                        0)));
        // The sleeve is slashed from hem to cap and spread: the cap seam grows by 1 in, as with a large arm.
        Pattern wide = new ParallelSlash("sleeve", in(6, 12), in(6, -3.2), INCH, in(14, 6), true)
                .apply(before)
                .pattern();
        List<Coupled.Offer> offers = Coupled.offers(before, wide);
        assertThat(offers).hasSize(1);
        Coupled.Offer offer = offers.get(0);
        assertThat(offer.drift()).isCloseTo(INCH, within(0.01 * INCH));
        assertThat(offer.alterations()).hasSize(2);
        for (String piece : List.of("front", "back")) {
            assertThat(Cloths.sewn(offer.result(), piece, "armhole") - Cloths.sewn(before, piece, "armhole"))
                    .isCloseTo(offer.drift() / 2, within(1e-6));
        }
        assertThat(drift(offer.result(), "sleeve in armhole"))
                .isCloseTo(drift(before, "sleeve in armhole"), within(1e-6));
        assertThat(offer.girths().get("underarm")).isCloseTo(2 * offer.drift(), within(1e-6));
        assertThat(girth(offer.result(), "underarm") - girth(before, "underarm"))
                .isCloseTo(2 * offer.drift(), within(1e-6));
    }

    /** Half a bodice whose armhole ends in a run straight across to the underarm corner. */
    private static Piece bodice(String id, Level underarm) {
        return Piece.bare(id, Outline.polygon(List.of(in(0, -8), in(6, -8), in(6, 0), in(9, 0), in(8, 8), in(0, 8))))
                .toBuilder()
                .cut(1, true)
                .edges(List.of(
                        Edge.of("shoulder", EdgeRole.SHOULDER, in(0, -8), in(6, -8)),
                        Edge.of("armhole", EdgeRole.ARMHOLE, in(6, -8), in(9, 0)),
                        Edge.of("side", EdgeRole.SEAM, in(9, 0), in(8, 8)),
                        Edge.of("waist", EdgeRole.WAIST, in(8, 8), in(0, 8)),
                        Edge.of("fold", EdgeRole.FOLD, in(0, 8), in(0, -8))))
                .notches(List.of(new Notch("armhole foot", in(6, 0))))
                .levels(List.of(LevelMark.through(underarm.name(), in(1, 0))))
                .build();
    }

    @Test
    void aSleeveIsOfferedAfterItsArmhole() throws Refusal {
        Pattern bodice = new BodiceDraft(SampleBodies.MAREN, 90, 40, 50).draft().pattern();
        Pattern after = EdgeLength.atEnds(EdgeRef.of("bodice-front", "armhole"), 6)
                .apply(bodice)
                .pattern();
        Coupled.Offer offer = Coupled.offers(bodice, after).stream()
                .filter(o -> o.mate().name().equals("sleeve in armhole"))
                .findFirst()
                .orElseThrow();
        assertThat(Cloths.sewn(offer.result(), "bodice-sleeve", "cap") - Cloths.sewn(bodice, "bodice-sleeve", "cap"))
                .isCloseTo(6, within(1e-6));
        assertThat(offer.girths()).containsKey("upper arm");
        assertThat(drift(offer.result(), "sleeve in armhole"))
                .isCloseTo(drift(bodice, "sleeve in armhole"), within(1e-6));
    }

    /** A collar after the neck: half a neck on the fold, a collar whole. */
    @Test
    void aCollarIsOfferedAfterItsNeck() throws Refusal {
        Piece neck = polygon(
                        "body",
                        List.of(new Point(0, 0), new Point(80, 0), new Point(80, 300), new Point(0, 300)),
                        "neck NECK, side SEAM, hem HEM, fold FOLD")
                .toBuilder()
                .cut(1, true)
                .build();
        Piece collar = polygon(
                "collar",
                List.of(new Point(500, 0), new Point(660, 0), new Point(660, 60), new Point(500, 60)),
                "seam NECK, end OTHER, outer OTHER, other end OTHER");
        Pattern before = Cloths.pattern(List.of(), neck, collar)
                .withMates(List.of(new Mate(
                        "collar", List.of(new EdgeRef("body", "neck", 2)), List.of(EdgeRef.of("collar", "seam")), 0)));
        Pattern after = new ParallelSlash("body", new Point(40, 0), new Point(40, 300), 5, new Point(80, 100), true)
                .apply(before)
                .pattern();
        // The collar's own seam is protected, as necks are: it is only changed because that is what is offered.
        Coupled.Offer offer = Coupled.offers(before, after).get(0);
        assertThat(Cloths.sewn(offer.result(), "collar", "seam")).isCloseTo(170, within(1e-6));
    }

    @Test
    void lengthOfAnEdgeThereAndBackOrRefused() throws Refusal {
        Pattern skirt = new SkirtDraft(SampleBodies.MAREN, 50, 25, 600).draft().pattern();
        Pattern bodice = new BodiceDraft(SampleBodies.MAREN, 90, 40, 50).draft().pattern();
        check(skirt, EdgeLength.slashed(EdgeRef.of("skirt-band", "seam"), 22), "skirt-band");
        check(skirt, EdgeLength.slashed(EdgeRef.of("skirt-band", "seam"), -22), "skirt-band");
        check(bodice, EdgeLength.atEnds(EdgeRef.of("bodice-back", "armhole"), 8), "bodice-back");
        check(bodice, EdgeLength.atEnds(EdgeRef.of("bodice-back", "armhole"), -5), "bodice-back");
        check(bodice, EdgeLength.atEnds(EdgeRef.of("bodice-sleeve", "cap"), 9), "bodice-sleeve");
        Refusal tooMuch = catchThrowableOfType(
                Refusal.class,
                () -> EdgeLength.slashed(EdgeRef.of("skirt-band", "seam"), -790).apply(skirt));
        assertThat(tooMuch.largest().orElseThrow()).isBetween(-790.0, -100.0);
        Refusal alone = catchThrowableOfType(
                Refusal.class,
                () -> EdgeLength.atEnds(EdgeRef.of("skirt-band", "seam"), 5).apply(skirt));
        assertThat(alone.code()).isEqualTo("edge-without-seam");
    }

    private static void check(Pattern before, EdgeLength change, String id) throws Refusal {
        Altered altered = change.apply(before);
        String edge = change.edge().edge();
        assertThat(Cloths.sewn(altered.pattern(), id, edge) - Cloths.sewn(before, id, edge))
                .isCloseTo(change.amount(), within(1e-6));
        Pattern back = change.opposite().orElseThrow().apply(altered.pattern()).pattern();
        for (Segment s : back.piece(id).orElseThrow().outline().segments()) {
            for (int i = 0; i < 6; i++) {
                assertThat(before.piece(id)
                                .orElseThrow()
                                .outline()
                                .nearest(s.at(i / 6.0))
                                .distance())
                        .isLessThan(1e-6);
            }
        }
        assertThat(change.withAmount(0).apply(before).pattern()).isSameAs(before);
        assertThat(Ways.from(change.note())).isEqualTo(change);
    }
}
