package easewright.alter;

import static easewright.alter.Panels.only;
import static easewright.alter.Panels.panel;
import static easewright.alter.Panels.proposals;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.PieceCopy;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the line beside a seam is no longer as far from it as it was, and what is told of it. */
class AllowanceFoundTest {
    /** Each line that runs beside a changed piece at its allowance, but for one edge. */
    private static Piece beside(double right, double hem) {
        Piece piece = panel("front", 600);
        return piece.toBuilder()
                .drawn(LineKind.STITCHING, 10)
                .edges(piece.edges().stream()
                        .map(e -> e.role() == EdgeRole.FOLD
                                ? e
                                : new Edge(e.name(), e.role(), e.from(), e.to(), false, OptionalDouble.of(10)))
                        .toList())
                .original(Optional.of(Outline.polygon(
                        List.of(new Point(0, 0), new Point(190, 0), new Point(190, 600), new Point(0, 600)))))
                .riders(List.of(line("cut", right, hem)))
                .build();
    }

    private static Rider line(String id, double right, double hem) {
        List<Point> corners = List.of(
                new Point(0, -10),
                new Point(200 + right, -10),
                new Point(200 + right, 600 + hem),
                new Point(0, 600 + hem));
        return new Rider(id, Rider.Kind.PARALLEL, Outline.polygon(corners).segments());
    }

    @ParameterizedTest
    @CsvSource({"10, 0", "10.45, 0", "9.55, 0", "10.55, 1", "9.45, 1", "25, 1"})
    void allowanceIsEvenWithinHalfAMillimetre(double right, int found) throws Refusal {
        Pattern pattern = Cloths.pattern(List.of(), beside(right, 10.2));
        List<Proposal> uneven = proposals(pattern, "allowance-uneven");
        assertThat(uneven).hasSize(found);
        for (Proposal proposal : uneven) {
            assertThat(proposal.finding().values()).containsEntry("edge", "side");
            assertThat((Double) proposal.finding().values().get("off")).isCloseTo(Math.abs(right - 10), within(1e-9));
            Altered done = proposal.apply(pattern);
            Piece after = done.pattern().pieces().get(0);
            assertThat(after.outline()).isSameAs(pattern.pieces().get(0).outline());
            List<Segment> drawn = after.riders().get(0).segments();
            assertThat(drawn.get(0).start().distance(new Point(0, -10))).isLessThan(1e-9);
            assertThat(Math.abs(new Outline(drawn).signedArea())).isCloseTo(210 * 620, within(1e-6));
            assertThat(proposals(done.pattern(), "allowance-uneven")).isEmpty();
        }
    }

    /**
     * A cutting line drawn by hand, 2.5 mm off along an armhole: a change at the hip leaves both lines there as they are,
     * and nothing is said of it; where a part of the piece turns with its armhole, neither.
     */
    @Test
    void whatWasDrawnUnevenIsNoFaultOfTheChange() throws Refusal {
        Point shoulder = new Point(100, 0);
        Point underarm = new Point(180, 200);
        Cubic hole = new Cubic(shoulder, new Point(90, 90), new Point(110, 180), underarm);
        Cubic cut = new Cubic(new Point(112, -10), new Point(102.5, 90), new Point(124, 171), new Point(190, 188));
        Piece drawn = Piece.bare(
                        "front",
                        new Outline(List.of(
                                new Line(new Point(0, 0), shoulder),
                                hole,
                                new Line(underarm, new Point(190, 500)),
                                new Line(new Point(190, 500), new Point(0, 500)),
                                new Line(new Point(0, 500), new Point(0, 0)))))
                .toBuilder()
                .cut(1, true)
                .edges(List.of(
                        edge("shoulder", EdgeRole.SHOULDER, new Point(0, 0), shoulder),
                        edge("armhole", EdgeRole.ARMHOLE, shoulder, underarm),
                        edge("side", EdgeRole.SEAM, underarm, new Point(190, 500)),
                        edge("hem", EdgeRole.HEM, new Point(190, 500), new Point(0, 500)),
                        Edge.of("fold", EdgeRole.FOLD, new Point(0, 500), new Point(0, 0))))
                .levels(List.of(LevelMark.through("hip", new Point(0, 400))))
                .riders(List.of(new Rider(
                        "cut",
                        Rider.Kind.PARALLEL,
                        new Outline(List.of(
                                        new Line(new Point(0, -10), cut.start()),
                                        cut,
                                        new Line(cut.end(), new Point(196.81, 400)),
                                        new Line(new Point(196.81, 400), new Point(200.34, 510)),
                                        new Line(new Point(200.34, 510), new Point(0, 510)),
                                        new Line(new Point(0, 510), new Point(0, -10))))
                                .segments())))
                .build();
        Pattern pattern = Cloths.pattern(List.of(Cloths.HIP), drawn);
        Pattern after = SeamChange.at("hip", 20)
                .withTaper(Taper.STRAIGHT)
                .apply(pattern)
                .pattern();
        assertThat(after.pieces().get(0).original()).isPresent();
        assertThat(proposals(after, "allowance-uneven")).isEmpty();
        assertThat(CutTruer.strayed(after.pieces())).singleElement().satisfies(b -> {
            assertThat(b.edge().name()).as("what was changed").isEqualTo("side");
            assertThat(b.off())
                    .as("less than the armhole was off from the start")
                    .isLessThan(0.7);
        });
        Piece wrong = after.pieces().get(0).toBuilder()
                .outline(after.pieces().get(0).outline().transformed(Affine.translation(new Point(1, 0))))
                .build();
        assertThat(CutTruer.strayed(List.of(wrong)))
                .as("what moves against the line beside it is still found")
                .singleElement()
                .satisfies(b -> assertThat(b.off()).isGreaterThan(0.8));
        Affine map = new Affine(Math.cos(0.1), Math.sin(0.1), -Math.sin(0.1), Math.cos(0.1), 5, 30);
        Piece turned = new PieceCopy(map::apply, line -> line.transformed(map), false).of(drawn);
        assertThat(CutTruer.strayed(List.of(turned.toBuilder()
                        .original(Optional.of(drawn.outline()))
                        .build())))
                .singleElement()
                .satisfies(b -> assertThat(b.off()).isLessThan(0.5));
    }

