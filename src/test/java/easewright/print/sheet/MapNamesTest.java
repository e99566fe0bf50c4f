package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.print.ink.Lettering;
import easewright.print.ink.Mark;
import easewright.print.ink.Pencil;
import easewright.print.ink.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Names on the map of the sheets keep clear of what is written there. */
class MapNamesTest {
    private static Mark.Writing written(String name, Box piece, List<Box> taken, List<Box> borders) {
        return written(name, Optional.empty(), piece, taken, borders);
    }

    private static Mark.Writing written(
            String name, Optional<String> number, Box piece, List<Box> taken, List<Box> borders) {
        Pencil pencil = new Pencil();
        new MapNames(pencil, taken, borders).write(List.of(new MapNames.Named(name, number, corners(piece))));
        return pencil.picture().marks().stream()
                .filter(Mark.Writing.class::isInstance)
                .map(Mark.Writing.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static List<Point> corners(Box piece) {
        return List.of(
                new Point(piece.minX(), piece.minY()),
                new Point(piece.maxX(), piece.minY()),
                new Point(piece.maxX(), piece.maxY()),
                new Point(piece.minX(), piece.maxY()));
    }

    /** Names are of one size, whatever room each would have had; only what has room for the lowest letters alone is lower. */
    @Test
    void namesAreOfOneSize() {
        Pencil pencil = new Pencil();
        List<Box> pieces = List.of(new Box(0, 0, 60, 90), new Box(70, 0, 84, 12), new Box(90, 0, 93, 15));
        List<MapNames.Named> named = new ArrayList<>();
        for (String name : List.of("Front", "Side front", "Waistband")) {
            named.add(new MapNames.Named(name, Optional.empty(), corners(pieces.get(named.size()))));
        }
        assertThat(new MapNames(pencil, List.of(), List.of()).write(named)).isTrue();
        List<Double> sizes = pencil.picture().marks().stream()
                .filter(Mark.Writing.class::isInstance)
                .map(m -> ((Mark.Writing) m).size())
                .toList();
        assertThat(sizes.get(0)).isEqualTo(sizes.get(1)).isGreaterThan(2);
        assertThat(sizes.get(2)).isLessThan(2);
    }

    /** Law over random numbers of sheets; seed 20261126. */
    @Test
    void aNameLiesWholeOnItsPieceAndOnNoNumber() {
        Random random = new Random(20261126);
        for (int round = 0; round < 40; round++) {
            Box piece = new Box(10, 10, 60 + random.nextInt(40), 60 + random.nextInt(40));
            List<Box> taken = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                double x = 10 + random.nextDouble() * 70;
                double y = 10 + random.nextDouble() * 70;
                taken.add(new Box(x, y, x + 4, y + 4));
            }
            Mark.Writing name = written("Side front", piece, taken, List.of());
            assertThat(name.text()).isEqualTo("Side front");
            Box letters = letters(name);
            assertThat(piece.contains(letters)).as("%s on %s", letters, piece).isTrue();
            assertThat(taken).as("under %s", letters).noneMatch(letters::overlaps);
        }
    }

    /** The letters of words as they are written: as wide as the typeface says, as high as capitals are. */
    private static Box letters(Mark.Writing words) {
        double half = Lettering.of(words.bold()).width(words.text(), words.size()) / 2;
        double high = words.size() * 0.73;
        Point at = words.at();
        return words.turn() == 0
                ? new Box(at.x() - half, at.y() - high, at.x() + half, at.y())
                : new Box(at.x() - high, at.y() - half, at.x(), at.y() + half);
    }

    /** Law over random sizes of pieces; seed 7: a name without room gives way to the number, which lies on the piece. */
    @Test
    void aPieceTooSmallForItsNameHasItsNumber() {
        Random random = new Random(7);
        int numbers = 0;
        for (int round = 0; round < 60; round++) {
            Box piece = new Box(10, 10, 16 + random.nextDouble(40), 16 + random.nextDouble(20));
            Mark.Writing written = written("Front bodice lining", Optional.of("#14"), piece, List.of(), List.of());
            assertThat(written.text()).as("%s", piece).isIn("#14 Front bodice lining", "#14");
            assertThat(piece.contains(letters(written)))
                    .as("%s on %s", written, piece)
                    .isTrue();
            numbers += written.text().equals("#14") ? 1 : 0;
        }
        assertThat(numbers).isBetween(5, 55);
    }

    @Test
    void aNameInNobodysWayLiesInTheMiddle() {
        Box piece = new Box(10, 10, 60, 90);
        Mark.Writing name = written("Front", piece, List.of(), List.of());
        assertThat(name.at().distance(piece.centre())).isLessThan(5);
    }

    /** The numbers of the sheets stand on a ground of their own, on which nothing is drawn. */
    @Test
    void noLineCrossesTheNumberOfASheet() throws Exception {
        for (String sample : List.of("skirt", "trousers", "bodice")) {
            PrintJob.Prints prints = Prints.of(Prints.sample(sample), Prints.on(Paper.A4));
            List<Mark> marks = prints.leaves().get(0).layers().get(0).picture().marks();
            List<Integer> numbers = new ArrayList<>();
            for (int i = 0; i < marks.size(); i++) {
                if (marks.get(i) instanceof Mark.Writing w
                        && w.tone() == Tone.MID
                        && w.text().matches("[0-9]+")) {
                    numbers.add(i);
                }
            }
            assertThat(numbers).as(sample).hasSizeGreaterThan(5);
            for (int at : numbers) {
                Mark.Writing number = (Mark.Writing) marks.get(at);
                double wide = Lettering.of(true).width(number.text(), number.size());
                Box letters = Box.around(List.of(
                        number.at().minus(new Point(0, number.size() * 0.72)),
                        number.at().plus(new Point(wide, 0))));
                assertThat(marks.get(at - 1)).as(number.text()).isInstanceOf(Mark.Fill.class);
                Mark.Fill ground = (Mark.Fill) marks.get(at - 1);
                assertThat(ground.tone()).isEqualTo(Tone.WHITE);
                Box box = Box.around(ground.loop().stream().map(Segment::start).toList());
                assertThat(box.minX() <= letters.minX()
                                && box.maxX() >= letters.maxX()
                                && box.minY() <= letters.minY()
                                && box.maxY() >= letters.maxY())
                        .as("%s on %s", letters, box)
                        .isTrue();
                assertThat(marks.subList(at, marks.size()))
                        .as("what is drawn later")
                        .filteredOn(Mark.Stroke.class::isInstance)
                        .noneMatch(m -> ((Mark.Stroke) m)
                                .run().stream()
                                        .anyMatch(s -> Box.around(List.of(s.start(), s.end()))
                                                .overlaps(box)));
            }
        }
    }
}
