package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.check.Checks;
import easewright.ease.EaseTables;
import easewright.editor.model.Notes;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LineKind;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.suggest.WaistedDress;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Marks on pieces, levels and seams. */
class MarkEditsTest {
    private static Pattern marked() throws SvgProblem {
        Bare bare = Bare.skirt();
        bare.marker.suggesting().accept();
        return bare.session.desk().pattern();
    }

    private static Pattern bare() throws SvgProblem {
        return Bare.twoPieces().session.desk().pattern();
    }

    @Test
    void aPieceIsNamedAndCounted() throws Exception {
        Pattern pattern = PieceEdits.rename(bare(), "front", " Skirt front ");
        assertThat(pattern.piece("front").orElseThrow().name()).isEqualTo("Skirt front");
        assertThatThrownBy(() -> PieceEdits.rename(pattern, "back", "Skirt front"))
                .hasMessageStartingWith("name-taken ");
        assertThatThrownBy(() -> PieceEdits.rename(pattern, "back", "")).hasMessageStartingWith("name-empty ");
        Piece cut = PieceEdits.cut(pattern, "front", " 2 ", true).piece("front").orElseThrow();
        assertThat(cut.times()).isEqualTo(2);
        assertThat(cut.onFold()).isTrue();
        for (String wrong : List.of("two", "0", "-1", "1.5", "", "100")) {
            assertThatThrownBy(() -> PieceEdits.cut(pattern, "front", wrong, false))
                    .hasMessageStartingWith("count-wrong ");
        }
        Piece line = PieceEdits.line(pattern, "front", LineKind.CUTTING, OptionalDouble.of(10))
                .piece("front")
                .orElseThrow();
        assertThat(line.drawn()).isEqualTo(LineKind.CUTTING);
        assertThat(line.allowance()).isEqualTo(10);
    }

    @Test
    void aPieceThatComesOnTheFoldHasItsCentreLineThere() throws Exception {
        Pattern pattern = marked();
        Piece back = pattern.piece("Back").orElseThrow();
        String centre = back.edges().stream()
                .filter(e -> e.role() == EdgeRole.CENTRE)
                .findFirst()
                .orElseThrow()
                .name();
        Pattern folded = PieceEdits.cut(pattern, back.id(), "1", true);
        assertThat(folded.piece("Back").flatMap(p -> p.edge(centre)).map(Edge::role))
                .contains(EdgeRole.FOLD);
        assertThat(PieceEdits.cut(folded, back.id(), "2", true).piece("Back").flatMap(p -> p.edge(centre)))
                .as("only the number changes")
                .map(Edge::role)
                .contains(EdgeRole.FOLD);
        assertThat(PieceEdits.cut(folded, back.id(), String.valueOf(back.times()), false))
                .isEqualTo(pattern);
    }

    @Test
    void seamsThatNamedAPieceByNameStillMeanIt() throws Exception {
        Pattern pattern = marked();
        Piece front = pattern.piece("Front").orElseThrow();
        Pattern byName = pattern.withMates(
                List.of(new Mate("m", List.of(EdgeRef.of("Front", "side")), List.of(EdgeRef.of("Back", "side")), 0)));
        Pattern renamed = PieceEdits.rename(byName, front.id(), "Vorn");
        assertThat(Measures.of(renamed).mate("m")).isPresent();
    }

    @Test
    void leavingAPieceOutTakesItsSeamsAway() throws Exception {
        Pattern pattern = marked();
        Piece front = pattern.piece("Front").orElseThrow();
        Pattern without = PieceEdits.leaveOut(pattern, front.id());
        assertThat(without.pieces()).hasSize(2);
        assertThat(without.mates()).noneMatch(m -> m.name().equals("side seam"));
        Pattern changed = pattern.withChange(new ChangeNote("seam", Map.of()));
        assertThatThrownBy(() -> PieceEdits.leaveOut(changed, front.id())).hasMessageStartingWith("piece-in-changes ");
    }

