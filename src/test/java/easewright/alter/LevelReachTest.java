package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where the edges of a panel of 100 by 200 meet a level, and which way is out of the cloth there. */
class LevelReachTest {
    private static final Level HIP = Level.of("hip", LevelKind.HIP);
    private static final Point TOP_LEFT = new Point(0, 0);
    private static final Point TOP_RIGHT = new Point(100, 0);
    private static final Point FOOT_RIGHT = new Point(100, 200);
    private static final Point FOOT_LEFT = new Point(0, 200);
    private static final Point LEFT = new Point(-1, 0);
    private static final Point RIGHT = new Point(1, 0);

    private static Piece panel(LevelMark level) {
        return Piece.bare("p", Outline.polygon(List.of(TOP_LEFT, TOP_RIGHT, FOOT_RIGHT, FOOT_LEFT))).toBuilder()
                .edges(List.of(
                        Edge.of("top", EdgeRole.WAIST, TOP_LEFT, TOP_RIGHT),
                        Edge.of("right", EdgeRole.SEAM, TOP_RIGHT, FOOT_RIGHT),
                        Edge.of("foot", EdgeRole.HEM, FOOT_RIGHT, FOOT_LEFT),
                        Edge.of("left", EdgeRole.SEAM, FOOT_LEFT, TOP_LEFT)))
                .levels(List.of(level))
                .build();
    }

    private static LevelMark turned(double degrees) {
        LevelMark plain = LevelMark.through("hip", new Point(50, 80));
        return new LevelMark(
                plain.level(),
                plain.through(),
                plain.along(),
                degrees,
                plain.counts(),
                plain.overlap(),
                plain.span(),
                plain.reference());
    }

    private static Optional<LevelReach> reach(Piece piece, String edge) {
        return LevelReach.of(piece, piece.edge(edge).orElseThrow(), HIP);
    }

    private static void assertReach(Piece piece, String edge, Point at, Point outward, boolean corner) {
        LevelReach reach = reach(piece, edge).orElseThrow();
        assertThat(reach.hold().sewn().distance(at)).isLessThan(1e-9);
        assertThat(reach.outward().distance(outward)).isLessThan(1e-9);
        assertThat(reach.corner()).isEqualTo(corner);
    }

    @Test
    void aLevelAcrossMeetsBothSides() {
        Piece piece = panel(LevelMark.through("hip", new Point(30, 80)));
        assertReach(piece, "right", new Point(100, 80), RIGHT, false);
        assertReach(piece, "left", new Point(0, 80), LEFT, false);
        assertThat(reach(piece, "top")).isEmpty();
        assertThat(reach(piece, "foot")).isEmpty();
        assertThat(LevelReach.of(piece, piece.edges().get(1), Level.of("bust", LevelKind.BUST)))
                .isEmpty();
    }

    /** The outline may start anywhere on an edge. */
    @Test
    void anEdgeOverTheStartOfTheOutlineIsMetToo() {
        Piece piece = panel(LevelMark.through("hip", new Point(30, 80)));
        Outline split = piece.outline()
                .splitAt(piece.outline().nearest(new Point(100, 120)).place());
        for (int first = 0; first < 5; first++) {
            List<easewright.geom.Segment> turned = new ArrayList<>(split.segments());
            Collections.rotate(turned, -first);
            Piece each = piece.withOutline(new Outline(turned));
            assertReach(each, "right", new Point(100, 80), RIGHT, false);
            assertReach(each, "left", new Point(0, 80), LEFT, false);
            assertThat(reach(each, "foot")).isEmpty();
        }
    }

    /** Within half a millimetre of a corner the corner is meant, of both edges that meet there. */
    @Test
    void nearACornerTheCornerIsMeant() {
        Piece near = panel(LevelMark.through("hip", new Point(30, 0.4)));
        assertReach(near, "right", TOP_RIGHT, RIGHT, true);
        assertReach(near, "top", TOP_LEFT, LEFT, true);
        assertReach(near, "left", TOP_LEFT, LEFT, true);
        Piece off = panel(LevelMark.through("hip", new Point(30, 0.6)));
        assertReach(off, "right", new Point(100, 0.6), RIGHT, false);
        assertThat(reach(off, "top")).isEmpty();
    }

    /** Along an edge the level ends at its corners; out is away from its other end. */
    @Test
    void aLevelAlongAnEdgeEndsAtItsCorners() {
        Piece piece = panel(LevelMark.along("hip", "top"));
        assertReach(piece, "right", TOP_RIGHT, RIGHT, true);
        assertReach(piece, "left", TOP_LEFT, LEFT, true);
        assertThat(reach(piece, "foot")).isEmpty();
        Piece low = panel(LevelMark.along("hip", "foot"));
        assertReach(low, "right", FOOT_RIGHT, RIGHT, true);
        assertReach(low, "left", FOOT_LEFT, LEFT, true);
    }

    /** A level turned by 30° goes out by 30°; on a piece laid on its side it runs square to the grain. */
    @Test
    void outIsAlongTheLevel() {
        Piece turned = panel(turned(30));
        Point right = reach(turned, "right").orElseThrow().outward();
        assertThat(Math.abs(Math.toDegrees(Math.atan2(right.y(), right.x()))))
                .isCloseTo(30, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(reach(turned, "left").orElseThrow().outward().plus(right).norm())
                .isLessThan(1e-9);
        Piece laid = panel(LevelMark.through("hip", new Point(50, 80))).toBuilder()
                .grain(new easewright.pattern.Grain(new Point(20, 50), new Point(80, 50)))
                .build();
        assertReach(laid, "top", new Point(50, 0), new Point(0, -1), false);
        assertReach(laid, "foot", new Point(50, 200), new Point(0, 1), false);
    }

    /** Drawn by the cutting line, the place is the sewn one and what is drawn lies square across. */
    @Test
    void onACuttingLineTheSewnPlaceIsMet() {
        Piece cut = panel(LevelMark.through("hip", new Point(30, 80))).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .build();
        assertReach(cut, "right", new Point(90, 80), RIGHT, false);
        assertThat(reach(cut, "right").orElseThrow().drawn()).isEqualTo(new Point(100, 80));
    }
}
