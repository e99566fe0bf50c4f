package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.print.Reading;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.print.sheet.Nest.Laid;
import easewright.print.sheet.TileGrid.Tile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Joined sheets are handy: about the fewest, near to a square, proved by their control lines, pieces the right way up. */
class JoinedSheetsTest {
    private static final double EXACT = 0.003;
    private static final Scale KNOWN = new Scale(1, 1, Scale.Proof.KNOWN_LINE);

    private static Job job(Pattern pattern, Paper paper) throws PrintProblem {
        return Job.of(
                Prints.on(paper),
                Optional.empty(),
                Reading.of(pattern, Prints.TABLES),
                List.of(),
                Words.english(LengthUnit.CM));
    }

    /** The last figure is what was found when only the number of sheets counted, and pieces were turned freely. */
    @ParameterizedTest
    @CsvSource({
        "skirt, A4, 11",
        "skirt, LETTER, 12",
        "bodice, A4, 13",
        "bodice, LETTER, 13",
        "trousers, A4, 22",
        "trousers, LETTER, 21",
        "knit-top, A4, 12",
        "knit-top, LETTER, 12"
    })
    void samplesLieOnATableOnAboutTheFewestSheets(String sample, Paper paper, int fewest) throws Exception {
        TilePlan plan = TileSearch.plan(job(Prints.sample(sample), paper));
        assertThat(plan.tiles().size()).as("sheets").isLessThanOrEqualTo(fewest + Math.max(2, fewest / 7));
        assertThat(plan.reach()).as("longer side").isLessThan(1300);
        double shorter =
                Math.min(plan.grid().joinedWidth(plan.across()), plan.grid().joinedHeight(plan.down()));
        assertThat(plan.reach() / shorter).as("sides").isLessThan(1.7);
        ControlLines lines = ControlLines.of(plan, LengthUnit.CM);
        assertThat(lines.across().length()).isGreaterThan(0.9 * plan.grid().joinedWidth(plan.across()) - 40);
        assertThat(lines.down().length()).isGreaterThan(0.7 * plan.grid().joinedHeight(plan.down()) - 40);
        assertThat(turned(plan)).as("turned").isZero();
    }

