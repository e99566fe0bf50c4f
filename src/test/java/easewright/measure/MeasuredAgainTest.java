package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Scale;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is the same object is not measured again: its measures are the same objects. */
class MeasuredAgainTest {
    private static Piece panel(int number, double wide) {
        double x = 300.0 * number;
        List<Point> corners =
                List.of(new Point(x, 0), new Point(x + wide, 0), new Point(x + wide + 20, 600), new Point(x - 20, 600));
        return Piece.bare("panel-" + number, Outline.polygon(corners)).toBuilder()
                .edges(List.of(
                        Edge.of("right", EdgeRole.SEAM, corners.get(1), corners.get(2)),
                        Edge.of("left", EdgeRole.SEAM, corners.get(3), corners.get(0))))
                .levels(List.of(LevelMark.through("hip", new Point(x + 50, 200))))
                .build();
    }

    private static Pattern garment() {
        List<Piece> pieces = new ArrayList<>();
        List<Mate> mates = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            pieces.add(panel(i, 150));
            mates.add(new Mate(
                    "seam " + i,
                    List.of(EdgeRef.of("panel-" + i, "right")),
                    List.of(EdgeRef.of("panel-" + (i + 1) % 4, "left")),
                    0));
        }
        return Pattern.bare(pieces, new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE))
                .withLevels(List.of(Level.of("hip", LevelKind.HIP)))
                .withMates(mates);
    }

    @Test
    void onlyTheChangedPieceAndItsSeamsAreMeasuredAgain() {
        Pattern before = garment();
        GarmentMeasures measured = Measures.of(before);
        Pattern after = before.withPiece(panel(1, 160));
        GarmentMeasures again = Measures.again(after, before, measured);
        for (int i : new int[] {0, 2, 3}) {
            assertThat(again.pieces().get(i)).isSameAs(measured.pieces().get(i));
        }
        assertThat(again.pieces().get(1)).isNotSameAs(measured.pieces().get(1));
        for (int i : new int[] {2, 3}) {
            assertThat(again.mates().get(i)).isSameAs(measured.mates().get(i));
        }
        assertThat(again.mates().get(0)).isNotSameAs(measured.mates().get(0));
        assertThat(again.girths()).isEqualTo(Measures.of(after).girths());
        assertThat(again.mates()).isEqualTo(Measures.of(after).mates());
    }

    /** An equal piece that is another object may have been made otherwise; it is measured, and measures the same. */
    @Test
    void anEqualPieceIsAnotherOne() {
        Pattern before = garment();
        GarmentMeasures measured = Measures.of(before);
        GarmentMeasures again = Measures.again(before.withPiece(panel(2, 150)), before, measured);
        assertThat(again.pieces().get(2)).isNotSameAs(measured.pieces().get(2));
        assertThat(again.girths()).isEqualTo(measured.girths());
    }

    @Test
    void otherLevelsAreMeasuredOnAllPieces() {
        Pattern before = garment();
        Pattern after = before.withLevels(List.of(Level.of("hip", LevelKind.HIGH_HIP)));
        GarmentMeasures again = Measures.again(after, before, Measures.of(before));
        assertThat(again.girths()).isEqualTo(Measures.of(after).girths());
    }

    @Test
    void theStitchingLineOfAPieceIsFoundOnce() {
        Pattern pattern = garment();
        GarmentMeasures measured = Measures.of(pattern);
        StitchLines lines = new StitchLines(measured);
        assertThat(lines.of(pattern.pieces().get(0)))
                .isSameAs(measured.pieces().get(0).stitch());
        Piece other = panel(0, 170);
        assertThat(lines.of(other)).isSameAs(lines.of(other));
    }

    /** A change looks at the width of what it made; measuring that afterwards lays no level a second time. */
    @Test
    void aLevelIsLaidOnceAcrossAStitchingLine() {
        Pattern before = garment();
        Level hip = before.levels().get(0);
        StitchLines lines = new StitchLines();
        Pattern after = before.withPiece(panel(1, 160));
        LevelWidth found = Measures.width(lines.of(after.pieces().get(1)), hip).orElseThrow();
        GarmentMeasures again = Measures.again(after, before, Measures.of(before), lines);
        assertThat(again.pieces().get(1).level("hip").orElseThrow()).isSameAs(found);

        Level limb = new Level("hip", LevelKind.OTHER, true);
        assertThat(Measures.width(lines.of(after.pieces().get(1)), limb)).get().isNotSameAs(found);
    }
}
