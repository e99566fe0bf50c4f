package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.check.Checks;
import easewright.ease.EaseTables;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.LevelSeams;
import easewright.measure.Measures;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.suggest.Sheet;
import easewright.suggest.Suggestions;
import easewright.suggest.WaistedDress;
import easewright.svg.ReadOptions;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Levels laid on pieces, and made to meet at the seams. */
class LevelEditsTest {
    @Test
    void theHipLiesBelowTheWaistOnTheSkirtAndTheBustAboveItOnTheBodice() throws Exception {
        Bare bare = Bare.of(WaistedDress.SVG);
        bare.marker.suggesting().accept();
        Pattern added = LevelEdits.add(bare.session.desk().pattern(), "bust", LevelKind.BUST);
        assertThat(added.levels()).extracting(Level::name).containsExactly("bust", "waist", "hip");
        assertThat(LevelOrder.isAbove(added, "bust", "waist")).isTrue();
        assertThat(LevelOrder.isAbove(added, "hip", "waist")).isFalse();
        Pattern placed = LevelEdits.below(LevelEdits.below(added, "hip", "waist", 200), "bust", "waist", -170);
        assertThat(having(placed, "hip")).containsExactlyInAnyOrder("Skirt front", "Skirt back");
        assertThat(having(placed, "bust")).containsExactlyInAnyOrder("Bodice front", "Bodice back");
        // The waist meets the fold at 610 on the skirt and at 474 on the bodice.
        assertThat(placed.piece("Skirt front")
                        .flatMap(p -> p.level("hip"))
                        .flatMap(m -> m.through())
                        .orElseThrow()
                        .y())
                .isCloseTo(810, within(1e-9));
        assertThat(placed.piece("Bodice front")
                        .flatMap(p -> p.level("bust"))
                        .flatMap(m -> m.through())
                        .orElseThrow()
                        .y())
                .isCloseTo(304, within(1e-9));
        bare.session.edit(placed);
        LevelsView.Place bust = LevelsView.of(bare.session.desk()).levels().stream()
                .filter(row -> row.name().equals("bust"))
                .findFirst()
                .orElseThrow()
                .places()
                .get(0);
        assertThat(bust.above()).isTrue();
        assertThat(bust.distance()).isEqualTo("17\u00a0cm");
        assertThat(bust.how()).isEqualTo("above waist, at the centre");
    }

