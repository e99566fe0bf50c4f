package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelRoomTest {
    /** Whatever is asked for, what was granted never overlaps. */
    @Test
    void noWordsAreWrittenOverOthers() {
        Random random = new Random(41);
        for (int round = 0; round < 200; round++) {
            LabelRoom room = new LabelRoom();
            List<Box> granted = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                Point at = new Point(random.nextDouble(400), random.nextDouble(300));
                Box box = LabelRoom.around(at, 10 + random.nextDouble(80), 12, random.nextDouble(6));
                if (room.take(box)) {
                    assertThat(granted).noneMatch(box::overlaps);
                    granted.add(box);
                } else {
                    assertThat(granted).anyMatch(box::overlaps);
                }
            }
        }
    }

    private static DrawnLine line(double... xy) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Point(xy[i], xy[i + 1]));
        }
        return DrawnLine.through(corners);
    }

    @Test
    void theFirstPlaceClearOfLinesIsTakenAndElseTheFirstClearOfWords() {
        LabelRoom room = new LabelRoom();
        room.put(line(0, 50, 100, 50));
        List<Point> middles = List.of(new Point(50, 50), new Point(50, 55), new Point(50, 80));
        assertThat(room.take(middles, 40, 14)).contains(new Point(50, 80));
        assertThat(room.above().take(middles, 40, 14)).contains(new Point(50, 50));
        assertThat(room.takeClear(middles, 40, 14)).isEmpty();
        assertThat(room.crossed()).isEmpty();
        assertThat(room.take(middles, 40, 14)).contains(new Point(50, 50));
        assertThat(room.crossed()).containsExactly(LabelRoom.around(new Point(50, 50), 40, 14));
        assertThat(room.take(middles, 40, 14)).isEmpty();
    }

    @Test
    void aSlantingLineTakesNoMoreThanItsSurroundings() {
        LabelRoom room = new LabelRoom();
        room.put(line(0, 0, 200, 200));
        assertThat(room.takeClear(new Point(150, 40), 60, 12)).isTrue();
        assertThat(room.takeClear(new Point(100, 100), 60, 12)).isFalse();
    }

    /** Beside a slanting line there is room for words that slant as it does. */
    @Test
    void turnedWordsStandAlongALine() {
        LabelRoom room = new LabelRoom();
        room.put(line(0, 0, 200, 200));
        Point beside = new Point(100 + 10, 100 - 10);
        assertThat(room.takeClear(beside, 60, 12)).isFalse();
        assertThat(room.takeClear(beside, 60, 12, Math.PI / 4)).isTrue();
    }

    @Test
    void nothingIsPlacedWhereItIsNotSeen() {
        LabelRoom room = new LabelRoom(new Box(0, 0, 100, 80));
        List<Point> middles = List.of(new Point(10, 40), new Point(50, 78), new Point(50, 40));
        assertThat(room.take(middles, 40, 14)).contains(new Point(50, 40));
        assertThat(room.take(List.of(new Point(200, 40)), 40, 14)).isEmpty();
        assertThat(room.view().spread(new Box(60, -500, 600, 500), 2, 2, new Point(-9, -9)))
                .hasSize(5)
                .allMatch(p -> p.x() > 60 && p.x() < 100 && p.y() > 0 && p.y() < 80);
    }

    /** What was granted as clear has no place of a line within it, however both lie. */
    @Test
    void clearWordsMeetNoLine() {
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            LabelRoom room = new LabelRoom();
            Point from = new Point(random.nextDouble(200), random.nextDouble(200));
            Point to = new Point(random.nextDouble(200), random.nextDouble(200));
            room.put(DrawnLine.through(List.of(from, to)));
            Point at = new Point(random.nextDouble(200), random.nextDouble(200));
            double wide = 10 + random.nextDouble(60);
            double turn = random.nextDouble(7);
            Point along = new Point(Math.cos(turn), Math.sin(turn));
            boolean met = false;
            for (int i = 0; i <= 400; i++) {
                Point away = from.towards(to, i / 400.0).minus(at);
                met |= Math.abs(away.dot(along)) < wide / 2 && Math.abs(away.dot(along.quarterTurned())) < 6;
            }
            boolean clear = room.takeClear(at, wide, 12, turn);
            assertThat(clear && met).as("round %d", round).isFalse();
        }
    }
}
