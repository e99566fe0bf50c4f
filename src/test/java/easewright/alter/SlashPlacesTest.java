package easewright.alter;

import static easewright.alter.SlashedMarksTest.BY;
import static easewright.alter.SlashedMarksTest.FOOT;
import static easewright.alter.SlashedMarksTest.RIGHT;
import static easewright.alter.SlashedMarksTest.TOP;
import static easewright.alter.SlashedMarksTest.code;
import static easewright.alter.SlashedMarksTest.hinged;
import static easewright.alter.SlashedMarksTest.just;
import static easewright.alter.SlashedMarksTest.piece;
import static easewright.alter.SlashedMarksTest.square;
import static easewright.alter.SlashedMarksTest.through;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a slash leaves the piece, and which part of it moves. */
class SlashPlacesTest {
    /** The outline goes on starting where it started, with the very segment, as far as that stays. */
    @Test
    void theOutlineGoesOnStartingWhereItStarted() throws Refusal {
        Piece before = square(EdgeRole.SEAM);
        Piece longer = Lengthen.below("hip", 10, BY)
                .apply(just(before))
                .pattern()
                .pieces()
                .get(0);
        assertThat(longer.outline().segments().get(0))
                .isSameAs(before.outline().segments().get(0));
        Slash slash = Slash.of("p", new Point(0, 30), new Point(100, 30)).moving(TOP);
        Piece up = piece(new ParallelSlash("p", TOP, FOOT, BY, new Point(0, 50), true).apply(just(before)));
        assertThat(up.outline().box().minX()).isCloseTo(-BY, within(1e-9));
        assertThat(slash.moving()).contains(TOP);
        assertThat(up.outline().segments()).contains(before.outline().segments().get(1));
    }

    /** A place named within 5 mm of the outline means the outline there; a slash of 1 mm is one. */
    @Test
    void placesAreTakenWithinFiveMillimetres() throws Refusal {
        HingedSlash near = new HingedSlash("p", TOP, new Point(50, 105), BY, RIGHT, true);
        assertThat(piece(near.apply(just(square(EdgeRole.SEAM)))).outline())
                .isEqualTo(piece(hinged(square(EdgeRole.SEAM), BY)).outline());
        Refusal off = catchThrowableOfType(
                Refusal.class,
                () -> new HingedSlash("p", TOP, new Point(50, 105.01), BY, RIGHT, true)
                        .apply(just(square(EdgeRole.SEAM))));
        assertThat(off.code()).isEqualTo("slash-off-outline");
        Piece strip = Piece.bare(
                        "p",
                        Outline.polygon(
                                List.of(new Point(0, 0), new Point(100, 0), new Point(100, 1), new Point(0, 1))))
                .withLevels(List.of(LevelMark.through("hip", new Point(20, 0.5))));
        assertThat(piece(new ParallelSlash("p", TOP, new Point(50, 1), BY, RIGHT, true).apply(just(strip)))
                        .outline()
                        .box()
                        .width())
                .isCloseTo(110, within(1e-9));
        Slash across = Slash.of("p", TOP, new Point(50, 1)).moving(RIGHT);
        assertThat(piece(SpreadSlashes.parallel("hip", BY, across).apply(just(strip)))
                        .outline()
                        .box()
                        .width())
                .isCloseTo(110, within(1e-9));
    }

