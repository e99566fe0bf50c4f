package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DrawnLineTest {
    private static final long SEED = 20261126;

    @Test
    void aLongLineIsMetWhereOneOfItsStepsIs() {
        Random random = new Random(SEED);
        int met = 0;
        for (int round = 0; round < 400; round++) {
            List<Point> corners = walk(random, 2 + random.nextInt(70));
            DrawnLine whole = DrawnLine.through(corners);
            Point middle = place(random);
            double turn = random.nextBoolean() ? 0 : random.nextDouble() * Math.PI;
            boolean one = false;
            for (int i = 1; i < corners.size(); i++) {
                one |= DrawnLine.through(corners.subList(i - 1, i + 1)).meets(middle, 40, 12, turn);
            }
            assertThat(whole.meets(middle, 40, 12, turn)).isEqualTo(one);
            met += one ? 1 : 0;
        }
        assertThat(met).isBetween(40, 360);
    }

    /** Also lines far longer than a square of the grid, and squares that share a bucket. */
    @Test
    void wordsAreClearOfLinesInAGridWhereTheyAreClearOfEachLine() {
        Random random = new Random(SEED);
        int clear = 0;
        for (int round = 0; round < 400; round++) {
            LaidLines laid = new LaidLines();
            List<DrawnLine> all = new ArrayList<>();
            for (int i = 0; i < 1 + round % 20; i++) {
                double size = round % 7 == 0 ? 40 : 1;
                List<Point> corners = walk(random, 1 + random.nextInt(40)).stream()
                        .map(p -> p.times(size))
                        .toList();
                all.add(DrawnLine.through(corners));
                laid.put(all.get(i));
                for (int k = 0; k < 5; k++) {
                    Point middle = place(random);
                    double turn = random.nextBoolean() ? 0 : random.nextDouble() * Math.PI;
                    double width = 100 * random.nextDouble();
                    boolean expected = all.stream().noneMatch(line -> line.meets(middle, width + 3, 15, turn));
                    assertThat(laid.isClear(middle, width, 12, turn)).isEqualTo(expected);
                    clear += expected ? 1 : 0;
                }
            }
        }
        assertThat(clear).isBetween(1000, 19_000);
    }

    @Test
    void aClosedLineSurroundsWhatLiesInIt() {
        Random random = new Random(SEED);
        int within = 0;
        for (int round = 0; round < 400; round++) {
            List<Point> corners = walk(random, 3 + random.nextInt(70));
            Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
            path.moveTo(corners.get(0).x(), corners.get(0).y());
            corners.forEach(c -> path.lineTo(c.x(), c.y()));
            path.closePath();
            Point at = place(random);
            assertThat(DrawnLine.through(corners).surrounds(at)).isEqualTo(path.contains(at.x(), at.y()));
            within += path.contains(at.x(), at.y()) ? 1 : 0;
        }
        assertThat(within).isBetween(40, 360);
    }

    private static List<Point> walk(Random random, int count) {
        List<Point> corners = new ArrayList<>(List.of(place(random)));
        while (corners.size() < count) {
            Point last = corners.get(corners.size() - 1);
            corners.add(last.plus(new Point(random.nextGaussian() * 40, random.nextGaussian() * 40)));
        }
        return corners;
    }

    private static Point place(Random random) {
        return new Point(random.nextDouble() * 200, random.nextDouble() * 200);
    }
}
