package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.draft.Samples;
import easewright.editor.model.Hold;
import easewright.editor.model.OpenFile;
import easewright.editor.model.Opened;
import easewright.editor.model.Session;
import easewright.editor.model.TrueWork;
import easewright.editor.paint.OverlayPainter;
import easewright.editor.paint.SeenUnder;
import easewright.editor.paint.Viewport;
import easewright.geom.Point;
import easewright.pattern.EdgeRef;
import easewright.pattern.Piece;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableHoldsTest {
    private static final Hold FRONT = hold("front");
    private static final Hold BACK = hold("back");

    private final TableHolds holds = new TableHolds();

    private static Hold hold(String piece) {
        return new Hold(piece, EdgeRef.of(piece, "side"), Point.ORIGIN, new Point(1, 0), 2);
    }

    @Test
    void theAttentionStaysWithItsSeam() {
        holds.show(List.of(FRONT, BACK), false);
        assertThat(holds.pointed()).isEmpty();
        holds.point(1);
        holds.show(List.of(BACK), false);
        assertThat(holds.pointed()).contains(BACK);
        holds.show(List.of(FRONT, BACK), false);
        assertThat(holds.pointed()).contains(BACK);
    }

    @Test
    void theAttentionGoesToASeamThatTakesPart() {
        holds.show(List.of(FRONT, BACK), false);
        holds.point(0);
        holds.show(List.of(BACK), false);
        assertThat(holds.pointed()).contains(BACK);
        holds.point(0);
        holds.show(List.of(), false);
        assertThat(holds.pointed()).isEmpty();
    }

    /** A change on the right opens a front into two, and changes the one that was not in the hand. */
    @Test
    void theHandKeepsItsPieceWhenTheOtherOneIsChanged() {
        Hold copy = hold("front-right");
        holds.show(List.of(BACK, FRONT), false);
        holds.point(1);
        holds.show(List.of(BACK, copy), true);
        assertThat(holds.pointed()).contains(FRONT);
        assertThat(holds.all()).containsExactly(BACK, copy, FRONT);
        holds.show(List.of(BACK, copy), true);
        assertThat(holds.pointed()).contains(FRONT);
        assertThat(holds.all()).hasSize(3);
        holds.settle();
        assertThat(holds.all()).containsExactly(BACK, copy);
        assertThat(holds.pointed()).isPresent();
    }

    /** A seam is taken hold of on itself: what a level ends on, a notch or a corner, is seen beside the grip. */
    @ParameterizedTest
    @ValueSource(strings = {"hip", "waist"})
    void gripsLieOnTheirSeams(String level) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        byte[] svg = Samples.files().get("skirt.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "s.svg"), Optional.empty(), "s.svg")));
        session.chooseLevel(level);
        List<Piece> pieces = session.desk().shown().pieces();
        for (double scale = 0.3; scale < 3; scale *= 1.1) {
            Viewport view = new Viewport(scale, 0, 0);
            TableHolds seams = new TableHolds();
            seams.onPieces(pieces);
            seams.show(session.desk(), false);
            List<Point> grips = seams.onScreen(view);
            assertThat(grips).hasSizeGreaterThan(1);
            for (int i = 0; i < grips.size(); i++) {
                Point at = view.toTable(grips.get(i).x(), grips.get(i).y());
                String id = seams.all().get(i).pieceId();
                Piece piece = pieces.stream()
                        .filter(p -> p.id().equals(id))
                        .findFirst()
                        .orElseThrow();
                assertThat(piece.outline().nearest(at).distance())
                        .as("%s at %s", id, scale)
                        .isLessThan(0.01);
                assertThat(SeenUnder.isThere(piece, at, scale)).isFalse();
            }
        }
    }

    /** What would be redrawn may end just where a seam could be taken hold of. */
    @Test
    void noneIsThereWhileATruingIsShown() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        SvgFile untrue = SvgFile.read(Path.of("src/test/resources/command/untrue-bodice.svg"));
        session.open(Opened.of(new OpenFile(untrue, Optional.empty(), "untrue-bodice.svg")));
        holds.show(session.desk(), false);
        assertThat(holds.all()).isNotEmpty();
        session.point(TrueWork.of(session.desk()).places().get(0).pointed());
        holds.show(session.desk(), false);
        assertThat(holds.all()).isEmpty();
        session.point(Optional.empty());
        holds.show(session.desk(), false);
        assertThat(holds.all()).isNotEmpty();
    }

    private static Hold on(String piece, double x, double outward) {
        return new Hold(piece, EdgeRef.of(piece, "side"), new Point(x, 0), new Point(outward, 0), 2);
    }

    /** Of two ends that lie close the nearer one is meant, whichever comes first. */
    @Test
    void aPressMeansTheNearestOne() {
        Viewport view = new Viewport(1, 0, 0);
        Hold left = on("left", 100, 1);
        Hold right = on("right", 106, -1);
        for (List<Hold> order : List.of(List.of(left, right), List.of(right, left))) {
            holds.show(order, false);
            assertThat(order.get(holds.at(new Point(101, 0), view))).isEqualTo(left);
            assertThat(order.get(holds.at(new Point(105, 0), view))).isEqualTo(right);
            assertThat(order.get(holds.at(new Point(88, 0), view))).isEqualTo(left);
            assertThat(order.get(holds.at(new Point(118, 0), view))).isEqualTo(right);
            assertThat(holds.at(new Point(103, 40), view)).isNegative();
        }
    }

    /** Of a nest that is seen whole in a small window, or nearer, the darts at the waist are seen beside the grips. */
    @Test
    void noGripLiesOverADart() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        byte[] svg = Samples.files().get("skirt-sizes.svg").getBytes(StandardCharsets.UTF_8);
        session.open(Opened.of(new OpenFile(SvgFile.read(svg, "s.svg"), Optional.empty(), "s.svg")));
        session.chooseLevel("waist");
        for (double scale = 0.24; scale < 2; scale *= 1.05) {
            Viewport view = new Viewport(scale, 0, 0);
            TableHolds seams = new TableHolds();
            List<Piece> pieces = session.desk().shown().pieces();
            seams.onPieces(pieces);
            seams.show(session.desk().takingHolds(), false);
            assertThat(seams.all()).isNotEmpty();
            for (Point at : seams.onScreen(view)) {
                Point place = view.toTable(at.x(), at.y());
                assertThat(pieces)
                        .as("%s at %s", place, scale)
                        .noneMatch(p -> SeenUnder.isThere(p, place, view.scale()));
            }
        }
    }

    /** While a hand pulls, no grip jumps from one place to another, however close the seams come. */
    @Test
    void gripsStayUnderAHandThatPulls() {
        Viewport view = new Viewport(1, 0, 0);
        holds.show(List.of(on("left", 100, 1), on("right", 140, -1)), false);
        assertThat(holds.onScreen(view)).containsExactly(new Point(100, 0), new Point(140, 0));
        List<Hold> close = List.of(on("left", 118, 1), on("right", 122, -1));
        holds.show(close, true);
        assertThat(holds.onScreen(view)).containsExactly(new Point(118, 0), new Point(122, 0));
        holds.settle();
        List<Point> apart = holds.onScreen(view);
        assertThat(apart.get(0).distance(apart.get(1))).isGreaterThan(2 * OverlayPainter.GRIP);
    }
}
