package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Box;
import easewright.geom.Line;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The places of a label keep to what each kind of place promises, however its level lies. */
class LabelPlacesTest {
    private final Random random = new Random(8);

    private Line line(double steep) {
        Point from = new Point(random.nextDouble(300), random.nextDouble(300));
        return new Line(from, from.plus(new Point(60 + random.nextDouble(300), steep * (random.nextDouble(2) - 1))));
    }

    private LabelPlaces places(Line seen, Optional<Point> off) {
        return new LabelPlaces(random.nextBoolean(), 40 + random.nextDouble(60), 18, seen, off);
    }

    @Test
    void onItsLineALabelStaysClearOfBothEnds() {
        for (int round = 0; round < 200; round++) {
            LabelPlaces places = places(line(60), Optional.empty());
            Line seen = places.seen();
            assertThat(places.onLine().isEmpty()).isEqualTo(seen.length() <= places.width() + 12);
            for (Point middle : places.onLine()) {
                assertThat(seen.at(seen.nearest(middle)).distance(middle)).isCloseTo(0, within(1e-9));
                assertThat(Math.min(middle.distance(seen.start()), middle.distance(seen.end())))
                        .isGreaterThanOrEqualTo(places.width() / 2 + 6 - 1e-9);
            }
        }
    }

    @Test
    void offThePaperItStandsOnThatSideAlone() {
        for (Point off : List.of(new Point(0, -1), new Point(0, 1))) {
            LabelPlaces places = places(line(0), Optional.of(off));
            double y = places.seen().start().y();
            assertThat(places.offPaper())
                    .isNotEmpty()
                    .allSatisfy(p -> assertThat((p.y() - y) * off.y()).isGreaterThanOrEqualTo(9 + 6 - 1e-9));
            assertThat(places.onLine())
                    .as("the best first")
                    .startsWith(places.offPaper().get(0));
        }
        assertThat(places(line(0), Optional.empty()).offPaper()).isEmpty();
    }

    @Test
    void besideALevelLineItHidesNoneOfIt() {
        for (int round = 0; round < 50; round++) {
            LabelPlaces places = places(line(0), Optional.empty());
            assertThat(places.besideLine())
                    .allSatisfy(p -> assertThat(
                                    Math.abs(p.y() - places.seen().start().y()))
                            .isGreaterThan(places.height() / 2));
        }
    }

    @Test
    void leadersAreShortAndTheShortestComesFirst() {
        for (int round = 0; round < 50; round++) {
            LabelPlaces places = places(line(60), Optional.empty());
            Line seen = places.seen();
            List<Double> leaders = new ArrayList<>();
            for (Point middle : places.onLeader()) {
                Box plate = LabelRoom.around(middle, places.width(), places.height());
                leaders.add(plate.distance(seen.at(seen.nearest(middle))));
            }
            assertThat(leaders).isNotEmpty().isSorted().allMatch(pixels -> pixels <= 120);
        }
    }
}
