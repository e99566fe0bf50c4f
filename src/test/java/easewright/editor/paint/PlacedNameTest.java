package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javafx.scene.canvas.Canvas;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxToolkit;

/** All names of one table are in letters of one size, but for pieces that have room for the lowest alone. */
class PlacedNameTest {
    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 0 0, 0",
        "1, 1 1, 1",
        "0, 0 1 0, 1",
        "0, 0 2 0, 0",
        "0, 1 2 0 0, 1",
        "0, 2 2 0, 2",
        "1, 2 2 2, 2",
        "1, '', 1"
    })
    void theSmallestThatCanBearThemSetsTheSize(int first, String sizes, int common) {
        NameLetters letters = new NameLetters(new Canvas(9, 9).getGraphicsContext2D(), Ink.LIGHT, false, 99);
        List<PlacedName> names = Arrays.stream(sizes.split(" "))
                .filter(size -> !size.isEmpty())
                .map(size -> NameSetting.alone("Front", Integer.parseInt(size), true))
                .map(way -> new PlacedName(way, Point.ORIGIN, 0, letters))
                .toList();
        assertThat(PlacedName.common(first, names)).isEqualTo(common);
    }

    /** In smaller letters a name says the same, and lies within the place it had. Seed 7. */
    @Test
    void smallerLettersHaveRoomInTheSamePlace() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            String name = "Sleeve of the upper left part".substring(0, 2 + random.nextInt(27));
            String below = random.nextBoolean() ? "cut 2" : "cut 1 on the fold";
            int size = random.nextInt(NameSetting.SMALLEST);
            NameSetting way = switch (random.nextInt(3)) {
                case 0 -> NameSetting.above(name, below, size);
                case 1 -> NameSetting.beside(name, below, size);
                default -> NameSetting.rows(List.of(name, "12"), List.of(below), size, true);
            };
            for (int lower = size + 1; lower <= NameSetting.SMALLEST; lower++) {
                NameSetting smaller = way.smaller(lower);
                assertThat(smaller.words()).isEqualTo(way.words());
                assertThat(smaller.size()).isEqualTo(lower);
                assertThat(smaller.high()).isLessThan(way.high());
                for (NameSetting.Row row : smaller.rows()) {
                    double half = Ruler.width(row.words(), row.font()) / 2;
                    assertThat(Math.abs(row.x()) + half).as(name).isLessThanOrEqualTo(way.wide() / 2 + 1e-6);
                    assertThat(row.font().getSize())
                            .isLessThanOrEqualTo(way.rows().get(0).font().getSize());
                }
            }
        }
    }
}
