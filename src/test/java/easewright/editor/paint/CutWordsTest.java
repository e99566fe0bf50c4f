package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Level;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.canvas.Canvas;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** How often a piece is cut, and whether on the fold, stands with its name whatever level is at work. */
class CutWordsTest {
    private static final List<String> SAMPLES = List.of("skirt", "bodice", "trousers", "knit-top", "skirt-sizes");

    /** What is left to the table in windows of 1280 × 800 and 1920 × 1080 pixels. */
    private static final int[][] TABLES = {{828, 747}, {1468, 1027}};

    /** The same, and in one of 960 × 640. */
    private static final int[][] ALL_TABLES = {{508, 560}, {828, 747}, {1468, 1027}};

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    private static Session sample(String name) throws Exception {
        return sample(name, LengthUnit.CM);
    }

    private static Session sample(String name, LengthUnit unit) throws Exception {
        Session session = new Session(unit, false);
        byte[] svg = Samples.files().get(name + ".svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, name), Optional.empty(), name)));
        return session;
    }

    private static Viewport fitting(TableScene scene, int wide, int high) {
        Box all = scene.pieces().stream()
                .map(p -> p.piece().outline().box())
                .reduce(Box::union)
                .orElseThrow();
        return Viewport.fitting(all, wide, high, 56);
    }

    private static LabelRoom painted(TableScene scene, Viewport view, int wide, int high) throws Exception {
        return WaitForAsyncUtils.waitForAsyncFx(
                10_000,
                () -> TablePainter.paint(
                        new Canvas(wide, high).getGraphicsContext2D(), wide, high, view, Ink.LIGHT, scene));
    }

    private static void tellAll(TableScene scene, LabelRoom room, String what) {
        for (TableScene.PieceSight sight : scene.pieces()) {
            if (!sight.title().isEmpty()) {
                assertThat(room.told().name(sight.piece().id()))
                        .as("%s: %s", what, sight.piece().name())
                        .hasValueSatisfying(words -> assertThat(words)
                                .startsWith(sight.piece().plainName())
                                .endsWith(sight.subtitle()));
            }
        }
        assertThat(room.told().lacking()).as(what).isEmpty();
    }

    @Test
    void everyPieceOfEverySampleSaysHowOftenItIsCut() throws Exception {
        int looked = 0;
        for (String name : SAMPLES) {
            Session session = sample(name);
            for (Level level : session.desk().pattern().levels()) {
                session.chooseLevel(level.name());
                TableScene scene = new TableScenes().of(session.desk());
                for (int[] size : ALL_TABLES) {
                    Viewport view = fitting(scene, size[0], size[1]);
                    tellAll(scene, painted(scene, view, size[0], size[1]), name + ", " + level.name() + ", " + size[0]);
                    looked++;
                }
            }
        }
        assertThat(looked).isEqualTo(48);
    }

    /** In one size or in several at once, all sizes are named, and alike. */
    @Test
    void everySizeOfANestIsNamed() throws Exception {
        Session session = sample("skirt-sizes");
        session.chooseLevel("hip");
        for (Set<String> also : List.of(Set.<String>of(), Set.of("12", "14"))) {
            session.want(session.desk().wanted().orElseThrow().withAlsoIn(also));
            TableScene scene = new TableScenes().of(session.desk());
            for (int[] size : TABLES) {
                Viewport view = fitting(scene, size[0], size[1]);
                tellAll(scene, painted(scene, view, size[0], size[1]), "nest " + also + ", " + size[0]);
            }
        }
    }

    /** The sizes of a piece are named at the same place on it. */
    @Test
    void sizesAreNamedAlike() throws Exception {
        Session session = sample("skirt-sizes");
        session.chooseLevel("hip");
        TableScene scene = new TableScenes().of(session.desk());
        Viewport view = fitting(scene, 1363, 1027);
        LabelRoom room = painted(scene, view, 1363, 1027);
        for (String name : List.of("Back", "Front")) {
            List<Point> places = new ArrayList<>();
            for (TableScene.PieceSight sight : scene.pieces()) {
                if (sight.piece().plainName().equals(name)) {
                    Box box = sight.piece().outline().box();
                    Point from = view.toScreen(new Point(box.minX(), box.minY()));
                    Box paper = Box.around(List.of(from, view.toScreen(new Point(box.maxX(), box.maxY()))));
                    room.words().stream()
                            .filter(paper::contains)
                            .map(Box::centre)
                            .forEach(at -> places.add(new Point(
                                    (at.x() - from.x()) / paper.width(), (at.y() - from.y()) / paper.height())));
                }
            }
            assertThat(places).as(name).hasSize(3).allMatch(p -> p.distance(places.get(0)) < 1e-6);
        }
    }

    /** No label of a level at work, and no name, lies over a seam, a dart, the grain or a fold of any piece. */
    @Test
    void nothingIsWrittenOverASeam() throws Exception {
        for (LengthUnit unit : List.of(LengthUnit.CM, LengthUnit.INCH)) {
            for (String name : SAMPLES) {
                Session session = sample(name, unit);
                for (Level level : session.desk().pattern().levels()) {
                    session.chooseLevel(level.name());
                    TableScene scene = new TableScenes().of(session.desk());
                    for (int[] size : TABLES) {
                        LabelRoom room = painted(scene, fitting(scene, size[0], size[1]), size[0], size[1]);
                        assertThat(room.crossed())
                                .as("%s, %s, %s, %s", name, level.name(), size[0], unit)
                                .isEmpty();
                        tellAll(scene, room, name + unit);
                    }
                }
            }
        }
    }

    /** Pieces of all forms, by themselves on the table: where there is none on it, there is room beside it. */
    @Test
    void piecesOfAllFormsSayIt() throws Exception {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' height='1000mm' viewBox='0 0 1000 1000'>");
        List<String> forms = List.of(
                "M0,0 h20 v300 h-20z",
                "M120,0 h60 v60 h-60z",
                "M320,0 h300 v12 h-300z",
                "M0,400 h45 v30 h-45z",
                "M320,200 h150 v350 h-150z",
                "M600,200 h8 v400 h-8z");
        for (int i = 0; i < forms.size(); i++) {
            svg.append("<path id='p")
                    .append(i)
                    .append("' d='")
                    .append(forms.get(i))
                    .append("'/>");
        }
        Session session = new Session(LengthUnit.CM, false);
        byte[] bytes = svg.append("</svg>").toString().getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(bytes, "sheet.svg"), Optional.empty(), "sheet.svg")));
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : session.desk().pattern().pieces()) {
            pieces.add(piece.withName("Facing " + piece.id().substring(1)));
        }
        TableScene scene = new TableScenes()
                .of(session.desk().seeing(session.desk().pattern().withPieces(pieces)));
        for (double nearer : new double[] {1, 1.4, 2}) {
            Viewport view = fitting(scene, 828, 747).zoomedAt(nearer, 414, 373);
            LabelRoom room = painted(scene, view, 828, 747);
            for (TableScene.PieceSight sight : scene.pieces()) {
                Box box = sight.piece().outline().box();
                Point from = view.toScreen(new Point(box.minX(), box.minY()));
                Point to = view.toScreen(new Point(box.maxX(), box.maxY()));
                if (new Box(0, 0, 828, 691).contains(Box.around(List.of(from, to)))) {
                    assertThat(room.told().name(sight.piece().id()).orElse("nothing"))
                            .as("%s, %s", sight.piece().name(), nearer)
                            .isEqualTo(sight.title() + " " + sight.subtitle());
                }
            }
        }
    }
}
