package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.geom.Sketch;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lines are kept from picture to picture only where they would come out the same. */
class DrawnLinesTest {
    private final Random random = new Random(5);

    @Test
    void linesAreThoseOfTheViewAtEachPicture() {
        List<List<Segment>> all = List.of(blob(), blob(), blob(), blob());
        List<Viewport> views = List.of(new Viewport(1, 0, 0), new Viewport(1, 5, 0), new Viewport(0.3, 0, 40));
        DrawnLines kept = new DrawnLines();
        for (int picture = 0; picture < 200; picture++) {
            Viewport view = views.get(random.nextInt(views.size()));
            kept.begin(view);
            for (int i = 0; i < 3; i++) {
                List<Segment> asked = all.get(random.nextInt(all.size()));
                DrawnLine line = kept.along(asked).get(0);
                DrawnLine anew = DrawnLine.along(asked, view).get(0);
                for (int k = 0; k < 30; k++) {
                    Point at = new Point(random.nextInt(400) - 200, random.nextInt(400) - 200);
                    assertThat(line.surrounds(at)).isEqualTo(anew.surrounds(at));
                    assertThat(line.meets(at, 20, 8, 0.3)).isEqualTo(anew.meets(at, 20, 8, 0.3));
                }
            }
        }
    }

    @Test
    void aLineIsMadeOnceWhileItIsSeenFromOnePlace() {
        List<Segment> line = blob();
        DrawnLines kept = new DrawnLines();
        kept.begin(new Viewport(2, 1, 1));
        List<DrawnLine> made = kept.along(line);
        kept.begin(new Viewport(2, 1, 1));
        assertThat(kept.along(line)).isSameAs(made);
        kept.begin(new Viewport(2, 1, 2));
        assertThat(kept.along(line)).isNotSameAs(made);
    }

    private List<Segment> blob() {
        Outline outline = Sketch.randomBlob(random, 20, 150);
        return outline.segments();
    }
}
