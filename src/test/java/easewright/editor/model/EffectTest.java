package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class EffectTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private void open(int sample, String level) throws Exception {
        Sample garment = Sample.all().get(sample);
        session.open(Opened.of(new OpenFile(garment.read(), Optional.empty(), garment.fileName())));
        session.chooseLevel(level);
    }

    private Effect tried(double mm) {
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
        return Effect.of(session.desk());
    }

    private static Stream<String> words(Effect effect, Effect.Kind kind) {
        return effect.lines().stream().filter(l -> l.kind() == kind).map(Effect.Line::words);
    }

    @Test
    void saysWhatMovedWhatStayedAndThatSeamsStillFit() throws Exception {
        open(0, "hip");
        assertThat(Effect.of(session.desk()).lines()).isEmpty();
        Effect effect = tried(24);
        assertThat(words(effect, Effect.Kind.MOVED)).singleElement().asString().contains("Back side", "Front side");
        assertThat(words(effect, Effect.Kind.STAYED))
                .singleElement()
                .asString()
                .contains("waist", "fold", "darts", "grain", "Waistband")
                .doesNotContain("side");
        assertThat(words(effect, Effect.Kind.FITS)).hasSize(1);
        assertThat(words(effect, Effect.Kind.DRIFTED)).isEmpty();
        assertThat(effect.lines())
                .allSatisfy(l -> assertThat(l.words()).doesNotContain("editor.").doesNotContain("{"));
    }

    @Test
    void onOneSideItSaysThatThisSideMovedAndTheOtherStayed() throws Exception {
        open(1, "bust");
        session.want(session.desk().wanted().orElseThrow().withSide(Side.LEFT));
        Effect effect = tried(-10);
        assertThat(words(effect, Effect.Kind.MOVED))
                .singleElement()
                .asString()
                .contains("Back left side", "Front left side")
                .doesNotContain("right")
                .doesNotContain("waist");
        assertThat(words(effect, Effect.Kind.STAYED))
                .singleElement()
                .asString()
                .contains("Back right", "Back left", "Front right", "Front left", "darts", "grain", "Sleeve");
        assertThat(session.desk().holds())
                .extracting(h -> HereWords.seam(session.desk(), h.edge()))
                .contains("Back left, side", "Front left, side");
    }

    /** A list of names as long as a nest would be no help, and setting it took longer than the change. */
    @Test
    void manyPiecesAreCountedAndOtherSizesToldTogether() throws Exception {
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "nest.svg"), Optional.empty(), "nest.svg")));
        session.chooseLevel("hip");
        assertThat(words(tried(24), Effect.Kind.STAYED))
                .singleElement()
                .asString()
                .contains("all other sizes")
                .doesNotContain("12", "14");

        Pattern nest = session.desk().pattern();
        List<Piece> more = new ArrayList<>(nest.pieces());
        for (int i = 0; i < 6; i++) {
            more.add(Piece.bare("patch " + i, nest.pieces().get(0).outline()));
        }
        session.edit(nest.withPieces(more));
        session.chooseLevel("hip");
        assertThat(words(tried(24), Effect.Kind.STAYED))
                .singleElement()
                .asString()
                .contains("all of 7 other pieces", "all other sizes")
                .doesNotContain("patch");
        session.edit(nest.withPieces(more.subList(0, more.size() - 1)));
        session.chooseLevel("hip");
        assertThat(words(tried(24), Effect.Kind.STAYED))
                .singleElement()
                .asString()
                .contains("patch 0", "patch 4");
    }

    /** Worked example W4 of docs/sources.md: one of two mates moved alone changes its length, and they drift apart. */
    @Test
    void aMateMovedAloneDrifts() throws Exception {
        open(0, "hip");
        List<Hold> holds = session.desk().holds();
        EdgeRef still = holds.get(0).edge();
        session.want(session.desk().wanted().orElseThrow().withLeftOut(Set.of(still)));
        Effect effect = tried(48);
        String moved = holds.get(1).edge().piece().contains("back") ? "Back" : "Front";
        String kept = moved.equals("Back") ? "Front" : "Back";
        assertThat(words(effect, Effect.Kind.DRIFTED))
                .singleElement()
                .asString()
                .contains(moved + " became ", " longer than " + kept + ".");
        assertThat(words(effect, Effect.Kind.FITS)).isEmpty();
        assertThat(session.desk().shownTrial().orElseThrow().findings())
                .anySatisfy(f -> assertThat(f.code()).isEqualTo("mate-drifted"));
    }

    /** A steep taper is told beside the amount that makes it so, and goes with it. */
    @Test
    void aCautionAboutTheChangeItselfStandsFirst() throws Exception {
        open(0, "hip");
        session.want(session.desk().wanted().orElseThrow().withCarry(false));
        Effect effect = tried(200);
        assertThat(effect.lines().get(0).kind()).isEqualTo(Effect.Kind.CAUTION);
        List<String> cautions = words(effect, Effect.Kind.CAUTION).toList();
        assertThat(cautions).hasSizeBetween(1, 3).allMatch(w -> !w.contains("{") && !w.contains("finding."));
        assertThat(cautions.get(0)).contains("side");
        assertThat(words(tried(8), Effect.Kind.CAUTION)).isEmpty();
    }

    /** What is off by less than anybody cuts is told with its figure, and is no task. */
    @Test
    void aDriftTooSmallForCuttingStillFits() throws Exception {
        open(0, "hip");
        EdgeRef still = session.desk().holds().get(0).edge();
        session.want(session.desk().wanted().orElseThrow().withLeftOut(Set.of(still)));
        Effect effect = tried(12);
        assertThat(words(effect, Effect.Kind.DRIFTED)).isEmpty();
        assertThat(words(effect, Effect.Kind.FITS))
                .singleElement()
                .asString()
                .contains(" became ", " than ", "too little to matter in cutting");
    }

    /** Trouser legs: front and back seams of different slant drift apart unless they are evened out. */
    @Test
    void seamsThatAreEvenedOutStillFit() throws Exception {
        open(2, "thigh");
        session.want(session.desk().wanted().orElseThrow().withCarry(true));
        Effect drifted = tried(60);
        assertThat(words(drifted, Effect.Kind.DRIFTED)).isNotEmpty();
        assertThat(drifted.lines())
                .filteredOn(l -> l.kind() == Effect.Kind.DRIFTED)
                .as("both sides changed: they can be evened out")
                .allMatch(Effect.Line::evens);
        session.want(session.desk().wanted().orElseThrow().withEven(true));
        assertThat(session.desk().shownTrial()).isPresent();
        Effect effect = Effect.of(session.desk());
        assertThat(words(effect, Effect.Kind.DRIFTED)).isEmpty();
        assertThat(words(effect, Effect.Kind.FITS)).hasSize(1);
    }

    /** A side with a dart on one without: evened out, they move by different lengths, told as they are. */
    @Test
    void unequalSharesAreTold() throws Exception {
        String drawn = "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='400mm' viewBox='0 0 800 400'>"
                + "<path id='a' d='M0,0 H265 V200 H0 Z'/><path id='b' d='M400,0 H650 L620,170 H400 Z'/>"
                + "<metadata><marks xmlns='urn:easewright:marks:1'><scale across='1' down='1' proof='physical-size'/>"
                + "<level name='bust' kind='bust'/>"
                + "<piece ref='a' name='Front' line='stitching' allowance='0' cut='1' fold='yes' box='0 0 265 200'>"
                + "<edge name='side' role='seam' from='265 0' via='265 90' to='265 200'/>"
                + "<edge name='fold' role='fold' from='0 200' via='0 90' to='0 0'/>"
                + "<at level='bust' through='100 30'/>"
                + "<dart name='side dart' edge='side' mouth='265 40' point='120 55' mouth2='265 70'/></piece>"
                + "<piece ref='b' name='Back' line='stitching' allowance='0' cut='1' fold='yes' box='400 0 650 170'>"
                + "<edge name='side' role='seam' from='650 0' via='635 85' to='620 170'/>"
                + "<edge name='fold' role='fold' from='400 170' via='400 90' to='400 0'/>"
                + "<at level='bust' through='500 30'/></piece>"
                + "<mate name='side seam'><first piece='a' edge='side'/><second piece='b' edge='side'/></mate>"
                + "</marks></metadata></svg>";
        session.open(OpenedSample.drawn(drawn, "sides.svg"));
        session.chooseLevel("bust");
        List<Hold> before = session.desk().holds();
        tried(40);
        assertThat(HereWords.outcome(session.desk())).contains("4\u00a0sewn seam edges move by +1\u00a0cm each");
        session.want(session.desk().wanted().orElseThrow().withEven(true));
        Desk desk = session.desk();
        double[] moves = before.stream()
                .mapToDouble(hold -> reach(desk.shown().piece(hold.pieceId()).orElseThrow(), hold))
                .sorted()
                .toArray();
        assertThat(moves).hasSize(2);
        assertThat(moves[0] + moves[1]).isCloseTo(20, within(1e-6));
        assertThat(moves[1] - moves[0]).isGreaterThan(1);
        assertThat(HereWords.outcome(desk))
                .contains("4\u00a0sewn seam edges move, from " + desk.words().signed(moves[0]) + " to "
                        + desk.words().signed(moves[1]))
                .doesNotContain("each");
    }

    /** How far beyond a hold the outline lies along its level, mm. */
    private static double reach(Piece piece, Hold hold) {
        return piece.outline().crossings(hold.at(), hold.outward()).stream()
                .mapToDouble(c -> c.point().minus(hold.at()).dot(hold.outward()))
                .max()
                .orElseThrow();
    }

    @Test
    void protectedEdgesThatStayAreShownOnTheTable() throws Exception {
        open(1, "wrist");
        tried(30);
        var scene = new TableScenes().of(session.desk());
        var sleeve = scene.pieces().stream()
                .filter(p -> p.piece().name().equals("Sleeve"))
                .findFirst()
                .orElseThrow();
        assertThat(sleeve.trial().kept()).hasSize(1);
        assertThat(sleeve.trial().drifts()).isEmpty();
        assertThat(scene.pieces().get(0).trial().kept()).isEmpty();
    }

    @Test
    void whatMovesAsAWholeKeepsItsShape() throws Exception {
        open(0, "hip");
        var before = session.desk().pattern();
        var after =
                easewright.alter.Lengthen.below("hip", 100, 40).apply(before).pattern();
        assertThat(EdgeFate.of(before, after))
                .anySatisfy(f -> {
                    assertThat(f.edge().name()).isEqualTo("hem");
                    assertThat(f.fate()).isEqualTo(EdgeFate.Fate.CARRIED);
                })
                .anySatisfy(f -> {
                    assertThat(f.edge().name()).isEqualTo("side");
                    assertThat(f.fate()).isEqualTo(EdgeFate.Fate.RESHAPED);
                })
                .anySatisfy(f -> {
                    assertThat(f.edge().name()).isEqualTo("waist");
                    assertThat(f.fate()).isEqualTo(EdgeFate.Fate.STAYED);
                });
    }
}