    /** Laws over random pieces; seed 20261126. */
    @Test
    void allPiecesLieOnTheSheetsAndNoStripIsMadeWhereASquareNeedsNoMore() throws Exception {
        Random random = new Random(20261126);
        for (int round = 0; round < 8; round++) {
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(4); i++) {
                double wide = 40 + random.nextInt(400);
                double high = 40 + random.nextInt(600);
                double slant = random.nextDouble() * wide;
                pieces.add(piece("p" + i, slant, 0, wide, high / 3, wide * 0.8, high, 0, high * 0.9));
            }
            Paper paper = random.nextBoolean() ? Paper.A4 : Paper.LETTER;
            TilePlan plan = TileSearch.plan(job(Pattern.bare(pieces, KNOWN), paper));
            assertThat(plan.laid()).hasSameSizeAs(pieces);
            for (Laid laid : plan.laid()) {
                assertThat(laid.corners())
                        .allMatch(p -> plan.tiles().stream()
                                .anyMatch(t -> plan.grid().area(t).grown(1e-6).contains(p)));
            }
            TilePlan strip = strip(job(Pattern.bare(pieces, KNOWN), paper), plan.grid());
            boolean handier = plan.reach() <= Math.max(TilePlan.TABLE, strip.reach());
            assertThat(handier || plan.tiles().size() < strip.tiles().size())
                    .as("%s instead of %s", plan.tiles(), strip.tiles())
                    .isTrue();
        }
    }

    /** A fold at the very border of a sheet is not cut along its length: what does not lie on one sheet lies on the next. */
    @Test
    void aLineAtTheBorderOfASheetIsPrintedInItsWholeWidth() {
        TileGrid grid = new TileGrid(210, 297, 10, 10);
        double hair = 0.05;
        double half = Pen.FOLD.width() / 2 - hair;
        for (double off = -1; off <= 1; off += 0.01) {
            double edge = grid.area(new Tile(0, 0)).maxX() + off;
            Footprint shape = Footprint.of(
                    List.of(new Point(20, 20), new Point(edge, 20), new Point(edge, 90), new Point(20, 90)));
            Set<Tile> tiles = grid.needed(shape, 20, 20);
            for (double side : new double[] {edge - half, edge + half}) {
                assertThat(tiles).as("%.2f", off).anyMatch(t -> grid.area(t).contains(new Point(side, 50)));
            }
        }
    }

    /** The sizes of the squares stand in the middle, from side to side. */
    @Test
    void theSizesOfTheTestSquaresStandInTheMiddle() {
        for (LengthUnit unit : List.of(LengthUnit.CM, LengthUnit.INCH)) {
            double side = TestSquare.side(unit);
            List<Mark.Writing> sizes = TestSquare.of(unit).marks().stream()
                    .filter(Mark.Writing.class::isInstance)
                    .map(Mark.Writing.class::cast)
                    .toList();
            assertThat(sizes).hasSize(2);
            assertThat(sizes.get(0).at().x()).isEqualTo(side / 2);
            assertThat(sizes.get(1).at().x()).isBetween(side / 2, side);
            assertThat(sizes.get(1).at().x() - sizes.get(1).at().y()).isBetween(-2.0, 0.0);
        }
    }

    private static long turned(TilePlan plan) {
        return plan.laid().stream().filter(l -> Cutout.isUpsideDown(l.place())).count();
    }

    /** All pieces one below the other. */
    private static TilePlan strip(Job job, TileGrid grid) {
        List<Cutout> shapes = job.cutouts(false);
        double widest = shapes.stream().mapToDouble(s -> s.box(0).width()).max().orElse(0);
        return TilePlan.of(grid, new Nest(shapes, widest, 1e5, Job.GAP).shortest());
    }

    private static Piece piece(String id, double... xy) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Point(xy[i], xy[i + 1]));
        }
        return Piece.bare(id, Outline.polygon(corners)).withName(id);
    }

    @Test
    void oneMoreSheetMustBuyTenCentimetresOfReachBeyondTheTable() {
        TileGrid grid = new TileGrid(210, 297, 10, 10);
        TilePlan strip = plan(grid, 2, 6);
        TilePlan square = plan(grid, 4, 4);
        assertThat(strip.reach()).isCloseTo(1612, within(1e-9));
        // Four sheets more take 41.2 cm off what reaches beyond 120 cm.
        assertThat(TilePlan.HANDIEST.compare(square, strip)).isNegative();
        assertThat(TilePlan.HANDIEST.compare(plan(grid, 4, 4), plan(grid, 3, 4)))
                .isPositive();
        TilePlan ragged = new TilePlan(grid, List.of(), without(square.tiles(), new Tile(0, 1)));
        TilePlan whole = new TilePlan(grid, List.of(), without(square.tiles(), new Tile(3, 3)));
        assertThat(TilePlan.HANDIEST.compare(whole, ragged)).isNegative();
    }

    private static TilePlan plan(TileGrid grid, int across, int down) {
        Set<Tile> tiles = new TreeSet<>();
        for (int i = 0; i < across * down; i++) {
            tiles.add(new Tile(i / across, i % across));
        }
        return new TilePlan(grid, List.of(), tiles);
    }

    private static Set<Tile> without(Set<Tile> tiles, Tile one) {
        Set<Tile> rest = new TreeSet<>(tiles);
        rest.remove(one);
        return rest;
    }

    @ParameterizedTest
    @CsvSource({"A4, CM, 200, 20\u00a0cm", "LETTER, INCH, 203.2, 8\u00a0in"})
    void sheetsFarFromTheLongControlLinesHaveShortOnesBothWays(Paper paper, LengthUnit unit, double length, String said)
            throws Exception {
        PrintJob.Prints prints = Prints.of(Prints.sample("trousers"), Prints.on(paper), unit);
        assertThat(prints.controls()).hasSize(4).endsWith(length, length);
        assertThat(prints.width())
                .isBetween(prints.controls().get(0), prints.controls().get(0) + 40);
        assertThat(prints.height()).isGreaterThan(prints.controls().get(1));
        byte[] pdf = Prints.pdf(prints);
        assertThat(PdfLines.text(pdf))
                .as("in the unit that was chosen alone")
                .contains("Control line " + said)
                .doesNotContain("Control line " + said + " (");
        List<Rectangle2D> all = lines(prints, pdf);
        for (boolean down : new boolean[] {false, true}) {
            List<Rectangle2D> found = all.stream()
                    .filter(b -> Math.abs((down ? b.getHeight() : b.getWidth()) - length) < EXACT)
                    .filter(b -> (down ? b.getWidth() : b.getHeight()) < EXACT)
                    .toList();
            // On both the sheets that it joins, at one place of the plane, and far from the first sheet.
            assertThat(found).hasSize(2);
            Rectangle2D one = found.get(0);
            assertThat(found.get(1).getX()).isCloseTo(one.getX(), within(EXACT));
            assertThat(found.get(1).getY()).isCloseTo(one.getY(), within(EXACT));
            assertThat(Math.min(one.getMaxX(), one.getMaxY())).isGreaterThan(600);
        }
    }

    private static List<Rectangle2D> lines(PrintJob.Prints prints, byte[] pdf) throws IOException {
        List<Rectangle2D> found = new ArrayList<>();
        for (int page = 1; page < prints.leaves().size(); page++) {
            found.addAll(FullScaleTest.onPlane(pdf, page, prints));
        }
        return found;
    }

    @Test
    void shortControlLinesKeepClearOfWhatIsDrawnAndLieOnPrintedSheets() throws Exception {
        for (String sample : List.of("skirt", "trousers")) {
            Job job = job(Prints.sample(sample), Paper.A4);
            TilePlan plan = TileSearch.plan(job);
            Lines drawn = new Lines();
            for (Laid laid : plan.laid()) {
                drawn.add(job.picture(job.pieces().get(laid.shape()), laid.place(), 1));
            }
            ControlLines lines = ControlLines.of(plan, LengthUnit.CM);
            List<ControlLine> far = lines.withFar(plan, drawn, LengthUnit.CM).far();
            assertThat(far).as(sample).isNotEmpty();
            for (ControlLine line : far) {
                for (Point end : List.of(line.from(), line.to())) {
                    assertThat(plan.tiles()).anyMatch(t -> plan.grid().area(t).contains(end));
                }
                for (Laid laid : plan.laid()) {
                    Outline piece = Outline.polygon(laid.corners());
                    assertThat(piece.contains(line.from().towards(line.to(), 0.5)))
                            .as("%s %s", sample, line)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void aFewSheetsNearTheFirstNeedNoMoreControlLines() throws Exception {
        Piece small = piece("cuff", 0, 0, 300, 0, 300, 250, 0, 250);
        assertThat(Prints.of(Pattern.bare(List.of(small), KNOWN), Prints.on(Paper.A4))
                        .controls())
                .hasSize(2);
    }

    @Test
    void whatFitsOnOneSheetIsNotSaidToBeJoined() throws Exception {
        Piece small = piece("cuff", 0, 0, 150, 0, 150, 110, 0, 110);
        String said = said(Pattern.bare(List.of(small), KNOWN), Prints.on(Paper.A4));
        assertThat(said).contains("A4, one sheet").contains("Control line 17").doesNotContain("join");
        assertThat(said(Prints.sample("skirt"), Prints.on(Paper.A4))).contains("joined", "Cut each sheet");
    }

    @Test
    void piecesAreTurnedUpsideDownOnlyWhereThatSavesATenthOfThePaperAndThenSaySo() throws Exception {
        Job gores = job(gores(440), Paper.A4);
        TilePlan plan = TileSearch.plan(gores);
        assertThat(turned(plan)).isBetween(1L, 5L);
        assertThat(PieceKey.way(gores, plan.laid())).contains("Upside down, to save paper: Gore ");
        assertThat(said(gores(340), Prints.on(Paper.ROLL))).contains("its top is below");
        // What nothing is saved by lies as it was drawn, light on a table too.
        for (PrintOrder order : List.of(
                Prints.on(Paper.A4), Prints.on(Paper.ROLL), Prints.on(Paper.A4).forProjector())) {
            assertThat(said(Prints.sample("skirt"), order)).doesNotContain("its top is below");
        }
    }

    private static Pattern gores(double wide) {
        List<Piece> gores = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            gores.add(piece("Gore " + i, wide / 2 - 20, 0, wide / 2 + 20, 0, wide, 520, 0, 520));
        }
        return Pattern.bare(gores, KNOWN);
    }

    private static String said(Pattern pattern, PrintOrder order) throws Exception {
        return PdfLines.text(Prints.pdf(Prints.of(pattern, order))).replaceAll("\\s+", " ");
    }

    @Test
    void anArrowLeadsToTheTopOfAPieceThatLiesUpsideDown() throws Exception {
        Job job = job(Prints.sample("skirt"), Paper.A4);
        for (PaperPiece piece : job.pieces()) {
            assertThat(job.picture(piece, Cutout.AS_DRAWN, 1).marks().toString())
                    .doesNotContain("text=top,")
                    .doesNotContain("Upside down");
            List<Mark> turned = job.picture(piece, Cutout.UPSIDE_DOWN, 1).marks();
            assertThat(turned.toString()).contains("Upside down");
            Outline cut = piece.cut().outline().transformed(Cutout.UPSIDE_DOWN.after(piece.upright()));
            Mark.Writing top = turned.stream()
                    .filter(m -> m instanceof Mark.Writing w && w.text().equals("top"))
                    .map(Mark.Writing.class::cast)
                    .findFirst()
                    .orElseThrow();
            assertThat(cut.contains(top.at())).isTrue();
            assertThat(top.at().y()).isGreaterThan(cut.box().maxY() - 60);
        }
    }
}
