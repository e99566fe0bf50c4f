package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The way back after a file was opened again, when no earlier pattern is at hand: three changes of every kind on random
 * pieces sewn together, truings among them. {@code -Dcases=100} tries more, {@code -Dworst=say} tells counts.
 */
class RetraceTest {
    private static final int CASES = Integer.getInteger("cases", 5);

    private static Alteration change(Random random, Pattern pattern) {
        double amount = Math.rint(random.nextDouble() * 300 - 120) / 10;
        List<Proposal> untrue = Truing.proposals(pattern);
        int way = random.nextInt(8);
        if (way >= 5 && !untrue.isEmpty()) {
            return untrue.get(random.nextInt(untrue.size())).truing().acceptingProtected();
        }
        Piece front = pattern.pieces().get(0);
        return switch (way) {
            case 0 -> new DartIntake("top", amount, List.of(), true);
            case 1 -> new DartToSeam("mid", amount, List.of(), List.of(), Taper.SMOOTH, true);
            case 2 -> SeamChange.at("mid", amount).acceptingProtected();
            case 3 -> new EdgeLength(EdgeRef.of("front", hollow(front)), amount / 2, EdgeLength.Manner.AT_ENDS, true);
            default ->
                CentreChange.parallel("mid", amount, EdgeRef.of("front", "fold"))
                        .acceptingProtected();
        };
    }

    /** The armhole or crotch of the piece; its hem if it has none. */
    private static String hollow(Piece piece) {
        return piece.edges().stream()
                .filter(e -> e.role() == EdgeRole.ARMHOLE || e.role() == EdgeRole.CROTCH)
                .findFirst()
                .map(Edge::name)
                .orElse("hem");
    }

    /** The patterns from the drawn one to that with three changes made; what is refused is passed over. */
    static List<Pattern> course(long seed, LineKind drawn) {
        Random random = new Random(seed * 7919);
        List<Pattern> course = new ArrayList<>(List.of(TruingPropertiesTest.pair(seed, drawn)));
        for (int tries = 0; tries < 12 && course.size() < 4; tries++) {
            Pattern now = course.get(course.size() - 1);
            try {
                Pattern next = change(random, now).apply(now).pattern();
                if (next.changes().size() > now.changes().size()) {
                    course.add(next);
                }
            } catch (Refusal refused) {
                continue;
            }
        }
        return course;
    }

    @ParameterizedTest
    @EnumSource(LineKind.class)
    void everyEarlierPatternComesBackOrIsRefused(LineKind drawn) {
        Worst outlines = new Worst(drawn + " outline and marks after reopening");
        Worst beside = new Worst(drawn + " cutting line beside, after reopening");
        int all = 0;
        int refused = 0;
        for (long seed = 1; seed <= CASES; seed++) {
            List<Pattern> course = course(seed, drawn);
            Pattern now = course.get(course.size() - 1);
            for (int kept = 0; kept < course.size() - 1; kept++) {
                all++;
                Pattern was = course.get(kept);
                Pattern back;
                try {
                    back = new Replay(now, List.of()).to(Step.course(was));
                } catch (StepRefused refusal) {
                    refused++;
                    continue;
                }
                assertThat(back.changes()).isEqualTo(was.changes());
                double off = 0;
                for (int i = 0; i < was.pieces().size(); i++) {
                    Piece one = back.pieces().get(i);
                    Piece other = was.pieces().get(i);
                    off = Math.max(off, Worst.apart(one.outline(), other.outline()));
                    off = Math.max(off, apart(places(one), places(other)));
                    for (int k = 0; k < one.riders().size(); k++) {
                        beside.meet(
                                seed, apart(one.riders().get(k), other.riders().get(k)));
                    }
                }
                outlines.meet(seed, off);
            }
        }
        if ("say".equals(System.getProperty("worst"))) {
            System.out.println(drawn + ": " + refused + " of " + all + " refused");
        }
        outlines.within(1e-6);
        if (drawn == LineKind.STITCHING) {
            beside.within(1e-6);
        }
        assertThat(refused).as("of %d", all).isLessThanOrEqualTo(all / 100);
    }

