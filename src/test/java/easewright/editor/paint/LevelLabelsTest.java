package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.draft.Samples;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.measure.LevelWidth;
import easewright.pattern.Level;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.canvas.Canvas;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The label of a level says what it is about wherever it stands, and a level is drawn as it is measured. */
class LevelLabelsTest {
    private static final List<String> SAMPLES = List.of("skirt", "bodice", "trousers", "knit-top", "skirt-sizes");

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private static Session sample(String name) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        byte[] svg = Samples.files().get(name + ".svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, name), Optional.empty(), name)));
        return session;
    }

    private static LabelRoom painted(TableScene scene, int wide, int high) throws Exception {
        Box all = scene.pieces().stream()
                .map(p -> p.piece().outline().box())
                .reduce(Box::union)
                .orElseThrow();
        Viewport view = Viewport.fitting(all, wide, high, 56);
        return WaitForAsyncUtils.waitForAsyncFx(
                10_000,
                () -> TablePainter.paint(
                        new Canvas(wide, high).getGraphicsContext2D(), wide, high, view, Ink.LIGHT, scene));
    }

    /** Who presses the name of a level means the level, also where it stands beside its line. */
    @Test
    void whereALevelIsNamedItIsFound() throws Exception {
        Session session = sample("bodice");
        TableScene scene = new TableScenes().of(session.desk());
        LabelRoom room = painted(scene, 1100, 820);
        Set<String> told = new TreeSet<>();
        Set<String> found = new TreeSet<>();
        scene.pieces()
                .forEach(p -> p.levels().stream()
                        .filter(l -> room.told().levels(p.piece().id()).stream()
                                .anyMatch(rows -> rows.get(0).startsWith(l.level())))
                        .forEach(l -> told.add(l.level())));
        for (int x = 0; x < 1100; x += 5) {
            for (int y = 0; y < 820; y += 5) {
                room.told().levelAt(new Point(x, y)).ifPresent(found::add);
            }
        }
        assertThat(told).hasSizeGreaterThan(1);
        assertThat(found).isEqualTo(told);
        assertThat(room.told().levelAt(new Point(0, 0))).isEmpty();
    }

    /** In every window, down to what a table has in one of 960 pixels, each piece at work has its label in words. */
    @Test
    void theLevelAtWorkIsNamedOnEveryPieceWithHowOftenItCounts() throws Exception {
        for (String sample : SAMPLES) {
            Session session = sample(sample);
            for (Level level : session.desk().pattern().levels()) {
                session.chooseLevel(level.name());
                TableScene scene = new TableScenes().of(session.desk());
                for (int[] size : new int[][] {{508, 560}, {828, 747}, {1100, 820}}) {
                    LabelRoom room = painted(scene, size[0], size[1]);
                    for (TableScene.PieceSight piece : scene.pieces()) {
                        for (TableScene.LevelSight sight : piece.levels()) {
                            if (sight.chosen() && !piece.aside()) {
                                assertThat(room.told().levels(piece.piece().id()))
                                        .as(
                                                "%s, %s on %s, %s wide",
                                                sample,
                                                level.name(),
                                                piece.piece().name(),
                                                size[0])
                                        .anyMatch(
                                                words -> String.join(" ", words).equals(sight.label()));
                            }
                        }
                    }
                }
            }
        }
    }

    /** The labels of the level at work are read together: all in one row, or all in two. */
    @Test
    void labelsOfOneLevelAreSetAlike() throws Exception {
        for (String sample : SAMPLES) {
            Session session = sample(sample);
            for (Level level : session.desk().pattern().levels()) {
                session.chooseLevel(level.name());
                TableScene scene = new TableScenes().of(session.desk());
                for (int[] size : new int[][] {{828, 747}, {1100, 820}, {1360, 1027}}) {
                    LabelRoom room = painted(scene, size[0], size[1]);
                    Set<Integer> rows = new TreeSet<>();
                    for (TableScene.PieceSight piece : scene.pieces()) {
                        for (TableScene.LevelSight sight : piece.levels()) {
                            if (sight.chosen() && !piece.aside()) {
                                room.told().levels(piece.piece().id()).stream()
                                        .filter(words -> String.join(" ", words).equals(sight.label()))
                                        .forEach(words -> rows.add(words.size()));
                            }
                        }
                    }
                    assertThat(rows)
                            .as("%s, %s, %s wide", sample, level.name(), size[0])
                            .hasSize(1);
                }
            }
        }
    }

