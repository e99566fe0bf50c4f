package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.ease.EaseLine;
import easewright.editor.paint.TableScene;
import easewright.geom.Point;
import easewright.pattern.Cloth;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.print.ChangeWords;
import easewright.svg.SvgFile;
import easewright.svg.disk.Fingerprint;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SessionTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openTheSkirt() throws Exception {
        session.open(OpenedSample.skirt());
        session.chooseLevel("hip");
    }

    private EaseLine hip() {
        return session.desk().shownReading().sheet().lines().stream()
                .filter(l -> l.level().name().equals("hip"))
                .findFirst()
                .orElseThrow();
    }

    private Wanted wanted() {
        return session.desk().wanted().orElseThrow();
    }

    private String kept() {
        return session.kept().map(k -> k.words(session.desk())).orElse("");
    }

    @Test
    void whatWasKeptIsSaidUntilSomethingNewIsBegun() {
        List<Runnable> begun = List.of(
                () -> session.want(wanted().withAmount(5)),
                () -> session.chooseLevel("waist"),
                session::undo,
                () -> session.setWish("hip", OptionalDouble.of(70)));
        for (Runnable next : begun) {
            session.chooseLevel("hip");
            session.want(wanted().withAmount(20));
            assertThat(kept()).isEmpty();
            session.keep();
            assertThat(kept()).isEqualTo("Kept: hip +2\u00a0cm. It stands in Changes.");
            session.setUnit(LengthUnit.INCH);
            session.point(Optional.empty());
            assertThat(kept()).isEqualTo("Kept: hip about +13/16\u00a0in. It stands in Changes.");
            session.setUnit(LengthUnit.CM);
            next.run();
            assertThat(kept()).isEmpty();
            session.leave();
            assertThat(kept()).as("it does not come back").isEmpty();
        }
    }

    @Test
    void whatWasTakenBackIsNotSaidToBeKept() {
        session.want(wanted().withAmount(20));
        session.leave();
        assertThat(kept()).isEmpty();
        session.want(wanted().withAmount(-3000));
        session.keep();
        assertThat(kept()).as("refused").isEmpty();
    }

    @Test
    void typingTheBodyGivesTheEase() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(900), "Hip girth");
        assertThat(hip().ease().orElseThrow()).isCloseTo(hip().finished() - 900, within(1e-9));
        session.setBody(hip, OptionalDouble.empty(), "Hip girth");
        assertThat(hip().ease()).isEmpty();
    }

    @Test
    void aTrialChangesWhatIsSeenAndNothingElse() {
        double before = hip().finished();
        session.want(wanted().withAmount(24));
        assertThat(hip().finished()).isCloseTo(before + 24, within(0.01));
        assertThat(session.desk().isSaved()).isTrue();
        session.leave();
        assertThat(hip().finished()).isEqualTo(before);
    }

    @Test
    void keepingIsOneStepThatCanBeUndone() {
        var pattern = session.desk().pattern();
        double before = hip().finished();
        session.want(wanted().withAmount(24));
        session.keep();
        assertThat(session.desk().trial()).isEmpty();
        assertThat(wanted().amount()).isZero();
        assertThat(hip().finished()).isCloseTo(before + 24, within(0.01));
        assertThat(new ChangeWords(session.desk().words()).of(session.desk().pattern()))
                .hasSize(1);
        assertThat(session.desk().isSaved()).isFalse();
        session.undo();
        assertThat(session.desk().pattern()).isEqualTo(pattern);
        assertThat(session.desk().isSaved()).isTrue();
        session.redo();
        assertThat(hip().finished()).isCloseTo(before + 24, within(0.01));
    }

    @Test
    void undoingWhileTryingLeavesTheTrialAndNoStepBeforeIt() {
        var opened = session.desk().pattern();
        assertThat(session.desk().canUndo()).isFalse();
        session.want(wanted().withAmount(10));
        session.keep();
        var kept = session.desk().pattern();
        session.want(wanted().withAmount(24));
        assertThat(session.desk().trial()).isPresent();
        session.undo();
        assertThat(session.desk().trial()).isEmpty();
        assertThat(wanted().amount()).isZero();
        assertThat(session.desk().pattern()).isEqualTo(kept);
        assertThat(session.desk().canUndo()).isTrue();
        session.undo();
        assertThat(session.desk().pattern()).isEqualTo(opened);
        assertThat(session.desk().canUndo()).isFalse();
        session.want(wanted().withAmount(24));
        assertThat(session.desk().canUndo()).isTrue();
    }

    @Test
    void savingMarksThePresentStateAsSaved() {
        session.want(wanted().withAmount(10));
        session.keep();
        session.placed(Path.of("/tmp/skirt-of-mine.svg"), Fingerprint.of(new byte[0]));
        assertThat(session.desk().isSaved()).isFalse();
        session.saved(session.desk().pattern());
        assertThat(session.desk().isSaved()).isTrue();
        assertThat(session.desk().file().orElseThrow().name()).isEqualTo("skirt-of-mine.svg");
    }

    @Test
    void anAmountThatCannotBeIsRefusedWithAReason() {
        session.want(wanted().withAmount(-1500));
        assertThat(session.desk().refusedTrial()).isPresent();
        assertThat(session.desk().shownTrial()).isEmpty();
        session.keep();
        assertThat(session.desk().pattern().changes()).isEmpty();
    }

    @Test
    void aHandThatPullsOnIsRefusedAsBeforeAndOneThatGoesBackIsNot() {
        session.want(wanted().withAmount(-1500));
        var first = session.desk().refusedTrial().orElseThrow().refusal();
        session.want(wanted().withAmount(-1600));
        assertThat(session.desk().refusedTrial().orElseThrow().refusal()).isSameAs(first);
        session.want(wanted().withAmount(-20));
        assertThat(session.desk().shownTrial()).isPresent();
        session.want(wanted().withAmount(-1500).withCarry(false));
        assertThat(session.desk().refusedTrial().orElseThrow().refusal()).isNotSameAs(first);
    }

    @Test
    void seamsLeftOutStayWhereTheyAre() {
        List<Hold> holds = session.desk().holds();
        EdgeRef back = holds.stream().map(Hold::edge).findFirst().orElseThrow();
        var untouched =
                session.desk().pattern().piece(back.piece()).orElseThrow().outline();
        session.want(wanted().withLeftOut(Set.of(back)).withAmount(20));
        assertThat(session.desk().shown().piece(back.piece()).orElseThrow().outline())
                .isEqualTo(untouched);
    }

    @Test
    void holdsPointAwayFromTheCloth() {
        List<Hold> holds = session.desk().holds();
        // Two side seams drawn, each sewn twice: W3 of docs/sources.md counts four side-seam edges.
        assertThat(holds).hasSize(2);
        assertThat(Hold.sewn(holds)).isEqualTo(4);
        for (Hold hold : holds) {
            var outline =
                    session.desk().pattern().piece(hold.pieceId()).orElseThrow().outline();
            assertThat(outline.contains(hold.at().minus(hold.outward().times(2))))
                    .isTrue();
            assertThat(outline.contains(hold.at().plus(hold.outward().times(2))))
                    .isFalse();
        }
    }

    @Test
    void pullingASeamByFiveGivesFiveTimesItsSewnEdges() {
        List<Hold> holds = session.desk().holds();
        Hold hold = holds.get(0);
        Point start = hold.at();
        Pulling pulling = Pulling.begin(hold, holds, wanted(), start);
        Point hand = start.plus(hold.outward().times(5)).plus(new Point(0, 3));
        assertThat(pulling.amount(hand)).isCloseTo(20, within(1e-9));
    }

    @Test
    void aPullNearTheWishGoesToTheWish() {
        Pulling pulling = new Pulling(Point.ORIGIN, new Point(1, 0), 4, 0);
        assertThat(pulling.snapped(23.4, 1, LengthUnit.CM, OptionalDouble.of(24.5)))
                .isEqualTo(24.5);
        assertThat(pulling.snapped(37.4, 1, LengthUnit.CM, OptionalDouble.of(24.5)))
                .isEqualTo(35);
        assertThat(pulling.snapped(37.4, 0.25, LengthUnit.CM, OptionalDouble.of(24.5)))
                .as("from near")
                .isEqualTo(37);
        assertThat(pulling.snapped(24.6, 1, LengthUnit.INCH, OptionalDouble.empty()))
                .isCloseTo(25.4, within(1e-9));
    }

    /** One pixel after the other, wherever the hand took hold, comes to every amount as round as the pixels allow. */
    @Test
    void aPullPassesOverNoRoundAmount() {
        Random random = new Random(20260312);
        for (int round = 0; round < 200; round++) {
            LengthUnit unit = random.nextBoolean() ? LengthUnit.CM : LengthUnit.INCH;
            int sewn = 1 + random.nextInt(4);
            double scale = 0.3 + 3 * random.nextDouble();
            double from = 400 * random.nextDouble();
            Pulling pulling = new Pulling(new Point(from, 0), new Point(1, 0), sewn, 0);
            Set<Long> come = new HashSet<>();
            double step = unit == LengthUnit.CM ? 10 : 25.4 / 2;
            for (int pixel = 0; pixel * sewn / scale < 100 + 2 * step; pixel++) {
                double amount = pulling.amount(new Point(from + pixel / scale, 0));
                double snapped = pulling.snapped(amount, 1 / scale, unit, OptionalDouble.empty());
                assertThat(snapped).isCloseTo(amount, within(Math.max(step, 2 * sewn / scale)));
                if (Math.abs(snapped / step - Math.rint(snapped / step)) < 1e-9) {
                    come.add(Math.round(snapped / step));
                }
            }
            if (sewn / scale <= step) {
                assertThat(come).as("%s %s x %s", unit, sewn, scale).contains(0L, 1L, 2L, 3L, 4L, 5L, 6L, 7L);
            }
        }
    }

    @Test
    void theWishSaysWhatIsMissing() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(Math.rint(hip().finished()) - 30), "Hip girth");
        session.setWish("hip", OptionalDouble.of(50));
        double missing = hip().missing().orElseThrow();
        session.want(wanted().withAmount(missing));
        EaseRow row = EaseWords.row(hip(), session.desk().words(), true, Optional.empty(), new EaseFoot());
        assertThat(row.standing()).isEqualTo(EaseRow.Standing.MET);
        session.setWish("hip", OptionalDouble.empty());
        assertThat(hip().wish()).isEmpty();
    }

    @Test
    void ringsShowTheGapToScale() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(900), "Hip girth");
        Rings.Ring ring = Rings.of(session.desk().reading(), session.desk().words()).rings().stream()
                .filter(r -> r.level().equals("hip"))
                .findFirst()
                .orElseThrow();
        assertThat(ring.gap()).isCloseTo((hip().finished() - 900) / (2 * Math.PI), within(1e-9));
        assertThat(ring.words()).contains("90");
    }

    /** A number, its fraction and its unit never stand on different lines. */
    @Test
    void lengthsInTheRingsAreNotBroken() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setUnit(LengthUnit.INCH);
        session.setBody(hip, OptionalDouble.of(34.5 * 25.4), "Hip girth");
        assertThat(Rings.of(session.desk().reading(), session.desk().words()).rings())
                .filteredOn(r -> r.level().equals("hip"))
                .singleElement()
                .satisfies(r -> assertThat(r.words())
                        .contains("body 34\u00a01/2\u00a0in")
                        .doesNotContainPattern("\\d (\\d|in)"));
    }

    /** What a cloth is stretched by is told of the girth, as it is measured, not of the radius: 3 cm of 105. */
    @Test
    void aGarmentSmallerThanTheBodyIsStretchedByWhatItLacks() {
        Level hip = session.desk().pattern().level("hip").orElseThrow();
        session.setBody(hip, OptionalDouble.of(hip().finished() + 30), "Hip girth");
        assertThat(Rings.of(session.desk().reading(), session.desk().words()).rings())
                .as("a woven")
                .filteredOn(r -> r.level().equals("hip"))
                .singleElement()
                .satisfies(r -> assertThat(r.words()).contains("3\u00a0cm smaller", "not known to stretch"));
        session.setCloth(Cloth.knit(40));
        assertThat(Rings.of(session.desk().reading(), session.desk().words()).rings())
                .filteredOn(r -> r.level().equals("hip"))
                .singleElement()
                .satisfies(
                        r -> assertThat(r.words()).contains("3\u00a0cm smaller").endsWith("stretched by 2.9\u00a0%."));
    }

    @Test
    void everyWordOfTheWindowIsInTheBundle() {
        session.want(wanted().withAmount(12));
        assertThat(HereWords.outcome(session.desk())).doesNotContain("editor.").doesNotContain("{");
        session.keep();
        assertThat(new ChangeWords(session.desk().words()).of(session.desk().pattern()))
                .allSatisfy(line -> assertThat(line).doesNotContain("change.").doesNotContain("{"));
        for (EaseLine line : session.desk().reading().sheet().lines()) {
            EaseRow row = EaseWords.row(line, session.desk().words(), true, Optional.empty(), new EaseFoot());
            assertThat(row.verdict() + row.percent() + row.classes() + row.minimums())
                    .doesNotContain("editor.")
                    .doesNotContain("{");
        }
    }

    @Test
    void aSizeUpChangesWhatTheLocalChangeLeavesAlone() {
        assertThat(SizeWords.of(session.desk()).lines()).isEmpty();
        session.want(wanted().withAmount(40));
        List<SizeWords.Line> lines = SizeWords.of(session.desk()).lines();
        SizeWords.Line waist = lines.stream()
                .filter(l -> l.name().contains("waist"))
                .findFirst()
                .orElseThrow();
        assertThat(waist.here().same()).isTrue();
        assertThat(waist.size().same()).isFalse();
        assertThat(lines).allSatisfy(l -> assertThat(l.name()).doesNotContain("editor."));
    }

    /** Of several changes none is left out: the person chooses the level, and what was asked for is no drift anywhere. */
    @Test
    void aSizeUpIsComparedAtTheLevelThatIsChosen() {
        session.setUnit(LengthUnit.INCH);
        session.want(wanted().withAmount(48));
        session.keep();
        session.chooseLevel("waist");
        session.want(wanted().withAmount(12));
        session.keep();
        SizeWords atWork = SizeWords.of(session.desk());
        assertThat(atWork.levels()).containsExactly("waist", "hip");
        assertThat(atWork.level()).contains("waist");
        SizeWords hip = SizeWords.of(session.desk(), Optional.of("hip"));
        assertThat(hip.intro()).contains("to a hip girth of");
        for (SizeWords shown : List.of(atWork, hip)) {
            assertThat(shown.lines())
                    .filteredOn(SizeWords.Line::asked)
                    .extracting(SizeWords.Line::name)
                    .containsExactly("waist girth", "hip girth");
            assertThat(shown.lines())
                    .as("in inches all end at the right")
                    .allMatch(l -> l.here().words().matches(".*\\w")
                            && l.size().words().matches(".*\\w"));
        }
        session.want(Wanted.at("knee", LevelKind.OTHER));
        assertThat(SizeWords.of(session.desk()).level()).as("changed most").contains("hip");
        assertThat(SizeWords.of(session.desk(), Optional.of("knee")).level())
                .as("not changed")
                .contains("hip");
    }

    /** The two ways are told as what they are: larger or smaller, and nothing where no girth was asked for. */
    @Test
    void theOtherSizeIsLargerOrSmallerAsTheChangeIs() {
        session.want(wanted().withAmount(40));
        SizeWords wider = SizeWords.of(session.desk());
        assertThat(wider.larger()).isTrue();
        assertThat(wider.other()).isEqualTo("Size up");
        assertThat(wider.lines()).allMatch(l -> l.said().contains(" Size up: "));
        assertThat(wider.intro()).contains("larger").doesNotContain("smaller", "\u2212");
        session.want(wanted().withAmount(-20));
        SizeWords tighter = SizeWords.of(session.desk());
        assertThat(tighter.larger()).isFalse();
        assertThat(tighter.other()).isEqualTo("Size down");
        assertThat(tighter.intro()).contains("smaller").doesNotContain("larger", "\u2212");
        assertThat(tighter.lines()).hasSameSizeAs(wider.lines());
    }

    /** What stands on the pieces adds up to what stands in the sheet. */
    @Test
    void theWidthsOnThePiecesSayHowOftenTheyCount() {
        TableScene scene = new TableScenes().of(session.desk());
        double hip = 0;
        for (TableScene.PieceSight piece : scene.pieces()) {
            for (TableScene.LevelSight level : piece.levels()) {
                Matcher label = java.util.regex.Pattern.compile("hip (\\d+) \u00d7 ([\\d.]+)\u00a0cm")
                        .matcher(level.label());
                hip += label.matches() ? Integer.parseInt(label.group(1)) * Double.parseDouble(label.group(2)) : 0;
            }
        }
        double girth =
                session.desk().reading().measures().girth("hip").orElseThrow().finished();
        assertThat(hip * 10).isCloseTo(girth, within(0.5));
    }

    /** What was opened may know nothing of the level yet: it is marked first, and then changed. */
    @Test
    void aSizeUpIsComparedWithTheMarksThatWereMadeFirst() {
        Pattern pattern = session.desk().pattern();
        List<Level> levels = new ArrayList<>(pattern.levels());
        levels.add(Level.of("low hip", LevelKind.HIP));
        Pattern marked = pattern.withLevels(levels);
        for (Piece piece : pattern.pieces()) {
            Optional<Point> hip = piece.level("hip").flatMap(LevelMark::through);
            if (hip.isPresent()) {
                List<LevelMark> marks = new ArrayList<>(piece.levels());
                marks.add(LevelMark.through("low hip", hip.get().plus(new Point(0, 30))));
                marked = marked.withPiece(piece.withLevels(marks));
            }
        }
        session.edit(marked);
        session.chooseLevel("low hip");
        session.want(wanted().withAmount(20));
        session.keep();
        assertThat(SizeWords.of(session.desk()).lines()).isNotEmpty();
    }

    /** A wrist lies at the corner of underarm seam and hem; the seams are what can be pulled there. */
    @Test
    void aLevelAtTheEndOfASeamStillTakesTheSeam() throws Exception {
        Sample bodice = Sample.all().get(1);
        session.open(Opened.of(new OpenFile(bodice.read(), Optional.empty(), bodice.fileName())));
        session.chooseLevel("wrist");
        assertThat(session.desk().holds()).hasSize(2);
    }

    private static Opened page(String width) throws Exception {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='" + width
                + "' viewBox='0 0 800 600'><path d='M100,100 H300 V400 H100 Z'/></svg>";
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "page.svg");
        return Opened.of(new OpenFile(file, Optional.empty(), "page.svg"));
    }

    /** A file is shown in the unit of its page until a unit is chosen; pixels say nothing. */
    @Test
    void theUnitIsThatOfTheFileUntilOneIsChosen() throws Exception {
        session.open(page("24in"));
        assertThat(session.desk().unit()).as("chosen from the start").isEqualTo(LengthUnit.CM);
        session.takeUnitsFromFiles();
        session.open(page("24in"));
        assertThat(session.desk().unit()).isEqualTo(LengthUnit.INCH);
        session.open(page("800px"));
        assertThat(session.desk().unit()).isEqualTo(LengthUnit.INCH);
        session.open(page("600mm"));
        assertThat(session.desk().unit()).isEqualTo(LengthUnit.CM);
        session.setUnit(LengthUnit.CM);
        session.open(page("24in"));
        assertThat(session.desk().unit()).as("now chosen").isEqualTo(LengthUnit.CM);
    }
}
