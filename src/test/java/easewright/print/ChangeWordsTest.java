package easewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.CentreChange;
import easewright.alter.HingedSlash;
import easewright.alter.Lengthen;
import easewright.alter.ParallelSlash;
import easewright.alter.SeamChange;
import easewright.alter.Share;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ChangeWordsTest {
    private final ChangeWords words = new ChangeWords(Words.english(LengthUnit.CM));
    private final Pattern pattern = Pattern.bare(
            List.of(Piece.bare("p1", Outline.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100))))
                    .withName("Front")),
            new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE));

    @Test
    void aSeamChangeSaysHowMuchWhereAndHowItDiesAway() {
        ChangeNote note = SeamChange.at("hip", 24)
                .withShares(new Share(EdgeRef.of("p1", "side"), 2), new Share(EdgeRef.of("p1", "back"), 1))
                .keeping("waist")
                .carriedToHem()
                .note();
        assertThat(words.of(note, pattern))
                .isEqualTo("hip: +2.4\u00a0cm all round, at Front, side (share 2); Front, back (share 1)."
                        + " It tapers smoothly, is carried down to the hem and stops at waist.");
        assertThat(words.brief(note, pattern))
                .isEqualTo("hip: +2.4\u00a0cm all round, at Front, side (share 2); Front, back (share 1).");
    }

    @Test
    void everyKindOfChangeHasWords() {
        Point p = new Point(1, 2);
        List<ChangeNote> notes = List.of(
                SeamChange.at("hip", -10).onOneSide().acceptingProtected().note(),
                new CentreChange("hip", 10, EdgeRef.of("p1", "centre"), true, "neck", true).note(),
                new HingedSlash("p1", p, p, 12, p, false).note(),
                new ParallelSlash("p1", p, p, 10, p, false).note(),
                new Lengthen("hip", 30, 20, List.of("p1"), false).note());
        for (ChangeNote note : notes) {
            assertThat(words.of(note, pattern))
                    .as(note.method())
                    .doesNotContain("change.")
                    .doesNotContain("{")
                    .doesNotContain("p1")
                    .endsWith(".");
        }
    }

    @Test
    void whatANewerVersionRecordedIsSaidPlainly() {
        ChangeNote note = new ChangeNote("fold-twice", Map.of("level", "hip", "amount", "x", "mood", "calm"));
        assertThat(words.of(note, pattern))
                .contains("fold-twice")
                .contains("mood calm")
                .doesNotContain("change.");
    }
}
