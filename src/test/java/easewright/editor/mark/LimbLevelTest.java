package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
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
}
