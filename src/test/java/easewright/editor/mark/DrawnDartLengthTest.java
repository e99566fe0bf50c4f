package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Replay;
import easewright.alter.SeamChange;
import easewright.alter.Step;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A dart whose legs are drawn is as long as a number says, with its legs, and nothing else in the drawing moves. */
class DrawnDartLengthTest {
    private static final Point ONE = new Point(90, 10);
    private static final Point TWO = new Point(112, 14);
    private static final Point TIP = new Point(98, 105);

    private static SvgFile file(String drawn) throws Exception {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='700mm' viewBox='0 0 400 700'"
                + " fill='none' stroke='#000'>\n" + drawn + "\n</svg>\n";
        return SvgFile.read(svg.getBytes(StandardCharsets.UTF_8), "dart.svg");
    }

    private static Pattern darted(SvgFile file, String edge) {
        Piece piece = file.pattern().piece("front").orElseThrow();
        Dart dart =
                new Dart("d", ONE, TWO, TIP, Optional.empty(), Optional.of(edge).filter(e -> !e.isEmpty()));
        return file.pattern().withPiece(piece.toBuilder().darts(List.of(dart)).build());
    }

    private static Dart dart(Pattern pattern) {
        return pattern.piece("front").orElseThrow().darts().get(0);
    }

    private static double length(Dart dart) {
        return dart.mouth1().towards(dart.mouth2(), 0.5).distance(dart.point());
    }

    /** The file without its marks and without the lines that were to move. */
    private static List<String> rest(byte[] written, String... moved) {
        String text = new String(written, StandardCharsets.UTF_8).replaceFirst("(?s)\\s*<metadata.*?</metadata>", "");
        return text.lines()
                .filter(line -> List.of(moved).stream().noneMatch(id -> line.contains("id='" + id + "'")))
                .toList();
    }

    // ---- legs that are drawn within the piece ----

    private static final String PLAIN =
            "<path id='front' d='M10,10 L90,10 L112,14 L210,20 V600 H10 Z'/>\n<path id='level' d='M20,200 H190'/>\n";

    /** As one line, as two, on to the cutting line, curved and in two parts; and with a line down the middle and a ring. */
    private static final List<String> LEGS = List.of(
            "<path id='legs' d='M90,10 L98,105 L112,14'/>",
            "<path id='legs' d='M98,105 L90,10 M98,105 112,14'/>",
            "<path id='legs' d='M90,10 C96,40 92,70 98,105 M112,14 Q104,50 103,60 L98,105'/>",
            "<path id='legs' d='M90,10 98,105 112,14 M101,12 L98,105 M97,105 a1,1 0 1 0 2,0 a1,1 0 1 0 -2,0 z'/>");

    private static List<Point> ends(Piece piece, String id) {
        List<Point> ends = new ArrayList<>();
        for (Rider rider : piece.riders()) {
            if (rider.id().startsWith(id)) {
                rider.segments().forEach(s -> ends.addAll(List.of(s.start(), s.end())));
            }
        }
        return ends;
    }

    @Test
    void legsThatAreLinesOfTheirOwnGoWithThePoint() throws Exception {
        Random random = new Random(41);
        for (String legs : LEGS) {
            SvgFile file = file(PLAIN + legs);
            Pattern before = darted(file, "");
            for (int i = 0; i < 10; i++) {
                double mm = (i % 2 == 0 ? 30 : 110) + 60 * random.nextDouble();
                Pattern after = MeasureEdits.dartLength(before, "front", "d", mm);
                Dart dart = dart(after);
                assertThat(length(dart)).isCloseTo(mm, within(1e-9));
                Piece piece = after.piece("front").orElseThrow();
                assertThat(ends(piece, "legs").stream().filter(p -> p.distance(dart.point()) < 1e-9))
                        .as(legs)
                        .hasSizeGreaterThanOrEqualTo(2);
                assertThat(ends(piece, "legs")).contains(ONE, TWO).noneMatch(p -> p.distance(TIP) < 0.5);
                assertThat(piece.outline())
                        .isSameAs(before.piece("front").orElseThrow().outline());

                byte[] written = file.write(after);
                assertThat(rest(written, "legs")).isEqualTo(rest(file.bytes(), "legs"));
                SvgFile again = SvgFile.read(written, "again.svg");
                assertThat(again.findings()).isEmpty();
                assertThat(length(dart(again.pattern()))).isCloseTo(mm, within(1e-6));

                Piece back = MeasureEdits.dartLength(after, "front", "d", length(dart(before)))
                        .piece("front")
                        .orElseThrow();
                List<Point> was = ends(before.piece("front").orElseThrow(), "legs");
                List<Point> is = ends(back, "legs");
                for (int k = 0; k < was.size(); k++) {
                    assertThat(is.get(k).distance(was.get(k))).isLessThan(1e-9);
                }
            }
        }
    }

