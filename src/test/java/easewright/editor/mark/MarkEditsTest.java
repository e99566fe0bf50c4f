package easewright.editor.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.svg.SvgProblem;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Darts, notches and the grain, placed by hand and by number. */
class MarkEditsTest {
    @Test
    void dartsNotchesAndGrain() throws Exception {
        Pattern pattern = EdgeEdits.split(Bare.unmarked(), "front", new Point(100, 100));
        Pattern dart = PieceEdits.dart(pattern, "front", new Point(190, 101), new Point(210, 99), new Point(200, 200));
        Piece front = dart.piece("front").orElseThrow();
        assertThat(front.darts().get(0).intake()).isCloseTo(20, within(1e-9));
        assertThat(front.darts().get(0).edge()).contains("edge 1");
        assertThatThrownBy(() -> PieceEdits.dart(
                        pattern, "front", new Point(190, 100), new Point(191, 100), new Point(200, 200)))
                .hasMessageStartingWith("dart-too-small ");
        Pattern notch = PieceEdits.notch(dart, "front", new Point(303, 250));
        assertThat(notch.piece("front").orElseThrow().notches().get(0).at()).isEqualTo(new Point(300, 250));
        Pattern named = PieceEdits.renameNotch(notch, "front", 0, "hip");
        assertThat(named.piece("front").orElseThrow().notches().get(0).name()).isEqualTo("hip");
        assertThat(PieceEdits.removeNotch(named, "front", 0)).isEqualTo(dart);
        assertThat(PieceEdits.removeDart(dart, "front", front.darts().get(0).name()))
                .isEqualTo(pattern);
        Pattern grain = PieceEdits.grain(pattern, "front", new Point(150, 150), new Point(160, 350));
        assertThat(grain.piece("front").orElseThrow().grain()).isPresent();
        assertThat(PieceEdits.noGrain(grain, "front")).isEqualTo(pattern);
        assertThatThrownBy(() -> PieceEdits.grain(pattern, "front", new Point(1, 1), new Point(1.2, 1)))
                .hasMessageStartingWith("grain-too-short ");
    }

    @Test
    void aNotchIsPutWhereANumberSays() throws Exception {
        Pattern pattern = Bare.marked();
        Piece back = pattern.piece("Back").orElseThrow();
        for (int i = 0; i < back.notches().size(); i++) {
            int number = i;
            Piece moved = MeasureEdits.notchAt(pattern, back.id(), i, 123.4)
                    .piece("Back")
                    .orElseThrow();
            Point at = moved.notches().get(i).at();
            assertThat(moved.outline().nearest(at).distance()).isLessThan(1e-6);
            Edge edge = EdgeEdits.at(moved, moved.outline().nearest(at).point()).orElseThrow();
            assertThat(AlongEdge.mm(moved, edge, at)).isCloseTo(123.4, within(1e-6));
            assertThatThrownBy(() -> MeasureEdits.notchAt(pattern, back.id(), number, 1e5))
                    .hasMessageStartingWith("notch-off-edge ");
            assertThatThrownBy(() -> MeasureEdits.notchAt(pattern, back.id(), number, -1))
                    .hasMessageStartingWith("notch-off-edge ");
        }
    }

    /** The seam over it would have to be drawn anew as well. */
    @Test
    void theWidthOfADartThatIsCutOutIsLeftToAChange() throws Exception {
        Point tip = new Point(100, 90);
        Piece piece = Piece.bare(
                        "front",
                        Outline.polygon(List.of(
                                new Point(0, 0),
                                new Point(90, 0),
                                tip,
                                new Point(110, 0),
                                new Point(200, 0),
                                new Point(200, 600),
                                new Point(0, 600))))
                .toBuilder()
                .darts(List.of(
                        new Dart("d", new Point(90, 0), new Point(110, 0), tip, Optional.empty(), Optional.empty())))
                .build();
        Pattern pattern = Bare.marked().withPieces(List.of(piece));
        assertThatThrownBy(() -> MeasureEdits.dartWidth(pattern, "front", "d", 25))
                .hasMessageStartingWith("dart-cut-out ");
    }

