package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Box;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Lengths and boxes of 360 shapes by two independent general programs: fontTools 4.38.0 (lengths of the paths by its
 * perimeter pen to 1e-7 where it can; it puts cubics over a quarter turn in place of arcs) and Inkscape 1.2.2 (boxes of everything,
 * through transforms, inner drawings and the page's scale; printed with six digits, arcs as in fontTools).
 * {@link ComparisonShapes} says how the figures were made.
 */
class ComparisonTest {
    private static final Path FOLDER = Path.of("src/test/resources/comparison");
    private static final double MM_PER_UNIT = 0.5;

    /** One cubic over a quarter turn strays by 2.7e-4 of the radius, and more where the ellipse is long. */
    private static final double ARC_MM = 0.2;

    private static final double LENGTH_MM = 1e-5;

    /** Half of the last of six digits. */
    private static final double BOX_MM = 0.0014;

    private static Drawing drawing() throws Exception {
        return DrawingReader.read(Files.readAllBytes(FOLDER.resolve("shapes.svg")), "shapes.svg");
    }

    private static List<String[]> rows(String file, String separator) throws IOException {
        return Files.readAllLines(FOLDER.resolve(file)).stream()
                .map(line -> line.split(separator))
                .toList();
    }

    @Test
    void lengthsAgree() throws Exception {
        Drawing drawing = drawing();
        List<String[]> rows = rows("lengths.tsv", "\t");
        assertThat(rows).hasSize(ComparisonShapes.PATHS);
        for (String[] row : rows) {
            double theirs = Double.parseDouble(row[1]) * MM_PER_UNIT;
            double ours = Drawn.length(drawing.shape(row[0]).orElseThrow());
            assertThat(ours).as(row[0]).isCloseTo(theirs, within(holdsArc(row[0]) ? ARC_MM : LENGTH_MM));
        }
    }

    @Test
    void boxesAgree() throws Exception {
        Drawing drawing = drawing();
        int compared = 0;
        for (String[] row : rows("boxes.csv", ",")) {
            if (!row[0].matches("[ps]\\d+")) {
                continue;
            }
            Box box = Drawn.box(drawing.shape(row[0]).orElseThrow());
            double[] ours = {box.minX(), box.minY(), box.width(), box.height()};
            for (int i = 0; i < 4; i++) {
                double theirs = Double.parseDouble(row[i + 1]) * 25.4 / 96;
                assertThat(ours[i])
                        .as("%s, %d", row[0], i)
                        .isCloseTo(theirs, within(holdsArc(row[0]) ? ARC_MM : BOX_MM));
            }
            compared++;
        }
        assertThat(compared).isEqualTo(ComparisonShapes.PATHS + ComparisonShapes.OTHERS);
    }

    private static boolean holdsArc(String id) throws IOException {
        String sheet = Files.readString(FOLDER.resolve("shapes.svg"));
        int at = sheet.indexOf("id=\"" + id + "\"");
        return sheet.substring(at, sheet.indexOf("/>", at)).matches("(?s).*( d=\"[^\"]*[aA]| r=| rx=).*");
    }
}