    @Test
    void whatWasLeftOutCanBecomeAPieceAgain() throws Exception {
        Bare bare = Bare.twoPieces();
        Pattern both = bare.session.desk().pattern();
        assertThat(LoosePieces.on(bare.marker.sheet())).isEmpty();
        bare.marker.tryTo(p -> PieceEdits.leaveOut(p, "back"));
        assertThat(LoosePieces.on(bare.marker.sheet())).extracting(Piece::id).containsExactly("back");
        bare.session.edit(LoosePieces.with(
                bare.marker.sheet(), LoosePieces.on(bare.marker.sheet()).get(0)));
        assertThat(bare.session.desk().pattern()).isEqualTo(both);
    }

    /** Closing a line that was left open is one step, takes along what lies inside, and changes what the notes say. */
    @Test
    void aLineLeftOpenIsClosedWhenTheUserSaysSo() throws Exception {
        Bare bare =
                Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='front' d='M100,100 H300 V400 H100 V130'/><path id='grain' d='M200 150V350'/>"
                        + "<path id='back' d='M400,100 H600 V400 H400 Z'/></svg>");
        Pattern before = bare.session.desk().pattern();
        assertThat(notes(bare)).anyMatch(n -> n.open().equals(Optional.of("front")) && n.severity() == Severity.FAULT);
        List<OpenPieces.Open> open = OpenPieces.on(bare.session.desk(), bare.marker.sheet());
        assertThat(open).hasSize(1);
        assertThat(open.get(0).gap().length()).isCloseTo(30, within(1e-9));
        assertThat(open.get(0).pointed().around().orElseThrow().contains(new Point(100, 115)))
                .isTrue();
        bare.session.edit(LoosePieces.with(bare.marker.sheet(), open.get(0).closed()));
        Piece front = bare.piece("front");
        assertThat(front.riders()).extracting(Rider::id).containsExactly("grain");
        assertThat(OpenPieces.on(bare.session.desk(), bare.marker.sheet())).isEmpty();
        assertThat(notes(bare))
                .noneMatch(n -> n.open().isPresent())
                .anyMatch(n -> n.words().contains("closed it by a straight line"));
        SvgFile saved = SvgFile.read(bare.svg.write(bare.session.desk().pattern()), "saved.svg");
        assertThat(saved.pattern().piece("front").orElseThrow().outline()).isEqualTo(front.outline());
        bare.session.undo();
        assertThat(bare.session.desk().pattern()).isEqualTo(before);
        assertThat(OpenPieces.on(bare.session.desk(), bare.marker.sheet())).hasSize(1);
    }

    private static List<Notes.Note> notes(Bare bare) {
        return Notes.of(bare.session.desk());
    }

    @Test
    void dartsNotchesAndGrain() throws Exception {
        Pattern pattern = EdgeEdits.split(bare(), "front", new Point(100, 100));
        Pattern dart = PieceEdits.dart(pattern, "front", new Point(190, 101), new Point(210, 99), new Point(200, 200));
        Piece front = dart.piece("front").orElseThrow();
        assertThat(front.darts().get(0).intake()).isCloseTo(20, within(1e-9));
        assertThat(front.darts().get(0).edge()).contains("edge 1");
        assertThatThrownBy(() -> PieceEdits.dart(
                        pattern, "front", new Point(190, 100), new Point(191, 100), new Point(200, 200)))
                .hasMessageStartingWith("dart-too-small ");
        Pattern notch = PieceEdits.notch(dart, "front", new Point(303, 250));
        assertThat(notch.piece("front").orElseThrow().notches().get(0).at()).isEqualTo(new Point(300, 250));
        Pattern named = PieceEdits.renameNotch(notch, "front", 0, "hip");
        assertThat(named.piece("front").orElseThrow().notches().get(0).name()).isEqualTo("hip");
        assertThat(PieceEdits.removeNotch(named, "front", 0)).isEqualTo(dart);
        assertThat(PieceEdits.removeDart(dart, "front", front.darts().get(0).name()))
                .isEqualTo(pattern);
        Pattern grain = PieceEdits.grain(pattern, "front", new Point(150, 150), new Point(160, 350));
        assertThat(grain.piece("front").orElseThrow().grain()).isPresent();
        assertThat(PieceEdits.noGrain(grain, "front")).isEqualTo(pattern);
        assertThatThrownBy(() -> PieceEdits.grain(pattern, "front", new Point(1, 1), new Point(1.2, 1)))
                .hasMessageStartingWith("grain-too-short ");
    }

    @Test
    void theHipLiesBelowTheWaistOnTheSkirtAndTheBustAboveItOnTheBodice() throws Exception {
        Bare bare = Bare.of(WaistedDress.SVG);
        bare.marker.suggesting().accept();
        Pattern added = LevelEdits.add(
                LevelEdits.add(bare.session.desk().pattern(), "hip", LevelKind.HIP), "bust", LevelKind.BUST);
        assertThat(added.levels()).extracting(Level::name).containsExactly("bust", "waist", "hip");
        assertThat(LevelEdits.isAbove(added, "bust", "waist")).isTrue();
        assertThat(LevelEdits.isAbove(added, "hip", "waist")).isFalse();
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
        assertThat(bust.how()).isEqualTo("above waist");
    }

    /** Trousers whose waist is level in front and rises by half an inch to the centre at the back. */
    private static Pattern slanted() throws Exception {
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
        Pattern front = LevelEdits.along(waist, "front", "waist", top(waist, "front", 175));
        return LevelEdits.along(front, "back", "waist", top(front, "back", 500));
    }

    private static String side(Pattern pattern, String piece, double x) {
        return EdgeEdits.at(pattern.piece(piece).orElseThrow(), new Point(x + 2, 400))
                .orElseThrow()
                .name();
    }

    private static String top(Pattern pattern, String piece, double x) {
        return EdgeEdits.at(pattern.piece(piece).orElseThrow(), new Point(x, 94))
                .orElseThrow()
                .name();
    }

    private static double height(Pattern pattern, String piece) {
        return pattern.piece(piece)
                .orElseThrow()
                .level("hip")
                .orElseThrow()
                .through()
                .orElseThrow()
                .y();
    }

    @Test
    void aLevelLaidBelowASlantedWaistMeetsAtTheSeam() throws Exception {
        Pattern placed = LevelEdits.below(slanted(), "hip", "waist", 127);
        assertThat(height(placed, "front")).isCloseTo(227, within(1e-9));
        assertThat(height(placed, "back"))
                .as("from the corner at the seam, not from the raised centre")
                .isCloseTo(227, within(1e-9));
        assertThat(LevelEdits.meetings(placed, Measures.of(placed), "hip"))
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
            var before = LevelEdits.meetings(placed, Measures.of(placed), "hip").get(0);
            Pattern met = LevelEdits.meet(placed, "hip");
            var after = LevelEdits.meetings(met, Measures.of(met), "hip").get(0);
            double least = Math.min(Math.abs(before.off()), 1e-3);
            assertThat(Math.abs(after.off()))
                    .as("front at %s, was %s off", front, before.off())
                    .isLessThanOrEqualTo(Math.abs(before.off()) <= 1.5 ? 1.5 : 0.05 + least);
            double off = Math.abs(before.off());
            long told = Checks.of(placed, Measures.of(placed), EaseTables.standard()).stream()
                    .filter(f -> f.code().equals("levels-apart"))
                    .count();
            assertThat(told).as("%s off", off).isEqualTo(off > 3 ? 1 : 0);
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
        Pattern pattern = LevelEdits.remove(marked(), "hip");
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
        assertThat(LevelEdits.meetings(placed, Measures.of(placed), "hip"))
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
        Pattern pattern = LevelEdits.add(bare(), "hip", LevelKind.HIP);
        Pattern placed = LevelEdits.place(pattern, "front", "hip", new Point(300, 250));
        Piece front = placed.piece("front").orElseThrow();
        assertThat(Measures.width(front, placed.level("hip").orElseThrow())
                        .orElseThrow()
                        .net())
                .isCloseTo(200, within(1e-6));
    }

    /** Half a neck in front and half at the back, and a band that is cut whole and a little shorter. */
    @Test
    void halvesSewnToAWholePieceCountForBothHalves() throws Exception {
        Bare bare =
                Bare.of("<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='600mm' viewBox='0 0 800 600'>"
                        + "<path id='front' d='M100,100 H232 V400 H100 Z'/><path id='back' d='M400,100 H486 V400 H400 Z'/>"
                        + "<path id='band' d='M100,500 H484 V540 H100 Z'/></svg>");
        for (String piece : List.of("front", "back", "band")) {
            for (Segment line : bare.piece(piece).outline().segments()) {
                bare.session.edit(EdgeEdits.split(bare.session.desk().pattern(), piece, line.start()));
            }
        }
        Pattern whole = bare.session.desk().pattern();
        EdgeRef front = EdgeRef.of("front", top(whole, "front", 160));
        EdgeRef back = EdgeRef.of("back", top(whole, "back", 440));
        EdgeRef band = EdgeRef.of(
                "band",
                EdgeEdits.at(whole.piece("band").orElseThrow(), new Point(300, 494))
                        .orElseThrow()
                        .name());
        Pattern wholes = MateEdits.sew(whole, band, front);
        assertThat(wholes.mates().get(0).second()).as("both are whole").containsExactly(front);
        Pattern folded = wholes.withPieces(wholes.pieces().stream()
                .map(p -> p.id().equals("band") ? p : p.toBuilder().cut(1, true).build())
                .toList());
        bare.session.edit(folded);
        SeamsView.Seam asked = SeamsView.of(bare.session.desk()).seams().get(0);
        assertThat(asked.count()).isTrue();
        assertThat(asked.halves()).contains("should count for both halves");
        Pattern counted = MateEdits.countHalves(folded, asked.name());
        assertThat(counted.mates().get(0).second()).containsExactly(new EdgeRef("front", front.edge(), 2));
        Pattern sewn = MateEdits.sew(MateEdits.remove(folded, asked.name()), band, front);
        assertThat(sewn.mates()).as("and so when it is sewn").isEqualTo(counted.mates());
        Pattern both = MateEdits.addEdge(sewn, asked.name(), false, back);
        assertThat(Measures.of(both).mate(asked.name()).orElseThrow().drift())
                .isCloseTo(384 - 2 * (132 + 86), within(1e-6));
        assertThat(MateEdits.addEdge(both, asked.name(), false, back))
                .as("it is there already")
                .isEqualTo(both);
        bare.session.edit(both);
        SeamsView view = SeamsView.of(bare.session.desk());
        assertThat(view.seams().get(0).count()).isFalse();
        assertThat(view.seams().get(0).halves()).contains("counts for both halves");
        assertThat(view.edges().stream()
                        .filter(e -> !view.seams().get(0).has(e))
                        .map(SeamsView.EdgeChoice::ref))
                .hasSize(view.edges().size() - 3)
                .doesNotContain(front, back, band);
        assertThat(MateEdits.sew(folded, front, back).mates().get(1).first())
                .as("half on half")
                .containsExactly(front);
    }

    @Test
    void seamsAreSewnEasedAndForgotten() throws Exception {
        Pattern pattern = marked();
        String front = pattern.piece("Front").orElseThrow().id();
        String back = pattern.piece("Back").orElseThrow().id();
        assertThatThrownBy(() -> MateEdits.sew(pattern, EdgeRef.of(back, "side"), EdgeRef.of("Front", "side")))
                .hasMessageStartingWith("sewn-already ");
        assertThatThrownBy(() -> MateEdits.sew(pattern, EdgeRef.of(front, "hem"), EdgeRef.of(front, "hem")))
                .hasMessageStartingWith("edge-to-itself ");
        Pattern sewn = MateEdits.sew(pattern, EdgeRef.of(front, "hem"), EdgeRef.of(back, "hem"));
        assertThat(sewn.mates().get(sewn.mates().size() - 1).name()).isEqualTo("hem");
        Pattern eased = MateEdits.ease(sewn, "hem", -15);
        assertThat(Measures.of(eased).mate("hem").orElseThrow().drift()).isCloseTo(0, within(0.5));
        Pattern twice = MateEdits.times(eased, "hem", EdgeRef.of(front, "hem"), 2);
        assertThat(twice.mates().get(twice.mates().size() - 1).first().get(0).times())
                .isEqualTo(2);
        Pattern both = MateEdits.addEdge(eased, "hem", true, EdgeRef.of(front, "side"));
        assertThat(MateEdits.removeEdge(both, "hem", true, EdgeRef.of(front, "side")))
                .isEqualTo(eased);
        assertThatThrownBy(() -> MateEdits.removeEdge(eased, "hem", true, EdgeRef.of(front, "hem")))
                .hasMessageStartingWith("last-edge-of-seam ");
        assertThat(MateEdits.remove(eased, "hem")).isEqualTo(pattern);
        assertThatThrownBy(() -> MateEdits.rename(eased, "hem", "side seam")).hasMessageStartingWith("name-taken ");
    }

    @Test
    void aNotchIsPutWhereANumberSays() throws Exception {
        Pattern pattern = marked();
        Piece back = pattern.piece("Back").orElseThrow();
        for (int i = 0; i < back.notches().size(); i++) {
            int number = i;
            Piece moved = MeasureEdits.notchAt(pattern, back.id(), i, 123.4)
                    .piece("Back")
                    .orElseThrow();
            Point at = moved.notches().get(i).at();
            assertThat(moved.outline().nearest(at).distance()).isLessThan(1e-6);
            Edge edge = EdgeEdits.at(moved, moved.outline().nearest(at).point()).orElseThrow();
            assertThat(MeasureEdits.along(moved, edge, at)).isCloseTo(123.4, within(1e-6));
            assertThatThrownBy(() -> MeasureEdits.notchAt(pattern, back.id(), number, 1e5))
                    .hasMessageStartingWith("notch-off-edge ");
            assertThatThrownBy(() -> MeasureEdits.notchAt(pattern, back.id(), number, -1))
                    .hasMessageStartingWith("notch-off-edge ");
        }
    }

    /** Whatever is typed, the dart measures it, its mouth stays on the edge, and back is back. */
    @Test
    void aDartIsAsWideAndAsLongAsANumberSays() throws Exception {
        Pattern pattern = marked();
        Random random = new Random(8);
        for (Piece piece : pattern.pieces()) {
            for (Dart dart : piece.darts()) {
                for (int i = 0; i < 20; i++) {
                    double wide = 5 + random.nextDouble(40);
                    double deep = 30 + random.nextDouble(120);
                    Pattern typed = MeasureEdits.dartLength(
                            MeasureEdits.dartWidth(pattern, piece.id(), dart.name(), wide),
                            piece.id(),
                            dart.name(),
                            deep);
                    Dart now = dart(typed, piece, dart);
                    assertThat(now.intake()).isCloseTo(wide, within(1e-6));
                    assertThat(middle(now).distance(now.point())).isCloseTo(deep, within(1e-6));
                    assertThat(piece.outline().nearest(now.mouth1()).distance()).isLessThan(1e-6);
                    assertThat(piece.outline().nearest(now.mouth2()).distance()).isLessThan(1e-6);
                    Dart again =
                            dart(MeasureEdits.dartWidth(typed, piece.id(), dart.name(), dart.intake()), piece, dart);
                    assertThat(again.mouth1().distance(dart.mouth1())).isLessThan(0.01);
                }
                assertThatThrownBy(() -> MeasureEdits.dartWidth(pattern, piece.id(), dart.name(), 9000))
                        .hasMessageStartingWith("dart-too-wide ");
                assertThatThrownBy(() -> MeasureEdits.dartLength(pattern, piece.id(), dart.name(), 0))
                        .hasMessageStartingWith("dart-too-small ");
            }
        }
    }

    private static Dart dart(Pattern pattern, Piece piece, Dart like) {
        return pattern.piece(piece.id()).orElseThrow().darts().stream()
                .filter(d -> d.name().equals(like.name()))
                .findFirst()
                .orElseThrow();
    }

    private static Point middle(Dart dart) {
        return dart.mouth1().towards(dart.mouth2(), 0.5);
    }
}
