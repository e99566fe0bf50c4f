package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Point;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FromPlaceTest {
    private static final Snap A1 = at("a", 0);
    private static final Snap A2 = at("a", 100);
    private static final Snap A3 = at("a", 200);
    private static final Snap B1 = at("b", 300);
    private static final Snap B2 = at("b", 400);
    private static final List<Snap> PLACES = List.of(A1, A2, A3, B1, B2);

    private static Snap at(String piece, double x) {
        return new Snap(Snap.Kind.CORNER, new Point(x, 0), Optional.of(piece), Optional.empty());
    }

    private static Snap moved(String piece, double x) {
        return new Snap(Snap.Kind.FREE, new Point(x, 0), Optional.of(piece), Optional.empty());
    }

    @Test
    void theWayGoesRoundInBothDirections() {
        assertThat(FromPlace.next(PLACES, Optional.empty(), 1)).contains(A1);
        assertThat(FromPlace.next(PLACES, Optional.empty(), -1)).contains(B2);
        assertThat(FromPlace.next(PLACES, Optional.of(A3), 1)).contains(B1);
        assertThat(FromPlace.next(PLACES, Optional.of(A1), -1)).contains(B2);
        assertThat(FromPlace.next(List.of(), Optional.of(A1), 1)).isEmpty();
    }

    /** Who went a little aside of a place goes on from it, and back to it; not to one of another piece that is nearer. */
    @Test
    void aHandThatWasMovedGoesOnFromThere() {
        assertThat(FromPlace.next(PLACES, Optional.of(moved("a", 110)), 1)).contains(A3);
        assertThat(FromPlace.next(PLACES, Optional.of(moved("a", 110)), -1)).contains(A2);
        assertThat(FromPlace.next(PLACES, Optional.of(moved("a", 290)), 1)).contains(B1);
        assertThat(FromPlace.next(PLACES, Optional.of(moved("a", 290)), -1)).contains(A3);
        Snap beside = new Snap(Snap.Kind.FREE, new Point(310, 5), Optional.empty(), Optional.empty());
        assertThat(FromPlace.next(PLACES, Optional.of(beside), 1)).contains(B2);
    }

    @Test
    void fromPieceToPiece() {
        assertThat(FromPlace.onNextPiece(PLACES, Optional.empty(), 1)).contains(A1);
        assertThat(FromPlace.onNextPiece(PLACES, Optional.empty(), -1)).contains(B1);
        assertThat(FromPlace.onNextPiece(PLACES, Optional.of(moved("a", 110)), 1))
                .contains(B1);
        assertThat(FromPlace.onNextPiece(PLACES, Optional.of(B2), 1)).contains(A1);
        assertThat(FromPlace.onNextPiece(PLACES, Optional.of(B2), -1)).contains(A1);
        assertThat(FromPlace.onNextPiece(List.of(), Optional.empty(), 1)).isEmpty();
    }
}
