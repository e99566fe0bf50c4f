package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Box;
import easewright.geom.Point;
import easewright.print.ink.Mark;
import easewright.print.ink.Pencil;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Names on the map of the sheets keep clear of what is written there. */
class MapNamesTest {
    private static Mark.Writing written(String name, Box piece, List<Box> taken, List<Box> borders) {
        Pencil pencil = new Pencil();
        List<Point> corners = List.of(
                new Point(piece.minX(), piece.minY()),
                new Point(piece.maxX(), piece.minY()),
                new Point(piece.maxX(), piece.maxY()),
                new Point(piece.minX(), piece.maxY()));
        new MapNames(pencil, taken, borders).write(name, corners);
        return pencil.picture().marks().stream()
                .filter(Mark.Writing.class::isInstance)
                .map(Mark.Writing.class::cast)
                .findFirst()
                .orElseThrow();
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
            assertThat(piece.contains(name.at())).isTrue();
            assertThat(taken).noneMatch(box -> box.contains(name.at()));
        }
    }

    @Test
    void aNameInNobodysWayLiesInTheMiddle() {
        Box piece = new Box(10, 10, 60, 90);
        Mark.Writing name = written("Front", piece, List.of(), List.of());
        assertThat(name.at().distance(piece.centre())).isLessThan(5);
    }
}
