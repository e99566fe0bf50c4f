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

    @Test
    void theFirstPlaceWithRoomIsTaken() {
        LabelRoom room = new LabelRoom();
        room.putLine(new Point(0, 50), new Point(100, 50));
        List<Point> middles = List.of(new Point(50, 50), new Point(50, 55), new Point(50, 80));
        assertThat(room.take(middles, 40, 14)).contains(new Point(50, 80));
        assertThat(room.take(middles, 40, 14)).isEmpty();
        assertThat(room.above().take(middles, 40, 14)).isEmpty();
    }

    @Test
    void aSlantingLineTakesNoMoreThanItsSurroundings() {
        LabelRoom room = new LabelRoom();
        room.putLine(new Point(0, 0), new Point(200, 200));
        assertThat(room.take(LabelRoom.around(new Point(150, 40), 60, 12))).isTrue();
        assertThat(room.take(LabelRoom.around(new Point(100, 100), 60, 12))).isFalse();
    }
}