    /** Whatever is typed, the dart measures it, its mouth stays on the edge, and back is back. */
    @Test
    void aDartIsAsWideAndAsLongAsANumberSays() throws Exception {
        Pattern pattern = Bare.marked();
        Random random = new Random(8);
        for (Piece piece : pattern.pieces()) {
            for (Dart dart : piece.darts()) {
                for (int i = 0; i < 20; i++) {
                    double wide = 5 + random.nextDouble(40);
                    double deep = 30 + random.nextDouble(120);
                    Pattern typed = MeasureEdits.dartLength(
                            MeasureEdits.dartWidth(pattern, piece.id(), dart.name(), wide),
                            piece.id(),
                            dart.name(),
                            deep);
                    Dart now = dart(typed, piece, dart);
                    assertThat(now.intake()).isCloseTo(wide, within(1e-6));
                    assertThat(middle(now).distance(now.point())).isCloseTo(deep, within(1e-6));
                    assertThat(piece.outline().nearest(now.mouth1()).distance()).isLessThan(1e-6);
                    assertThat(piece.outline().nearest(now.mouth2()).distance()).isLessThan(1e-6);
                    Dart again =
                            dart(MeasureEdits.dartWidth(typed, piece.id(), dart.name(), dart.intake()), piece, dart);
                    assertThat(again.mouth1().distance(dart.mouth1())).isLessThan(0.01);
                }
                assertThatThrownBy(() -> MeasureEdits.dartWidth(pattern, piece.id(), dart.name(), 9000))
                        .hasMessageStartingWith("dart-too-wide ");
                assertThatThrownBy(() -> MeasureEdits.dartLength(pattern, piece.id(), dart.name(), 0))
                        .hasMessageStartingWith("dart-too-small ");
            }
        }
    }

    /** Both lengths of a dart that is closed at both ends are told, the upper first, and each is typed by itself. */
    @Test
    void aDartClosedAtBothEndsHasTwoLengths() throws Exception {
        Pattern marked = Bare.marked();
        Piece first = marked.pieces().get(0);
        Dart diamond = new Dart(
                "waist dart",
                new Point(100, 300),
                new Point(120, 300),
                new Point(110, 420),
                Optional.of(new Point(110, 150)),
                Optional.empty());
        Pattern pattern =
                marked.withPiece(first.toBuilder().darts(List.of(diamond)).build());
        assertThat(lengths(pattern)).containsExactly("wide 2\u00a0cm", "up 15\u00a0cm", "down 12\u00a0cm");
        Pattern longer = MeasureEdits.dartOtherLength(pattern, first.id(), "waist dart", 160);
        assertThat(lengths(longer)).containsExactly("wide 2\u00a0cm", "up 16\u00a0cm", "down 12\u00a0cm");
        Pattern both = MeasureEdits.dartLength(longer, first.id(), "waist dart", 60);
        assertThat(lengths(both)).containsExactly("wide 2\u00a0cm", "up 16\u00a0cm", "down 6\u00a0cm");
        assertThatThrownBy(() -> MeasureEdits.dartOtherLength(pattern, first.id(), "waist dart", 0))
                .hasMessageStartingWith("dart-too-small ");
    }

    private static List<String> lengths(Pattern pattern) throws SvgProblem {
        Bare bare = Bare.skirt();
        bare.session.edit(pattern);
        return PieceView.of(bare.session.desk(), MarkState.OFF).darts().get(0).measures().stream()
                .map(m -> m.before() + " " + m.length())
                .toList();
    }

    private static Dart dart(Pattern pattern, Piece piece, Dart like) {
        return pattern.piece(piece.id()).orElseThrow().darts().stream()
                .filter(d -> d.name().equals(like.name()))
                .findFirst()
                .orElseThrow();
    }

    private static Point middle(Dart dart) {
        return dart.mouth1().towards(dart.mouth2(), 0.5);
    }
}
