package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javafx.scene.canvas.Canvas;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Names stand on their own pieces or on the bare table, whole or told to be shortened, and never over another piece. */
class NamesOnPiecesTest {
    private static final String LONG = "Front bodice lining with the princess seam, upper left part 2";
    private static final int WIDE = 828;
    private static final int HIGH = 747;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    /** Pieces of these boxes, with these names, without levels. */
    private static TableScene scene(List<Box> boxes, List<String> names) throws Exception {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' height='1000mm' viewBox='0 0 1000 1000'>");
        for (int i = 0; i < boxes.size(); i++) {
            Box b = boxes.get(i);
            svg.append("<path id='p")
                    .append(i)
                    .append("' d='M")
                    .append(b.minX())
                    .append(',')
                    .append(b.minY());
            svg.append(" h")
                    .append(b.width())
                    .append(" v")
                    .append(b.height())
                    .append(" h")
                    .append(-b.width());
            svg.append("z'/>");
        }
        Session session = new Session(LengthUnit.CM, false);
        byte[] bytes = svg.append("</svg>").toString().getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(bytes, "sheet.svg"), Optional.empty(), "sheet.svg")));
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : session.desk().pattern().pieces()) {
            pieces.add(piece.withName(names.get(Integer.parseInt(piece.id().substring(1)))));
        }
        return new TableScenes()
                .of(session.desk().seeing(session.desk().pattern().withPieces(pieces)));
    }

    private static Viewport fitting(TableScene scene, int wide, int high) {
        Box all = scene.pieces().stream()
                .map(p -> p.piece().outline().box())
                .reduce(Box::union)
                .orElseThrow();
        return Viewport.fitting(all, wide, high, 58);
    }

    private static LabelRoom painted(TableScene scene, Viewport view, int wide, int high) throws Exception {
        return WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            Canvas canvas = new Canvas(wide, high);
            return TablePainter.paint(canvas.getGraphicsContext2D(), wide, high, view, Ink.LIGHT, scene);
        });
    }

    private static Box onScreen(Box box, Viewport view) {
        return Box.around(List.of(
                view.toScreen(new Point(box.minX(), box.minY())), view.toScreen(new Point(box.maxX(), box.maxY()))));
    }

    private static void eachOnOnePieceOrNone(LabelRoom room, List<Box> boxes, Viewport view) {
        for (Box words : room.words()) {
            for (Box piece : boxes) {
                Box paper = onScreen(piece, view);
                assertThat(paper.contains(words) || !paper.overlaps(words))
                        .as("%s is on %s or off it", words, paper)
                        .isTrue();
            }
        }
    }

    @Test
    void aLongNameStandsInRowsOnItsOwnPiece() throws Exception {
        List<Box> boxes = List.of(new Box(0, 0, 130, 480), new Box(134, 0, 254, 480), new Box(258, 0, 700, 480));
        TableScene scene = scene(boxes, List.of(LONG, LONG.replace("Front", "Back"), "Skirt"));
        Viewport view = fitting(scene, WIDE, HIGH);
        LabelRoom room = painted(scene, view, WIDE, HIGH);
        assertThat(room.words()).hasSize(3);
        assertThat(room.told().lacking()).isEmpty();
        eachOnOnePieceOrNone(room, boxes, view);
    }

    @Test
    void whereThereIsNoRoomForAllOfANameItIsKnownToLack() throws Exception {
        List<Box> boxes = List.of(new Box(0, 0, 60, 60), new Box(64, 0, 700, 600));
        TableScene scene = scene(boxes, List.of(LONG, "Skirt"));
        Viewport view = fitting(scene, WIDE, HIGH);
        LabelRoom room = painted(scene, view, WIDE, HIGH);
        assertThat(room.told().lacking()).containsExactly("p0");
        assertThat(room.words()).hasSize(2);
        eachOnOnePieceOrNone(room, boxes, view);
    }

    /** A band that is too thin for letters has its name beside it. */
    @Test
    void aThinBandHasItsNameBesideIt() throws Exception {
        List<Box> boxes = List.of(
                new Box(0, 0, 500, 400),
                new Box(0, 440, 400, 448),
                new Box(0, 470, 300, 478),
                new Box(540, 0, 549, 400));
        TableScene scene = scene(boxes, List.of("Skirt", "Binding", "Belt", "Strap"));
        Viewport view = fitting(scene, WIDE, HIGH);
        LabelRoom room = painted(scene, view, WIDE, HIGH);
        assertThat(room.words()).hasSize(4);
        assertThat(room.told().lacking()).isEmpty();
        eachOnOnePieceOrNone(room, boxes, view);
    }

    /** However pieces and names are, no name lies over the edge of a piece. */
    @Test
    void noNameLiesOverAnotherPiece() throws Exception {
        Random random = new Random(11);
        for (int round = 0; round < 12; round++) {
            List<Box> boxes = new ArrayList<>();
            List<String> names = new ArrayList<>();
            double x = 0;
            while (x < 700) {
                double wide = 6 + random.nextDouble(random.nextBoolean() ? 30 : 180);
                boxes.add(new Box(x, 0, x + wide, 8 + random.nextDouble(500)));
                names.add(LONG.substring(0, 3 + random.nextInt(LONG.length() - 3))
                                .strip()
                        + boxes.size());
                x += wide + 1 + random.nextDouble(30);
            }
            TableScene scene = scene(boxes, names);
            for (double nearer : new double[] {0.4, 1, 3}) {
                Viewport view = fitting(scene, WIDE, HIGH).zoomedAt(nearer, WIDE / 2.0, HIGH / 2.0);
                eachOnOnePieceOrNone(painted(scene, view, WIDE, HIGH), boxes, view);
            }
        }
    }

    /** In a small window the names of a nest keep clear of folds, darts and grain. */
    @Test
    void namesOfANestHideNoSign() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "s.svg"), Optional.empty(), "s.svg")));
        TableScene scene = new TableScenes().of(session.desk());
        for (int high = 380; high <= 740; high += 40) {
            LabelRoom room = painted(scene, fitting(scene, 508, high), 508, high);
            assertThat(room.words()).as("%d pixels", high).isNotEmpty().noneMatch(room::hides);
        }
    }

    /** The line that leads to a name crosses no other piece: of three bands close together the middle one leads to its end. */
    @Test
    void noLeadCrossesAnotherPiece() throws Exception {
        List<Box> boxes = List.of(
                new Box(0, 0, 300, 7), new Box(0, 11, 300, 18), new Box(0, 22, 300, 29), new Box(0, 60, 300, 400));
        TableScene scene = scene(boxes, List.of("Upper", "Middle", "Lower", "Skirt"));
        Viewport view = fitting(scene, WIDE, HIGH);
        LabelRoom room = painted(scene, view, WIDE, HIGH);
        assertThat(room.words()).hasSize(4);
        Box middle = onScreen(boxes.get(1), view);
        assertThat(room.words())
                .filteredOn(w -> w.height() < 15
                        && Math.abs(w.centre().y() - middle.centre().y()) < 1)
                .hasSize(1);
    }
}
