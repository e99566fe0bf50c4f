package easewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.alter.CentreChange;
import easewright.alter.HingedSlash;
import easewright.alter.Lengthen;
import easewright.alter.ParallelSlash;
import easewright.alter.SeamChange;
import easewright.alter.Setting;
import easewright.alter.Share;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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

    /** A leg has its girth, and the body another. */
    @Test
    void atALimbItIsSaidWhatItGoesRound() {
        Pattern limbs = pattern.withLevels(List.of(
                Level.of("thigh", LevelKind.THIGH),
                Level.of("upper arm", LevelKind.UPPER_ARM),
                new Level("cuff", LevelKind.OTHER, true)));
        assertThat(words.of(SeamChange.at("thigh", 24).note(), limbs))
                .startsWith("thigh: +2.4\u00a0cm round one leg, at");
        assertThat(words.of(SeamChange.at("upper arm", 24).note(), limbs)).contains("cm round one arm, at");
        assertThat(words.of(SeamChange.at("cuff", 24).note(), limbs)).contains("cm round one leg or arm, at");
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

    /** Every way with each setting at each of its values: nothing is told by the name it has in the record. */
    @Test
    void everyValueOfEverySettingHasPlainWords() {
        int told = 0;
        for (Way way : Ways.all()) {
            for (Setting setting : way.settings()) {
                for (String value : values(setting)) {
                    Map<String, String> settings = new TreeMap<>(Map.of(way.amount(), "10"));
                    settings.put(keyOf(setting), value);
                    ChangeNote note = new ChangeNote(way.method(), settings);
                    List<String> said = new ArrayList<>(words.of(pattern.withChange(note)));
                    said.add(words.brief(note, pattern));
                    String what = way.method() + ", " + setting.key() + " " + value;
                    assertThat(said)
                            .as(what)
                            .allSatisfy(line -> assertThat(line)
                                    .doesNotContain("change.", "It has ", " has " + setting.key(), "and has ", "yes")
                                    .doesNotContain(raw(value)));
                    told++;
                }
            }
        }
        assertThat(told).isGreaterThan(60);
    }

    /** Of a choice each word, of a flag that it is set, else something of its kind. */
    private static List<String> values(Setting setting) {
        return switch (setting.kind()) {
            case CHOICE -> setting.choices();
            case FLAG -> List.of("yes");
            case SIGNED_LENGTH -> List.of("-12.5");
            case EDGE, SHARES, DARTS -> List.of("p1/side");
            case PLACE, PLACES -> List.of("1.25 583.5");
            case PIECE, PIECES -> List.of("p1");
            case LEVEL, NAME, NAMES, SLASHES -> List.of("waist");
        };
    }

    private static String keyOf(Setting setting) {
        return setting.kind().isList() ? setting.key() + ".1" : setting.key();
    }

    /** A value of several words with hyphens between them, or of digits, is nothing to be read. */
    private static String raw(String value) {
        return value.contains("-at") || value.startsWith("at-") || value.contains("583") ? value : "p1";
    }

    /** A gap is told as a gap, and what comes of it all round as that: on the fold the piece counts twice. */
    @Test
    void aGapIsNotTakenForAGirth() throws Exception {
        Pattern skirt = SvgFile.read(Path.of("sample-pieces/skirt.svg")).pattern();
        Piece front = skirt.pieces().stream().filter(Piece::onFold).findFirst().orElseThrow();
        Point p = new Point(1, 2);
        assertThat(words.of(new ParallelSlash(front.id(), p, p, 10, p, false).note(), skirt))
                .isEqualTo(
                        front.name()
                                + ": slashed right through, with a gap of +1\u00a0cm. Every girth that crosses it: +2\u00a0cm.");
        assertThat(words.of(new HingedSlash(front.id(), p, p, 10, p, false).note(), skirt))
                .isEqualTo(front.name() + ": slashed to a hinge, with a gap of +1\u00a0cm where it opens.");
    }

    /** Otherwise 1.85 in would read as the exact 1 7/8 in that nobody asked for. */
    @Test
    void anAmountThatIsRoundedSaysSo() {
        ChangeWords inches = new ChangeWords(Words.english(LengthUnit.INCH));
        assertThat(inches.of(SeamChange.at("hip", 1.85 * 25.4).note(), pattern))
                .startsWith("hip: about +1\u00a07/8\u00a0in");
        assertThat(inches.of(SeamChange.at("hip", 1.875 * 25.4).note(), pattern))
                .startsWith("hip: +1\u00a07/8\u00a0in");
        assertThat(inches.of(SeamChange.at("hip", -25.4 * 3 / 32).note(), pattern))
                .startsWith("hip: \u22123/32\u00a0in");
    }

    @Test
    void aLineMadeTrueAcrossASeamIsCalledByItsEdgesAndPieces() throws Exception {
        Pattern skirt = SvgFile.read(Path.of("sample-pieces/skirt.svg")).pattern();
        Map<String, String> settings = Map.of("matter", "joined-line", "mate", "side seam", "end", "start");
        assertThat(words.of(new ChangeNote("true", settings), skirt))
                .isEqualTo("Made true: waist across the seam “side seam” of Front and Back.");
        Map<String, String> below = Map.of("matter", "joined-line", "mate", "side seam", "end", "end");
        assertThat(words.of(new ChangeNote("true", below), skirt)).startsWith("Made true: hem across");
        Map<String, String> gone = Map.of("matter", "joined-line", "mate", "none", "end", "end");
        assertThat(words.of(new ChangeNote("true", gone), skirt)).contains("“none”, at its end");
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
