package easewright.svg;

import static easewright.svg.Drawn.box;
import static easewright.svg.Drawn.codes;
import static easewright.svg.Drawn.ids;
import static easewright.svg.Drawn.length;
import static easewright.svg.Drawn.mm;
import static easewright.svg.Drawn.read;
import static easewright.svg.Drawn.svg;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Box;
import easewright.pattern.Finding;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingReaderTest {
    static final String UNIT = "<rect id='r' width='10' height='10'/>";

    private static void assertBox(DrawnShape shape, double minX, double minY, double maxX, double maxY) {
        Box box = box(shape);
        assertThat(box.minX()).isCloseTo(minX, within(1e-9));
        assertThat(box.minY()).isCloseTo(minY, within(1e-9));
        assertThat(box.maxX()).isCloseTo(maxX, within(1e-9));
        assertThat(box.maxY()).isCloseTo(maxY, within(1e-9));
    }

    /** viewBox and preserveAspectRatio: page 200 × 100 mm, box 10,20 100 × 100, square at its corner. */
    @ParameterizedTest
    @CsvSource({
        "'',               50, 0,   60, 10",
        "xMidYMid meet,    50, 0,   60, 10",
        "xMinYMin,         0, 0,    10, 10",
        "xMaxYMax meet,    100, 0,  110, 10",
        "none,             0, 0,    20, 10",
        "xMidYMid slice,   0, -50,  20, -30",
        "xMidYMin slice,   0, 0,    20, 20",
        "defer xMinYMax slice, 0, -100, 20, -80"
    })
    void viewBoxIsAlignedAsAsked(String aspect, double minX, double minY, double maxX, double maxY) {
        String attribute = aspect.isEmpty() ? "" : " preserveAspectRatio='" + aspect + "'";
        Drawing drawing = read(svg(
                "width='200mm' height='100mm' viewBox='10 20 100 100'" + attribute,
                "<rect x='10' y='20' width='10' height='10'/>"));
        assertBox(drawing.shapes().get(0), minX, minY, maxX, maxY);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            transform='translate(5)'                          | 5 | 0 | 15 | 10
            transform='translate(5,-3)'                       | 5 | -3 | 15 | 7
            transform='scale(2)'                              | 0 | 0 | 20 | 20
            transform='scale(2 3)'                            | 0 | 0 | 20 | 30
            transform='rotate(90)'                            | -10 | 0 | 0 | 10
            transform='rotate(180,10,10)'                     | 10 | 10 | 20 | 20
            transform='skewX(45)'                             | 0 | 0 | 20 | 10
            transform='skewY(45)'                             | 0 | 0 | 10 | 20
            transform='matrix(2 0 0 1 3 4)'                   | 3 | 4 | 23 | 14
            transform=' translate( 5 ,5 ),scale(2)scale(.5,1)' | 5 | 5 | 15 | 25
            transform='scale(2)translate(5 5)'                | 10 | 10 | 30 | 30
            style='transform: translate(1in, 10mm) scale(2)'  | 96 | 37.79527559055118 | 116 | 57.79527559055118
            style='transform:rotate(.25turn)' transform='scale(9)' | -10 | 0 | 0 | 10
            style='transform:rotate(90deg);transform-origin:10px 10px' | 10 | 0 | 20 | 10
            style='transform:translateX(5px) translateY(6px) scaleX(2) scaleY(3)' | 5 | 6 | 25 | 36
            style='transform:none' transform='scale(9)'       | 0 | 0 | 10 | 10
            style='transform:translate(1%, 2%)'               | 10 | 10 | 20 | 20
            style='transform:translate(1%, 2%);transform-origin:top right' | 10 | 10 | 20 | 20
            style='transform:rotate(180deg);transform-origin:50% 50%' | 990 | 490 | 1000 | 500
            style='transform:rotate(180deg);transform-origin:bottom right' | 1990 | 990 | 2000 | 1000
            style='transform:rotate(180deg);transform-origin:center' | 990 | 490 | 1000 | 500
            style='transform:rotate(180deg);transform-origin:left 10px' | -10 | 10 | 0 | 20
            style='translate:5px 6px;rotate:90deg;scale:2 3;transform:translate(1px,0)' | -25 | 8 | 5 | 28
            style='translate:7px'                             | 7 | 0 | 17 | 10
            style='scale:2;transform-origin:10px 10px'        | -10 | -10 | 10 | 10
            """)
    void transformsOfEveryKind(String attributes, double minX, double minY, double maxX, double maxY) {
        Drawing drawing = mm("<rect width='10' height='10' " + attributes + "/>");
        assertBox(drawing.shapes().get(0), minX, minY, maxX, maxY);
        assertThat(drawing.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "transform='translate(5'",
                "transform='spin(5)'",
                "transform='scale(2,)'",
                "transform='matrix(1 0 0 1 0)'",
                "transform='rotate(90deg)'",
                "style='transform:translate(calc(5px + 5px), 0)'",
                "style='transform:rotate(9deg);transform-origin:50% 50%;transform-box:fill-box'",
                "style='rotate:x 45deg'",
                "style='scale:auto'"
            })
    void transformsNotUnderstoodLeaveTheShapeOutAndSaySo(String attributes) {
        Drawing drawing = mm("<rect id='r' width='10' height='10' " + attributes + "/>" + "<line x2='1'/>");
        assertThat(ids(drawing)).hasSize(1).doesNotContain("r");
        assertThat(codes(drawing)).containsExactly("transform-unreadable");
    }

    @Test
    void lengthsHaveUnitsAndPercentages() {
        Drawing drawing = read(
                svg("width='192' height='96'", "<rect x='1in' y='1pc' width='50%' height='50%'/><circle r='10%'/>"));
        double px = 25.4 / 96;
        assertBox(drawing.shapes().get(0), 96 * px, 16 * px, 192 * px, 64 * px);
        // SVG 1.1, 7.10: a radius in percent is of the diagonal over the root of two.
        assertThat(length(drawing.shapes().get(1)))
                .isCloseTo(2 * Math.PI * 0.1 * Math.sqrt((192 * 192 + 96 * 96) / 2.0) * px, within(1e-4));
    }

    @Test
    void whatIsHiddenIsLeftOut() {
        Drawing drawing = mm("<defs><path id='a' d='M0 0H5'/></defs><symbol><path id='b' d='M0 0H5'/></symbol>"
                + "<clipPath><path id='c' d='M0 0H5'/></clipPath><mask><path id='d' d='M0 0H5'/></mask>"
                + "<pattern><path id='e' d='M0 0H5'/></pattern><marker><path id='f' d='M0 0H5'/></marker>"
                + "<g display='none'><path id='g' d='M0 0H5'/></g><path id='h' style='display:none' d='M0 0H5'/>"
                + "<g visibility='hidden'><path id='i' d='M0 0H5'/><path id='shown' visibility='visible' d='M0 0H5'/></g>"
                + "<x:path xmlns:x='urn:other' id='j' d='M0 0H5'/><foreignObject><path id='k' d='M0 0H5'/></foreignObject>"
                + "<switch><path id='l' requiredExtensions='urn:x' d='M0 0H5'/><path id='second' d='M0 0H5'/>"
                + "<path id='m' d='M0 0H5'/></switch><path id='none' d='none'/><path id='empty'/>");
        assertThat(ids(drawing)).containsExactly("shown", "second");
    }

    @Test
    void elementNumbersCountStartTagsInDocumentOrder() {
        Drawing drawing = mm("<metadata><a xmlns='urn:b'><c/></a></metadata><defs><path d='M0 0'/></defs><g>"
                + "<title>t</title><path d='M0 0H1'/></g><style>p{}</style><line x2='5'/>");
        // svg 0, metadata 1, a 2, c 3, defs 4, path 5, g 6, title 7, path 8, style 9, line 10
        assertThat(drawing.shapes()).extracting(DrawnShape::element).containsExactly(8, 10);
    }

    @Test
    void styleSheetsHideAndMove() {
        String sheet = "<style>/* .off{} */ @import url(http://example.invalid/x.css); @charset 'utf-8';"
                + "path { fill: url('a;b}c') } .off, #gone { display : none ; }"
                + "@media print { .paper { display:none } } @media screen { .screen { display:none } }"
                + "g.outer > path.kid { display: none !important } rect[data-k='v'] { display: none }"
                + ".a .b { visibility: hidden } line + line { display:none } .big { r: 7px }"
                + "@font-face { font-family: x; src: url(y) } path:hover { fill: red }</style>";
        Drawing drawing = mm(sheet + "<path class='x off y' d='M0 0H5'/><path id='gone' d='M0 0H5'/>"
                + "<path id='paper' class='paper' d='M0 0H5'/><path class='screen' d='M0 0H5'/>"
                + "<g class='outer'><path class='kid' style='display:inline' d='M0 0H5'/>"
                + "<g><path id='grandkid' class='kid' d='M0 0H5'/></g></g>"
                + "<rect data-k='v' width='5' height='5'/><rect id='other' data-k='w' width='5' height='5'/>"
                + "<g class='a'><g><path class='b' d='M0 0H5'/></g></g><line id='first' x2='1'/><line x2='1'/>"
                + "<circle id='big' class='big' r='1'/>");
        assertThat(ids(drawing)).containsExactly("paper", "grandkid", "other", "first", "big");
        assertThat(length(drawing.shape("big").orElseThrow())).isCloseTo(14 * Math.PI, within(1e-4));
        assertThat(drawing.shape("big").orElseThrow().editable()).isFalse();
        assertThat(codes(drawing)).containsExactly("style-outside");
        assertThat(codes(mm("<style>path:not(.a){display:none}</style>" + UNIT)))
                .containsExactly("style-unread");
    }

    @Test
    void weightDecidesBetweenRules() {
        String sheet = "<style>#p{display:inline} path{display:none} .c{display:none}</style>";
        assertThat(ids(mm(sheet + "<path id='p' class='c' d='M0 0H5'/>"))).containsExactly("p");
        assertThat(ids(mm("<style>.c{display:none}.d{display:inline}</style><path id='q' class='d c' d='M0 0H5'/>")))
                .containsExactly("q");
        assertThat(ids(mm("<style>.c{display:none}</style><path id='q' class='c' style='display:inline' d='M0 0H5'/>")))
                .containsExactly("q");
        assertThat(ids(mm("<style>path{display:inline}</style><path id='q' display='none' d='M0 0H5'/>")))
                .containsExactly("q");
    }

    @Test
    void cssCanHoldThePath() {
        Drawing drawing = mm("<path style='d:path(\"M0 0H7;\".replace)' d='M0 0H5'/>"
                .replace(";\".replace)", "\")")
                .replace("style='", "style='fill:none;"));
        assertThat(length(drawing.shapes().get(0))).isCloseTo(7, within(0d));
        assertThat(drawing.shapes().get(0).editable()).isFalse();
    }

    @Test
    void copiesAreDrawnWhereUsePutsThemAndAreReadOnly() {
        Drawing drawing = mm("<defs><g id='pair'><path id='p' d='M0 0H5'/><path d='M0 1H5'/></g></defs>"
                + "<use id='u' x='10' y='20' transform='scale(2)' href='#pair' xlink:href='#no'/>"
                + "<path id='own' d='M0 0H1'/><use xlink:href='#own' y='3'/>");
        assertThat(ids(drawing)).containsExactly("u-1", "u-2", "own", "copy-7");
        assertBox(drawing.shapes().get(0), 20, 40, 30, 40);
        assertBox(drawing.shapes().get(1), 20, 42, 30, 42);
        assertBox(drawing.shapes().get(3), 0, 3, 1, 3);
        assertThat(drawing.shapes()).extracting(DrawnShape::editable).containsExactly(false, false, true, false);
        assertThat(drawing.shapes()).extracting(DrawnShape::element).containsExactly(3, 4, 6, 6);
    }

    @Test
    void symbolsAndInnerDrawingsHaveTheirOwnViewBox() {
        Drawing drawing = mm("<symbol id='s' viewBox='0 0 10 10' width='20' height='20'><path d='M0 0H10'/></symbol>"
                + "<use href='#s' x='100' y='50'/><use href='#s' width='40' height='80' y='7'/>"
                + "<svg x='5' y='6' width='50%' height='50' viewBox='0 0 100 50' preserveAspectRatio='xMinYMin'>"
                + "<line x2='10%'/></svg><svg width='0'><path d='M0 0H1'/></svg>");
        assertBox(drawing.shapes().get(0), 100, 50, 120, 50);
        assertBox(drawing.shapes().get(1), 0, 27, 40, 27);
        assertBox(drawing.shapes().get(2), 5, 6, 15, 6);
        assertThat(drawing.shapes()).hasSize(3);
        assertThat(codes(drawing)).containsExactly("inner-drawing-left-out");
    }

    @Test
    void circlesOfUseAreCut() {
        Drawing drawing = mm("<g id='a'><path id='p' d='M0 0H5'/><use href='#b'/></g>"
                + "<g id='b'><path id='q' d='M0 0H5'/><use href='#a'/></g>");
        assertThat(codes(drawing)).containsExactly("use-in-circles");
        assertThat(ids(drawing)).contains("p", "q").hasSize(4);
    }

    @Test
    void outlinesAreNamedByWhatTheFileSays() {
        Drawing drawing = mm(
                "<g inkscape:groupmode='layer' inkscape:label='Size 12'><g id='x_x20_y'>"
                        + "<rect id='r1' width='50' height='50'><title> Front\n bodice </title></rect>"
                        + "<rect id='r2' x='60' width='50' height='50' aria-label='Back'/>"
                        + "<rect id='r3' x='120' width='50' height='50' inkscape:label='Sleeve'/>"
                        + "<rect id='r4' x='180' width='50' height='50'/><rect id='r5' x='240' width='50' height='50'/>"
                        + "</g></g><g transform='translate(180 0)'><text><tspan x='5' y='20'>Collar</tspan><tspan>two</tspan></text></g>");
        assertThat(drawing.shapes())
                .extracting(DrawnShape::label)
                .containsExactly("Front bodice", "Back", "Sleeve", "Collar two", "");
        assertThat(drawing.shapes().get(0).layers()).containsExactly("Size 12", "x y");
    }

    @Test
    void endsThatNearlyMeetAreJoinedWithAFinding() {
        Drawing joined = mm("<path d='M0 0H100V100H0V.005'/>");
        assertThat(joined.shapes().get(0).subPaths().get(0).closed()).isTrue();
        assertThat(joined.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("outline-closed");
            assertThat(f.values()).containsEntry("gap", 0.005);
        });
        Drawing traced = mm("<path d='M0 0H100V100H0V.9'/><path d='M200 0h40v40h-40v-39.1'/>");
        assertThat(traced.shapes())
                .extracting(s -> s.subPaths().get(0).closed())
                .as("a gap of 0.9 mm in 400 mm, and in 160 mm")
                .containsExactly(true, false);
        assertThat(traced.findings())
                .extracting(Finding::code)
                .containsExactly("outline-closed-over-gap", "outline-open");
        Drawing open = mm("<path d='M0 0H100V100H0V1.5'/><path d='M0 0H100'/><path d='M0 0L10 1 20 0'/>");
        assertThat(open.shapes())
                .allSatisfy(s -> assertThat(s.subPaths().get(0).closed()).isFalse());
        assertThat(open.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("outline-open");
            assertThat(f.values()).containsEntry("gap", 1.5);
        });
        // The legs of a dart inside a piece, and of one inside an open outline, are not meant to close.
        String dart = "<path d='M40 0L50 90 59 0'/>";
        assertThat(mm("<path d='M0 0H100V100H0Z'/>" + dart).findings()).isEmpty();
        assertThat(mm(dart + "<path id='o' d='M0 0H100V100H0V1.5'/>").findings())
                .extracting(Finding::piece)
                .containsExactly("o");
        Drawing byPlace = mm("<polyline points='0,0 100,0 100,100 0,0'/>");
        assertThat(byPlace.shapes().get(0).subPaths().get(0).closed()).isTrue();
        assertThat(byPlace.findings()).isEmpty();
    }

    @Test
    void elementsMadeByEntitiesAreReadOnly() {
        String svg = "<!DOCTYPE svg [<!ENTITY e \"<path xmlns='http://www.w3.org/2000/svg' d='M0 0H5'/>\">]>"
                + svg("width='10mm' height='10mm' viewBox='0 0 10 10'", "&e;<path id='own' d='M0 0H5'/>");
        Drawing drawing = read(svg);
        assertThat(drawing.shapes()).extracting(DrawnShape::editable).containsExactly(false, true);
        assertThat(drawing.shapes().get(1).element()).isEqualTo(1);
        assertThat(codes(drawing)).containsExactly("made-by-entities");
    }

    /** Numbers come through exactly: a shape in a drawing of 1 unit = 1 mm keeps its digits. */
    @Test
    void coordinatesKeepTheirDigits() {
        Drawing drawing = mm("<path d='M0.1 0.2L123.456789 7.0000001'/>");
        assertThat(drawing.shapes().get(0).subPaths().get(0).segments().get(0).end())
                .isEqualTo(new easewright.geom.Point(123.456789, 7.0000001));
    }

    @Test
    void longOutlinesAreReadWithoutDelay() {
        StringBuilder d = new StringBuilder("M0 0");
        for (int i = 0; i < 5000; i++) {
            d.append("c.1 0 .1 .1 .1 .05");
        }
        String drawing = svg("width='1000mm' height='500mm' viewBox='0 0 1000 500'", "<path d='" + d + "z'/>");
        read(drawing);
        // The processor's time, so that a busy machine does not matter.
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long begin = clock.getCurrentThreadCpuTime();
        Drawing read = read(drawing);
        BarePattern.of(read);
        assertThat((clock.getCurrentThreadCpuTime() - begin) / 1e6).isLessThan(300);
        assertThat(read.shapes().get(0).subPaths().get(0).segments()).hasSize(5001);
    }
}
