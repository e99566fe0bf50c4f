package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line left open becomes an outline when somebody says so, and the drawing then shows it. */
class OpenOutlineTest {
    private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg' width='600mm' height='400mm'"
            + " viewBox='0 0 600 400'>\n%s<path id='other' d='m300 10h100v90h-100z'/>\n</svg>\n";

    private static SvgFile open(String body) throws SvgProblem {
        return SvgFile.read(SVG.formatted(body).getBytes(StandardCharsets.UTF_8), "open.svg");
    }

    private static Piece closed(SvgFile file, String id) {
        List<Segment> segments = new ArrayList<>(file.loose(file.pattern()).stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow()
                .segments());
        segments.add(new Line(
                segments.get(segments.size() - 1).end(), segments.get(0).start()));
        return Piece.bare(id, new Outline(segments));
    }

    private static Pattern with(Pattern pattern, Piece piece) {
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        pieces.add(piece);
        return pattern.withPieces(pieces);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<path id='o' d='M50,50 L250,50 L250,350 L50,350 L50,70'/>",
                "<path id='o' d='m50 50h200v300H50V70m-20-60h5'/>",
                "<path id='o' d='m50 50 c40 10 100 10 200 0v300H50V70'/>",
                "<g transform='rotate(3) scale(2)'><path id='o' d='m25 25 c20 5 50 5 100 0v150H25V35'/></g>",
                "<polyline id='o' points='50,50 250,50 250,350 50,350 50,70'/>"
            })
    void aStraightLineClosesIt(String drawn) throws SvgProblem {
        SvgFile file = open(drawn);
        Finding finding = file.findings().stream()
                .filter(f -> f.code().equals("outline-open"))
                .findFirst()
                .orElseThrow();
        String id = (String) finding.values().get("id");
        assertThat(file.pattern().pieces()).extracting(Piece::id).containsExactly("other");
        Piece piece = closed(file, id);
        Pattern pattern = with(file.pattern(), piece);
        assertThat(file.loose(pattern)).noneMatch(r -> r.id().equals(id));
        SvgFile.Written written = file.writing(pattern);
        assertThat(written.consequences()).extracting(Finding::code).containsExactly("outline-closed-by-line");
        SvgFile again = SvgFile.read(written.bytes(), "again.svg");
        assertThat(again.findings()).isEmpty();
        assertThat(again.pattern().piece(id).orElseThrow().outline()).isEqualTo(piece.outline());
        String text = new String(written.bytes(), StandardCharsets.UTF_8);
        String data = drawn.replaceAll("(?s).*(?: d|points)='([^'-]*).*", "$1").replaceAll("m$", "");
        assertThat(text).as("all that was drawn keeps its text").contains("'" + data);
        assertThat(text).contains("<path id='other' d='m300 10h100v90h-100z'/>");
        assertThat(again.write(again.pattern())).isEqualTo(written.bytes());
    }

    @Test
    void altered() throws SvgProblem {
        SvgFile file = open("<path id='o' d='M50,50 L250,50 L250,350 L50,350 L50,70'/>");
        Piece piece = closed(file, "o");
        List<Segment> wider = new ArrayList<>();
        for (Segment segment : piece.outline().segments()) {
            wider.add(new Line(wide(segment.start()), wide(segment.end())));
        }
        // From another corner, as an alteration may leave it.
        wider.add(wider.remove(0));
        Piece altered = piece.withOutline(new Outline(wider));
        SvgFile again = SvgFile.read(file.write(with(file.pattern(), altered)), "again.svg");
        assertThat(again.pattern().piece("o").orElseThrow().outline().box().maxX())
                .isCloseTo(260, within(1e-6));
        assertThat(again.findings()).isEmpty();
    }

    private static Point wide(Point p) {
        return p.x() > 100 ? p.plus(new Point(10, 0)) : p;
    }

    /** Marks alone do not close anything: somebody may have opened the outline since. */
    @Test
    void marksOfALineThatIsOpenNowAreTold() throws SvgProblem {
        SvgFile file = open("<path id='o' d='M50,50 L250,50 L250,350 L50,350 L50,70'/>");
        byte[] written = file.write(with(file.pattern(), closed(file, "o")));
        String reopened = new String(written, StandardCharsets.UTF_8).replace("L50,70Z", "L50,70");
        SvgFile again = SvgFile.read(reopened.getBytes(StandardCharsets.UTF_8), "again.svg");
        assertThat(again.findings()).extracting(Finding::code).contains("mark-not-closed", "outline-open");
    }

    @Test
    void itIsCalledByTheWordsOnIt() throws SvgProblem {
        SvgFile file = open("<path id='o' d='M50,50 L250,50 L250,350 L50,350 L50,70'/><text x='90' y='90'>Back</text>");
        assertThat(file.findings()).extracting(Finding::piece).containsExactly("Back");
    }

    @Test
    void calibratedFirst() throws SvgProblem {
        SvgFile file = SvgFile.read(
                "<svg xmlns='http://www.w3.org/2000/svg'><path id='o' d='M50 50H750V950H50V90'/></svg>"
                        .getBytes(StandardCharsets.UTF_8),
                "px.svg");
        Pattern pattern = with(file.pattern(), closed(file, "o"));
        Pattern scaled = file.atScale(pattern, 0.3, false);
        assertThat(scaled.piece("o").orElseThrow().outline().box().width()).isCloseTo(210, within(1e-9));
        String text = new String(file.write(scaled), StandardCharsets.UTF_8);
        assertThat(text).contains("M50 50H750V950H50V90Z");
    }
}
