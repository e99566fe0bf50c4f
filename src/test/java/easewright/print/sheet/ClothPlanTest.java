package easewright.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Box;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import easewright.print.sheet.ClothPlan.OnCloth;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lengths of cloth against layouts that can be worked out by hand. */
class ClothPlanTest {
    private static final Scale SCALE = new Scale(1, 1, Scale.Proof.KNOWN_LINE);

    private static Piece rectangle(String name, double width, double height, int times) {
        Point right = new Point(width, 0);
        Outline outline =
                Outline.polygon(List.of(new Point(0, 0), right, new Point(width, height), new Point(0, height)));
        return Piece.bare(name, outline).toBuilder().cut(times, false).build();
    }

    /** The same, cut on the fold, which is its right side. */
    private static Piece onFold(String name, double width, double height) {
        Edge fold = Edge.of("fold", EdgeRole.FOLD, new Point(width, 0), new Point(width, height));
        return rectangle(name, width, height, 1).toBuilder()
                .cut(1, true)
                .edges(List.of(fold))
                .build();
    }

    @Test
    void aPairLiesOnBothLayersOfTheFoldAndAFoldPieceAtTheFold() {
        Pattern pattern = Pattern.bare(List.of(onFold("front", 280, 600), rectangle("back", 300, 500, 2)), SCALE);
        ClothPlan plan = ClothPlan.of(pattern, 1400, false).orElseThrow();
        assertThat(plan.folded()).isTrue();
        assertThat(plan.length()).isBetween(600.0, 600.1);
        assertThat(plan.pieces()).hasSize(2);
        Box front = box(plan, "front");
        assertThat(front.minX()).isBetween(-1e-6, 1e-6);
        assertThat(front.width()).isBetween(280 - 1e-6, 280 + 1e-6);
    }

    @Test
    void whatIsTooWideForTheFoldIsLaidOnTheOpenClothEveryPieceByItself() {
        Pattern pattern = Pattern.bare(List.of(rectangle("back", 400, 500, 2)), SCALE);
        assertThat(ClothPlan.of(pattern, 810, false).orElseThrow().folded()).isTrue();
        ClothPlan plan = ClothPlan.of(pattern, 700, false).orElseThrow();
        assertThat(plan.folded()).isFalse();
        assertThat(plan.pieces()).hasSize(2);
        assertThat(plan.length()).isBetween(1000.0, 1015.0);
        assertThat(ClothPlan.of(pattern, 390, false)).isEmpty();
    }

    @Test
    void anUnfoldedPieceIsTwiceItsHalf() {
        Pattern bias = Pattern.bare(List.of(onFold("front", 300, 500), rectangle("strip", 380, 40, 1)), SCALE);
        ClothPlan plan = ClothPlan.of(bias, 700, false).orElseThrow();
        assertThat(plan.folded()).as("the strip is wider than the folded cloth").isFalse();
        Box front = box(plan, "front");
        assertThat(front.width()).isBetween(600 - 1e-6, 600 + 1e-6);
        assertThat(front.height()).isBetween(500 - 1e-6, 500 + 1e-6);
        assertThat(plan.length()).isBetween(540.0, 560.0);
    }

    @Test
    void allowancesCount() {
        Piece piece = rectangle("back", 300, 500, 2).toBuilder()
                .drawn(easewright.pattern.LineKind.STITCHING, 15)
                .build();
        ClothPlan plan =
                ClothPlan.of(Pattern.bare(List.of(piece), SCALE), 1400, false).orElseThrow();
        assertThat(plan.length()).isBetween(530.0, 530.1);
    }

    @Test
    void oneWayForbidsHalfTurns() {
        // Two triangles fill a square only if one of them is turned round.
        Outline triangle = Outline.polygon(List.of(new Point(0, 0), new Point(300, 0), new Point(0, 600)));
        Pattern two = Pattern.bare(
                List.of(Piece.bare("a", triangle), Piece.bare("b", triangle), Piece.bare("c", triangle)), SCALE);
        double eitherWay = ClothPlan.of(two, 720, false).orElseThrow().length();
        double oneWay = ClothPlan.of(two, 720, true).orElseThrow().length();
        assertThat(oneWay).isGreaterThan(eitherWay + 50);
    }

    private static Box box(ClothPlan plan, String name) {
        return plan.pieces().stream()
                .filter(p -> p.name().equals(name))
                .map(OnCloth::outline)
                .map(Outline::box)
                .findFirst()
                .orElseThrow();
    }
}