    /** A leg that is drawn on over the mouth still goes over it, and reaches as far. */
    @Test
    void aLegThatIsDrawnOnOverTheMouthStillRunsThroughIt() throws Exception {
        Point beyond = ONE.plus(ONE.minus(TIP).unit().times(9));
        SvgFile file = file(PLAIN + "<path id='legs' d='M" + beyond.x() + "," + beyond.y() + " L98,105 L112,14'/>");
        Piece bare = darted(file, "").piece("front").orElseThrow();
        // Whatever reading makes of a line that reaches out of its piece, here it is one of the piece.
        Rider legs = new Rider("legs", Rider.Kind.INNER, List.of(new Line(beyond, TIP), new Line(TIP, TWO)));
        Pattern before = darted(file, "")
                .withPiece(bare.toBuilder().riders(List.of(legs)).build());
        Pattern after = MeasureEdits.dartLength(before, "front", "d", 150);
        Segment leg =
                after.piece("front").orElseThrow().riders().get(0).segments().get(0);
        assertThat(leg.at(leg.nearest(ONE)).distance(ONE)).isLessThan(1e-9);
        assertThat(leg.start().distance(ONE)).isCloseTo(9, within(1e-9));
        assertThat(leg.end()).isEqualTo(dart(after).point());
    }

    /** Its mouth is put elsewhere on the edge, and the legs lead there. */
    @Test
    void legsGoWithTheMouthAsWell() throws Exception {
        SvgFile file = file(PLAIN + LEGS.get(0));
        Pattern after = MeasureEdits.dartWidth(darted(file, ""), "front", "d", 30);
        Dart dart = dart(after);
        assertThat(dart.intake()).isCloseTo(30, within(1e-6));
        assertThat(ends(after.piece("front").orElseThrow(), "legs"))
                .containsExactly(dart.mouth1(), TIP, TIP, dart.mouth2());
    }

    @Test
    void bothPointsOfADartClosedAtBothEndsTakeTheirLegsAlong() throws Exception {
        SvgFile file = file("<path id='front' d='M10,10 H210 V600 H10 Z'/>\n"
                + "<path id='legs' d='M100,300 L110,220 L120,300 L110,390 Z'/>");
        Piece piece = file.pattern().piece("front").orElseThrow();
        Dart diamond = new Dart(
                "d",
                new Point(100, 300),
                new Point(120, 300),
                new Point(110, 220),
                Optional.of(new Point(110, 390)),
                Optional.empty());
        Pattern before = file.pattern()
                .withPiece(piece.toBuilder().darts(List.of(diamond)).build());
        Pattern after =
                MeasureEdits.dartOtherLength(MeasureEdits.dartLength(before, "front", "d", 100), "front", "d", 60);
        assertThat(ends(after.piece("front").orElseThrow(), "legs"))
                .contains(new Point(110, 200), new Point(110, 360), new Point(100, 300), new Point(120, 300))
                .hasSize(8);
        assertThat(rest(file.write(after), "legs")).isEqualTo(rest(file.bytes(), "legs"));
    }

    // ---- legs that are cut out of the outline ----

    private static final String CUT = "<path id='front' d='M10,10 L90,10 L98,105 L112,14 L210,20 V600 H10 Z'/>\n"
            + "<path id='curved' d='M250,10 h100 v500 h-100 z'/>";

    @Test
    void legsThatAreTheOutlineGoWithThePointAndTheRestOfItStays() throws Exception {
        Random random = new Random(42);
        SvgFile file = file(CUT);
        Pattern before = darted(file, "");
        Outline was = before.piece("front").orElseThrow().outline();
        for (int i = 0; i < 20; i++) {
            double mm = 30 + 400 * random.nextDouble();
            Pattern after = MeasureEdits.dartLength(before, "front", "d", mm);
            assertThat(length(dart(after))).isCloseTo(mm, within(1e-9));
            List<Segment> is = after.piece("front").orElseThrow().outline().segments();
            assertThat(is).hasSameSizeAs(was.segments());
            int moved = 0;
            for (int k = 0; k < is.size(); k++) {
                Segment now = is.get(k);
                if (now != was.segments().get(k)) {
                    moved++;
                    assertThat(now.start().equals(dart(after).point())
                                    || now.end().equals(dart(after).point()))
                            .isTrue();
                }
            }
            assertThat(moved).isEqualTo(2);
            byte[] written = file.write(after);
            assertThat(rest(written, "front")).isEqualTo(rest(file.bytes(), "front"));
            assertThat(new String(written, StandardCharsets.UTF_8))
                    .as("commands that did not move keep their text")
                    .contains("d='M10,10 L90,10 L")
                    .contains(" V600 H10 Z'");
            Pattern back = MeasureEdits.dartLength(after, "front", "d", length(dart(before)));
            List<Segment> again = back.piece("front").orElseThrow().outline().segments();
            for (int k = 0; k < again.size(); k++) {
                assertThat(again.get(k).start().distance(was.segments().get(k).start()))
                        .isLessThan(1e-9);
            }
        }
    }

