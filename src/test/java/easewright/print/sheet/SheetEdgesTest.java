package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.print.ink.Leaf;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark;
import easewright.print.ink.Pen;
import easewright.text.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is to be read on joined sheets is whole on one of them and not crossed out. */
class SheetEdgesTest {
    /** The smallest writing of a label where there is room, mm. */
    private static final double LABEL = 1.6;

    private record Written(String text, Box box, boolean bold) {}

    private static List<Written> written(Leaf leaf, boolean clipped) {
        List<Written> all = new ArrayList<>();
        for (Leaf.Layer layer : leaf.layers()) {
            if (layer.clip().isPresent() != clipped) {
                continue;
            }
            for (Mark mark : layer.picture().marks()) {
                if (mark instanceof Mark.Writing plain
                        && plain.transformed(layer.place()) instanceof Mark.Writing writing) {
                    all.add(new Written(writing.text(), box(writing), writing.bold()));
                }
            }
        }
        return all;
    }

    private static Box box(Mark.Writing writing) {
        double wide = Lettering.of(writing.bold()).width(writing.text(), writing.size());
        double before = switch (writing.anchor()) {
            case START -> 0;
            case MIDDLE -> wide / 2;
            case END -> wide;
        };
        Point along = new Point(Math.cos(writing.turn()), Math.sin(writing.turn()));
        Point start = writing.at().minus(along.times(before));
        return Box.around(List.of(
                start,
                start.plus(along.times(wide)),
                start.plus(along.quarterTurned().times(-writing.size() * 0.7))));
    }

    private static boolean within(Box inner, Box outer) {
        return inner.minX() > outer.minX()
                && inner.maxX() < outer.maxX()
                && inner.minY() > outer.minY()
                && inner.maxY() < outer.maxY();
    }

    @ParameterizedTest
    @CsvSource({
        "skirt, A4",
        "trousers, LETTER",
        "bodice, A4",
        "trousers, A4",
        "knit-top, LETTER",
        "skirt, LETTER",
        "bodice, LETTER",
        "knit-top, A4"
    })
    void whatIsReadIsWholeAndNotCrossedOut(String sample, Paper paper) throws Exception {
        PrintJob.Prints prints = Prints.of(Prints.sample(sample), Prints.on(paper), LengthUnit.CM);
        labelsAreNotCutWhereSheetsAreJoined(prints);
        lettersOfJoinsStandBesideTheLines(prints);
        namesOnTheMapHideNoNumberAndNoLetter(prints);
    }

