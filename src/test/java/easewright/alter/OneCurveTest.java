package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.alter.Trued.Matter;
import easewright.geom.Cubic;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.topology.Validity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The waist between a dart and a side seam trued in one smooth curve: as long as it was, near, and without waves. */
class OneCurveTest {
    /** The waist of a change that goes to a corner at the side: each part that is trued is one curve afterwards. */
    @ParameterizedTest
    @CsvSource({"skirt, hip, waist", "trousers, hip, waist", "bodice, bust, waist"})
    void theWaistOfASampleIsOneCurveFromDartToSeam(String name, String level, String edge) throws Exception {
        for (double amount : new double[] {60, -40}) {
            Pattern before = SeamChange.at(level, amount)
                    .withTaper(Taper.STRAIGHT)
                    .apply(TruingTest.sample(name))
                    .pattern();
            Proposal proposal = Truing.proposals(before).stream()
                    .filter(p -> p.truing().matter() == Matter.JOINED_LINE
                            && edge.equals(p.finding().values().get("edge")))
                    .findFirst()
                    .orElseThrow();
            Altered altered = proposal.apply(before);
            assertThat(told(altered)).as("told of both pieces").hasSize(2).allMatch(most -> most < 1.1);
            for (Piece was : before.pieces()) {
                Piece is = altered.pattern().piece(was.id()).orElseThrow();
                if (was != is) {
                    assertLaws(was, is);
                    assertThat(Cloths.sewn(is, edge)).isCloseTo(Cloths.sewn(was, edge), within(1e-3));
                }
            }
            assertThat(OneCurve.farthest(
                            before.pieces().get(0), altered.pattern().pieces().get(0)))
                    .isPresent();
        }
    }

    private static List<Double> told(Altered altered) {
        return altered.findings().stream()
                .filter(f -> f.code().equals("trued-in-one-curve"))
                .map((Finding f) -> (Double) f.values().get("most"))
                .toList();
    }

    private static void assertLaws(Piece was, Piece is) {
        assertThat(Validity.isSimple(is.outline())).isTrue();
        for (int i = 0; i < is.edges().size(); i++) {
            List<Curve> before = TruedRun.stretches(was, i);
            List<Curve> after = TruedRun.stretches(is, i);
            for (int k = 0; k < after.size(); k++) {
                assertThat(Apart.farthest(before.get(k), after.get(k))).isLessThanOrEqualTo(OneCurve.NEAR);
                assertThat(OneCurve.turns(after.get(k)))
                        .as("from hollow to round")
                        .isLessThanOrEqualTo(Math.max(1, OneCurve.turns(before.get(k))));
            }
        }
    }

    /** A front whose waist has a dart: both parts of the waist bow by some millimetres, and bend where it is closed. */
    private static Piece front(Random random) {
        double intake = 16 + random.nextDouble() * 10;
        double deep = 80 + random.nextDouble() * 50;
        double left = 60 + random.nextDouble() * 60;
        double right = 60 + random.nextDouble() * 60;
        double angle = Math.atan(intake / 2 / deep);
        double bends = Math.toRadians((random.nextDouble() - 0.5) * 20);
        double rise = Math.tan(angle - bends / 2);
        Point one = new Point(left, 0);
        Point two = new Point(left + intake, 0);
        Point start = new Point(0, left * rise);
        Point end = new Point(left + intake + right, right * rise);
        Point point = new Point(left + intake / 2, deep);
        List<Segment> all = new ArrayList<>();
        all.add(bowed(start, one, (random.nextDouble() - 0.5) * 4));
        all.addAll(Outline.polygon(List.of(one, point, two)).segments().subList(0, 2));
        all.add(bowed(two, end, (random.nextDouble() - 0.5) * 4));
        Point low = new Point(end.x(), 600);
        all.addAll(Outline.polygon(List.of(end, low, new Point(0, 600), start))
                .segments()
                .subList(0, 3));
        return Piece.bare("front", new Outline(all)).toBuilder()
                .edges(List.of(
                        Edge.of("waist", EdgeRole.WAIST, start, end),
                        Edge.of("side", EdgeRole.SEAM, end, low),
                        Edge.of("hem", EdgeRole.HEM, low, new Point(0, 600)),
                        Edge.of("centre", EdgeRole.CENTRE, new Point(0, 600), start)))
                .darts(List.of(new Dart("d", one, two, point, Optional.empty(), Optional.of("waist"))))
                .build();
    }

    private static Cubic bowed(Point from, Point to, double by) {
        Point way = to.minus(from);
        Point aside = way.quarterTurned().unit().times(by);
        return new Cubic(
                from,
                from.plus(way.times(1 / 3.0)).plus(aside),
                to.minus(way.times(1 / 3.0)).plus(aside),
                to);
    }

