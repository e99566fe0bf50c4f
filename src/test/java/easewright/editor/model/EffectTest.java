package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

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
                .contains(" became ", " than ", "for cutting that is the same");
    }

    /** Trouser legs: front and back seams of different slant drift apart unless they are evened out. */
    @Test
    void seamsThatAreEvenedOutStillFit() throws Exception {
        open(2, "thigh");
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
