package easewright.backdrop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import easewright.geom.Box;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BackdropTest {
    private static final int WIDE = 200;
    private static final int HIGH = 100;

    private static SvgFile file(String body) throws SvgProblem {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
                + "xmlns:inkscape='http://www.inkscape.org/namespaces/inkscape' "
                + "width='200mm' height='100mm' viewBox='0 0 200 100'>" + body + "</svg>";
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "drawing.svg");
    }

    private static int[] painted(String body, boolean dark) throws SvgProblem {
        return Backdrop.of(file(body)).paint(new Box(0, 0, 200, 100), WIDE, HIGH, dark);
    }

    private static int at(int[] pixels, int x, int y) {
        return pixels[y * WIDE + x];
    }

    private static long inked(int[] pixels) {
        return java.util.Arrays.stream(pixels).filter(p -> p >>> 24 > 40).count();
    }

    @Test
    void coloursLieWhereTheyAreDrawnAndWhiteIsClear() throws SvgProblem {
        String body =
                "<rect width='200' height='100' fill='white'/><rect x='20' y='20' width='40' height='40' fill='red'/>"
                        + "<g transform='translate(100 0)'><rect x='20' y='20' width='40' height='40' fill='black'/></g>";
        int[] day = painted(body, false);
        assertThat(at(day, 5, 5)).isZero();
        assertThat(at(day, 40, 40)).isEqualTo(0xFFFF0000);
        assertThat(at(day, 140, 40)).isEqualTo(0xFF000000);
        int[] lamp = painted(body, true);
        assertThat(at(lamp, 5, 5)).isZero();
        assertThat(at(lamp, 140, 40)).isEqualTo(0xFFFFFFFF);
    }

    /** A piece drawn without a colour is black all over: under other lines its outline is enough. */
    @Test
    void largeDarkAreasAreOutlinesUnderOtherLines() throws SvgProblem {
        String body = "<g transform='scale(10)'><path d='M1 1h5v6h-5z'/></g>"
                + "<path d='M30 40l4 8h-8z'/>"
                + "<rect x='80' y='10' width='40' height='40' fill='#fdd'/>"
                + "<rect x='140' y='10' width='40' height='40' fill='#024' stroke='#f00' stroke-width='2'/>";
        Box page = new Box(0, 0, 200, 100);
        int[] whole = Backdrop.of(file(body)).paint(page, WIDE, HIGH, false);
        int[] under = Backdrop.under(file(body), Set.of()).paint(page, WIDE, HIGH, false);
        assertThat(at(whole, 45, 20)).isEqualTo(0xFF000000);
        assertThat(at(under, 45, 20)).as("within").isZero();
        assertThat(at(under, 10, 40) >>> 24).as("its outline").isGreaterThan(40);
        assertThat(at(under, 30, 46)).as("a notch").isEqualTo(0xFF000000);
        assertThat(at(under, 100, 30))
                .as("a light area")
                .isEqualTo(at(whole, 100, 30))
                .isNotZero();
        assertThat(at(under, 160, 30)).isZero();
        assertThat(at(under, 140, 30)).as("its line").isEqualTo(0xFFFF0000);
    }

    @Test
    void wordsAreThereAndStyledByTheSheetOfTheDrawing() throws SvgProblem {
        String words = "<text x='20' y='60' class='a' font-size='40'>FRONT</text><path d='M0 99h1v1z'/>";
        int[] plain = painted("<style>.a{fill:#00f}</style>" + words, false);
        assertThat(inked(plain)).isGreaterThan(400);
        assertThat(java.util.Arrays.stream(plain)
                        .filter(p -> (p & 0xFF) > 128 && (p >> 16 & 0xFF) == 0)
                        .count())
                .isGreaterThan(300);
        assertThat(inked(painted("<style>.a{display:none}</style>" + words, false)))
                .isLessThan(5);
    }

    @Test
    void layersThatAreNotReadAreNotSeen() throws SvgProblem {
        SvgFile both = file(
                "<g id='s1' inkscape:groupmode='layer'><rect x='0' y='0' width='50' height='50'/></g>"
                        + "<g id='s2' inkscape:groupmode='layer' style='display:none'><rect x='100' width='50' height='50'/></g>");
        SvgFile other = both.reread(both.options().withShown(Set.of("s2"), Set.of("s1")));
        Box page = new Box(0, 0, 200, 100);
        int[] first = Backdrop.of(both).paint(page, WIDE, HIGH, false);
        int[] second = Backdrop.of(other).paint(page, WIDE, HIGH, false);
        assertThat(List.of(at(first, 20, 20) != 0, at(first, 120, 20) != 0)).containsExactly(true, false);
        assertThat(List.of(at(second, 20, 20) != 0, at(second, 120, 20) != 0)).containsExactly(false, true);
    }

    @Test
    void oneElementThatCannotBePaintedCostsOnlyItself() throws SvgProblem {
        for (String fault : List.of(
                "<rect x='1' y='1' width='30' height='30' fill='url(#nowhere)'/>",
                "<text x='abc' y='12'>?</text>",
                "<use href='#nowhere'/>",
                "<use id='u' href='#u'/>",
                "<linearGradient id='g' href='#g'/><rect width='9' height='9' fill='url(#g)'/>",
                "<path d='M0 0 H20 garbage'/>",
                "<text transform='rotate()' x='1' y='12'>?</text>")) {
            int[] pixels;
            try {
                pixels = painted(fault + "<rect x='100' y='50' width='50' height='30'/>", false);
            } catch (SvgProblem e) {
                throw new AssertionError(fault, e);
            }
            assertThat(at(pixels, 120, 60)).as(fault).isEqualTo(0xFF000000);
        }
    }

    /** A listener on this machine, to which everything in the drawing leads, hears nothing. */
    @Test
    void nothingIsFetchedAndNothingRuns() throws Exception {
        try (ServerSocket listener = new ServerSocket(0, 10, InetAddress.getLoopbackAddress())) {
            String url = "http://127.0.0.1:" + listener.getLocalPort() + "/x";
            int[] pixels = painted(
                    ("<style>@import url(URL); @font-face{font-family:f;src:url(URL)} rect{fill:url(URL#p)} "
                                    + "text{font-family:f} .b{filter:url(URL)}</style>"
                                    + "<style type='text/css'>@im\\port 'URL'; path{f\\69ll:u\\72l(URL)}</style>"
                                    + "<script xlink:href='URL'/><script>java.net.Socket</script>"
                                    + "<image width='50' height='50' xlink:href='URL'/>"
                                    + "<use xlink:href='URL#a'/><rect width='9' height='9' style='fill:url(URL#p)' filter='url(URL#f)'/>"
                                    + "<linearGradient id='l' xlink:href='URL#l'/><rect width='5' height='5' fill='url(#l)'/>"
                                    + "<text x='9' y='9' font-family='f' onload='alert(1)'>w</text>"
                                    + "<foreignObject width='9' height='9'><iframe xmlns='http://www.w3.org/1999/xhtml' src='URL'/></foreignObject>"
                                    + "<set attributeName='href' to='URL'/><rect x='100' y='50' width='50' height='30' fill='black'/>")
                            .replace("URL", url),
                    false);
            assertThat(at(pixels, 120, 60)).isEqualTo(0xFF000000);
            listener.setSoTimeout(100);
            assertThatThrownBy(() -> {
                        try (Socket call = listener.accept()) {
                            assertThat(call).isNull();
                        }
                    })
                    .isInstanceOf(SocketTimeoutException.class);
        }
    }

    @Test
    void whatSwellsIsBounded() throws SvgProblem {
        StringBuilder copies = new StringBuilder("<path id='c0' d='M0 0h1v1z'/>");
        for (int i = 1; i < 12; i++) {
            copies.append("<g id='c").append(i).append("'>");
            copies.append(("<use href='#c" + (i - 1) + "'/>").repeat(10)).append("</g>");
        }
        assertThatThrownBy(() -> painted(copies.toString(), false))
                .isInstanceOfSatisfying(
                        SvgProblem.class, e -> assertThat(e.code()).isIn("scenery-large", "scenery-slow"));
        // A hundred million dashes are left out; the line stays.
        int[] line =
                painted("<path d='M0 50H200' stroke='black' stroke-width='4' stroke-dasharray='0.000001'/>", false);
        assertThat(at(line, 100, 50)).isEqualTo(0xFF000000);
        String deep =
                "<g opacity='.9' filter='url(#f)'>".repeat(200) + "<rect width='9' height='9'/>" + "</g>".repeat(200);
        assertThat(at(painted(deep, false), 4, 4)).isEqualTo(0xFF000000);
    }

    @Test
    void paintingStopsWhenNobodyWaits() throws SvgProblem {
        Backdrop backdrop = Backdrop.of(file("<rect width='9' height='9'/>"));
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> backdrop.paint(new Box(0, 0, 200, 100), WIDE, HIGH, false))
                .isInstanceOf(CancellationException.class);
        assertThat(Thread.interrupted()).isFalse();
    }

    /** Whatever opens is painted, or refused with its reason. */
    @Test
    void hostileDrawingsArePaintedOrRefused() throws Exception {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/hostile"))) {
            for (Path path : files.sorted().toList()) {
                try {
                    SvgFile svg = SvgFile.read(path);
                    int[] pixels = Backdrop.of(svg).paint(new Box(0, 0, 200, 100), WIDE, HIGH, false);
                    assertThat(pixels).hasSize(WIDE * HIGH);
                } catch (SvgProblem refused) {
                    assertThat(refused.code()).as(path.toString()).isNotBlank();
                }
            }
        }
    }
}
