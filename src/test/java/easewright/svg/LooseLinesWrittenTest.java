package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines drawn as many lines are changed and written line by line. */
class LooseLinesWrittenTest {
    @ParameterizedTest
    @ValueSource(strings = {"", " transform='matrix(0.5 0.1 -0.1 0.5 3 7)'"})
    void aMovedCornerChangesOnlyTheLinesThatMeetThere(String transform) throws SvgProblem {
        SvgFile file = SvgFileTest.file("<g" + transform + ">" + LooseLinesTest.SIDES.replace("><", ">\r\n<") + "</g>");
        Piece piece = file.pattern().pieces().get(0);
        Pattern changed = SvgFileTest.moved(file.pattern(), 1, new Point(1.5, 0.25));
        byte[] written = file.write(changed);
        String text = SvgFileTest.text(written);
        assertThat(text)
                .contains("<polyline id='foot' points='110,210 60,215 10,210'/>\r\n<path id='left' d='M10 210V10'/>")
                .contains("<line id='top' x1='10' y1='10' x2='")
                .contains("<path id='right' d='M110 210C")
                .contains("ref=\"" + piece.id() + "\"");
        Outline again = SvgFile.read(written, "again").pattern().pieces().get(0).outline();
        Outline wanted = changed.pieces().get(0).outline();
        for (int i = 0; i < 5; i++) {
            assertThat(again.segments()
                            .get(i)
                            .end()
                            .distance(wanted.segments().get(i).end()))
                    .isLessThan(1e-6);
        }
        assertThat(again.segments().subList(2, 5))
                .isEqualTo(piece.outline().segments().subList(2, 5));
    }

    @Test
    void aClosedGapStaysInTheFileWhereNothingMoves() throws SvgProblem {
        SvgFile file = SvgFileTest.file(LooseLinesTest.SIDES.replace("x2='110' y2='10'", "x2='109.9' y2='10'"));
        byte[] written = file.write(SvgFileTest.moved(file.pattern(), 4, new Point(-2, 1)));
        assertThat(SvgFileTest.text(written)).contains("<line id='top' x1='10' y1='10' x2='109.9' y2='10'/>");
        assertThat(SvgFile.read(written, "again").pattern().pieces()).hasSize(1);
    }

    /** Outlines cut into lines of random length and direction, in random order, then changed at random. */
    @Test
    void whateverTheLinesTogetherTheyDrawTheChangedOutline() throws SvgProblem {
        Random random = new Random(20251);
        for (int round = 0; round < 120; round++) {
            List<Segment> outline = star(random);
            SvgFile file = SvgFileTest.file(cut(outline, random));
            assertThat(file.pattern().pieces()).as("round %d", round).hasSize(1);
            Piece piece = file.pattern().pieces().get(0);
            assertThat(Math.abs(piece.outline().signedArea()))
                    .isCloseTo(Math.abs(new Outline(outline).signedArea()), within(1e-6));
            Outline wanted = changed(piece.outline(), random);
            byte[] written;
            try {
                written = file.write(file.pattern().withPiece(piece.withOutline(wanted)));
            } catch (SvgProblem refused) {
                assertThat(refused.code()).isEqualTo("joined-not-writable");
                continue;
            }
            SvgFile again = SvgFile.read(written, "again");
            Outline now = again.pattern().pieces().get(0).outline();
            assertThat(now.signedArea()).isCloseTo(wanted.signedArea(), within(1e-3));
            assertThat(now.length()).isCloseTo(wanted.length(), within(1e-4));
            assertThat(again.write(again.pattern())).isEqualTo(written);
        }
    }

    private static List<Segment> star(Random random) {
        int n = 5 + random.nextInt(8);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            double r = 60 + random.nextInt(60);
            corners.add(new Point(
                    Math.rint((150 + r * Math.cos(angle)) * 100) / 100,
                    Math.rint((150 + r * Math.sin(angle)) * 100) / 100));
        }
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % n);
            segments.add(
                    random.nextBoolean()
                            ? new Line(a, b)
                            : new Cubic(
                                    a,
                                    a.towards(b, 0.25).plus(new Point(2, 1)),
                                    a.towards(b, 0.75).plus(new Point(1, 2)),
                                    b));
        }
        return segments;
    }

    private static String cut(List<Segment> outline, Random random) {
        List<String> lines = new ArrayList<>();
        int from = 0;
        while (from < outline.size()) {
            int most = from == 0 ? outline.size() - 1 : outline.size();
            int to = Math.min(most, from + 1 + random.nextInt(3));
            List<Segment> run = outline.subList(from, to);
            List<Segment> drawn = random.nextBoolean() ? run : JoinedOutline.reversed(run);
            StringBuilder d =
                    new StringBuilder("M" + Landing.exactPair(drawn.get(0).start()));
            drawn.forEach(s -> d.append(Landing.exactCommand(s)));
            lines.add("<path d='" + d + "'/>");
            from = to;
        }
        Collections.shuffle(lines, random);
        return String.join("\n", lines);
    }

    /** Moves corners, splits segments and replaces some, as alterations do. */
    private static Outline changed(Outline outline, Random random) {
        List<Segment> segments = new ArrayList<>(outline.segments());
        for (int edit = 0; edit < 3; edit++) {
            int i = random.nextInt(segments.size());
            Segment one = segments.get(i);
            if (random.nextInt(3) == 0) {
                segments.set(i, one.between(0, 0.5));
                segments.add(i + 1, one.between(0.5, 1));
            } else {
                Point to = one.end().plus(new Point(random.nextInt(5) - 2, random.nextInt(5) - 2));
                int next = (i + 1) % segments.size();
                segments.set(i, SvgFileTest.Bend.end(one, to));
                segments.set(next, SvgFileTest.Bend.start(segments.get(next), to));
            }
        }
        int turn = random.nextInt(segments.size());
        Collections.rotate(segments, turn);
        return new Outline(segments);
    }

    @Test
    void aLineThatWouldVanishIsRefused() throws SvgProblem {
        SvgFile file = SvgFileTest.file(LooseLinesTest.SIDES);
        Piece piece = file.pattern().pieces().get(0);
        List<Segment> s = piece.outline().segments();
        List<Segment> without =
                List.of(s.get(0), new Line(s.get(0).end(), s.get(4).start()), s.get(4));
        assertThatThrownBy(() -> file.write(file.pattern().withPiece(piece.withOutline(new Outline(without)))))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("joined-not-writable"));
    }

    /** What was said to be no piece is known by the ids of its lines, which they get where they have none. */
    @Test
    void noPieceHoldsOfLinesWithoutIds() throws SvgProblem {
        String body = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm' viewBox='0 0 400 400'>"
                + LooseLinesTest.SIDES.replaceAll(" id='[a-z]*'|id='[a-z]*' ?", " ")
                + "<path id='a' d='M200 0H290V80H200Z'/></svg>";
        SvgFile file = SvgFile.read(body.getBytes(java.nio.charset.StandardCharsets.UTF_8), "lines.svg");
        Piece joined = file.pattern().pieces().stream()
                .filter(p -> p.id().contains(" "))
                .findFirst()
                .orElseThrow();
        Pattern one = file.pattern()
                .withPieces(List.of(file.pattern().piece("a").orElseThrow()))
                .withNoPiece(joined.id());
        SvgFile again = SvgFile.read(file.write(one), "again.svg");
        assertThat(again.pattern().noPieces()).containsExactly(joined.id());
        assertThat(again.findings()).isEmpty();
        assertThat(again.drawn().outline(joined.id())).isPresent();
    }
}
