package easewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.ease.EaseTables;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Body;
import easewright.pattern.BodyMeasure;
import easewright.pattern.Cloth;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.print.Cautions.Caution;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** When each caution is shown (docs/cautions.md). */
class CautionsTest {
    private static final EaseTables TABLES = EaseTables.standard();

    /** A tube of the girth at one level, for a body of the girth there. */
    private static Reading tube(LevelKind kind, double girth, double body) {
        Outline outline = Outline.polygon(
                List.of(new Point(0, 0), new Point(girth, 0), new Point(girth, 300), new Point(0, 300)));
        Piece piece =
                Piece.bare("tube", outline).withLevels(List.of(LevelMark.through("level", new Point(girth / 2, 150))));
        Pattern pattern = Pattern.bare(List.of(piece), new Scale(1, 1, Scale.Proof.KNOWN_LINE))
                .withLevels(List.of(Level.of("level", kind)))
                .withCloth(Cloth.knit(60))
                .withBody(new Body("A", List.of(new BodyMeasure("Girth", "level", body, ""))));
        return Reading.of(pattern, TABLES);
    }

    private static List<String> codes(Optional<Reading> before, Reading after, Use... uses) {
        List<Caution> cautions = Cautions.of(before, after, Set.of(uses));
        Words words = Words.english(LengthUnit.CM);
        for (Caution caution : cautions) {
            assertThat(words.of("caution." + caution.code(), caution.values()))
                    .doesNotContain("caution.")
                    .doesNotContain("{");
        }
        return cautions.stream().map(Caution::code).toList();
    }

    @Test
    void anAdultsGarmentOnlyAsksToMeasureTheSquare() {
        assertThat(codes(Optional.empty(), tube(LevelKind.BUST, 960, 900))).containsExactly("test-square");
    }

    @Test
    void aSmallBodyIsTakenForAChilds() {
        assertThat(codes(Optional.empty(), tube(LevelKind.BUST, 700, 600)))
                .containsExactly("perhaps-nightwear", "cords", "test-square");
        assertThat(codes(Optional.empty(), tube(LevelKind.HIP, 960, 900), Use.CHILD))
                .contains("perhaps-nightwear", "cords");
        Reading adult = tube(LevelKind.BUST, 960, 900);
        Body small = new Body("B", List.of(new BodyMeasure("Stature", "", 1280, "")));
        Reading child = Reading.of(adult.pattern().withBody(small), TABLES);
        assertThat(codes(Optional.empty(), child)).contains("cords");
    }

    @Test
    void easeAddedToNightwearIsNamedByItsLevels() {
        Reading before = tube(LevelKind.BUST, 640, 600);
        Reading after = tube(LevelKind.BUST, 660, 600);
        assertThat(codes(Optional.of(before), after, Use.NIGHTWEAR)).contains("nightwear", "nightwear-wider");
        assertThat(codes(Optional.of(after), before, Use.NIGHTWEAR)).doesNotContain("nightwear-wider");
        Caution wider = Cautions.of(Optional.of(before), after, Set.of(Use.NIGHTWEAR)).stream()
                .filter(c -> c.code().equals("nightwear-wider"))
                .findFirst()
                .orElseThrow();
        assertThat(Words.english(LengthUnit.CM).of("caution.nightwear-wider", wider.values()))
                .contains("at level.")
                .contains("16 CFR 1615");
    }

    @Test
    void aChildsNeckMadeNarrower() {
        Reading before = tube(LevelKind.NECK, 340, 300);
        Reading after = tube(LevelKind.NECK, 320, 300);
        assertThat(codes(Optional.of(before), after, Use.CHILD)).contains("child-neck");
        assertThat(codes(Optional.of(before), after)).doesNotContain("child-neck");
        assertThat(codes(Optional.of(after), before, Use.CHILD)).doesNotContain("child-neck");
    }

    @Test
    void whatPressesIsNoMedicalDevice() {
        assertThat(codes(Optional.empty(), tube(LevelKind.CALF, 330, 400))).contains("compression");
        assertThat(codes(Optional.empty(), tube(LevelKind.CALF, 345, 400))).doesNotContain("compression");
        assertThat(codes(Optional.empty(), tube(LevelKind.CALF, 420, 400), Use.COMPRESSION))
                .contains("compression");
    }

    @Test
    void whatIsSaidOfTheGarmentBringsItsRule() {
        Reading adult = tube(LevelKind.BUST, 960, 900);
        assertThat(codes(Optional.empty(), adult, Use.PROTECTIVE)).contains("protective");
        assertThat(codes(Optional.empty(), adult, Use.CORDS)).contains("cords").doesNotContain("perhaps-nightwear");
        assertThat(Use.named(" Nightwear ")).contains(Use.NIGHTWEAR);
        assertThat(Use.named("balloon")).isEmpty();
    }
}