    /** How often a width counts and the width stand in one row, and words keep off the rim of the table. */
    @Test
    void figuresAreNotTorn() throws Exception {
        int told = 0;
        for (String sample : SAMPLES) {
            Session session = sample(sample);
            for (Level level : session.desk().pattern().levels()) {
                session.chooseLevel(level.name());
                TableScene scene = new TableScenes().of(session.desk());
                LabelRoom room = painted(scene, 828, 747);
                for (int x = 0; x < 828; x += 4) {
                    assertThat(room.told().levelAt(new Point(x, 4)))
                            .as("%s, %s at the rim", sample, level.name())
                            .isEmpty();
                }
                for (TableScene.PieceSight piece : scene.pieces()) {
                    for (List<String> rows : room.told().levels(piece.piece().id())) {
                        assertThat(rows).as("%s, %s", sample, level.name()).hasSizeLessThanOrEqualTo(2);
                        assertThat(rows.get(rows.size() - 1)).doesNotEndWith("×");
                        told++;
                    }
                }
            }
        }
        assertThat(told).isGreaterThan(60);
    }

    /** Between two pieces a label would seem to be of the next one: it stands on the free side of its own. */
    @Test
    void wordsBetweenPiecesAreCloseToTheOther() {
        LabelRoom room = new LabelRoom();
        room.putPaper("own", DrawnLine.through(square(100, 0, 100)));
        room.putPaper("other", DrawnLine.through(square(280, 0, 100)));
        Point level = new Point(150, 50);
        assertThat(room.papers().isCloseToOther(new Point(240, 50), 60, 18, level, "own"))
                .isTrue();
        assertThat(room.papers().isCloseToOther(new Point(60, 50), 60, 18, level, "own"))
                .isFalse();
        assertThat(room.papers().isCloseToOther(new Point(240, 50), 20, 18, level, "own"))
                .isFalse();
    }

    @Test
    void theHeadOfALabelIsTheSameInOneRowAndInTwo() {
        TableScene.LevelSight sized = new TableScene.LevelSight(
                "thigh of the leg",
                Optional.of("14"),
                List.of(),
                false,
                "thigh of the leg 14: 2 × 20 cm",
                "2 × 20 cm",
                true,
                true);
        assertThat(sized.head(99)).isEqualTo("thigh of the leg 14:");
        assertThat(sized.head(8)).endsWith(" 14:").hasSizeLessThan(14);
    }

    /** Wherever a label stands off its line there is a leader from the line to its plate. */
    @Test
    void aLabelOffItsLineHasALeader() {
        Random random = new Random(3);
        for (int round = 0; round < 200; round++) {
            Point from = new Point(100 + random.nextDouble(200), 100 + random.nextDouble(200));
            Line seen = new Line(from, from.plus(new Point(60 + random.nextDouble(200), random.nextDouble(40) - 20)));
            LevelLabel label = new LevelLabel(
                    List.of("hip", "2 × 24 cm"),
                    random.nextBoolean(),
                    random.nextBoolean(),
                    200,
                    seen,
                    Optional.empty());
            for (List<Point> places : List.of(
                    label.places().offEnds(),
                    label.places().besideLine(),
                    label.places().onLeader())) {
                for (Point middle : places) {
                    // Two rows are as round as one.
                    double corner = (label.height() - (label.isCompact() ? 13 : 14)) / 2;
                    Box straight = LabelRoom.around(middle, label.width() - 2 * corner, label.height() - 2 * corner);
                    double away = straight.distance(seen.at(seen.nearest(middle))) - corner;
                    assertThat(label.leader(middle).isPresent())
                            .as("%s from %s", middle, seen)
                            .isEqualTo(away > 4);
                    label.leader(middle).ifPresent(lead -> {
                        assertThat(seen.at(seen.nearest(lead.start())).distance(lead.start()))
                                .isCloseTo(0, within(1e-6));
                        assertThat(straight.distance(lead.end()))
                                .as("on the rim of a plate with round corners")
                                .isCloseTo(corner, within(1e-6));
                    });
                }
            }
            for (Point middle : label.places().onLine()) {
                assertThat(label.leader(middle)).as("on its line").isEmpty();
            }
        }
    }

