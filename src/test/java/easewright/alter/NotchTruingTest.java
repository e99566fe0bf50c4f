package easewright.alter;

import static easewright.alter.Panels.kept;
import static easewright.alter.Panels.notched;
import static easewright.alter.Panels.only;
import static easewright.alter.Panels.panel;
import static easewright.alter.Panels.proposals;
import static easewright.alter.Panels.sewn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of two notches moves, and where to (docs/sources.md 4.5). */
class NotchTruingTest {
    private static final Piece FRONT = notched(panel("front", 600), "n", 210);
    private static final Piece BACK = notched(panel("back", 610), "n", 213);

    private static Point at(Pattern pattern, String piece) {
        return pattern.piece(piece).orElseThrow().notches().get(0).at();
    }

    private static void assertMoves(Pattern before, String piece, String other, double apart, double to)
            throws Refusal {
        Proposal proposal = only(before, "notches-apart");
        assertThat(proposal.finding().piece()).isEqualTo(piece);
        assertThat(proposal.finding().values()).containsEntry("other", other);
        assertThat((Double) proposal.finding().values().get("apart")).isCloseTo(apart, within(1e-9));
        Pattern after = proposal.apply(before).pattern();
        assertThat(at(after, piece).distance(new Point(200, to))).isLessThan(1e-9);
        assertThat(after.piece(other).orElseThrow())
                .isSameAs(before.piece(other).orElseThrow());
        assertThat(proposals(after, "notches-apart")).isEmpty();
        assertThat(proposal.apply(after).pattern()).as("met already").isSameAs(after);
    }

    @Test
    void secondMovesAndIsCountedFromTheWaist() throws Refusal {
        assertMoves(sewn(FRONT, BACK), "back", "front", 3, 210);
    }

    @Test
    void protectedSeamKeepsItsNotch() throws Refusal {
        assertMoves(sewn(FRONT, kept(BACK, "side")), "front", "back", 3, 213);
        assertMoves(sewn(kept(FRONT, "side"), kept(BACK, "side")), "back", "front", 3, 210);
    }

    /** From the hem the front's lies at 390 mm, the back's at 397. */
    @Test
    void protectedEndIsCountedFrom() throws Refusal {
        assertMoves(sewn(kept(FRONT, "hem"), BACK), "back", "front", 7, 220);
        assertMoves(sewn(kept(FRONT, "hem"), kept(BACK, "side")), "front", "back", 7, 203);
        assertMoves(sewn(kept(kept(FRONT, "hem"), "waist"), BACK), "back", "front", 3, 210);
        assertMoves(sewn(kept(FRONT, "waist"), BACK), "back", "front", 3, 210);
    }

    @Test
    void directionsInWhichSeamsAreDrawnDoNotMatter() throws Refusal {
        Piece front = Cloths.reversed(FRONT);
        Piece back = Cloths.reversed(BACK);
        assertMoves(sewn(FRONT, back), "back", "front", 3, 210);
        assertMoves(sewn(front, BACK), "back", "front", 3, 210);
        assertMoves(sewn(front, back), "back", "front", 3, 210);
        assertMoves(sewn(FRONT, kept(back, "side")), "front", "back", 3, 213);
        assertMoves(sewn(front, kept(BACK, "side")), "front", "back", 3, 213);
        assertMoves(sewn(kept(front, "hem"), BACK), "back", "front", 7, 220);
        assertMoves(sewn(kept(front, "waist"), BACK), "back", "front", 3, 210);
    }

    @ParameterizedTest
    @CsvSource({"211.4, 0", "211.6, 1", "208.6, 0", "208.4, 1"})
    void notchesMatchWithinASixteenthOfAnInch(double back, int found) {
        assertThat(proposals(sewn(FRONT, notched(BACK, "n", back)), "notches-apart"))
                .hasSize(found);
    }