    @Test
    void curvedLegsKeepTheirForm() throws Exception {
        SvgFile file =
                file("<path id='front' d='M10,10 L90,10 C96,40 92,70 98,105 Q104,50 112,14 L210,20 V600 H10 Z'/>");
        Pattern before = darted(file, "");
        Pattern after = MeasureEdits.dartLength(before, "front", "d", 2 * length(dart(before)));
        List<Segment> is = after.piece("front").orElseThrow().outline().segments();
        List<Segment> was = before.piece("front").orElseThrow().outline().segments();
        for (int k : new int[] {1, 2}) {
            Cubic now = (Cubic) is.get(k);
            Cubic then = (Cubic) was.get(k);
            double scale = now.start().distance(now.end()) / then.start().distance(then.end());
            assertThat(now.length() / then.length()).isCloseTo(scale, within(1e-9));
        }
    }

    @Test
    void aPointThatWouldLeaveThePieceIsRefused() throws Exception {
        for (String drawn : List.of(CUT, PLAIN + LEGS.get(0), PLAIN)) {
            Pattern before = darted(file(drawn), "");
            assertThatThrownBy(() -> MeasureEdits.dartLength(before, "front", "d", 700))
                    .as(drawn)
                    .hasMessageStartingWith("dart-point-outside ");
        }
    }

    @Test
    void legsThatDoNotMeetInOneCornerAreLeftToTheDrawing() throws Exception {
        SvgFile blunt = file("<path id='front' d='M10,10 L90,10 L97.95,105 98.05,105 L112,14 L210,20 V600 H10 Z'/>");
        assertThatThrownBy(() -> MeasureEdits.dartLength(darted(blunt, ""), "front", "d", 80))
                .hasMessageStartingWith("dart-drawn ");
    }

    // ---- after changes ----

    private static Pattern widened(Pattern pattern) throws Exception {
        Piece piece = pattern.piece("front").orElseThrow();
        Piece marked = piece.toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, new Point(10, 10), new Point(210, 20)),
                        Edge.of("side", EdgeRole.SEAM, new Point(210, 20), new Point(210, 600)),
                        Edge.of("hem", EdgeRole.HEM, new Point(210, 600), new Point(10, 600))))
                .levels(List.of(LevelMark.through("hip", new Point(100, 250))))
                .build();
        Pattern ready = pattern.withPiece(marked).withLevels(List.of(Level.of("hip", LevelKind.HIP)));
        return SeamChange.at("hip", 12).apply(ready).pattern();
    }

    /** Made longer after a change, that is still taken back, with the dart as long as it was made. */
    @Test
    void aChangeMadeBeforeCanStillBeTakenBack() throws Exception {
        SvgFile file = file(CUT);
        Pattern changed = widened(darted(file, ""));
        Pattern longer = MeasureEdits.dartLength(changed, "front", "d", 130);
        Pattern opened = SvgFile.read(file.write(longer), "again.svg").pattern();
        for (Pattern now : List.of(longer, opened)) {
            Pattern back = new Replay(now, List.of(changed)).to(List.of());
            Outline is = back.piece("front").orElseThrow().outline();
            Outline was = MeasureEdits.dartLength(darted(file, ""), "front", "d", 130)
                    .piece("front")
                    .orElseThrow()
                    .outline();
            assertThat(is.nearest(dart(longer).point()).distance()).isLessThan(1e-6);
            for (Segment segment : was.segments()) {
                assertThat(is.nearest(segment.start()).distance()).isLessThan(1e-6);
            }
            Pattern again = new Replay(back, List.of()).to(Step.course(longer));
            assertThat(again.piece("front").orElseThrow().outline())
                    .satisfies(o -> assertThat(o.nearest(new Point(222, 250)).distance())
                            .isLessThan(1e-6));
        }
    }

    /** Where a change has moved the point, what was drawn before it has another one. */
    @Test
    void aDartThatAChangeMovedIsRefused() throws Exception {
        Pattern changed = widened(darted(file(CUT), ""));
        Piece piece = changed.piece("front").orElseThrow();
        Outline other = Outline.polygon(List.of(
                new Point(10, 10),
                new Point(90, 10),
                new Point(95, 80),
                new Point(112, 14),
                new Point(210, 20),
                new Point(210, 600),
                new Point(10, 600)));
        Pattern moved =
                changed.withPiece(piece.toBuilder().original(Optional.of(other)).build());
        assertThatThrownBy(() -> MeasureEdits.dartLength(moved, "front", "d", 80))
                .hasMessageStartingWith("dart-changed ");
    }
}
