package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Line;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.PieceBuilder;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The same for every purpose of sewing: places within 1e-5 mm, and all else equal. */
class LikenessTest {
    private static final double HARDLY = 5e-6;
    private static final double PLAINLY = 2e-5;
    private static final Piece PIECE =
            Piece.bare("p", Sketch.outline("0,0 100,0 (120,60 90,120) 100,200 0,200")).toBuilder()
                    .edges(List.of(Edge.of("side", EdgeRole.SEAM, new Point(100, 0), new Point(100, 200))))
                    .levels(List.of(
                            LevelMark.through("hip", new Point(10, 50)).withReference(new Point(0, 0)),
                            LevelMark.along("waist", "side")))
                    .darts(List.of(dart(0)))
                    .notches(List.of(new Notch("n", new Point(50, 200))))
                    .grain(new Grain(new Point(20, 20), new Point(20, 180)))
                    .riders(List.of(
                            new Rider("r", Rider.Kind.INNER, List.of(new Line(new Point(1, 1), new Point(2, 2))))))
                    .build();

    private static Dart dart(double off) {
        return new Dart(
                "d", new Point(40 + off, 0), new Point(60, 0), new Point(50, 60), Optional.empty(), Optional.of("top"));
    }

    private static void assertPlaceCounts(Moving moving) {
        assertThat(Likeness.same(PIECE, moving.by(HARDLY))).isTrue();
        assertThat(Likeness.same(PIECE, moving.by(PLAINLY))).isFalse();
        assertThat(Likeness.same(moving.by(PLAINLY), PIECE)).isFalse();
    }

    private interface Moving {
        Piece by(double mm);
    }

    private static Piece with(UnaryOperator<PieceBuilder> change) {
        return change.apply(PIECE.toBuilder()).build();
    }

    @Test
    void placesCountAboveAHundredThousandthOfAMillimetre() {
        assertThat(Likeness.same(PIECE, PIECE)).isTrue();
        assertPlaceCounts(
                x -> with(b -> b.outline(Sketch.outline("0,0 " + (100 + x) + ",0 (120,60 90,120) 100,200 0,200"))));
        assertPlaceCounts(x -> with(b ->
                b.edges(List.of(Edge.of("side", EdgeRole.SEAM, new Point(100 + x, 0), new Point(100, 200))))));
        assertPlaceCounts(x -> with(b ->
                b.edges(List.of(Edge.of("side", EdgeRole.SEAM, new Point(100, 0), new Point(100, 200 + x))))));
        assertPlaceCounts(x -> with(b -> b.levels(List.of(
                LevelMark.through("hip", new Point(10, 50 + x)).withReference(new Point(0, 0)),
                LevelMark.along("waist", "side")))));
        assertPlaceCounts(x -> with(b -> b.levels(List.of(
                LevelMark.through("hip", new Point(10, 50)).withReference(new Point(0, x)),
                LevelMark.along("waist", "side")))));
        assertPlaceCounts(x -> with(b -> b.darts(List.of(dart(x)))));
        assertPlaceCounts(x -> with(b -> b.notches(List.of(new Notch("n", new Point(50 + x, 200))))));
        assertPlaceCounts(x -> with(b -> b.grain(new Grain(new Point(20 + x, 20), new Point(20, 180)))));
        assertPlaceCounts(x -> with(b -> b.grain(new Grain(new Point(20, 20), new Point(20 + x, 180)))));
    }

    @Test
    void namesRolesAndNumbersCount() {
        List<Piece> others = List.of(
                PIECE.withName("other"),
                with(b -> b.cut(2, false)),
                with(b -> b.cut(1, true)),
                with(b -> b.edges(List.of(Edge.of("sides", EdgeRole.SEAM, new Point(100, 0), new Point(100, 200))))),
                with(b -> b.edges(List.of(Edge.of("side", EdgeRole.HEM, new Point(100, 0), new Point(100, 200))))),
                with(b -> b.levels(List.of(
                        LevelMark.through("hip", new Point(10, 50)).withReference(new Point(0, 0)),
                        LevelMark.along("waist", "hem")))),
                with(b -> b.levels(List.of(
                        LevelMark.through("hip", new Point(10, 50))
                                .withReference(new Point(0, 0))
                                .notCounted(),
                        LevelMark.along("waist", "side")))),
                with(b -> b.darts(List.of(new Dart(
                        "e",
                        dart(0).mouth1(),
                        dart(0).mouth2(),
                        dart(0).point(),
                        Optional.empty(),
                        Optional.of("top"))))),
                with(b -> b.notches(List.of(new Notch("m", new Point(50, 200))))),
                with(b -> b.notches(List.of())),
                with(b -> b.riders(List.of(
                        new Rider("s", Rider.Kind.INNER, PIECE.riders().get(0).segments())))));
        for (Piece other : others) {
            assertThat(Likeness.same(PIECE, other)).isFalse();
        }
    }

    @Test
    void divisionOfTheOutlineDoesNotCount() {
        Piece split =
                PIECE.withOutline(PIECE.outline().splitAt(new Place(1, 0.37)).splitAt(new Place(0, 0.5)));
        assertThat(Likeness.same(PIECE, split)).isTrue();
        assertThat(Likeness.sameLine(PIECE.outline(), Sketch.outline("0,0 100,0 100,200 0,200")))
                .isFalse();
        assertThat(Likeness.sameLine(Sketch.outline("0,0 100,0 100,100 0,100"), Sketch.outline("0,0 100,0 100,100")))
                .isFalse();
    }
}