    @Test
    void inRandomFrontsTheClosedDartIsCrossedInOneCurveOnEitherSide() throws Exception {
        Random random = new Random(47);
        int smooth = 0;
        double longest = 0;
        for (int i = 0; i < 120; i++) {
            Piece was = front(random);
            Pattern before = Cloths.pattern(List.of(), was);
            Altered altered = Trued.cap("front", "d").apply(before);
            Piece is = altered.pattern().pieces().get(0);
            longest = Math.max(longest, Math.abs(Cloths.sewn(is, "waist") - Cloths.sewn(was, "waist")));
            assertThat(Validity.isSimple(is.outline())).as("case %d", i).isTrue();
            if (told(altered).isEmpty()) {
                continue;
            }
            smooth++;
            assertThat(TruedRun.stretches(is, 0))
                    .as("but for a crumb at the mouth, which may slide by a hair")
                    .allMatch(s -> s.segments().stream()
                                    .filter(each -> each.length() > 0.02)
                                    .count()
                            == 1);
            assertLaws(was, is);
            Alteration back =
                    Ways.from(altered.pattern().changes().get(0)).opposite().orElseThrow();
            Piece again = back.apply(altered.pattern()).pattern().pieces().get(0);
            assertThat(Worst.apart(again.outline(), was.outline())).isLessThan(1e-6);
        }
        // A mouth that slides by less than a hundredth of a millimetre stays where it is.
        assertThat(longest).isLessThan(5e-3);
        assertThat(smooth).isGreaterThan(90);
    }

    /** A line that no one curve comes near keeps its form but beside the dart. */
    @Test
    void aWaistWithAFormOfItsOwnKeepsIt() throws Exception {
        Piece was = front(new Random(3));
        List<Segment> all = new ArrayList<>(was.outline().segments());
        Segment last = all.get(3);
        Point peak = last.at(0.6).plus(new Point(0, -9));
        all.set(3, bowed(last.start(), peak, 0));
        all.add(4, bowed(peak, last.end(), 0));
        Piece pointed = was.withOutline(new Outline(all));
        Altered altered = Trued.cap("front", "d").apply(Cloths.pattern(List.of(), pointed));
        Outline is = altered.pattern().pieces().get(0).outline();
        assertThat(told(altered)).isEmpty();
        for (double t = 0; t <= 1; t += 0.1) {
            assertThat(is.nearest(all.get(4).at(t)).distance()).isLessThan(1e-9);
        }
    }

    /** A record of a truing that was drawn otherwise is drawn as it was, as long as the lines are the same. */
    @Test
    void whatWasDrawnOtherwiseOnceIsDrawnSoAgain() throws Exception {
        Pattern before = Cloths.pattern(List.of(), front(new Random(5)));
        Trued cap = Trued.cap("front", "d");
        List<Stroke> strokes =
                SewnDrawing.of(before, cap, new CapTruer(false, false)).strokes(before);
        Trued once = new Trued(
                cap.matter(),
                cap.target(),
                false,
                strokes.stream().map(Stroke::text).toList(),
                false);
        Altered again = Ways.from(once.note()).apply(before);
        Altered now = cap.apply(before);
        assertThat(again.pattern().changes()).containsExactly(once.note());
        assertThat(Worst.apart(
                        again.pattern().pieces().get(0).outline(),
                        now.pattern().pieces().get(0).outline()))
                .isGreaterThan(0.05);
        assertThat(Worst.apart(
                        again.pattern().pieces().get(0).outline(),
                        on(before.pieces().get(0), strokes).outline()))
                .isLessThan(1e-9);
    }

    private static Piece on(Piece piece, List<Stroke> strokes) throws Refusal {
        Piece now = piece;
        for (Stroke stroke : strokes) {
            now = stroke.on(now);
        }
        return now;
    }

    /** A dart that begins where the waist does: nothing lies between the two, and the other end is trued all the same. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 4e-7, 9e-7, 1.8e-6, 1e-5})
    void aDartAtTheCornerOfTheWaistLeavesOneStretch(double beside) throws Exception {
        Pattern bent = TruingTest.skirt(86, 88, 90);
        Piece drawn = bent.piece("front").orElseThrow();
        Point corner = new Point(beside, 0);
        Dart dart = new Dart("d", corner, new Point(20, 0), new Point(10, 120), Optional.empty(), Optional.of("waist"));
        Pattern before = bent.withPiece(drawn.toBuilder().darts(List.of(dart)).build());
        assertThat(TruedRun.stretches(before.piece("front").orElseThrow(), 0).stream()
                        .filter(s -> s.length() > 1e-4))
                .singleElement()
                .satisfies(s -> assertThat(s.start().distance(new Point(20, 0))).isLessThan(1e-6));
        Proposal proposal = Truing.proposals(before).stream()
                .filter(p -> p.truing().matter() == Matter.JOINED_LINE)
                .findFirst()
                .orElseThrow();
        Altered altered = proposal.apply(before);
        assertThat(altered.pattern().changes()).hasSize(1);
        TruingTest.assertGone(altered.pattern(), proposal);
    }
}