    /** Trousers whose waist is level in front and rises by half an inch to the centre at the back. */
    static Pattern slanted() throws Exception {
        Bare bare =
                Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='back' d='M400,87.3 L600,100 C610,180 606,230 605,300 L600,500 H400 Z'/>"
                        + "<path id='front' d='M100,100 H250 C256,180 254,230 253,300 L250,500 H100 Z'/></svg>");
        for (String piece : List.of("back", "front")) {
            Piece drawn = bare.piece(piece);
            for (Segment line : drawn.outline().segments()) {
                boolean within = line.start().y() == 300;
                if (!within) {
                    bare.session.edit(EdgeEdits.split(bare.session.desk().pattern(), piece, line.start()));
                }
            }
        }
        Pattern split = bare.session.desk().pattern();
        Pattern sewn = MateEdits.sew(
                split, EdgeRef.of("front", side(split, "front", 250)), EdgeRef.of("back", side(split, "back", 600)));
        Pattern waist = LevelEdits.add(LevelEdits.add(sewn, "waist", LevelKind.WAIST), "hip", LevelKind.HIP);
        Pattern front = LevelEdits.along(waist, "front", "waist", Bare.top(waist, "front", 175));
        return LevelEdits.along(front, "back", "waist", Bare.top(front, "back", 500));
    }

    /** A facing that does not count at a level would else be in the girth twice as soon as the level is laid otherwise. */
    @Test
    void aLevelLaidOtherwiseCountsAsItDid() throws Exception {
        Pattern slanted = slanted();
        String top = Bare.top(slanted, "front", 175);
        Pattern off = LevelEdits.counts(slanted, "front", "waist", false);
        Pattern straight = LevelEdits.place(off, "front", "waist", new Point(180, 110));
        LevelMark mark = mark(straight, "waist");
        assertThat(mark.through()).isPresent();
        assertThat(mark.counts()).isFalse();
        assertThat(mark(LevelEdits.along(straight, "front", "waist", top), "waist")
                        .counts())
                .isFalse();
        Pattern overlap =
                Overlaps.say(LevelEdits.place(slanted, "front", "hip", new Point(180, 250)), "front", "hip", 15);
        assertThat(mark(LevelEdits.along(overlap, "front", "hip", top), "hip").overlap())
                .isEqualTo(15);
        Pattern below = LevelEdits.below(LevelEdits.counts(overlap, "front", "hip", false), "hip", "waist", 100);
        assertThat(mark(below, "hip").counts()).isFalse();
        assertThat(mark(below, "hip").overlap()).isEqualTo(15);
    }

    private static LevelMark mark(Pattern pattern, String level) {
        return pattern.piece("front").orElseThrow().level(level).orElseThrow();
    }

    private static String side(Pattern pattern, String piece, double x) {
        return EdgeEdits.at(pattern.piece(piece).orElseThrow(), new Point(x + 2, 400))
                .orElseThrow()
                .name();
    }

    static double height(Pattern pattern, String piece) {
        return pattern.piece(piece)
                .orElseThrow()
                .level("hip")
                .orElseThrow()
                .through()
                .orElseThrow()
                .y();
    }

    /** The suggestion speaks of the side and the page of the centre: the page tells both. */
    @Test
    void aSuggestedHipLiesAsFarBelowTheWaistAtTheSideAsWasSaid() throws Exception {
        SvgFile file = SvgFile.read(
                Files.readAllBytes(Path.of("src/test/resources/bare/skirt-words-above.svg")),
                "skirt.svg",
                ReadOptions.AS_FILED.withScale(25.4 / 72));
        Pattern marked = Suggestions.of(new Sheet(file.pattern(), file.loose(file.pattern()), file.texts()), Set.of())
                .outcome();
        Piece on = LevelEdits.measuredOn(marked, "hip", "waist").orElseThrow();
        assertThat(LevelEdits.atSide(on, "hip", "waist").orElseThrow()).isCloseTo(200, within(0.01));
        assertThat(LevelEdits.below(marked, "hip", "waist").orElseThrow()).isCloseTo(188, within(0.1));
        assertThat(LevelEdits.atSide(on, "waist", "hip")).isEmpty();
        // Of a figure that is not the one suggested it is said where it was measured.
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(file, Optional.empty(), "skirt.svg")));
        session.edit(marked);
        LevelsView.Row hip = LevelsView.of(session.desk()).levels().stream()
                .filter(row -> row.name().equals("hip"))
                .findFirst()
                .orElseThrow();
        assertThat(hip.places()).allSatisfy(p -> assertThat(p.how()).isEqualTo("below waist, at the centre"));
    }

    /** Shaped alike on all pieces, too, the one figure is that at the centre and the other that at the side. */
    @Test
    void atTheSidesAShapedWaistIsFartherFromTheHip() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        Pattern skirt = session.desk().pattern();
        Piece front = skirt.piece("Front").orElseThrow();
        Pattern alone = skirt.withPieces(List.of(front)).withMates(List.of());
        assertThat(LevelEdits.atSides(alone, "hip", "waist").orElseThrow())
                .isGreaterThan(LevelEdits.below(alone, "hip", "waist").orElseThrow() + 5);
        assertThat(LevelEdits.atSides(slanted(), "hip", "waist")).isEmpty();
    }

    @Test
    void aLevelLaidBelowASlantedWaistMeetsAtTheSeam() throws Exception {
        Pattern placed = LevelEdits.below(slanted(), "hip", "waist", 127);
        assertThat(height(placed, "front")).isCloseTo(227, within(1e-9));
        assertThat(height(placed, "back"))
                .as("from the corner at the seam, not from the raised centre")
                .isCloseTo(227, within(1e-9));
        assertThat(LevelEdits.below(placed, "hip", "waist").orElseThrow())
                .as("what was typed, although it lies at unequal distances")
                .isCloseTo(127, within(1e-9));
        assertThat(LevelEdits.measuredOn(placed, "hip", "waist").map(Piece::name))
                .as("the piece that the others follow")
                .isEqualTo(placed.piece("front").map(Piece::name));
        assertThat(LevelEdits.below(LevelEdits.distance(placed, "back", "hip", 100), "hip", "waist"))
                .isEmpty();
        assertThat(LevelMeetings.meetings(placed, Measures.of(placed), "hip"))
                .singleElement()
                .satisfies(m -> assertThat(m.isApart()).isFalse());
    }

    @Test
    void aLevelThatMissesItselfAtASeamIsMadeToMeet() throws Exception {
        Random random = new Random(20260601);
        Pattern pattern = slanted();
        for (int round = 0; round < 40; round++) {
            double front = 130 + 340 * random.nextDouble();
            Pattern placed = LevelEdits.place(pattern, "front", "hip", new Point(180, front));
            placed = LevelEdits.place(placed, "back", "hip", new Point(500, 130 + 340 * random.nextDouble()));
            var before =
                    LevelMeetings.meetings(placed, Measures.of(placed), "hip").get(0);
            Pattern met = LevelMeetings.meet(placed, "hip");
            var after = LevelMeetings.meetings(met, Measures.of(met), "hip").get(0);
            double least = Math.min(Math.abs(before.off()), 1e-3);
            assertThat(Math.abs(after.off()))
                    .as("front at %s, was %s off", front, before.off())
                    .isLessThanOrEqualTo(Math.abs(before.off()) <= 1.5 ? 1.5 : 0.05 + least);
            double off = Math.abs(before.off());
            long told = Checks.of(placed, Measures.of(placed), EaseTables.standard()).stream()
                    .filter(f -> f.code().equals("levels-apart"))
                    .count();
            assertThat(told).as("%s off", off).isEqualTo(off > 3 ? 1 : 0);
            assertThat(Checks.of(met, Measures.of(met), EaseTables.standard()))
                    .noneMatch(f -> f.code().startsWith("levels-apart"));
        }
    }

    private static List<String> having(Pattern pattern, String level) {
        return pattern.pieces().stream()
                .filter(p -> p.level(level).isPresent())
                .map(Piece::name)
                .toList();
    }

    @Test
    void aLevelIsPutBelowAnotherOnAllItsPieces() throws Exception {
        Pattern pattern = LevelEdits.remove(Bare.marked(), "hip");
        assertThat(pattern.level("hip")).isEmpty();
        Pattern added = LevelEdits.add(pattern, "hip", LevelKind.HIP);
        assertThatThrownBy(() -> LevelEdits.add(added, "hip", LevelKind.HIP)).hasMessageStartingWith("name-taken ");
        Pattern placed = LevelEdits.below(added, "hip", "waist", 200);
        for (String name : List.of("Front", "Back")) {
            Piece piece = placed.piece(name).orElseThrow();
            // The waist dips by a centimetre to the centre back (SkirtDraft): the lines meet at the side seam all the
            // same.
            double below = name.equals("Front") ? 200 : 190;
            assertThat(LevelEdits.distance(piece, "hip").orElseThrow()).isCloseTo(below, within(1e-9));
            assertThat(Measures.width(piece, placed.level("hip").orElseThrow())).isPresent();
        }
        assertThat(LevelMeetings.meetings(placed, Measures.of(placed), "hip"))
                .singleElement()
                .satisfies(m -> assertThat(m.off()).isCloseTo(0, within(0.05)));
        assertThat(placed.piece("Waistband").orElseThrow().level("hip")).isEmpty();
        assertThatThrownBy(() -> LevelEdits.below(added, "hip", "waist", 5000))
                .hasMessageStartingWith("level-reaches-no-piece ");
        Piece front = placed.piece("Front").orElseThrow();
        Pattern moved = LevelEdits.distance(placed, front.id(), "hip", 187.5);
        assertThat(LevelEdits.distance(moved.piece("Front").orElseThrow(), "hip")
                        .orElseThrow())
                .isCloseTo(187.5, within(1e-9));
        Pattern uncounted = LevelEdits.counts(moved, front.id(), "hip", false);
        assertThat(Measures.of(uncounted).girth("hip").orElseThrow().parts()).hasSize(1);
        assertThat(LevelEdits.takeOff(moved, front.id(), "hip")
                        .piece("Front")
                        .orElseThrow()
                        .level("hip"))
                .isEmpty();
    }

    @Test
    void aLevelClickedAtTheOutlineRunsThroughTheCloth() throws Exception {
        Pattern pattern = LevelEdits.add(Bare.unmarked(), "hip", LevelKind.HIP);
        Pattern placed = LevelEdits.place(pattern, "front", "hip", new Point(300, 250));
        Piece front = placed.piece("front").orElseThrow();
        assertThat(Measures.width(front, placed.level("hip").orElseThrow())
                        .orElseThrow()
                        .net())
                .isCloseTo(200, within(1e-6));
    }

    /** Trousers whose inseam lies lower on the front than on the back, its side not. */
    private static Pattern legs(double front, double back) throws Exception {
        Bare bare =
                Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='back' d='M600,100 L605,300 L600,500 L420,492 L400,192 Z'/>"
                        + "<path id='front' d='M100,100 L95,300 L100,500 L280,500 L300,200 Z'/></svg>");
        for (String piece : List.of("back", "front")) {
            for (Segment line : bare.piece(piece).outline().segments()) {
                if (line.start().y() != 300) {
                    bare.session.edit(EdgeEdits.split(bare.session.desk().pattern(), piece, line.start()));
                }
            }
        }
        Pattern sewn = bare.session.desk().pattern();
        for (double[] at : new double[][] {{97, 602}, {290, 410}}) {
            sewn = MateEdits.sew(
                    sewn,
                    EdgeRef.of("front", edge(sewn, "front", at[0])),
                    EdgeRef.of("back", edge(sewn, "back", at[1])));
        }
        Pattern added = LevelEdits.add(sewn, "thigh", LevelKind.THIGH);
        Pattern placed = LevelEdits.place(added, "front", "thigh", new Point(200, front));
        return LevelEdits.place(placed, "back", "thigh", new Point(500, back));
    }

    private static String edge(Pattern pattern, String piece, double x) {
        return EdgeEdits.at(pattern.piece(piece).orElseThrow(), new Point(x, 400))
                .orElseThrow()
                .name();
    }

    @Test
    void whatStraightLinesCannotMeetIsNotOfferedToMeet() throws Exception {
        Pattern apart = legs(300, 330);
        Pattern met = LevelMeetings.better(apart, "thigh", Set.of()).orElseThrow();
        assertThat(LevelMeetings.meetings(met, Measures.of(met), "thigh"))
                .extracting(LevelSeams.Meeting::meets)
                .containsExactlyInAnyOrder(true, false);
        for (Set<String> kept : List.of(Set.<String>of(), Set.of("front"), Set.of("back"))) {
            assertThat(LevelMeetings.better(met, "thigh", kept)).isEmpty();
        }
        assertThat(LevelMeetings.better(apart, "thigh", Set.of("front", "back")))
                .as("nothing would move if both were kept")
                .isPresent();
        assertThat(row(apart).meetable()).isTrue();
        assertThat(row(met).meetable()).isFalse();
        assertThat(row(met).misses()).startsWith("The lines meet at ").endsWith("straight lines cannot meet at both.");
        assertThat(Checks.of(met, Measures.of(met), EaseTables.standard()))
                .filteredOn(f -> f.code().startsWith("levels-apart"))
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo("levels-apart-straight"));
    }

    private static LevelsView.Row row(Pattern pattern) throws Exception {
        Bare bare = Bare.twoPieces();
        bare.session.edit(pattern);
        return LevelsView.of(bare.session.desk()).levels().get(0);
    }
}
