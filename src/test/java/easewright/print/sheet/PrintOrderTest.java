package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import easewright.alter.SeamChange;
import easewright.geom.Affine;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.print.sheet.TileGrid.Tile;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** What may be ordered, what is refused, and what a print says. */
class PrintOrderTest {
    private static void refused(Pattern pattern, PrintOrder order, String code, String... parts) {
        PrintProblem problem = catchThrowableOfType(PrintProblem.class, () -> Prints.of(pattern, order));
        assertThat(problem).as(code).isNotNull();
        assertThat(problem.code()).isEqualTo(code);
        String said = Words.english(LengthUnit.CM).problem(problem.code(), problem.values());
        for (String part : parts) {
            assertThat(said).contains(part);
        }
        assertThat(said).doesNotContain("{").doesNotContain("problem.");
    }

    @Test
    void whatCannotBePrintedSoundlyIsRefusedWithTheWayOut() {
        Pattern skirt = Prints.sample("skirt");
        PrintOrder a4 = Prints.on(Paper.A4);
        refused(skirt.withScale(new Scale(1, 1, Scale.Proof.UNPROVED)), a4, "print-scale-unproved", "page Marks");
        refused(skirt, a4.withMargin(60), "print-margin-too-wide", "6\u00a0cm", "A4");
        refused(skirt, a4.withMargin(-1), "print-margin-too-wide");
        refused(skirt, a4.withOverlap(90), "print-overlap-too-wide", "9\u00a0cm");
        refused(skirt, Prints.on(Paper.A1).withMargin(250), "print-margin-too-wide", "A1");
        refused(skirt, a4.withPieces(List.of("Sleeve")), "print-piece-unknown", "Sleeve", "Front", "Back");
        refused(skirt, a4.withSize("38"), "print-no-sizes", "38");
        Pattern empty = Pattern.bare(List.of(), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE));
        refused(empty, a4, "print-nothing-chosen");
        refused(enlarged(skirt, 3), Prints.on(Paper.A1), "print-piece-too-large", "A1", "roll");
        refused(enlarged(skirt, 30), a4, "print-too-many-sheets", "300");
        refused(enlarged(skirt, 30), a4.forProjector(), "print-projector-too-large");
    }

    private static Pattern enlarged(Pattern pattern, double times) {
        Affine map = Affine.scaling(times, times);
        return Pattern.bare(
                pattern.pieces().stream()
                        .map(p -> Piece.bare(p.id(), p.outline().transformed(map)))
                        .toList(),
                pattern.scale());
    }

    @Test
    void onlyThePiecesChosenArePrinted() throws Exception {
        byte[] pdf =
                Prints.pdf(Prints.of(Prints.sample("skirt"), Prints.on(Paper.A4).withPieces(List.of("waistband"))));
        assertThat(PdfLines.text(pdf))
                .contains("Waistband")
                .doesNotContain("Front")
                .doesNotContain("Back");
    }

    @Test
    void labelsTellNameCuttingEaseChangeWearerAndDay() throws Exception {
        Pattern changed = Prints.changed(Prints.sample("skirt"), SeamChange.at("hip", 24));
        String text = PdfLines.text(Prints.pdf(Prints.of(changed, Prints.on(Paper.ROLL))))
                .replaceAll("[\\s\u00a0]+", " ");
        assertThat(text)
                .contains("Front cut 1 on the fold")
                .contains("Back cut 2 (a pair)")
                .contains("hip: ease +7.4 cm (7.4 %), finished 107.4 cm")
                .contains("Changed: hip: +2.4 cm all round")
                .contains("for Maren Holt, 17 May 2026")
                .contains("toile");
    }

    @Test
    void everyPieceAndEverySizeCanBeSwitchedOff() throws Exception {
        Pattern skirt = Prints.sample("skirt");
        List<Piece> sizes = new ArrayList<>();
        for (String size : List.of("38", "40")) {
            for (Piece piece : skirt.pieces().subList(0, 2)) {
                sizes.add(piece.toBuilder()
                        .id(piece.id() + size)
                        .name(piece.name() + " " + size)
                        .riders(List.of())
                        .build());
            }
        }
        Pattern nest = Pattern.bare(sizes, skirt.scale());
        try (PDDocument document = Loader.loadPDF(Prints.pdf(Prints.of(nest, Prints.on(Paper.ROLL))))) {
            var layers = document.getDocumentCatalog().getOCProperties();
            assertThat(layers.getGroupNames())
                    .containsExactlyInAnyOrder("Size 38", "Size 40", "Back 38", "Front 38", "Back 40", "Front 40");
            COSArray order = ((COSDictionary) layers.getCOSObject())
                    .getCOSDictionary(COSName.D)
                    .getCOSArray(COSName.ORDER);
            assertThat(order.size()).isEqualTo(4);
            assertThat(((COSArray) order.getObject(1)).size()).isEqualTo(2);
        }
        String one =
                PdfLines.text(Prints.pdf(Prints.of(nest, Prints.on(Paper.ROLL).withSize("40"))));
        assertThat(one).contains("Front 40").doesNotContain("Front 38");
        refused(nest, Prints.on(Paper.A4).withSize("42"), "print-size-unknown", "38, 40");
    }

    @Test
    void aNumberAtTheEndOfANameIsNoSizeWhereNothingComesInTwo() {
        Piece piece = Prints.sample("skirt").pieces().get(0);
        assertThat(Sizes.of(List.of(piece.withName("Pocket 2"), piece.withName("Front")))
                        .all())
                .isEmpty();
        assertThat(Sizes.of(List.of(piece.withName("Front size XL"), piece.withName("Front S")))
                        .all())
                .containsExactly("S");
    }

    @Test
    void noNameStopsAPrint() throws Exception {
        List<String> names = List.of(
                "Ärmel – Łódź Ωμέγα Плечо",
                "שרוול",
                "كم القميص",
                "袖ぐり 앞판",
                "\ud83d\udc57 \ud83e\udea1",
                "e\u0301 a\u0308 \u0928\u093f",
                "<script>alert('x')</script> & \"q\"",
                "x".repeat(3000),
                "a\tb\nc\u0007d\u200e\ud800",
                "\u10ffff \ufdd0");
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            double x = 200 * i;
            List<Point> corners =
                    List.of(new Point(x, 0), new Point(x + 120, 0), new Point(x + 120, 90), new Point(x, 70));
            pieces.add(Piece.bare("p" + i, Outline.polygon(corners)).withName(names.get(i)));
        }
        Pattern named = Pattern.bare(pieces, new Scale(1, 1, Scale.Proof.KNOWN_LINE));
        PrintOrder longNamed = new PrintOrder(names.get(7), Paper.ROLL, false, 10, 10, List.of(), "", Prints.DAY);
        for (PrintOrder order : List.of(Prints.on(Paper.A4), longNamed)) {
            assertThat(PdfLines.text(Prints.pdf(Prints.of(named, order))))
                    .contains("Ωμέγα")
                    .contains("Плечо")
                    .contains("Łódź")
                    .contains("<script>");
        }
    }

    @Test
    void eachJoinHasOneLetterOnBothItsSheets() {
        Set<Tile> tiles = new TreeSet<>();
        for (int i = 0; i < 40; i++) {
            tiles.add(new Tile(i / 8, i % 8));
        }
        tiles.remove(new Tile(2, 3));
        Joins joins = Joins.of(tiles);
        Set<String> letters = new TreeSet<>();
        int count = 0;
        for (Tile tile : tiles) {
            assertThat(joins.right(tile)).isEqualTo(joins.left(tile.right()));
            assertThat(joins.below(tile)).isEqualTo(joins.above(tile.below()));
            for (var join : List.of(joins.right(tile), joins.below(tile))) {
                count += join.isPresent() ? 1 : 0;
                join.ifPresent(letters::add);
            }
        }
        assertThat(letters).hasSize(count).contains("A", "Z", "AA");
        assertThat(joins.right(new Tile(2, 2))).isEmpty();
    }

    @Test
    void theGrainIsSetUprightByTheSmallestTurn() {
        Piece piece = Prints.sample("skirt").pieces().get(2);
        Affine turn = PaperPiece.upright(piece);
        Point grain = turn.applyToDirection(piece.grainDirection());
        assertThat(grain.x()).isZero();
        assertThat(Math.abs(grain.y())).isEqualTo(1);
        assertThat(turn.determinant()).isEqualTo(1);
        assertThat(PaperPiece.upright(Prints.sample("skirt").pieces().get(0))).isEqualTo(Affine.IDENTITY);
    }
}
