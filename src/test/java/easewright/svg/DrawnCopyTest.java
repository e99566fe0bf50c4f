package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Replay;
import easewright.alter.Scope;
import easewright.alter.SeamChange;
import easewright.alter.Within;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Side;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The mirror image of a piece is drawn as an element of its own, whatever the first one is. */
class DrawnCopyTest {
    private static final String HEAD =
            "<svg xmlns='http://www.w3.org/2000/svg' width='800mm' height='800mm'" + " viewBox='0 0 800 800'>\n";

    private static Pattern marked(SvgFile file) {
        Piece bare = file.pattern().pieces().get(0);
        Outline outline = bare.outline();
        var box = outline.box();
        Point leftTop = new Point(box.minX(), box.minY());
        Point rightTop = new Point(box.maxX(), box.minY());
        Point rightBottom = new Point(box.maxX(), box.maxY());
        Point leftBottom = new Point(box.minX(), box.maxY());
        boolean clockwise = outline.signedArea() > 0;
        Piece piece = bare.toBuilder()
                .cut(2, false)
                .edges(List.of(
                        clockwise
                                ? Edge.of("side", EdgeRole.SEAM, rightTop, rightBottom)
                                : Edge.of("side", EdgeRole.SEAM, rightBottom, rightTop),
                        clockwise
                                ? Edge.of("centre", EdgeRole.CENTRE, leftBottom, leftTop)
                                : Edge.of("centre", EdgeRole.CENTRE, leftTop, leftBottom)))
                .levels(List.of(LevelMark.through("hip", box.centre())))
                .build();
        return file.pattern().withPieces(List.of(piece)).withLevels(List.of(Level.of("hip", LevelKind.HIP)));
    }

