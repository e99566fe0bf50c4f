package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A neck is as long as it is to the centre line, and to the edge of the button stand. */
class PastCentreTest {
    /** A front with its opening on the left, and a straight neck that rises by so much over 100 mm. */
    private static Piece front(double rise) {
        List<Point> corners = List.of(
                new Point(0, 100),
                new Point(100, 100 - rise),
                new Point(220, 60),
                new Point(240, 500),
                new Point(0, 500));
        List<Edge> edges = new ArrayList<>();
        edges.add(Edge.of("neck", EdgeRole.NECK, corners.get(0), corners.get(1)));
        edges.add(Edge.of("shoulder", EdgeRole.SHOULDER, corners.get(1), corners.get(2)));
        edges.add(Edge.of("hem", EdgeRole.HEM, corners.get(3), corners.get(4)));
        edges.add(Edge.of("front edge", EdgeRole.OPENING, corners.get(4), corners.get(0)));
        return Piece.bare("front", Outline.polygon(corners)).toBuilder()
                .cut(2, false)
                .edges(edges)
                .build();
    }

    private static PieceMeasures measured(Piece piece) {
        List<Level> levels = piece.levels().stream()
                .map(m -> Level.of(m.level(), LevelKind.OTHER))
                .toList();
        Pattern pattern = Pattern.bare(List.of(piece), new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(levels);
        return Measures.of(pattern).piece("front").orElseThrow();
    }

    private static LevelMark at(String level, double y, double overlap) {
        return LevelMark.through(level, new Point(120, y)).withOverlap(overlap);
    }

    @Test
    void aSlantingNeckIsLongerOnItsStandThanThisIsWide() {
        Random random = new Random(9);
        for (int i = 0; i < 40; i++) {
            double rise = -60 + 140 * random.nextDouble();
            double stand = 5 + 40 * random.nextDouble();
            Piece piece = front(rise).withLevels(List.of(at("waist", 400, stand + 9), at("bust", 200, stand)));
            PieceMeasures measured = measured(piece);
            assertThat(PastCentre.mm(measured, "neck")).isCloseTo(stand * Math.hypot(1, rise / 100), within(1e-6));
            assertThat(PastCentre.mm(measured, "hem"))
                    .as("the level next to it is the lower one")
                    .isCloseTo(stand + 9, within(1e-6));
            assertThat(PastCentre.mm(measured, "shoulder")).isZero();
            assertThat(PastCentre.mm(measured, "front edge")).isZero();
        }
    }

    @Test
    void whatIsNotSaidIsNotTakenOff() {
        Piece unsaid = front(20).withLevels(List.of(LevelMark.through("bust", new Point(120, 200))));
        assertThat(PastCentre.mm(measured(unsaid), "neck")).isZero();
        Piece meet = front(20).withLevels(List.of(at("bust", 200, 0)));
        assertThat(PastCentre.mm(measured(meet), "neck")).isZero();
        assertThat(PastCentre.mm(measured(front(20)), "neck")).isZero();
        Piece wide = front(20).withLevels(List.of(at("bust", 200, 130)));
        assertThat(PastCentre.mm(measured(wide), "neck"))
                .as("a neck that ends before the centre")
                .isZero();
        assertThat(PastCentre.mm(measured(wide), "nothing")).isZero();
    }

    /** From the cutting line the stand is taken where it is sewn. */
    @Test
    void theAllowanceIsNoPartOfTheStand() {
        Piece cut = front(0).toBuilder()
                .drawn(LineKind.CUTTING, 10)
                .levels(List.of(at("bust", 200, 15)))
                .build();
        PieceMeasures measured = measured(cut);
        assertThat(PastCentre.mm(measured, "neck")).isCloseTo(15, within(1e-6));
    }
}
