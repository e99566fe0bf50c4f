package easewright.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Cubic;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.text.LengthUnit;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Outlines drawn as many lines: found, and measured as one. */
class LooseLinesTest {
    private static BarePattern of(String body) {
        return BarePattern.of(Drawn.mm(body));
    }

    private static List<String> codes(BarePattern bare) {
        return bare.findings().stream().map(Finding::code).toList();
    }

    /** Four lines that meet end to end. */
    static final String SIDES = "<line id='top' x1='10' y1='10' x2='110' y2='10'/>"
            + "<path id='right' d='M110 210C130 150 90 80 110 10'/><polyline id='foot' points='110,210 60,215 10,210'/>"
            + "<path id='left' d='M10 210V10'/>";

    @Test
    void linesThatMeetEndToEndAreOneOutline() {
        BarePattern bare = of(SIDES + "<text x='50' y='100'>Yoke</text>");
        Piece piece = bare.pattern().pieces().get(0);
        assertThat(bare.pattern().pieces()).hasSize(1);
        assertThat(piece.id()).isEqualTo("top right foot left");
        assertThat(piece.name()).isEqualTo("Yoke");
        assertThat(piece.outline().segments()).hasSize(5);
        double side =
                new Cubic(new Point(110, 210), new Point(130, 150), new Point(90, 80), new Point(110, 10)).length();
        assertThat(piece.outline().length()).isCloseTo(100 + side + 2 * Math.hypot(50, 5) + 200, within(1e-9));
        assertThat(bare.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.values()).containsEntry("count", 4).containsEntry("gap", 0.0));
        assertThat(Words.english(LengthUnit.CM).of(bare.findings().get(0)))
                .as("no gap, so none is told")
                .doesNotContain("gap");
        assertThat(Drawn.mm(SIDES).findings()).isEmpty();
    }

    @Test
    void gapsWithinAPenLineAreClosedAndWiderOnesAreNot() {
        String gap = SIDES.replace("x2='110' y2='10'", "x2='109.8' y2='10'");
        BarePattern bare = of(gap);
        assertThat(bare.pattern().pieces()).hasSize(1);
        assertThat(bare.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("outline-joined-over-gaps");
            assertThat(Words.english(LengthUnit.CM).of(f)).contains("gap").contains("0.02\u00a0cm");
            assertThat((double) f.values().get("gap")).isCloseTo(0.2, within(1e-9));
        });
        assertThat(of(SIDES.replace("x2='110' y2='10'", "x2='109.7' y2='10'"))
                        .pattern()
                        .pieces())
                .isEmpty();
    }

    @Test
    void aLineDrawnTwiceCountsOnceAndTicksAreLeftAside() {
        BarePattern bare = of(SIDES + "<path d='M110 10C90 80 130 150 110 210'/><line x1='10' y1='10' x2='5' y2='5'/>"
                + "<path d='M60 215V205L62 203'/>");
        assertThat(bare.pattern().pieces()).extracting(Piece::id).containsExactly("top right foot left");
        assertThat(codes(bare)).containsExactly("outline-joined", "line-doubled");
    }

    @Test
    void whereLinesBranchNothingIsGuessed() {
        BarePattern bare = of(SIDES + "<line x1='110' y1='10' x2='10' y2='210'/>");
        assertThat(bare.pattern().pieces()).isEmpty();
        assertThat(codes(bare)).containsExactly("outline-branches", "no-pieces");
        assertThat(codes(of("<rect width='300' height='300'/>" + SIDES + "<line x1='110' y1='10' x2='10' y2='210'/>")))
                .isEmpty();
    }

    /** Legs of a dart that start at corners of the outline part it, and are told by how little they cut off. */
    @Test
    void legsOfADartAreNoBranches() {
        Random random = new Random(20261129);
        for (int i = 0; i < 60; i++) {
            double at = 60 + 120 * random.nextDouble();
            double wide = 8 + 30 * random.nextDouble();
            double deep = 60 + 90 * random.nextDouble();
            List<String> lines = new ArrayList<>(List.of(
                    line("waist1", 10, 20, at, 14),
                    line("mouth", at, 14, at + wide, 12),
                    line("waist2", at + wide, 12, 230, 10),
                    "<path id='side' d='M230 10C250 80 270 150 270 220L290 500'/>",
                    line("hem", 290, 500, 10, 505),
                    line("centre", 10, 505, 10, 20),
                    line("leg1", at, 14, at + wide / 2, deep),
                    line("leg2", at + wide / 2, deep, at + wide, 12)));
            // A line across leaves two pieces of which nobody knows whether they are one.
            String across = line("across", 230, 10, 10, 505);
            Collections.shuffle(lines, random);
            BarePattern bare = of(String.join("", lines));
            assertThat(bare.pattern().pieces()).as("%s", lines).singleElement().satisfies(piece -> {
                assertThat(piece.id().split(" "))
                        .containsExactlyInAnyOrder("waist1", "mouth", "waist2", "side", "hem", "centre");
                assertThat(piece.riders()).extracting(Rider::id).containsExactlyInAnyOrder("leg1", "leg2");
            });
            assertThat(codes(of(String.join("", lines) + across))).contains("outline-branches");
        }
    }

    private static String line(String id, double x1, double y1, double x2, double y2) {
        return String.format(Locale.ROOT, "<path id='%s' d='M%.3f %.3fL%.3f %.3f'/>", id, x1, y1, x2, y2);
    }

    @Test
    void linesOfTwoSizesAreKeptApart() {
        String other = SIDES.replaceAll("id='", "id='b").replace("x2='110' y2='10'", "x2='110' y2='10'");
        BarePattern bare = of("<g id='small'>" + SIDES + "</g><g id='large'>" + other + "</g>");
        assertThat(codes(bare)).containsExactly("outline-joined");
        assertThat(bare.pattern().pieces().get(0).id()).isEqualTo("top right foot left");
    }

    @Test
    void theShapeOfAPenLineIsToldFromAPieceWithAnAllowance() {
        BarePattern pen = of("<path id='p' d='M9.5 9.5H110.5V210.5H9.5ZM10.5 10.5V209.5H109.5V10.5Z'/>");
        assertThat(pen.findings()).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo("outline-of-a-pen");
            assertThat((double) f.values().get("pen")).isCloseTo(1, within(1e-9));
        });
        assertThat(codes(of("<path d='M0 0H120V220H0ZM10 10V210H110V10Z'/>"))).isEmpty();
        assertThat(codes(of("<path d='M0 0H120V220H0ZM1 1V5H5V1Z'/>"))).isEmpty();
    }
}
