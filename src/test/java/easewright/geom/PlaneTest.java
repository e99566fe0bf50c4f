package easewright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Places, maps of the plane and boxes, by hand. */
class PlaneTest {
    private static final Affine ODD = new Affine(2, 0.3, -0.7, 1.5, 7, -9);
    private static final Affine OTHER = new Affine(-0.4, 1.1, 0.9, 0.2, -3, 5);
    private static final Box BOX = new Box(1, 2, 11, 22);

    private static void assertAt(Point p, double x, double y) {
        assertThat(p.x()).isCloseTo(x, within(1e-12));
        assertThat(p.y()).isCloseTo(y, within(1e-12));
    }

    @Test
    void displacements() {
        Point v = new Point(3, 4);
        assertAt(v.unit(), 0.6, 0.8);
        assertThat(v.dot(new Point(10, 100))).isEqualTo(430);
        assertThat(v.cross(new Point(10, 100))).isEqualTo(260);
        assertAt(v.turned(Math.PI / 6), 3 * Math.cos(Math.PI / 6) - 2, 1.5 + 4 * Math.cos(Math.PI / 6));
        assertThat(v.quarterTurned()).isEqualTo(new Point(-4, 3));
        assertAt(new Point(1, 2).towards(new Point(5, 12), 0.25), 2, 4.5);
        assertThatThrownBy(() -> Point.ORIGIN.unit()).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new Point(0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Point(Double.POSITIVE_INFINITY, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void minusZeroIsZero() {
        assertThat(new Point(-0.0, -0.0)).isEqualTo(Point.ORIGIN);
        assertThat(new Place(0, -0.0)).isEqualTo(new Place(0, 0));
        assertThat(Affine.scaling(-1, -1).apply(Point.ORIGIN)).isEqualTo(Point.ORIGIN);
    }

    @Test
    void valuesAreEqualByEachOfTheirNumbers() {
        assertThat(new Affine(2, 0.3, -0.7, 1.5, 7, -9)).isEqualTo(ODD).hasSameHashCodeAs(ODD);
        for (Affine other : List.of(
                new Affine(2.1, 0.3, -0.7, 1.5, 7, -9),
                new Affine(2, 0.4, -0.7, 1.5, 7, -9),
                new Affine(2, 0.3, -0.6, 1.5, 7, -9),
                new Affine(2, 0.3, -0.7, 1.6, 7, -9),
                new Affine(2, 0.3, -0.7, 1.5, 8, -9),
                new Affine(2, 0.3, -0.7, 1.5, 7, 9))) {
            assertThat(other).isNotEqualTo(ODD);
            assertThat(other.hashCode()).isNotEqualTo(ODD.hashCode());
        }
        assertThat(ODD).isNotEqualTo("a map");
        assertThat(new Point(1, 2)).isEqualTo(new Point(1, 2)).hasSameHashCodeAs(new Point(1, 2));
        assertThat(new Point(1, 2)).isNotEqualTo(new Point(1, 3)).isNotEqualTo(new Point(2, 2));
        assertThat(new Point(1, 2).hashCode()).isNotEqualTo(new Point(2, 1).hashCode());
        assertThat(new Place(1, 0.5)).isEqualTo(new Place(1, 0.5)).hasSameHashCodeAs(new Place(1, 0.5));
        assertThat(new Place(1, 0.5)).isNotEqualTo(new Place(1, 0.6)).isNotEqualTo(new Place(2, 0.5));
        assertThat(new Place(1, 0.5).hashCode()).isNotEqualTo(new Place(2, 0.5).hashCode());
    }

    @Test
    void mapsOneAfterTheOther() {
        for (Point p : List.of(new Point(0, 0), new Point(1, 0), new Point(0, 1), new Point(12, -34))) {
            Point expected = ODD.apply(OTHER.apply(p));
            assertAt(ODD.after(OTHER).apply(p), expected.x(), expected.y());
            assertAt(ODD.inverse().apply(ODD.apply(p)), p.x(), p.y());
        }
        assertAt(ODD.apply(new Point(10, 100)), 2 * 10 - 0.7 * 100 + 7, 0.3 * 10 + 1.5 * 100 - 9);
        assertAt(ODD.applyToDirection(new Point(10, 100)), 2 * 10 - 0.7 * 100, 0.3 * 10 + 1.5 * 100);
        assertThat(ODD.determinant()).isCloseTo(3.21, within(1e-12));
    }

    @Test
    void turningKeepsThePlaceItTurnsAbout() {
        Affine third = Affine.rotation(Math.PI / 3, new Point(30, -7));
        assertAt(third.apply(new Point(30, -7)), 30, -7);
        assertAt(third.apply(new Point(32, -7)), 31, -7 + Math.sqrt(3));
    }

    @Test
    void flatMapsCannotBeUndone() {
        assertThat(new Affine(2, 4, 1, 2, 0, 0).isSingular()).isTrue();
        assertThat(new Affine(1000, 0, 0, 1e-8, 0, 0).isSingular())
                .as("1e-11 of its size")
                .isFalse();
        assertThat(new Affine(1000, 0, 0, 1e-10, 0, 0).isSingular())
                .as("1e-13 of its size")
                .isTrue();
        assertThat(new Affine(1, 0, 0, 1, Double.NaN, 0).isSingular()).isTrue();
        assertThat(new Affine(1, 0, 0, 1, 0, Double.POSITIVE_INFINITY).isSingular())
                .isTrue();
        assertThatThrownBy(() -> Affine.scaling(1, 0).inverse()).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void boxes() {
        assertThat(Box.around(List.of(new Point(11, 2), new Point(1, 22)))).isEqualTo(BOX);
        assertThat(BOX.union(new Box(-5, 3, 0, 30))).isEqualTo(new Box(-5, 2, 11, 30));
        assertThat(BOX.width()).isEqualTo(10);
        assertThat(BOX.height()).isEqualTo(20);
        assertThat(BOX.centre()).isEqualTo(new Point(6, 12));
        assertThat(BOX.grown(1)).isEqualTo(new Box(0, 1, 12, 23));
        assertThatThrownBy(() -> Box.around(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatTwoBoxesShare() {
        assertThat(BOX.shared(new Box(5, -3, 30, 10))).contains(new Box(5, 2, 11, 10));
        assertThat(BOX.shared(BOX.grown(3))).contains(BOX);
        assertThat(BOX.shared(new Box(11, 2, 30, 22))).as("an edge has no area").isEmpty();
        assertThat(BOX.shared(new Box(5, 30, 7, 40))).isEmpty();
        assertThat(BOX.contains(BOX)).isTrue();
        assertThat(BOX.grown(1).contains(BOX)).isTrue();
        assertThat(BOX.contains(new Box(0.9, 3, 5, 5))).isFalse();
        assertThat(BOX.contains(new Box(2, 3, 5, 22.1))).isFalse();
    }

    @Test
    void itsEdgesBelongToABox() {
        for (Point corner : List.of(new Point(1, 2), new Point(11, 2), new Point(11, 22), new Point(1, 22))) {
            assertThat(BOX.contains(corner)).isTrue();
            assertThat(BOX.distance(corner)).isZero();
        }
        for (Point out : List.of(new Point(0.9, 5), new Point(11.1, 5), new Point(5, 1.9), new Point(5, 22.1))) {
            assertThat(BOX.contains(out)).isFalse();
            assertThat(BOX.distance(out)).isCloseTo(0.1, within(1e-12));
        }
        assertThat(BOX.distance(new Point(14, 26))).isEqualTo(5);
        assertThat(BOX.distance(new Point(-2, -2))).isEqualTo(5);
    }

    @Test
    void placesComeInTheOrderOfTheOutline() {
        assertThat(new Place(1, 0.9)).isLessThan(new Place(2, 0.1));
        assertThat(new Place(1, 0.3)).isLessThan(new Place(1, 0.4));
        assertThat(new Place(1, 0.4)).isEqualByComparingTo(new Place(1, 0.4));
        assertThatThrownBy(() -> new Place(-1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Place(0, 1.01)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Place(0, -0.01)).isInstanceOf(IllegalArgumentException.class);
    }
}
