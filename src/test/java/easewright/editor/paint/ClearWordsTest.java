package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.model.Desk;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Words on the table cross neither each other nor, where there is room, a line, however near the table is looked at.
 * With {@code -Dpictures.look=FOLDER} the pictures are kept there, to be looked at.
 */
class ClearWordsTest {
    private static final int WIDE = 828;
    private static final int HIGH = 747;
    private static final String FOLDER = System.getProperty("pictures.look");

    private static final List<String> SAMPLES = List.of("skirt", "bodice", "trousers", "knit-top", "skirt-sizes");

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private static LabelRoom painted(Session session, String name, double nearer) throws Exception {
        return painted(new TableScenes().of(session.desk()), name, nearer);
    }

    private static LabelRoom painted(TableScene scene, String name, double nearer) throws Exception {
        Viewport view = fitting(scene).zoomedAt(nearer, WIDE / 2.0, HIGH / 2.0);
        AtomicReference<LabelRoom> room = new AtomicReference<>();
        WritableImage image = WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            Canvas canvas = new Canvas(WIDE, HIGH);
            room.set(TablePainter.paint(canvas.getGraphicsContext2D(), WIDE, HIGH, view, Ink.LIGHT, scene));
            return FOLDER == null ? null : canvas.snapshot(null, null);
        });
        if (image != null) {
            keep(image, name + "-" + nearer);
        }
        return room.get();
    }

    private static Viewport fitting(TableScene scene) {
        Box all = scene.pieces().stream()
                .map(p -> p.piece().outline().box())
                .reduce(Box::union)
                .orElseThrow();
        return Viewport.fitting(all, WIDE, HIGH, 56);
    }

    private static void keep(WritableImage image, String name) throws Exception {
        int[] pixels = new int[WIDE * HIGH];
        image.getPixelReader().getPixels(0, 0, WIDE, HIGH, PixelFormat.getIntArgbInstance(), pixels, 0, WIDE);
        BufferedImage plain = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        plain.setRGB(0, 0, WIDE, HIGH, pixels, 0, WIDE);
        ImageIO.write(
                plain,
                "png",
                Files.createDirectories(Path.of(FOLDER)).resolve(name + ".png").toFile());
    }

    private static Session open(byte[] svg, String name) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, name), Optional.empty(), name)));
        return session;
    }

    private static Session sample(String name) throws Exception {
        return open(Samples.files().get(name + ".svg").getBytes(StandardCharsets.UTF_8), name + ".svg");
    }

    /** Pieces as people draw them without marks: a sheet of these outlines, mm. */
    private static Session drawn(String... outlines) throws Exception {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' height='1000mm' viewBox='0 0 1000 1000'>");
        for (String outline : outlines) {
            svg.append("<path id='").append(outline.replace(":", "' d='")).append("'/>");
        }
        return open(svg.append("</svg>").toString().getBytes(StandardCharsets.UTF_8), "sheet.svg");
    }

    private static void areClear(Session session, String name, double nearer) throws Exception {
        LabelRoom room = painted(session, name, nearer);
        List<Box> words = room.words();
        for (int i = 0; i < words.size(); i++) {
            Box one = words.get(i);
            assertThat(words.subList(i + 1, words.size())).as(name + nearer).noneMatch(one::overlaps);
            assertThat(one.minX() >= 0 && one.minY() >= 0 && one.maxX() <= WIDE && one.maxY() <= HIGH)
                    .as("%s %s: %s is seen", name, nearer, one)
                    .isTrue();
        }
        assertThat(words.size()).as(name + nearer).isGreaterThanOrEqualTo(nearer < 1 ? 0 : 1);
    }

    @Test
    void nothingIsWrittenOverOtherWordsOrCutOffAtAnyNearness() throws Exception {
        for (String sample : SAMPLES) {
            Session session = sample(sample);
            for (double nearer : new double[] {0.25, 0.5, 1, 2, 4, 8}) {
                areClear(session, sample, nearer);
            }
        }
    }

    /** Where a dart leaves no room on the level, its whole label stands beside the paper, on wide and narrow piece alike. */
    @Test
    void theLabelOfALevelStandsBesideADart() throws Exception {
        Session session = drawn("a:M300,100 H430 V800 H300 Z", "b:M700,100 H835 V800 H700 Z");
        Pattern bare = session.desk().pattern();
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : bare.pieces()) {
            Point middle = piece.outline().box().centre();
            Dart dart = new Dart(
                    "dart",
                    middle.plus(new Point(-10, 0)),
                    middle.plus(new Point(10, 0)),
                    middle.plus(new Point(0, 120)),
                    Optional.of(middle.plus(new Point(0, -120))),
                    Optional.empty());
            pieces.add(piece.toBuilder()
                    .darts(List.of(dart))
                    .levels(List.of(LevelMark.through("waist", middle)))
                    .build());
        }
        Pattern marked = bare.withLevels(List.of(Level.of("hip", LevelKind.HIP), Level.of("waist", LevelKind.WAIST)))
                .withPieces(pieces);
        session.edit(marked);
        session.chooseLevel("hip");
        LabelRoom room = painted(session, "dart", 1);
        assertThat(room.crossed()).isEmpty();
        Viewport view = fitting(new TableScenes().of(session.desk()));
        for (Piece piece : session.desk().pattern().pieces()) {
            Box paper = onScreen(piece.outline().box(), view);
            double level = paper.centre().y();
            assertThat(room.words())
                    .as(piece.name())
                    .anyMatch(w -> Math.abs(w.centre().y() - level) < 1
                            && Math.min(Math.abs(w.minX() - paper.maxX()), Math.abs(w.maxX() - paper.minX())) < 10);
        }
    }

    private static Box onScreen(Box box, Viewport view) {
        return Box.around(List.of(
                view.toScreen(new Point(box.minX(), box.minY())), view.toScreen(new Point(box.maxX(), box.maxY()))));
    }

    /** Only the label of a level may lie over a line, where it is as wide as the level. */
    @Test
    void namesStandOverNoLine() throws Exception {
        for (String sample : SAMPLES) {
            Session session = sample(sample);
            Desk bare = session.desk().seeing(withoutLevels(session.desk().pattern()));
            for (double nearer : new double[] {0.5, 1, 2, 4, 8}) {
                LabelRoom room = painted(new TableScenes().of(bare), sample + "-names", nearer);
                assertThat(room.crossed()).as(sample + nearer).isEmpty();
                if (nearer >= 1) {
                    assertThat(room.words()).as(sample + nearer).isNotEmpty();
                }
            }
        }
    }

    /** Where a whole sample is seen, or a part of it nearer, there is a place beside darts, grain and folds for all labels. */
    @Test
    void labelsOfLevelsHideNoDartGrainOrFold() throws Exception {
        for (String sample : SAMPLES) {
            Session session = sample(sample);
            for (Level level : session.desk().pattern().levels()) {
                session.chooseLevel(level.name());
                for (double nearer : new double[] {1, 1.5, 2.5}) {
                    LabelRoom room = painted(session, sample + "-" + level.name(), nearer);
                    assertThat(room.words())
                            .as("%s, %s, %s", sample, level.name(), nearer)
                            .noneMatch(room::hides);
                }
            }
        }
    }

    private static Pattern withoutLevels(Pattern pattern) {
        List<Piece> pieces = pattern.pieces().stream()
                .map(p -> p.toBuilder().levels(List.of()).build())
                .toList();
        return pattern.withPieces(pieces).withLevels(List.of());
    }

    @Test
    void aBandAFlapAndPiecesThatTouchAreToldApart() throws Exception {
        Session session = drawn(
                "front:M0,0 h300 v500 h-300z",
                "back:M300,0 h280 v500 h-280z",
                "waistband:M0,520 h900 v40 h-900z",
                "flap:M650,0 h50 v30 h-50z",
                "tab:M720,0 h12 v60 h-12z");
        for (double nearer : new double[] {0.5, 1, 2, 4}) {
            areClear(session, "sheet", nearer);
            assertThat(painted(session, "sheet", nearer).crossed()).isEmpty();
        }
        assertThat(painted(session, "sheet", 1).words())
                .as("the tab has its name beside it")
                .hasSize(5);
    }

    @Test
    void aNestOfFourSizesIsReadable() throws Exception {
        Session session = drawn(
                "front-36:M0,0 h240 v560 h-240z",
                "front-38:M0,0 h250 v566 h-250z",
                "front-40:M0,0 h260 v572 h-260z",
                "front-42:M0,0 h270 v578 h-270z");
        for (double nearer : new double[] {0.5, 1, 2, 4}) {
            areClear(session, "nest", nearer);
        }
    }

    /** Of a nest in which one size is tried, no name stands on a line of the trial, as thick as that is. */
    @Test
    void namesStandClearOfWhatATrialMoves() throws Exception {
        Session session = sample("skirt-sizes");
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        assertThat(session.desk().shownTrial()).isPresent();
        TableScene scene = new TableScenes().of(session.desk());
        for (double nearer = 1; nearer < 2; nearer += 0.05) {
            LabelRoom room = painted(scene, "nest-trial", nearer);
            Viewport view = fitting(scene).zoomedAt(nearer, WIDE / 2.0, HIGH / 2.0);
            List<Box> names = room.words().stream()
                    .filter(w -> room.told().levelAt(w.centre()).isEmpty())
                    .map(w -> w.grown(PiecePainter.MOVED / 2))
                    .toList();
            List<DrawnLine> moved = scene.pieces().stream()
                    .flatMap(p -> DrawnLine.along(p.moved(), view).stream())
                    .toList();
            assertThat(moved).isNotEmpty();
            for (Box name : names) {
                assertThat(moved)
                        .as("%s times nearer: %s", nearer, name)
                        .noneMatch(line -> line.meets(name.centre(), name.width(), name.height(), 0));
            }
        }
    }
}