    private static List<Point> places(Piece piece) {
        List<Point> places = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            places.add(edge.from());
            places.add(edge.to());
        }
        piece.darts().stream().map(Dart::corners).forEach(places::addAll);
        piece.notches().stream().map(Notch::at).forEach(places::add);
        return places;
    }

    private static double apart(List<Point> some, List<Point> others) {
        double most = 0;
        for (int i = 0; i < some.size(); i++) {
            most = Math.max(most, some.get(i).distance(others.get(i)));
        }
        return most;
    }

    private static double apart(Rider one, Rider other) {
        Curve line = new Curve(other.segments());
        double most = 0;
        for (Segment s : one.segments()) {
            for (int i = 0; i < 8; i++) {
                most = Math.max(most, line.nearest(s.at(i / 8.0)).distance());
            }
        }
        return most;
    }

    private static Piece square() {
        return Cloths.square("cloth", 120 / Cloths.INCH, EdgeRole.WAIST, EdgeRole.CENTRE);
    }

    private static Pattern lengthened(Piece piece) throws Refusal {
        return new EdgeLength(EdgeRef.of("cloth", "top"), 6, EdgeLength.Manner.AT_ENDS, true)
                .apply(Cloths.pattern(List.of(), piece))
                .pattern();
    }

    /** A cloth folded away by a slash is kept with the drawing: taking the slash back brings it again. */
    @Test
    void whatASlashFoldedAwayIsThereAgain() throws Exception {
        Pattern first = lengthened(square());
        Pattern folded = new HingedSlash("cloth", new Point(100, 0), new Point(120, 120), -8, new Point(200, 60), true)
                .apply(first)
                .pattern();
        Pattern back = new Replay(folded, List.of()).to(Step.course(first));
        assertThat(Worst.apart(
                        back.pieces().get(0).outline(), first.pieces().get(0).outline()))
                .isLessThan(1e-6);
        assertThat(Worst.apart(
                        first.pieces().get(0).outline(), back.pieces().get(0).outline()))
                .isLessThan(1e-6);
    }

    /** A file may keep an outline of which no change tells any more. */
    @Test
    void anOutlineThatWasKeptComesBackWithoutAnyRecordedChange() throws Refusal {
        Piece square = square();
        Pattern forgotten = lengthened(square).withChanges(List.of());
        assertThat(forgotten.pieces().get(0).outline()).isNotEqualTo(square.outline());
        Piece back = Retrace.to(forgotten, 0).pieces().get(0);
        assertThat(back.outline()).isEqualTo(square.outline());
        assertThat(back.original()).isEmpty();
    }

    /** Drawings have corners in which two places lie on each other. */
    @Test
    void aDrawnCornerThatStandsTwiceDoesNotHinderTheWayBack() throws Refusal {
        Pattern longer = lengthened(square());
        Piece now = longer.pieces().get(0);
        List<Segment> twice = new ArrayList<>(now.original().orElseThrow().segments());
        Point corner = twice.get(1).start();
        twice.add(1, new Line(corner, corner));
        Outline drawn = new Outline(twice);
        Pattern kept =
                longer.withPiece(now.toBuilder().original(Optional.of(drawn)).build());
        Piece back = Retrace.to(kept, 0).pieces().get(0);
        assertThat(back.outline()).isEqualTo(drawn);
        assertThat(apart(places(back), places(square()))).isLessThan(1e-6);
    }

    /**
     * Two changes on pieces with a cutting line drawn beside them, which is parted on the way: its parts come back as
     * near as they matter, and the outline is the drawn one. Of 156 such pairs on the samples two are refused.
     */
    @ParameterizedTest
    @CsvSource({
        "bodice, bust, bust, 12",
        "bodice, bust, waist, 30",
        "knit-top, hip, hip, 12",
        "trousers, thigh, thigh, 30",
        "trousers, knee, thigh, 30"
    })
    void linesThatWerePartedOnTheWayComeBack(String garment, String first, String second, double amount)
            throws Exception {
        Pattern drawn = TruingTest.sample(garment);
        Pattern once = SeamChange.at(first, amount).apply(drawn).pattern();
        Pattern twice = SeamChange.at(second, amount).apply(once).pattern();
        Pattern back = new Replay(twice, List.of()).to(List.of());
        for (int i = 0; i < drawn.pieces().size(); i++) {
            Piece was = drawn.pieces().get(i);
            Piece is = back.pieces().get(i);
            assertThat(Likeness.same(is, was)).isTrue();
            assertThat(is.outline()).isEqualTo(was.outline());
            assertThat(Likeness.sameLines(is.riders(), was.riders(), 0.35)).isTrue();
        }
    }
}