    private static Pattern changed(Pattern pattern, Side side) throws Exception {
        return Within.of(new Scope(Optional.empty(), side), SeamChange.at("hip", 12))
                .apply(pattern)
                .pattern();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<path id='p' class='c' style=\"fill:none;stroke:red\" d='M100 100h150v300h-150z'/>",
                "<rect id='p' x='100' y='100' width='150' height='300' fill=\"none\"/>",
                "<polygon id='p' points='100,100 250,100 250,400 100,400'/>",
                "<g transform='translate(40 10) rotate(90) scale(2)'>"
                        + "<path id='p' transform='scale(.5)' d='M100 -100h150v-300h-150z'><title>P</title></path></g>",
                "<path id='p' d='M100 100h150v300h-150z M150 150h20v20h-20z'/>",
                "<path id='a' fill='none' d='M100 100h150v300'/><path id='b' fill='none' d='M250 400h-150v-300'/>"
            })
    void whateverIsDrawnIsCopiedAndReadBack(String shape) throws Exception {
        byte[] bytes = (HEAD + "  " + shape + "\n</svg>\n").getBytes(StandardCharsets.UTF_8);
        SvgFile file = SvgFile.read(bytes, "p.svg");
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Pattern after = changed(marked(file), side);
            byte[] written = file.write(after);
            SvgFile again = SvgFile.read(written, "again.svg");
            assertThat(again.findings()).isEmpty();
            assertThat(again.pattern().pieces()).hasSize(2);
            for (Piece wanted : after.pieces()) {
                Piece is = again.pattern().pieces().stream()
                        .filter(p -> p.side() == wanted.side())
                        .findFirst()
                        .orElseThrow();
                assertThat(Math.abs(is.outline().signedArea()))
                        .isCloseTo(Math.abs(wanted.outline().signedArea()), within(1e-3));
                assertThat(is.outline().box().minX())
                        .isCloseTo(wanted.outline().box().minX(), within(1e-5));
                assertThat(is.outline().box().maxY())
                        .isCloseTo(wanted.outline().box().maxY(), within(1e-5));
            }
            assertThat(again.write(again.pattern())).isEqualTo(written);
            // A change of a file that holds the copy already moves it and adds none.
            Pattern more = changed(again.pattern(), side);
            assertThat(SvgFile.read(again.write(more), "more.svg").drawing().all())
                    .hasSameSizeAs(again.drawing().all());
        }
    }

    /** The file still holds it until it is saved; who looks at the drawing meanwhile is not to see it as something left over. */
    @Test
    void aCopyThatIsTakenBackIsNoLooseLineAndNotSeen() throws Exception {
        String svg = HEAD + "  <path id='p' d='M100 100h150v300h-150z'/>\n</svg>\n";
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "p.svg");
        SvgFile held = SvgFile.read(file.write(changed(marked(file), Side.RIGHT)), "again.svg");
        Pattern now = held.pattern();
        Pattern back = new Replay(now, List.of()).to(List.of());
        assertThat(back.pieces()).hasSize(1);
        assertThat(held.spare(now)).isEmpty();
        assertThat(held.spare(back)).containsExactly("p-left");
        assertThat(held.loose(back)).isEmpty();
        assertThat(ShownIds.of(held, "", held.spare(now))).contains("p", "p-left");
        assertThat(ShownIds.of(held, "", held.spare(back))).contains("p").doesNotContain("p-left");
        assertThat(new String(held.write(back), StandardCharsets.UTF_8)).doesNotContain("p-left");
    }

    @Test
    void theCopyLooksLikeTheFirstAndStandsBehindIt() throws Exception {
        String svg = HEAD
                + "  <g stroke='blue'>\n    <path id='p' class='c' style=\"fill:none\" d='M100 100h150v300h-150z'/>\n"
                + "    <circle cx='9' cy='9' r='2'/>\n  </g>\n</svg>\n";
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "p.svg");
        String written = new String(file.write(changed(marked(file), Side.LEFT)), StandardCharsets.UTF_8);
        assertThat(written)
                .containsPattern(
                        "(?s)<path id='p'[^>]*/>\n    <path id=\"p-left\" class='c' style=\"fill:none\" d=\"M[^\"]*Z\"/>\n    <circle");
        assertThat(written).contains("<path id='p' class='c' style=\"fill:none\" d='M100 100h150v300h-150z'/>");
    }

    @Test
    void linesThatGoAlongAreCopiedToo() throws Exception {
        String svg =
                HEAD + "<path id='p' d='M100 100h150v300h-150z'/><path id='q' d='M150 150l20 30M160 200l5 5'/></svg>";
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "p.svg");
        Pattern pattern = marked(file);
        Rider line = file.loose(pattern).stream()
                .filter(r -> r.id().equals("q"))
                .findFirst()
                .orElse(new Rider(
                        "q",
                        Rider.Kind.INNER,
                        file.drawing().shape("q").orElseThrow().subPaths().stream()
                                .flatMap(s -> s.segments().stream())
                                .toList()));
        Piece piece = pattern.pieces().get(0).toBuilder().riders(List.of(line)).build();
        Pattern after = changed(pattern.withPiece(piece), Side.LEFT);
        SvgFile again = SvgFile.read(file.write(after), "again.svg");
        assertThat(again.drawing().shape("q-left").orElseThrow().subPaths()).hasSize(2);
        assertThat(again.pattern().pieces()).allMatch(p -> p.riders().size() == 1);
        assertThat(again.findings()).isEmpty();
    }

    /** A shape that is drawn through {@code use} has no element of its own to stand behind. */
    @Test
    void whatCannotBeWrittenIsRefused() throws Exception {
        String svg = HEAD.replace("xmlns=", "xmlns:xlink='http://www.w3.org/1999/xlink' xmlns=")
                + "<defs><path id='d' d='M0 0h150v300h-150z'/></defs><use id='p' xlink:href='#d' x='100' y='100'/></svg>";
        SvgFile file = SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "p.svg");
        Pattern after = changed(marked(file), Side.LEFT);
        assertThatThrownBy(() -> file.write(after)).isInstanceOf(SvgProblem.class);
    }
}
