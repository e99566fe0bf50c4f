package easewright.alter;

import static easewright.alter.Cloths.polygon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.EdgeRef;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is untrue is found, put right alone, recorded, and can be taken back (docs/sources.md 4.5). */
class TruingTest {
    static Pattern sample(String name) throws Exception {
        return SvgFile.read(Path.of("sample-pieces", name + ".svg")).pattern();
    }

    private static Proposal only(Pattern pattern, String code) {
        List<Proposal> found = Truing.proposals(pattern).stream()
                .filter(p -> p.finding().code().equals(code))
                .toList();
        assertThat(found).as(code).hasSize(1);
        return found.get(0);
    }

    static void assertGone(Pattern pattern, Proposal proposal) {
        assertThat(Truing.proposals(pattern))
                .noneMatch(p -> p.truing().matter() == proposal.truing().matter()
                        && p.truing().target().equals(proposal.truing().target()));
    }

    /** Half a skirt whose waist leaves the side by one angle and the fold by another, degrees. */
    private static Piece half(String id, double atSide, double atFold) {
        double foldDip = 200 / 3.0 * Math.tan(Math.toRadians(atFold - 90));
        double sideDip = 200 / 3.0 * Math.tan(Math.toRadians(atSide - 90));
        List<Point> corners = List.of(
                new Point(0, 0),
                new Point(200 / 3.0, -foldDip),
                new Point(400 / 3.0, -sideDip),
                new Point(200, 0),
                new Point(200, 600),
                new Point(0, 600));
        Piece drawn = polygon(id, corners, "waist WAIST, b WAIST, c WAIST, side SEAM, hem HEM, fold FOLD");
        return drawn
                .withEdges(List.of(
                        drawn.edge("waist").orElseThrow().withEnds(corners.get(0), corners.get(3)),
                        drawn.edge("side").orElseThrow(),
                        drawn.edge("hem").orElseThrow(),
                        drawn.edge("fold").orElseThrow()))
                .toBuilder()
                .cut(1, true)
                .levels(List.of(LevelMark.along("waist", "waist"), LevelMark.through("hip", new Point(20, 200))))
                .build();
    }

    static Pattern skirt(double front, double back, double atFold) {
        return Cloths.pattern(List.of(Cloths.WAIST, Cloths.HIP), half("front", front, atFold), half("back", back, 90))
                .withMates(List.of(new Mate(
                        "side seam", List.of(EdgeRef.of("front", "side")), List.of(EdgeRef.of("back", "side")), 0)));
    }

    @ParameterizedTest
    @CsvSource({"86, 88", "93, 89.5", "81, 84"})
    void joinedLineBecomesSmoothAndWaistKeepsItsGirth(double front, double back) throws Refusal {
        Pattern before = skirt(front, back, 90);
        Proposal proposal = only(before, "joined-line-bends");
        assertThat((Double) proposal.finding().values().get("degrees.degrees"))
                .isCloseTo(Math.abs(180 - front - back), within(1e-9));
        Pattern after = proposal.apply(before).pattern();
        assertGone(after, proposal);
        GarmentMeasures measures = Measures.of(after);
        JoinTruer.Joint joint = JoinTruer.joints(after, measures, after.mates(), new SewnPieces(after, measures))
                .get(0);
        assertThat(joint.missing()).isCloseTo(0, within(1e-6));
        for (String level : List.of("waist", "hip")) {
            assertThat(Cloths.girth(after, level)).isCloseTo(Cloths.girth(before, level), within(1e-3));
        }
        assertThat(measures.mate("side seam").orElseThrow().drift()).isCloseTo(0, within(1e-3));
        assertThat(Truing.proposals(skirt(90.4, 90.4, 90))).isEmpty();
        assertThat(Truing.proposals(skirt(70, 75, 90)))
                .as("meant to be pointed")
                .isEmpty();
    }

    @Test
    void waistLeavesTheFoldSquare() throws Refusal {
        Pattern before = skirt(90, 90, 87);
        Proposal proposal = only(before, "corner-not-square");
        Pattern after = proposal.apply(before).pattern();
        assertGone(after, proposal);
        assertThat(Cloths.girth(after, "waist")).isCloseTo(Cloths.girth(before, "waist"), within(0.01));
        assertThat(after.pieces().get(0).edge("fold"))
                .isEqualTo(before.pieces().get(0).edge("fold"));
    }

    /** worked example W8: with the seam square to the closed legs the cap stands out by L·tan(α/2)·sin(α/2). */
    @ParameterizedTest
    @CsvSource({"3.5, 1, 25.4, 0.072169", "12, 2, 10, 0.083624"})
    void capOfADartIsDrawnAsIfItWereFolded(double leg, double intake, double unit, double peak) throws Refusal {
        double half = intake / 2;
        double deep = Math.sqrt(leg * leg - half * half);
        Point point = new Point(0, deep).times(unit);
        Point one = new Point(-half, 0).times(unit);
        Point two = new Point(half, 0).times(unit);
        Point left = one.plus(new Point(-deep, half).times(unit * 20 / leg));
        Point right = two.plus(new Point(deep, half).times(unit * 20 / leg));
        Piece piece = polygon(
                        "front",
                        List.of(left, one, two, right, new Point(right.x(), 900), new Point(left.x(), 900)),
                        "waist WAIST, b WAIST, c WAIST, side SEAM, hem HEM, other side SEAM")
                .toBuilder()
                .darts(List.of(new Dart("dart", one, two, point, Optional.empty(), Optional.of("waist"))))
                .build();
        piece = piece.withEdges(List.of(
                piece.edge("waist").orElseThrow().withEnds(left, right),
                piece.edge("side").orElseThrow(),
                piece.edge("hem").orElseThrow(),
                piece.edge("other side").orElseThrow()));
        Pattern before = Cloths.pattern(List.of(), piece);
        Proposal proposal = only(before, "dart-cap-off");
        assertThat((Double) proposal.finding().values().get("off")).isCloseTo(peak * unit, within(1e-6 * unit));
        Altered altered = proposal.apply(before);
        assertGone(altered.pattern(), proposal);
        Point expected = new Point(0, -peak * unit);
        assertThat(altered.pattern().pieces().get(0).outline().nearest(expected).distance())
                .isLessThan(1e-6 * unit);
    }