    @Test
    void longNamesAreToldAndHideNothing() throws Exception {
        String name = "Back with facing, lining and a pocket opening on the right-hand side";
        Pattern skirt = Prints.sample("skirt");
        for (Piece piece : skirt.pieces()) {
            skirt = skirt.withPiece(piece.withName(piece.name() + name.substring(4)));
        }
        String title = "A nightdress with a long name, second toile, size 104";
        for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A0)) {
            PrintOrder order = PrintOrder.on(paper, title, Prints.DAY);
            PrintJob.Prints prints = Prints.of(skirt, order);
            List<Written> first = written(prints.leaves().get(0), false);
            String all = first.stream().map(Written::text).collect(Collectors.joining(" "));
            assertThat(all).contains(title);
            if (paper.tiled()) {
                List<Written> signs = first.stream()
                        .filter(w -> w.bold() && w.text().matches("[A-Z]{1,2}|\\d{1,2}"))
                        .toList();
                List<Written> names = first.stream()
                        .filter(w -> w.text().matches("#\\d( .*side)?")
                                || prints.pieces().contains(w.text()))
                        .toList();
                assertThat(names).hasSize(3);
                assertThat(names).noneMatch(n -> n.text().endsWith("\u2026"));
                assertThat(names)
                        .noneMatch(n -> signs.stream().anyMatch(s -> s.box().overlaps(n.box())));
            }
        }
    }

    /** Dashed means stitch on paper, and nothing else. */
    @Test
    void joinedSheetsAreCutAlongSolidLinesWithScissors() throws Exception {
        PrintJob.Prints prints = Prints.of(Prints.sample("skirt"), Prints.on(Paper.A4), LengthUnit.CM);
        int cut = 0;
        for (Leaf leaf : prints.leaves().subList(1, prints.leaves().size())) {
            List<Mark> edges =
                    leaf.layers().get(leaf.layers().size() - 1).picture().marks();
            List<Mark.Stroke> strokes = edges.stream()
                    .filter(Mark.Stroke.class::isInstance)
                    .map(Mark.Stroke.class::cast)
                    .toList();
            assertThat(strokes).allMatch(s -> s.pen().dashes().isEmpty());
            long lines = strokes.stream().filter(s -> s.pen() == Pen.TRIM).count();
            assertThat(strokes.stream().filter(Mark.Stroke::closed))
                    .as("both rings of the scissors")
                    .hasSize((int) (2 * lines));
            cut += lines;
        }
        assertThat(cut).isGreaterThan(8);
        assertThat(written(prints.leaves().get(0), false).stream()
                        .map(Written::text)
                        .collect(Collectors.joining(" ")))
                .contains("lines with scissors")
                .doesNotContain("dashed lines");
    }

    private static void labelsAreNotCutWhereSheetsAreJoined(PrintJob.Prints prints) {
        List<String> whole = new ArrayList<>();
        for (Leaf leaf : prints.leaves().subList(1, prints.leaves().size())) {
            Box page = new Box(
                    PrintOrder.MARGIN,
                    PrintOrder.MARGIN,
                    leaf.width() - PrintOrder.MARGIN,
                    leaf.height() - PrintOrder.MARGIN);
            for (Written word : written(leaf, true)) {
                boolean label = prints.pieces().contains(word.text())
                        || word.text().startsWith("cut ")
                        || word.text().contains("ease ");
                if (label && Math.min(word.box().width(), word.box().height()) > LABEL * 0.6) {
                    boolean seen = word.box().overlaps(page);
                    assertThat(!seen || within(word.box(), page))
                            .as(word.toString())
                            .isTrue();
                    if (seen) {
                        whole.add(word.text());
                    }
                }
            }
        }
        assertThat(whole).containsAll(prints.pieces());
    }

    private static void lettersOfJoinsStandBesideTheLines(PrintJob.Prints prints) {
        int letters = 0;
        int crossed = 0;
        for (Leaf leaf : prints.leaves().subList(1, prints.leaves().size())) {
            for (Written word : written(leaf, true)) {
                if (word.bold() && word.text().matches("[A-Z]{1,2}")) {
                    letters++;
                    crossed += isCrossed(leaf, word.box()) ? 1 : 0;
                }
            }
        }
        assertThat(letters).isGreaterThan(8);
        // Where a line runs along a join there is no place beside it.
        assertThat(crossed).as("of %d", letters).isZero();
    }

    private static boolean isCrossed(Leaf leaf, Box box) {
        for (Leaf.Layer layer : leaf.layers()) {
            for (Mark mark : layer.picture().marks()) {
                if (mark instanceof Mark.Stroke plain
                        && plain.transformed(layer.place()) instanceof Mark.Stroke stroke
                        && stroke.run().stream()
                                .filter(s -> s.box().grown(1).overlaps(box))
                                .anyMatch(s ->
                                        IntStream.rangeClosed(0, 200).anyMatch(i -> box.contains(s.at(i / 200.0))))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void namesOnTheMapHideNoNumberAndNoLetter(PrintJob.Prints prints) {
        List<Written> all = written(prints.leaves().get(0), false);
        List<Written> names =
                all.stream().filter(w -> prints.pieces().contains(w.text())).toList();
        List<Written> signs = all.stream()
                .filter(w -> w.bold() && w.text().matches("[A-Z]{1,2}|\\d{1,2}"))
                .toList();
        assertThat(names).hasSameSizeAs(prints.pieces());
        assertThat(signs).isNotEmpty();
        for (Written name : names) {
            assertThat(signs).as(name.text()).noneMatch(s -> s.box().overlaps(name.box()));
        }
    }
}
