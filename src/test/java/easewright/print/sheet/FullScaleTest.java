package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.SeamChange;
import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.print.sheet.PdfLines.Stroked;
import easewright.print.sheet.PrintJob.SheetAt;
import easewright.text.LengthUnit;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed is as long as it says, read back from the finished file. */
class FullScaleTest {
    /** PDF numbers are written in 5 decimals of a point from single precision: 0.003 mm covers 5 m. */
    private static final double EXACT = 0.003;

    /** Width of the pen that cuts, mm. */
    private static final double CUT = 0.6;

    private static boolean pen(Stroked line, double width) {
        return Math.abs(line.pen() - width) < 0.01;
    }

    @ParameterizedTest
    @CsvSource({"A4, CM, 100, 50.8", "LETTER, INCH, 101.6, 50", "A0, CM, 100, 50.8", "ROLL, INCH, 101.6, 50"})
    void testSquaresMeasureWhatTheySay(Paper paper, LengthUnit unit, double large, double small) throws Exception {
        PrintJob.Prints prints = Prints.of(Prints.sample("skirt"), Prints.on(paper), unit);
        assertThat(prints.square()).isEqualTo(large);
        List<Stroked> lines = PdfLines.of(Prints.pdf(prints), 0);
        for (double side : List.of(large, small)) {
            assertThat(lines).anySatisfy(line -> {
                assertThat(line.box().getWidth()).isCloseTo(side, within(EXACT));
                assertThat(line.box().getHeight()).isCloseTo(side, within(EXACT));
            });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"skirt", "knit-top"})
    void controlLinesAreAsLongAsStatedOverTheJoinedSheets(String sample) throws Exception {
        PrintOrder order = Prints.on(Paper.A4);
        PrintJob.Prints prints = Prints.of(Prints.sample(sample), order);
        byte[] pdf = Prints.pdf(prints);
        double across = prints.controls().get(0);
        double down = prints.controls().get(1);
        assertThat(across % 10).isZero();
        assertThat(PdfLines.text(pdf))
                .contains("Control line")
                .contains(across / 10 == (int) (across / 10) ? String.valueOf((int) (across / 10)) : "");
        // The far end lies on the last sheet of its row: measured there, and the near end on the first sheet.
        SheetAt first = prints.at().get(0);
        int right = last(prints.at(), first, false);
        int foot = last(prints.at(), first, true);
        assertThat(end(pdf, right, prints, false) - start(pdf, 1, prints, false))
                .isCloseTo(across, within(EXACT));
        assertThat(end(pdf, foot, prints, true) - start(pdf, 1, prints, true)).isCloseTo(down, within(EXACT));
        assertThat(right).isGreaterThan(1);
        assertThat(foot).isGreaterThan(1);
    }

    private static int last(List<SheetAt> at, SheetAt first, boolean down) {
        int page = 1;
        for (SheetAt now = first; at.contains(now); ) {
            page = at.indexOf(now) + 1;
            now = down ? new SheetAt(now.row() + 1, now.column()) : new SheetAt(now.row(), now.column() + 1);
        }
        return page;
    }

    private static double start(byte[] pdf, int page, PrintJob.Prints prints, boolean down) throws IOException {
        Rectangle2D box = control(pdf, page, prints, down);
        return down ? box.getMinY() : box.getMinX();
    }

    private static double end(byte[] pdf, int page, PrintJob.Prints prints, boolean down) throws IOException {
        Rectangle2D box = control(pdf, page, prints, down);
        return down ? box.getMaxY() : box.getMaxX();
    }

    /** The control line on a page, on the plane of the joined sheets. */
    private static Rectangle2D control(byte[] pdf, int page, PrintJob.Prints prints, boolean down) throws IOException {
        double length = prints.controls().get(down ? 1 : 0);
        return onPlane(pdf, page, prints).stream()
                .filter(b -> down
                        ? b.getWidth() < EXACT && Math.abs(b.getHeight() - length) < 1
                        : b.getHeight() < EXACT && Math.abs(b.getWidth() - length) < 1)
                .findFirst()
                .orElseThrow();
    }

    static List<Rectangle2D> onPlane(byte[] pdf, int page, PrintJob.Prints prints) throws IOException {
        SheetAt at = prints.at().get(page - 1);
        double stepX = prints.leaves().get(page).width() - 2 * PrintOrder.MARGIN - PrintOrder.OVERLAP;
        double stepY = prints.leaves().get(page).height() - 2 * PrintOrder.MARGIN - PrintOrder.OVERLAP;
        List<Rectangle2D> boxes = new ArrayList<>();
        for (Stroked line : PdfLines.of(pdf, page)) {
            Rectangle2D box = line.box();
            boxes.add(new Rectangle2D.Double(
                    box.getX() - PrintOrder.MARGIN + at.column() * stepX,
                    box.getY() - PrintOrder.MARGIN + at.row() * stepY,
                    box.getWidth(),
                    box.getHeight()));
        }
        return boxes;
    }