    @Test
    void whereNothingTellsWhereItBelongsItIsLeft() {
        assertThat(proposals(sewn(FRONT, BACK, 5), "notches-apart"))
                .as("ease between them")
                .isEmpty();
        assertThat(proposals(sewn(FRONT, notched(BACK, "m", 213)), "notches-apart"))
                .as("another notch")
                .isEmpty();
        Piece aside = BACK.toBuilder()
                .notches(List.of(new Notch("n", new Point(201.2, 213))))
                .build();
        assertThat(proposals(sewn(FRONT, aside), "notches-apart"))
                .as("off the seam")
                .isEmpty();
        Piece shorter = notched(panel("back", 500), "n", 480);
        assertThat(proposals(sewn(notched(FRONT, "n", 590), shorter), "notches-apart"))
                .as("beyond the end")
                .isEmpty();
    }

    @Test
    void eachPairIsToldByItself() throws Refusal {
        Piece front = FRONT.toBuilder()
                .notches(List.of(new Notch("a", new Point(200, 100)), new Notch("b", new Point(200, 400))))
                .build();
        Piece back = BACK.toBuilder()
                .notches(List.of(new Notch("b", new Point(200, 405)), new Notch("a", new Point(200, 102))))
                .build();
        Pattern before = sewn(front, back);
        List<Proposal> found = proposals(before, "notches-apart");
        assertThat(found).extracting(p -> p.finding().values().get("notch")).containsExactly("a", "b");
        assertThat(found).extracting(p -> p.finding().values().get("mate")).containsOnly("seam");
        assertThat(found).extracting(p -> p.finding().values().get("y")).containsExactly(102.0, 405.0);
        assertThat(found).extracting(p -> p.finding().values().get("x")).containsOnly(200.0);
        List<Notch> after = found.get(1).apply(before).pattern().pieces().get(1).notches();
        assertThat(after.get(0).at().distance(new Point(200, 400))).isLessThan(1e-9);
        assertThat(after.get(1)).isSameAs(back.notches().get(1));
    }

    @Test
    void onlyTheTickAtTheNotchGoesAlong() throws Refusal {
        Rider tick = rider("tick", 213, 6);
        Rider turned =
                new Rider("turned", Rider.Kind.ATTACHED, List.of(new Line(new Point(190, 213), new Point(200, 213.9))));
        Rider farther = rider("farther", 214.2, 6);
        Rider longer = rider("longer", 213, 21);
        Rider ofTheCloth = new Rider("fixed", Rider.Kind.PARALLEL, tick.segments());
        Piece back = BACK.toBuilder()
                .riders(List.of(tick, turned, farther, longer, ofTheCloth))
                .build();
        Pattern before = sewn(FRONT, back);
        List<Rider> after = only(before, "notches-apart")
                .apply(before)
                .pattern()
                .pieces()
                .get(1)
                .riders();
        assertThat(after.get(0).segments().get(0).end().distance(new Point(206, 210)))
                .isLessThan(1e-9);
        assertThat(after.get(1).segments().get(0).end().distance(new Point(200, 210.9)))
                .isLessThan(1e-9);
        assertThat(after.subList(2, 5)).isEqualTo(back.riders().subList(2, 5));
    }

    private static Rider rider(String id, double y, double length) {
        return new Rider(id, Rider.Kind.ATTACHED, List.of(new Line(new Point(200, y), new Point(200 + length, y))));
    }

    /** From the side's straight part round its corner the tick turns with the line, by a right angle. */
    @Test
    void tickTurnsWithTheLine() throws Refusal {
        Piece back = BACK.toBuilder().riders(List.of(rider("tick", 213, 6))).build();
        Piece done = new NotchStroke("back", "n", new Point(200, 213), new Point(120, 610)).on(back);
        assertThat(done.riders().get(0).segments().get(0).start().distance(new Point(120, 610)))
                .isLessThan(1e-9);
        assertThat(done.riders().get(0).segments().get(0).end().distance(new Point(120, 616)))
                .isLessThan(1e-9);
    }
}
