package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.editor.paint.TableScene;
import easewright.geom.Outline;
import easewright.geom.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each of the lines that lie over each other says of which size it is. */
class SizeTagsTest {
    private static SizeTags.Sized sized(String size, double wide) {
        return new SizeTags.Sized(
                size,
                Outline.polygon(List.of(new Point(0, 0), new Point(wide, 0), new Point(wide, 300), new Point(0, 300))));
    }

    private static final List<SizeTags.Sized> NEST = List.of(sized("36", 186), sized("38", 188), sized("40", 190));

    @Test
    void aTagStandsOnTheLineOfItsSizeAndOfNoOther() {
        List<TableScene.SizeTag> tags = SizeTags.of(NEST);
        assertThat(tags).extracting(TableScene.SizeTag::size).containsExactly("36", "38", "40");
        for (int i = 0; i < tags.size(); i++) {
            for (int k = 0; k < NEST.size(); k++) {
                double apart = NEST.get(k).outline().nearest(tags.get(i).at()).distance();
                assertThat(apart).isCloseTo(2.0 * Math.abs(i - k), within(1e-9));
            }
            assertThat(tags.get(i).outward().x()).as("off the piece").isCloseTo(1, within(1e-9));
        }
    }

    /** Their words would stand in each other. */
    @Test
    void tagsOfLinesSideBySideStandBelowEachOther() {
        List<TableScene.SizeTag> tags = SizeTags.of(NEST);
        for (int i = 1; i < tags.size(); i++) {
            assertThat(tags.get(i).at().y() - tags.get(i - 1).at().y()).isGreaterThan(40);
        }
    }

    @Test
    void whatCannotBeToldApartHasNoTag() {
        assertThat(SizeTags.of(List.of(sized("36", 186), sized("38", 186)))).isEmpty();
    }
}