    /** Both lines at which a slash leaves the piece are looked at, and each mark that a fold would take. */
    @Test
    void bothEndsOfTheSlashAreLookedAt() {
        Piece held = square(EdgeRole.SEAM)
                .withEdges(square(EdgeRole.SEAM).edges().stream()
                        .map(e -> e.withProtected(e.role() == EdgeRole.HEM))
                        .toList());
        Refusal second = catchThrowableOfType(
                Refusal.class, () -> new ParallelSlash("p", TOP, FOOT, BY, RIGHT, false).apply(just(held)));
        assertThat(second.code()).isEqualTo("edge-protected");
        assertThat(second.values()).containsEntry("edge", "hem");
        Piece joined = square(EdgeRole.SEAM)
                .withEdges(List.of(
                        Edge.of("hem", EdgeRole.HEM, new Point(100, 100), new Point(55, 100)),
                        Edge.of("vent", EdgeRole.OTHER, new Point(55, 100), new Point(0, 100))));
        assertThat(code(joined, -BY)).isEqualTo("tuck-takes-mark");
        Piece notched = square(EdgeRole.SEAM).toBuilder()
                .notches(List.of(new Notch("n", new Point(55, 100))))
                .build();
        Refusal folded = catchThrowableOfType(Refusal.class, () -> hinged(notched, -BY));
        assertThat(folded.code()).isEqualTo("tuck-takes-mark");
        Refusal short0 = catchThrowableOfType(
                Refusal.class,
                () -> new ParallelSlash("p", TOP, new Point(50.5, 0), BY, RIGHT, true)
                        .apply(just(square(EdgeRole.SEAM))));
        assertThat(short0.code()).isEqualTo("slash-without-length");
        Refusal along = catchThrowableOfType(
                Refusal.class,
                () -> new ParallelSlash("p", new Point(0, 50), new Point(100, 50), BY, FOOT, true)
                        .apply(just(square(EdgeRole.SEAM))));
        assertThat(along.code()).isEqualTo("slash-without-length");
    }

    @Test
    void protectedEdgesOpenOnlyIfAgreed() throws Refusal {
        ParallelSlash slash = new ParallelSlash("p", TOP, FOOT, BY, RIGHT, false);
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> slash.apply(just(square(EdgeRole.SHOULDER))));
        assertThat(refusal.code()).isEqualTo("edge-protected");
        assertThat(refusal.values()).containsEntry("edge", "top");
        assertThat(piece(through(square(EdgeRole.SHOULDER), BY)).outline().box().width())
                .isCloseTo(110, within(1e-9));
        Refusal hinge = catchThrowableOfType(
                Refusal.class,
                () -> new HingedSlash("p", FOOT, TOP, BY, RIGHT, false).apply(just(square(EdgeRole.SHOULDER))));
        assertThat(hinge.code()).isEqualTo("edge-protected");
        Refusal through = catchThrowableOfType(
                Refusal.class,
                () -> new ParallelSlash("p", new Point(100, 0), FOOT, BY, RIGHT, true)
                        .apply(just(square(EdgeRole.SEAM))));
        assertThat(through.code()).isEqualTo("slash-through-corner");
    }

    /** Without a word on it the part with the centre stays: by its fold, else its grain, else most of the cloth. */
    @Test
    void thePartWithTheCentreStays() throws Refusal {
        Piece fold = square(EdgeRole.SEAM).toBuilder()
                .edges(List.of(Edge.of("fold", EdgeRole.FOLD, new Point(100, 0), new Point(100, 100))))
                .build();
        assertThat(leftmost(fold, 50)).isLessThan(-1);
        Piece centre = square(EdgeRole.SEAM).toBuilder()
                .edges(List.of(Edge.of("centre", EdgeRole.CENTRE, new Point(0, 100), new Point(0, 0))))
                .build();
        assertThat(leftmost(centre, 50)).isCloseTo(0, within(1e-9));
        Piece grain = square(EdgeRole.SEAM).withEdges(List.of()).toBuilder()
                .grain(new Grain(new Point(80, 10), new Point(80, 90)))
                .build();
        assertThat(leftmost(grain, 50)).isLessThan(-1);
        Piece bare = square(EdgeRole.SEAM).withEdges(List.of());
        assertThat(leftmost(bare, 70)).isCloseTo(0, within(1e-9));
        assertThat(leftmost(bare, 30)).isLessThan(-1);
    }

    private static double leftmost(Piece piece, double slashed) throws Refusal {
        Slash slash = Slash.of("p", new Point(slashed, 100), new Point(slashed, 0));
        return piece(SpreadSlashes.parallel("hip", BY, slash)
                        .acceptingProtected()
                        .apply(just(piece)))
                .outline()
                .box()
                .minX();
    }
}
