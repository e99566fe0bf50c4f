package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SvgFileTest {
    private static final String HEAD = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"400mm\" height=\"400mm\""
            + " viewBox=\"0 0 400 400\">\n";

    static SvgFile file(String body) throws SvgProblem {
        return SvgFile.read((HEAD + body + "\n</svg>\n").getBytes(StandardCharsets.UTF_8), "test.svg");
    }

    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The pattern with one corner of its only piece moved, and the controls next to it with it. */
    static Pattern moved(Pattern pattern, int corner, Point by) {
        Piece piece = pattern.pieces().get(0);
        List<Segment> segments = new ArrayList<>(piece.outline().segments());
        Point from = segments.get(corner).start();
        Point to = from.plus(by);
        int before = (corner + segments.size() - 1) % segments.size();
        segments.set(before, Bend.end(segments.get(before), to));
        segments.set(corner, Bend.start(segments.get(corner), to));
        return pattern.withPiece(piece.withOutline(new Outline(segments)));
    }

    @Test
    void anEqualPatternGivesTheSameBytes() throws SvgProblem {
        SvgFile file = file("<path id='a' d='M10,10h100v100H10z'/>");
        assertThat(file.write(file.pattern())).isEqualTo(file.bytes());
        assertThat(file.marked()).isFalse();
    }

    /** Loose ticks are brought to the scale of the table by multiplying, which gives other last bits than reading does. */
    @Test
    void aLineThatIsWhereItIsDrawnIsNotWrittenAnewForItsLastBits() throws SvgProblem {
        String tick = "M2296.06,2542.68 L2296.06,2528.5 M680.31,2542.68 C680.4,2540.1 680.5,2530.2 680.31,2528.5";
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 2523 3260'>"
                + "<path id='a' d='M113.39,2310.24 H2409.45 V2537.01 H113.39 Z'/><path id='tick' d='" + tick
                + "'/></svg>";
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "test.svg");
        double unit = 0.352777778;
        Pattern scaled = file.atScale(file.pattern(), unit, false);
        double more = unit / file.pattern().scale().mmPerUnitX();
        Piece piece = scaled.pieces().get(0);
        List<Rider> riders = file.loose(scaled).stream()
                .map(r -> r.withSegments(r.segments().stream()
                        .map(s -> s.transformed(Affine.scaling(more, more)))
                        .toList()))
                .toList();
        Pattern given =
                scaled.withPiece(piece.toBuilder().name("Band").riders(riders).build());
        assertThat(riders).hasSize(2);
        SvgFile.Written written = file.writing(given);
        assertThat(written.redrawn()).isEmpty();
        assertThat(text(written.bytes())).contains("d='" + tick + "'");
        Rider nudged = riders.get(0)
                .withSegments(riders.get(0).segments().stream()
                        .map(s -> s.transformed(Affine.translation(new Point(1e-4, 0))))
                        .toList());
        assertThat(file.writing(scaled.withPiece(piece.toBuilder()
                                .name("Band")
                                .riders(List.of(nudged))
                                .build()))
                        .redrawn())
                .containsExactly("Band");
    }

    @Test
    void aTestSquareIsCalledByTheWordsWrittenOnIt() throws SvgProblem {
        String words = "<text x='35' y='60' font-size='8'>10 cm</text><text x='210' y='160' font-size='8'>10 cm</text>";
        SvgFile file = file("<path d='M10,10h100v100h-100z'/><path d='M200,10h100v300h-100z'/>" + words);
        assertThat(file.pattern().pieces()).extracting(Piece::name).containsExactly("10 cm", "Piece 2");
    }

    @Test
    void onlyTheMovedCornerIsRewritten() throws SvgProblem {
        SvgFile file = file("<path id='a' fill='red'\n d='M 10,10 L 110,10 L 110,110\tL 10,110 Z' />");
        String written = text(file.write(moved(file.pattern(), 1, new Point(2.5, -1))));
        assertThat(written).contains("<path id='a' fill='red'\n d='M 10,10 L112.5 9 L110 110\tL 10,110 Z' />");
    }

    @Test
    void aTracedOutlineWhoseEndsDoNotQuiteMeetStaysAsDrawnUntilThatCornerMoves() throws SvgProblem {
        SvgFile file = file("<path id='a' d='M10,10 L110,10 L110,110 L10,110 L10,10.9'/>");
        assertThat(file.write(file.pattern())).isEqualTo(file.bytes());
        for (int corner = 0; corner < 4; corner++) {
            Pattern changed = moved(file.pattern(), corner, new Point(2.5, -1));
            byte[] written = file.write(changed);
            assertThat(text(written)).as("corner %s", corner).contains(corner == 0 ? "12.5 9" : "M10,10 ");
            Outline again =
                    SvgFile.read(written, "again.svg").pattern().pieces().get(0).outline();
            Outline wanted = changed.pieces().get(0).outline();
            assertThat(again.segments()).hasSameSizeAs(wanted.segments());
            for (Segment side : wanted.segments()) {
                assertThat(again.nearest(side.start()).distance()).isLessThan(1e-6);
            }
            assertThat(again.length()).isCloseTo(wanted.length(), within(1e-6));
        }
    }

    @Test
    void marksAreAddedOnceAndReadBack() throws SvgProblem {
        SvgFile file = file("<path d='M10,10h100v100H10z'/>");
        Piece bare = file.pattern().pieces().get(0);
        Pattern marked = file.pattern()
                .withPiece(bare.withEdges(
                        List.of(Edge.of("side", EdgeRole.SEAM, new Point(110, 10), new Point(110, 110)))));
        byte[] once = file.write(marked);
        assertThat(text(once)).contains("<path id=\"" + bare.id() + "\" d='M10,10h100v100H10z'/>");
        SvgFile again = SvgFile.read(once, "again.svg");
        assertThat(again.marked()).isTrue();
        assertThat(again.pattern()).isEqualTo(marked);
        assertThat(again.findings()).isEmpty();
        assertThat(again.write(marked)).isEqualTo(once);
        byte[] named = again.write(marked.withPiece(marked.pieces().get(0).withName("Front & back")));
        assertThat(SvgFile.read(named, "n").pattern().pieces().get(0).name()).isEqualTo("Front & back");
        assertThat(text(named).split("<metadata>")).hasSize(2);
    }

    @Test
    void aRectangleThatBendsBecomesAPath() throws SvgProblem {
        SvgFile file = file("<g transform='translate(5 5)'><rect id='r' class='x' x='0' y='0' width='100' height='50'"
                + "><title>Front</title></rect></g>");
        Pattern changed = moved(file.pattern(), 2, new Point(3, 0));
        String written = text(file.write(changed));
        assertThat(written)
                .contains("<path d=\"M0 0 L100 0 L103 50 L0 50 Z\" id='r' class='x'><title>Front</title></path>");
        assertThat(file.writing(changed).consequences())
                .singleElement()
                .matches(f -> f.code().equals("shape-becomes-path"));
        assertThat(file.writing(changed).redrawn()).containsExactly("Front");
        assertThat(file.writing(file.pattern()).redrawn()).isEmpty();
        Pattern entered = file.pattern().withGarment("skirt");
        assertThat(file.writing(entered).redrawn()).as("what is only entered").isEmpty();
    }

    @Test
    void aPolygonKeepsItsOtherCorners() throws SvgProblem {
        SvgFile file = file("<polygon id='p' points='10.0,10.0 110.0,10.0\r\n110.00,110 10,110.0' />");
        assertThat(text(file.write(moved(file.pattern(), 2, new Point(0.25, 0)))))
                .contains("points='10.0,10.0 110.0,10.0\r\n110.25,110 10,110.0' />");
    }

    @Test
    void aRiderOfTheSameElementMovesAlone() throws SvgProblem {
        SvgFile file = file("<path id='p' d='m10 10h200v200h-200zm50 50l20 0 0 20zm 100 0 l 10 0 0 10z'/>");
        Piece piece = file.pattern().pieces().get(0);
        assertThat(piece.riders()).extracting(Rider::id).containsExactly("p#1", "p#2");
        Rider hole = piece.riders().get(0);
        Rider shifted = hole.withSegments(hole.segments().stream()
                .map(s -> s.transformed(Affine.translation(1, 2)))
                .toList());
        Pattern changed = file.pattern()
                .withPiece(piece.toBuilder()
                        .riders(List.of(shifted, piece.riders().get(1)))
                        .build());
        byte[] written = file.write(changed);
        assertThat(text(written)).contains("d='m10 10h200v200h-200zM61 62L81 62 L81 82zM160 60 l 10 0 0 10z'");
        assertThat(SvgFile.read(written, "w").pattern().pieces().get(0).riders())
                .isEqualTo(changed.pieces().get(0).riders());
    }

    @Test
    void aCopyCannotBeChanged() throws SvgProblem {
        SvgFile file = file("<defs><path id='a' d='M10,10h100v100H10z'/></defs><use id='u' href='#a'/>");
        Pattern changed = moved(file.pattern(), 1, new Point(1, 0));
        assertThatThrownBy(() -> file.write(changed))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isEqualTo("shape-not-editable"));
    }

    /** Segments with another end, controls going along. */
    static final class Bend {
        private Bend() {}

        static Segment end(Segment s, Point to) {
            if (s instanceof Cubic c) {
                return new Cubic(c.start(), c.control1(), c.control2().plus(to.minus(c.end())), to);
            }
            return new Line(s.start(), to);
        }

        static Segment start(Segment s, Point to) {
            return end(s.reversed(), to).reversed();
        }
    }
}