    @ParameterizedTest
    @ValueSource(strings = {"skirt", "trousers"})
    void everyPieceIsDrawnInItsOwnSizeAtOnePlaceOfThePlaneAndNoPartIsLost(String sample) throws Exception {
        Pattern pattern = wider(Prints.sample(sample));
        PrintJob.Prints prints = Prints.of(pattern, Prints.on(Paper.A4));
        byte[] pdf = Prints.pdf(prints);
        for (Piece piece : pattern.pieces()) {
            Outline cut = CutLine.of(piece).outline().transformed(PaperPiece.upright(piece));
            Box size = cut.box();
            List<Rectangle2D> found = new ArrayList<>();
            List<Box> seen = new ArrayList<>();
            for (int page = 1; page < prints.leaves().size(); page++) {
                List<Stroked> lines = PdfLines.of(pdf, page);
                List<Rectangle2D> plane = onPlane(pdf, page, prints);
                for (int i = 0; i < lines.size(); i++) {
                    Rectangle2D box = plane.get(i);
                    if (pen(lines.get(i), CUT)
                            && Math.abs(box.getWidth() - size.width()) < 0.05
                            && Math.abs(box.getHeight() - size.height()) < 0.05) {
                        found.add(box);
                        seen.add(area(prints, page));
                        assertThat(lines.get(i).length()).isCloseTo(cut.length(), within(0.05));
                    }
                }
            }
            assertThat(found).as(piece.name()).isNotEmpty();
            for (Rectangle2D box : found) {
                assertThat(box.getX()).isCloseTo(found.get(0).getX(), within(EXACT));
                assertThat(box.getY()).isCloseTo(found.get(0).getY(), within(EXACT));
            }
            assertCovered(cut, found.get(0), seen);
        }
    }

    private static Pattern wider(Pattern pattern) {
        return Prints.changed(pattern, SeamChange.at(pattern.levels().get(0).name(), 24));
    }

    private static Box area(PrintJob.Prints prints, int page) {
        SheetAt at = prints.at().get(page - 1);
        double width = prints.leaves().get(page).width() - 2 * PrintOrder.MARGIN;
        double height = prints.leaves().get(page).height() - 2 * PrintOrder.MARGIN;
        double x = at.column() * (width - PrintOrder.OVERLAP);
        double y = at.row() * (height - PrintOrder.OVERLAP);
        return new Box(x, y, x + width, y + height);
    }

    /** Every place of the outline, which may lie upside down, is shown by a sheet. */
    private static void assertCovered(Outline cut, Rectangle2D box, List<Box> seen) {
        Box own = cut.box();
        boolean asDrawn = uncovered(cut, box.getX() - own.minX(), box.getY() - own.minY(), 1, seen) == 0;
        boolean turned = uncovered(cut, box.getMaxX() + own.minX(), box.getMaxY() + own.minY(), -1, seen) == 0;
        assertThat(asDrawn || turned).isTrue();
    }

    private static long uncovered(Outline cut, double dx, double dy, int sign, List<Box> seen) {
        return cut.corners(0.01).stream()
                .filter(p -> seen.stream()
                        .noneMatch(b -> b.grown(0.01).contains(new Point(sign * p.x() + dx, sign * p.y() + dy))))
                .count();
    }

    @ParameterizedTest
    @CsvSource({"A0, 841, 1189", "A1, 594, 841", "A4, 210, 297", "A3, 297, 420", "LETTER, 215.9, 279.4"})
    void pagesHaveThePapersSizeAndArePrintedUnscaled(Paper paper, double width, double height) throws Exception {
        byte[] pdf = Prints.pdf(Prints.of(Prints.sample("bodice"), Prints.on(paper)));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
            for (PDPage page : document.getPages()) {
                double w = page.getMediaBox().getWidth() * 25.4 / 72;
                double h = page.getMediaBox().getHeight() * 25.4 / 72;
                assertThat(Math.min(w, h)).isCloseTo(width, within(EXACT));
                assertThat(Math.max(w, h)).isCloseTo(height, within(EXACT));
                assertThat(page.getUserUnit()).isEqualTo(1);
                assertThat(page.getRotation()).isZero();
            }
        }
    }

    @Test
    void aRollIsAsLongAsNeededAndAProjectorPageHasAGridOfItsStatedStep() throws Exception {
        PrintJob.Prints roll = Prints.of(Prints.sample("trousers"), Prints.on(Paper.ROLL));
        assertThat(roll.leaves()).hasSize(1);
        assertThat(roll.leaves().get(0).width()).isEqualTo(914.4);
        assertThat(roll.leaves().get(0).height()).isBetween(1100.0, 2500.0);

        PrintJob.Prints thrown =
                Prints.of(Prints.sample("trousers"), Prints.on(Paper.A4).forProjector());
        assertThat(thrown.leaves()).hasSize(1);
        byte[] pdf = Prints.pdf(thrown);
        double height = thrown.leaves().get(0).height();
        List<Double> grid = PdfLines.of(pdf, 0).stream()
                .map(Stroked::box)
                .filter(b -> b.getWidth() < EXACT && Math.abs(b.getHeight() - height) < EXACT)
                .map(Rectangle2D::getX)
                .sorted()
                .toList();
        assertThat(grid).hasSizeGreaterThan(10);
        for (int i = 0; i < grid.size(); i++) {
            assertThat(grid.get(i)).isCloseTo(50.0 * (i + 1), within(EXACT));
        }
        assertThat(PdfLines.of(pdf, 0)).anyMatch(line -> pen(line, 3 * CUT));
        assertThat(PdfLines.text(pdf)).contains("5\u00a0cm");
    }

    @Test
    void theSameOrderGivesTheSameBytes() throws Exception {
        Pattern pattern = Prints.sample("knit-top");
        byte[] once = Prints.pdf(Prints.of(pattern, Prints.on(Paper.A4)));
        byte[] again = Prints.pdf(Prints.of(pattern, Prints.on(Paper.A4)));
        assertThat(again).isEqualTo(once);
    }
}
