package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.ease.EaseSheet;
import easewright.ease.EaseTables;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A girth of one leg or arm counts one piece of a pair, whatever the level is called. */
class LimbLevelTest {
    private static Pattern legs(String level) throws Exception {
        Pattern p = Bare.twoPieces().session.desk().pattern();
        for (String piece : List.of("front", "back")) {
            p = p.withPiece(
                    p.piece(piece).orElseThrow().toBuilder().cut(2, false).build());
        }
        p = LevelEdits.add(p, level, LevelKind.OTHER);
        p = LevelEdits.place(p, "front", level, new Point(200, 300));
        return LevelEdits.place(p, "back", level, new Point(500, 300));
    }

    private static double girth(Pattern p) {
        return easewright.measure.Measures.of(p).girths().get(0).finished();
    }

    @Test
    void namesOfLimbsCountOne() throws Exception {
        for (String name : List.of(
                "ankle",
                "Ankles",
                "calf",
                "mid thigh",
                "Thigh",
                "knee",
                "lower knee",
                "upper arm",
                "bicep",
                "elbow",
                "forearm",
                "wrist",
                "cuff opening",
                "leg opening",
                "sleeve hem")) {
            assertThat(girth(legs(name))).as(name).isCloseTo(400, within(1e-6));
        }
    }

    @Test
    void namesOfTheBodyCountBoth() throws Exception {
        for (String name : List.of("waist", "hip", "hem", "rib cage", "tummy", "shoulder point")) {
            assertThat(girth(legs(name))).as(name).isCloseTo(800, within(1e-6));
        }
    }

    @Test
    void itCanBeSaidOfAnyName() throws Exception {
        Pattern own = legs("where it pinches");
        Pattern limb = LevelEdits.limb(own, "where it pinches", true);
        assertThat(girth(limb)).isCloseTo(400, within(1e-6));
        assertThat(LevelEdits.limb(limb, "where it pinches", false)).isEqualTo(own);
    }

    @Test
    void ankleAndCalfAreOffered() throws Exception {
        assertThat(LevelsView.of(Bare.twoPieces().session.desk()).kinds())
                .extracting(LevelsView.Kind::kind)
                .contains(LevelKind.ANKLE, LevelKind.CALF);
    }

    /** Trousers have no bust: what they reach comes first, and all can still be had. */
    @Test
    void whatThePiecesDoNotReachIsOfferedLast() throws Exception {
        assertThat(notReached("trousers"))
                .containsExactly(
                        LevelKind.NECK, LevelKind.BUST, LevelKind.UNDERBUST, LevelKind.UPPER_ARM, LevelKind.WRIST);
        assertThat(notReached("skirt")).contains(LevelKind.BUST, LevelKind.KNEE).doesNotContain(LevelKind.HIGH_HIP);
        assertThat(notReached("bodice")).contains(LevelKind.THIGH).doesNotContain(LevelKind.NECK, LevelKind.HIP);
        assertThat(LevelsView.of(Bare.twoPieces().session.desk()).kinds())
                .as("nobody knows yet what they are")
                .allMatch(LevelsView.Kind::reached);
    }

    private static List<LevelKind> notReached(String sample) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.drawn(Files.readString(Path.of("sample-pieces/" + sample + ".svg")), "drawn.svg"));
        return LevelsView.of(session.desk()).kinds().stream()
                .filter(k -> !k.reached())
                .map(LevelsView.Kind::kind)
                .toList();
    }

    /** A hem lies where the garment ends: round one leg of trousers, else round the body, which has no girth there. */
    @Test
    void aHemIsOfferedAndNoBodyIsAskedForIt() throws Exception {
        assertThat(hems(Bare.twoPieces().session)).containsExactly(LevelKind.OTHER);
        for (String sample : List.of("trousers", "skirt")) {
            Session session = new Session(LengthUnit.CM, false);
            session.open(
                    OpenedSample.drawn(Files.readString(Path.of("sample-pieces/" + sample + ".svg")), "drawn.svg"));
            Pattern pattern = session.desk().pattern();
            if (pattern.level("hem").isPresent()) {
                pattern = LevelEdits.remove(pattern, "hem");
            }
            pattern = LevelEdits.add(pattern, "hem", LevelKind.OTHER);
            assertThat(pattern.level("hem").orElseThrow().limb()).isEqualTo(sample.equals("trousers"));
            assertThat(LevelEdits.add(pattern, "Bottom hem", LevelKind.OTHER)
                            .level("Bottom hem")
                            .orElseThrow()
                            .limb())
                    .isEqualTo(sample.equals("trousers"));
            session.edit(pattern);
            assertThat(hems(session)).isEmpty();
            Piece piece = pattern.pieces().get(0);
            Point at = piece.levels().stream()
                    .flatMap(m -> m.through().stream())
                    .findFirst()
                    .orElseThrow();
            pattern = LevelEdits.place(
                    pattern, piece.id(), "hem", at.plus(piece.downGrain().times(20)));
            assertThat(EaseSheet.of(pattern, Measures.of(pattern), EaseTables.standard())
                            .findings())
                    .noneMatch(f -> f.code().equals("body-level-missing"));
        }
    }

    private static List<LevelKind> hems(Session session) {
        return LevelsView.of(session.desk()).kinds().stream()
                .filter(k -> k.name().equals("hem"))
                .map(LevelsView.Kind::kind)
                .toList();
    }
}
