package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Point;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathParserTest {
    private static double length(String d) {
        return PathParser.parse(d).strokes(Affine.IDENTITY).stream()
                .flatMap(stroke -> stroke.path().segments().stream())
                .mapToDouble(segment -> segment.length())
                .sum();
    }

    private static Point end(String d) {
        List<Command> commands = PathParser.parse(d).commands();
        return commands.get(commands.size() - 1).end();
    }

    /** Closed forms of docs/sources.md 9. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            M0 0Q.5 0 1 1                    | 1.478942857544597433827906
            M0 0C.333333333333333333 0 .666666666666666667 .333333333333333333 1 1 | 1.478942857544597433827906
            M0 0q1 0 2 4                     | 4.646783762432935873382616
            M0 0C0 0 .333333333333333333 0 1 1 | 1.439709873371550400390736
            M0 0c0 1 1 1 1 0                 | 2
            M0 0C0 5 2 8 6 8                 | 11.34169308635022125296773
            """)
    void curvesHaveTheirClosedFormLength(String d, double expected) {
        assertThat(length(d)).isCloseTo(expected, within(1e-11));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            M0 0A5 5 0 0 1 8 0                       | 9.272952180016123
            M2 0A2 1 0 0 1-2 0A2 1 0 0 1 2 0z        | 9.688448220547676198428503
            M5 0A5 3 0 0 0-5 0A5 3 0 0 0 5 0z        | 25.52699886339812846617866
            M0 0A5 3 30 0 1 0 0                      | 0
            M10 10a5 5 0 0110 0                      | 15.707963267948966
            M10 20a5 5 0 1120 0                      | 31.415926535897932
            M0 0A0 5 0 0 1 10 0                      | 10
            M0 0A-5-5 0 0 1 10 0                     | 15.707963267948966
            M5 5A5 5 0 1 1 5 5                       | 0
            M0 0A1 1 0 0 1 10 0                      | 15.707963267948966
            M0 0a.5.5.5 00.5.5                       | 0.7853981633974483
            M0 0A5 5 0 1 1 5 5                       | 23.561944901923447
            M0 0A5 5 0 1 0 5 5                       | 23.561944901923447
            M0 0A5 5 0 0 0 5 5                       | 7.853981633974483
            """)
    void arcsHaveTheirClosedFormLength(String d, double expected) {
        assertThat(length(d)).isCloseTo(expected, within(5e-5));
    }

    @Test
    void arcSweepsToTheSideThatItsFlagsSay() {
        assertThat(firstEnd("M0 0A5 5 0 0 1 10 0").y()).isLessThan(-1);
        assertThat(firstEnd("M0 0A5 5 0 0 0 10 0").y()).isGreaterThan(1);
    }

    private static Point firstEnd(String data) {
        return PathParser.parse(data)
                .strokes(Affine.IDENTITY)
                .get(0)
                .path()
                .segments()
                .get(0)
                .end();
    }

    /** The cubics of an arc of 2 m radius keep within 1e-5 mm of the circle, and its parts grow with the scale. */
    @Test
    void arcsStayWithinTheToleranceAtEveryScale() {
        ParsedPath path = PathParser.parse("M2000 0A2000 2000 0 0 1 0 2000");
        double worst = 0;
        for (var segment : path.strokes(Affine.IDENTITY).get(0).path().segments()) {
            for (int i = 0; i <= 100; i++) {
                worst = Math.max(worst, Math.abs(segment.at(i / 100.0).norm() - 2000));
            }
        }
        assertThat(worst).isLessThan(1e-5);
        int inMm = path.commands().get(1).segments().size();
        int inMetres = PathParser.parse("M2 0A2 2 0 0 1 0 2", 1000)
                .commands()
                .get(1)
                .segments()
                .size();
        assertThat(inMetres).isEqualTo(inMm);
        assertThat(PathParser.parse("M2 0A2 2 0 0 1 0 2", 1).commands().get(1).segments())
                .hasSizeLessThan(inMm);
    }

    /** Oddities of the grammar. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            M.5.5L1-2        | 1    | -2
            M+1,+1l1e1-1E-1  | 11   | 0.9
            m1 1 2 2 3 3     | 6    | 6
            M1 1 2 2 3 3     | 3    | 3
            M0 0h10v10z      | 0    | 0
            M0 0h10v10zl1 2  | 1    | 2
            M5 5h10zm1 1     | 6    | 6
            M0 0H1 2 3V4 5   | 3    | 5
            M1 2,3,4         | 3    | 4
            M-.1e2.5e1L0-0   | 0    | 0
            """)
    void grammarIsReadInFull(String d, double x, double y) {
        assertThat(PathParser.parse(d).brokenAt()).isEmpty();
        assertThat(end(d).x()).isCloseTo(x, within(1e-12));
        assertThat(end(d).y()).isCloseTo(y, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            L5 5                   | 0 | 0
            M0 0 L NaN 5           | 1 | 7
            M0 0L5 5 L6            | 2 | 11
            M0 0L5 5 x             | 2 | 9
            M0 0L5 5,,6 6          | 2 | 8
            M0 0L5 5,              | 2 | 8
            M0 0a5 5 0 2 1 10 0    | 1 | 11
            M0 0L1e400 0           | 1 | 5
            M0 0 5.                | 1 | 6
            M0,0,L5 5              | 1 | 4
            """)
    void brokenDataKeepsTheGoodPart(String d, int commands, int brokenAt) {
        ParsedPath path = PathParser.parse(d);
        assertThat(path.commands()).hasSize(commands);
        assertThat(path.brokenAt()).hasValue(brokenAt);
    }

    @Test
    void smoothCurvesReflectOnlyTheirOwnKind() {
        assertThat(length("M0 0C0 5 5 5 5 0S10-5 10 0"))
                .isCloseTo(length("M0 0C0 5 5 5 5 0C5-5 10-5 10 0"), within(0d));
        assertThat(length("M0 0Q5 5 5 0S10-5 10 0")).isCloseTo(length("M0 0Q5 5 5 0C5 0 10-5 10 0"), within(0d));
        assertThat(length("M0 0Q2 5 5 0T10 0")).isCloseTo(length("M0 0Q2 5 5 0Q8-5 10 0"), within(0d));
        assertThat(length("M0 0L5 0T10 0")).isCloseTo(10, within(1e-12));
        assertThat(length("M0 0C0 5 5 5 5 0T10 0")).isCloseTo(length("M0 0C0 5 5 5 5 0L10 0"), within(1e-12));
    }

    @Test
    void commandsKnowTheirText() {
        String d = " M 1,2 3 4 c1 1 2 2 3 3 1 1 2 2 3 3Z l 5 5";
        List<Command> commands = PathParser.parse(d).commands();
        assertThat(commands)
                .extracting(c -> d.substring(c.from(), c.to()))
                .containsExactly("M 1,2", "3 4", "c1 1 2 2 3 3", "1 1 2 2 3 3", "Z", "l 5 5");
        assertThat(commands).extracting(Command::letter).containsExactly('M', 'L', 'c', 'c', 'Z', 'l');
        assertThat(commands).extracting(Command::subPath).containsExactly(0, 0, 0, 0, 0, 1);
        assertThat(commands.get(5).start()).isEqualTo(new Point(1, 2));
    }

    @Test
    void strokesFollowMovesAndClosings() {
        List<ParsedPath.Stroke> strokes =
                PathParser.parse("M0 0M1 1H2V2ZH5M7 7M0 9l1 0 0 0-1 0z").strokes(Affine.scaling(2, 2));
        assertThat(strokes).extracting(s -> s.path().closed()).containsExactly(true, false, true);
        assertThat(strokes)
                .extracting(ParsedPath.Stroke::commands)
                .containsExactly(List.of(2, 3, 4), List.of(5), List.of(8, 10));
        assertThat(strokes.get(0).path().segments().get(0).start()).isEqualTo(new Point(2, 2));
    }

    @Test
    void closingAcrossRoundingIsNoLine() {
        List<ParsedPath.Stroke> strokes =
                PathParser.parse("M0 0h.1h.1h.1v1h-.3v-1z").strokes(Affine.IDENTITY);
        assertThat(strokes.get(0).path().segments()).hasSize(6);
        assertThat(strokes.get(0).path().closed()).isTrue();
    }

    @Test
    void numbersRoundAsJavaRoundsThem() {
        for (String number : List.of(
                "0.1",
                "123.456789012",
                "1e-7",
                "9007199254740993",
                "0.000000000000000000000001",
                "3.14159265358979323846",
                "123456789012345678",
                "-.5",
                "+7")) {
            assertThat(end("M0 0L" + number + " 0").x()).isEqualTo(Double.parseDouble(number));
        }
    }

    /** Flattening is always short, by little at this flatness (docs/sources.md 9). */
    @Test
    void agreesWithFlattenedLength() {
        String d = "M12 7C40-9 77 120 31 88S-20 55 12 7Q50 50 90 3T140 0";
        Path2D path = new Path2D.Double();
        path.moveTo(12, 7);
        path.curveTo(40, -9, 77, 120, 31, 88);
        path.curveTo(-15, 56, -20, 55, 12, 7);
        path.quadTo(50, 50, 90, 3);
        path.quadTo(130, -44, 140, 0);
        double flat = 0;
        double[] at = new double[6];
        double x = 12;
        double y = 7;
        PathIterator steps = new FlatteningPathIterator(path.getPathIterator(null), 1e-6, 20);
        for (; !steps.isDone(); steps.next()) {
            if (steps.currentSegment(at) == PathIterator.SEG_LINETO) {
                flat += Math.hypot(at[0] - x, at[1] - y);
            }
            x = at[0];
            y = at[1];
        }
        assertThat(length(d)).isGreaterThanOrEqualTo(flat).isCloseTo(flat, within(1e-4));
    }
}