    @Test
    void hingeCornerIsBlendedAndTheEdgeKeepsItsLength() throws Exception {
        Pattern skirt = sample("skirt");
        Piece front = skirt.piece("Front").orElseThrow();
        Curve side = front.edge("side").orElseThrow().on(front.outline());
        Curve fold = front.edge("fold").orElseThrow().on(front.outline());
        Point hinge = side.pointAtLength(side.length() * 0.7);
        Point opening = fold.pointAtLength(fold.length() * 0.3);
        Pattern slashed = new HingedSlash(
                        front.id(),
                        hinge,
                        opening,
                        12,
                        front.edge("hem").orElseThrow().from(),
                        true)
                .apply(skirt)
                .pattern();
        Proposal proposal = Truing.proposals(slashed).stream()
                .filter(p -> p.finding().code().equals("corner-within-edge"))
                .filter(p -> p.finding().values().get("edge").equals("side"))
                .findFirst()
                .orElseThrow();
        double length = Measures.of(slashed)
                .piece(front.id())
                .orElseThrow()
                .edge("side")
                .orElseThrow()
                .mm();
        Pattern blended = proposal.apply(slashed).pattern();
        assertGone(blended, proposal);
        assertThat(Measures.of(blended)
                        .piece(front.id())
                        .orElseThrow()
                        .edge("side")
                        .orElseThrow()
                        .mm())
                .isCloseTo(length, within(1e-3));
    }

    @Test
    void notchMovesToMeetItsPartner() throws Refusal {
        Pattern plain = skirt(90, 90, 90);
        Piece front = plain.pieces().get(0);
        Piece back = plain.pieces().get(1);
        Pattern before = plain.withPieces(List.of(
                front.toBuilder()
                        .notches(List.of(new Notch("n", new Point(200, 210))))
                        .build(),
                back.toBuilder()
                        .notches(List.of(new Notch("n", new Point(200, 213))))
                        .riders(List.of(new Rider(
                                "tick",
                                Rider.Kind.ATTACHED,
                                List.of(new easewright.geom.Line(new Point(200, 213), new Point(206, 213))))))
                        .build()));
        Proposal proposal = only(before, "notches-apart");
        assertThat((Double) proposal.finding().values().get("apart")).isCloseTo(3, within(1e-9));
        Piece after = proposal.apply(before).pattern().pieces().get(1);
        assertThat(after.notches().get(0).at().distance(new Point(200, 210))).isLessThan(1e-9);
        assertThat(after.riders().get(0).segments().get(0).end().distance(new Point(206, 210)))
                .isLessThan(1e-9);
    }

    /**
     * The samples' own cutting lines come from drafting; drawn anew around the same pieces they are the same lines, but
     * for less than a millimetre where a bent hem is turned up.
     */
    @ParameterizedTest
    @ValueSource(strings = {"skirt", "trousers", "bodice", "knit-top"})
    void cuttingLineDrawnAnewIsTheDraftedOne(String name) throws Exception {
        Pattern pattern = sample(name);
        int seen = 0;
        for (Piece piece : pattern.pieces()) {
            Optional<Rider> line = piece.riders().stream()
                    .filter(r -> r.kind() == Rider.Kind.PARALLEL)
                    .findFirst();
            if (line.isEmpty()) {
                continue;
            }
            Pattern anew = Trued.cut(piece.id()).apply(pattern).pattern();
            Rider drawn = anew.piece(piece.id()).orElseThrow().riders().stream()
                    .filter(r -> r.id().equals(line.get().id()))
                    .findFirst()
                    .orElseThrow();
            Curve old = new Curve(line.get().segments());
            for (Segment s : new Outline(drawn.segments()).segments()) {
                for (int i = 0; i < 4; i++) {
                    assertThat(old.nearest(s.at(i / 4.0)).distance())
                            .as("%s at %s", piece.name(), s.at(i / 4.0))
                            .isLessThan(1);
                }
            }
            seen++;
        }
        assertThat(seen).isPositive();
    }

    @Test
    void allowanceThatASteepChangeLeftUnevenIsEvenAgain() throws Exception {
        Pattern before = SeamChange.at("bust", 40).apply(sample("bodice")).pattern();
        Proposal proposal = Truing.proposals(before).stream()
                .filter(p -> p.finding().code().equals("allowance-uneven"))
                .findFirst()
                .orElseThrow();
        Pattern after = proposal.apply(before).pattern();
        assertGone(after, proposal);
        assertThat(Truing.proposals(sample("bodice")))
                .noneMatch(p -> p.finding().code().equals("allowance-uneven"));
    }
}
