package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.pattern.ChangeNote;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EdgeEditsTest {
    private static final List<Point> CORNERS =
            List.of(new Point(100, 100), new Point(300, 100), new Point(300, 400), new Point(100, 400));

    private static Pattern bare() throws SvgProblem {
        return Bare.twoPieces().session.desk().pattern();
    }

    private static Pattern divided() throws Exception {
        Pattern pattern = bare();
        for (Point corner : CORNERS) {
            pattern = EdgeEdits.split(pattern, "front", corner);
        }
        return pattern;
    }

    private static Piece front(Pattern pattern) {
        return pattern.piece("front").orElseThrow();
    }

    private static double around(Piece piece) {
        return piece.edges().stream()
                .mapToDouble(e -> e.on(piece.outline()).length())
                .sum();
    }

    @Test
    void anOutlineIsDividedClickByClick() throws Exception {
        Pattern one = EdgeEdits.split(bare(), "front", new Point(101, 99));
        assertThat(front(one).edges()).hasSize(1);
        assertThat(around(front(one))).isCloseTo(1000, within(1e-9));
        Pattern four = divided();
        assertThat(front(four).edges()).hasSize(4);
        assertThat(around(front(four))).isCloseTo(1000, within(1e-9));
        assertThat(front(four).edges()).extracting(Edge::name).doesNotHaveDuplicates();
        assertThatThrownBy(() -> EdgeEdits.split(four, "front", new Point(300, 100.2)))
                .isInstanceOf(MarkRefused.class)
                .hasMessageStartingWith("edge-ends-there ");
    }

    @Test
    void splittingAndJoiningAgainIsAsBefore() throws Exception {
        Random random = new Random(7);
        Pattern pattern = divided();
        for (int i = 0; i < 50; i++) {
            Point at = new Point(100 + 200 * random.nextDouble(), random.nextBoolean() ? 100 : 400);
            if (CORNERS.stream().anyMatch(c -> c.distance(at) < 1)) {
                continue;
            }
            Pattern split = EdgeEdits.split(pattern, "front", at);
            assertThat(front(split).edges()).hasSize(5);
            assertThat(around(front(split))).isCloseTo(1000, within(1e-6));
            String first = EdgeEdits.at(front(pattern), at).orElseThrow().name();
            assertThat(EdgeEdits.merge(split, "front", first)).isEqualTo(pattern);
        }
    }

    @Test
    void aGapIsFilledFromItsEnds() throws Exception {
        Pattern pattern = EdgeEdits.remove(
                divided(), "front", front(divided()).edges().get(1).name());
        assertThat(around(front(pattern))).isLessThan(999);
        Edge lost = front(divided()).edges().get(1);
        Point middle = lost.from().towards(lost.to(), 0.5);
        Pattern filled = EdgeEdits.split(pattern, "front", middle);
        assertThat(front(filled).edges()).hasSize(5);
        assertThat(around(front(filled))).isCloseTo(1000, within(1e-6));
    }

    @Test
    void seamsLevelsAndDartsGoAlong() throws Exception {
        Pattern pattern = divided();
        String name = front(pattern).edges().get(0).name();
        Piece piece = front(pattern).toBuilder()
                .levels(List.of(LevelMark.along("waist", name)))
                .darts(List.of(new Dart(
                        "dart",
                        new Point(190, 100),
                        new Point(210, 100),
                        new Point(200, 180),
                        Optional.empty(),
                        Optional.of(name))))
                .build();
        Pattern sewn = pattern.withPiece(piece)
                .withMates(List.of(
                        new Mate("m", List.of(EdgeRef.of("front", name)), List.of(EdgeRef.of("front", "edge 3")), 0)));
        Pattern renamed = EdgeEdits.rename(sewn, "front", name, " top ");
        assertThat(front(renamed).edge("top")).isPresent();
        assertThat(front(renamed).levels().get(0).along()).contains("top");
        assertThat(front(renamed).darts().get(0).edge()).contains("top");
        assertThat(renamed.mates().get(0).first().get(0).edge()).isEqualTo("top");
        assertThatThrownBy(() -> EdgeEdits.split(renamed, "front", new Point(150, 100)))
                .hasMessageStartingWith("edge-has-level ");
        Pattern open = LevelEdits.takeOff(renamed, "front", "waist");
        // Both parts of a divided edge stay sewn to what the whole was sewn to, so its length stays.
        Pattern split = EdgeEdits.split(open, "front", new Point(150, 100));
        assertThat(front(split).darts().get(0).edge()).contains("top 2");
        assertThat(split.mates().get(0).first()).hasSize(2);
        assertThat(Measures.of(split).mate("m").orElseThrow().first())
                .isCloseTo(Measures.of(renamed).mate("m").orElseThrow().first(), within(1e-6));
        Pattern removed = EdgeEdits.remove(renamed, "front", "top");
        assertThat(removed.mates()).isEmpty();
        assertThat(front(removed).levels()).isEmpty();
        assertThat(front(removed).darts().get(0).edge()).isEmpty();
    }

    @Test
    void aNameMustBeOneAndOnlyOne() throws Exception {
        Pattern pattern = divided();
        List<Edge> edges = front(pattern).edges();
        assertThatThrownBy(() -> EdgeEdits.rename(
                        pattern, "front", edges.get(0).name(), edges.get(1).name()))
                .hasMessageStartingWith("name-taken ");
        assertThatThrownBy(() -> EdgeEdits.rename(pattern, "front", edges.get(0).name(), "  "))
                .hasMessageStartingWith("name-empty ");
        Pattern changed = pattern.withChange(
                new ChangeNote("centre", Map.of("edge", "front/" + edges.get(0).name())));
        assertThatThrownBy(() -> EdgeEdits.remove(changed, "front", edges.get(0).name()))
                .hasMessageStartingWith("edge-in-changes ");
        Pattern called = EdgeEdits.rename(changed, "front", edges.get(0).name(), "flank");
        assertThat(called.changes().get(0).settings()).containsEntry("edge", "front/flank");
    }

    @Test
    void aRoleBringsItsProtection() throws Exception {
        Pattern pattern = divided();
        String name = front(pattern).edges().get(0).name();
        Pattern neck = EdgeEdits.role(pattern, "front", name, EdgeRole.NECK);
        assertThat(front(neck).edge(name).orElseThrow().isProtected()).isTrue();
        Pattern free = EdgeEdits.protect(neck, "front", name, false);
        assertThat(front(free).edge(name).orElseThrow().isProtected()).isFalse();
        Pattern wide = EdgeEdits.allowance(free, "front", name, OptionalDouble.of(15));
        assertThat(front(wide).edge(name).orElseThrow().allowance()).hasValue(15);
        assertThatThrownBy(() -> EdgeEdits.allowance(free, "front", name, OptionalDouble.of(-1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyPlaceOfADividedOutlineBelongsToOneEdge() throws Exception {
        Piece piece = front(divided());
        Random random = new Random(3);
        List<Point> places = new ArrayList<>(CORNERS);
        for (int i = 0; i < 100; i++) {
            places.add(piece.outline()
                    .nearest(new Point(400 * random.nextDouble(), 500 * random.nextDouble()))
                    .point());
        }
        for (Point place : places) {
            assertThat(EdgeEdits.at(piece, place)).isPresent();
        }
    }
}
