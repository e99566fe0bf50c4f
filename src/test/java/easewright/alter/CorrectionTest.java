package easewright.alter;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
import easewright.geom.Cubic;
import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A mark that changes bring 3 mm too far to the right has to start 3 mm farther to the left. */
class CorrectionTest {
    private static final Outline SQUARE =
            Outline.polygon(List.of(new Point(0, 0), new Point(100, 0), new Point(100, 100), new Point(0, 100)));

    private static final Point P = new Point(50, 50);
    private static final Cubic CURVE = new Cubic(P, new Point(50, 60), new Point(60, 70), new Point(70, 70));

    /** A square with one mark of each kind, all of them so far to the right. */
    private static Piece marked(double right, Segment... lines) {
        Affine move = Affine.translation(right, 0);
        return Piece.bare("p", SQUARE).toBuilder()
                .edges(List.of(Edge.of("e", EdgeRole.SEAM, new Point(20 + right, 0), new Point(60 + right, 0))))
                .darts(List.of(new Dart(
                        "d",
                        new Point(30 + right, 0),
                        new Point(40 + right, 0),
                        new Point(35 + right, 30),
                        Optional.of(new Point(35 + right, -30)),
                        Optional.of("e"))))
                .notches(List.of(new Notch("n", new Point(50 + right, 0))))
                .levels(List.of(
                        LevelMark.through("hip", new Point(50 + right, 50)).withReference(new Point(50 + right, 20))))
                .grain(new Grain(new Point(10 + right, 10), new Point(10 + right, 90)))
                .riders(List.of(new Rider(
                        "r",
                        Rider.Kind.ATTACHED,
                        List.of(lines).stream().map(s -> s.transformed(move)).toList())))
                .build();
    }

    @Test
    void everyKindOfMarkIsMovedByWhatItLiesOff() {
        Segment[] lines = {new Line(new Point(30, 30), P), CURVE};
        Piece made = new Correction(marked(0, lines), marked(3, lines), marked(0, lines), false).made();
        Piece wanted = marked(-3, lines);
        assertThat(Likeness.same(made, wanted)).isTrue();
        assertThat(Likeness.sameLines(made.riders(), wanted.riders(), 1e-9)).isTrue();
    }

    /** Slashes leave other parts than there were; what comes of which cannot be told. */
    @Test
    void aLineThatIsCutIntoOtherPartsStays() {
        Line straight = new Line(P, CURVE.end());
        Piece made = new Correction(marked(0, CURVE), marked(3, straight), marked(0, CURVE), true).made();
        assertThat(made.riders()).isEqualTo(marked(0, CURVE).riders());
        assertThat(made.notches()).isEqualTo(marked(-3).notches());
    }

    /** A change parts a line where it could not follow in one curve, and makes a curve of a straight one. */
    @Test
    void aLineThatIsPartedIsMovedPartByPart() {
        Line straight = new Line(P, new Point(90, 50));
        Segment[] parted = {straight.between(0, 0.25), straight.between(0.25, 1), CURVE};
        Segment[] bent = {straight.between(0, 0.25), curve(straight.between(0.25, 1)), CURVE};
        Segment[] whole = {straight, CURVE};
        Piece made = new Correction(marked(0, whole), marked(3, bent), marked(0, whole), false).made();
        assertThat(made.riders().get(0).segments()).hasSize(3);
        assertThat(Likeness.sameLines(made.riders(), marked(-3, whole).riders(), 1e-9))
                .isTrue();
        Piece still = new Correction(marked(0, parted), marked(3, parted), marked(3, whole), false).made();
        assertThat(still.riders())
                .as("nothing is off")
                .isEqualTo(marked(0, parted).riders());
    }

    private static Cubic curve(Segment line) {
        return new Cubic(line.start(), line.at(1 / 3.0), line.at(2 / 3.0), line.end());
    }

    @Test
    void marksOfWhichThereAreNotAsManyStay() {
        Piece fewer = marked(3).toBuilder().notches(List.of()).build();
        Piece made = new Correction(marked(0), fewer, marked(0), false).made();
        assertThat(made.notches()).isEqualTo(marked(0).notches());
        assertThat(made.darts()).isEqualTo(marked(-3).darts());
    }

    @Test
    void aMarkOnTheOutlineStaysThereAndGoesIntoACornerThatItComesNear() {
        Piece made = new Correction(marked(0), marked(49.96), marked(0), false).made();
        assertThat(made.notches().get(0).at()).isEqualTo(new Point(0, 0));
        made = new Correction(marked(0), marked(49.9), marked(0), false).made();
        assertThat(made.notches().get(0).at().distance(new Point(0.1, 0))).isLessThan(1e-9);
        made = new Correction(marked(0), marked(55), marked(0), false).made();
        assertThat(made.notches().get(0).at()).isEqualTo(new Point(0, 0));
    }
}