    private static Edge edge(String name, EdgeRole role, Point from, Point to) {
        return new Edge(name, role, from, to, role != EdgeRole.SEAM, OptionalDouble.of(10));
    }

    /** Drawn the other way round it is drawn so again, from where it began. */
    @Test
    void newLineGoesTheWayOfTheOld() throws Refusal {
        Piece piece = beside(14, 10);
        List<Point> corners = List.of(new Point(214, 610), new Point(214, -10), new Point(0, -10), new Point(0, 610));
        Rider other =
                new Rider("cut", Rider.Kind.PARALLEL, Outline.polygon(corners).segments());
        Pattern pattern = Cloths.pattern(
                List.of(), piece.toBuilder().riders(List.of(other)).build());
        Rider done = only(pattern, "allowance-uneven")
                .apply(pattern)
                .pattern()
                .pieces()
                .get(0)
                .riders()
                .get(0);
        assertThat(done.segments().get(0).start().distance(new Point(210, 610))).isLessThan(1e-9);
        assertThat(done.segments().get(0).end().x()).as("up the side").isCloseTo(210, within(1e-9));
        double was = new Outline(other.segments()).signedArea();
        assertThat(new Outline(done.segments()).signedArea()).isCloseTo(Math.signum(was) * 210 * 620, within(1e-6));
    }

    @Test
    void onlyOneClosedLineBesideAChangedPieceIsLookedAt() {
        Piece piece = beside(14, 10);
        assertThat(CutTruer.strayed(List.of(piece))).singleElement().satisfies(b -> {
            assertThat(b.edge().name()).isEqualTo("side");
            assertThat(b.off()).isCloseTo(4, within(1e-9));
        });
        assertThat(CutTruer.strayed(
                        List.of(piece.toBuilder().original(Optional.empty()).build())))
                .as("not changed")
                .isEmpty();
        Rider line = piece.riders().get(0);
        Rider open = new Rider("open", Rider.Kind.PARALLEL, line.segments().subList(0, 3));
        Rider attached = new Rider("attached", Rider.Kind.ATTACHED, line.segments());
        assertThat(CutTruer.strayed(List.of(
                        piece.toBuilder().riders(List.of(open, line, attached)).build())))
                .hasSize(1);
        assertThat(CutTruer.strayed(List.of(piece.toBuilder()
                        .riders(List.of(line, line("two", 10, 10)))
                        .build())))
                .as("two of them")
                .isEmpty();
        assertThat(CutTruer.strayed(
                        List.of(piece.toBuilder().riders(List.of(open)).build())))
                .isEmpty();
        assertThat(CutTruer.isClosed(List.of())).isFalse();
        assertThat(CutTruer.isClosed(List.of(new Line(new Point(0, 0), new Point(1, 0)))))
                .isFalse();
    }
}