    /** What tells the meanings of lines lies over the head of the table, buttons over its foot. */
    @Test
    void theHeadAndTheFootOfTheTableAreNotOpenlySeen() {
        LabelRoom room = new LabelRoom(new Box(0, 0, 500, 500));
        assertThat(room.view().isOpenlySeen(new Point(250, 250), 36)).isTrue();
        assertThat(room.view().isOpenlySeen(new Point(250, 50), 36)).isFalse();
        assertThat(room.view().isOpenlySeen(new Point(250, 440), 36)).isFalse();
    }

    /** No leader crosses another one or comes over a piece that it is not about. */
    @Test
    void leadersCrossNoOtherPiece() {
        LabelRoom room = new LabelRoom();
        DrawnLine own = DrawnLine.through(square(0, 0, 100));
        DrawnLine other = DrawnLine.through(square(150, 0, 100));
        room.putPaper("own", own);
        room.putPaper("other", other);
        Point level = new Point(50, 50);
        Point end = new Point(100, 50);
        assertThat(room.leads(new Line(end, new Point(130, 50)), level, "own")).isTrue();
        assertThat(room.leads(new Line(end, new Point(180, 50)), level, "own"))
                .as("onto the other")
                .isFalse();
        assertThat(room.leads(new Line(end, new Point(280, 50)), level, "own"))
                .as("past it")
                .isFalse();
        room.putLeader(new Line(new Point(120, 0), new Point(120, 100)));
        assertThat(room.leads(new Line(end, new Point(140, 50)), level, "own"))
                .as("another leader")
                .isFalse();
        room.putPaper("under", DrawnLine.through(square(-20, -20, 138)));
        assertThat(room.leads(new Line(end, new Point(110, 50)), level, "own"))
                .as("a larger size below")
                .isTrue();
    }

    private static List<Point> square(double x, double y, double side) {
        return List.of(
                new Point(x, y),
                new Point(x + side, y),
                new Point(x + side, y + side),
                new Point(x, y + side),
                new Point(x, y));
    }

    /** What is drawn of a level is as long as what is measured there: along an edge the curve, without the mouths of darts. */
    @Test
    void aLevelIsDrawnAsItIsMeasured() throws Exception {
        int shaped = 0;
        for (String sample : SAMPLES) {
            Session session = sample(sample);
            TableScene scene = new TableScenes().of(session.desk());
            for (TableScene.PieceSight piece : scene.pieces()) {
                for (TableScene.LevelSight level : piece.levels()) {
                    double drawn =
                            level.runs().stream().mapToDouble(Curve::length).sum();
                    LevelWidth width = width(session, piece.piece(), level.level());
                    double measured = level.shaped() ? width.width() - width.dartIntake() : width.width();
                    assertThat(drawn)
                            .as(
                                    "%s, %s on %s",
                                    sample, level.level(), piece.piece().name())
                            .isCloseTo(measured, within(1e-6));
                    double chord = level.runs().stream()
                            .mapToDouble(run -> run.start().distance(run.end()))
                            .sum();
                    shaped += level.shaped() && drawn > chord + 0.05 ? 1 : 0;
                }
            }
        }
        assertThat(shaped).as("levels along curves").isGreaterThanOrEqualTo(6);
    }

    private static LevelWidth width(Session session, Piece piece, String level) {
        return session.desk()
                .reading()
                .measures()
                .piece(piece.id())
                .flatMap(p -> p.level(level))
                .orElseThrow();
    }

    /** On a leader into the gap between two pieces a label would seem to be of either, or of none. */
    @Test
    void theLevelAtWorkOfABodiceIsNamedOnItsOwnPieces() throws Exception {
        Session session = sample("bodice");
        session.chooseLevel("bust");
        for (int wide = 780; wide < 860; wide += 8) {
            LabelRoom room = painted(new TableScenes().of(session.desk()), wide, 747);
            List<Box> labels = room.words().stream()
                    .filter(w -> room.told()
                            .levelAt(w.centre())
                            .filter("bust"::equals)
                            .isPresent())
                    .toList();
            assertThat(labels)
                    .as("%s wide", wide)
                    .hasSize(2)
                    .noneMatch(w -> room.papers().isOnTable(w.centre()));
        }
    }
}
