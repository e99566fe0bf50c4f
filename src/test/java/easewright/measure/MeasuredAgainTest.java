package easewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.geom.Affine;
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
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.assertj.core.api.Assertions;
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

    private static Piece sized(String size, int number, double wide) {
        Piece plain = panel(number, wide);
        return plain.toBuilder()
                .id(plain.id() + "-" + size)
                .name(plain.name() + " " + size)
                .size(Optional.of(size))
                .build();
    }

    /** Three sizes of four panels each, sewn by the names that panels have in every size, and a loop for all of them. */
    private static Pattern nest() {
        List<Piece> pieces = new ArrayList<>();
        for (String size : List.of("10", "12", "14")) {
            for (int i = 0; i < 4; i++) {
                pieces.add(sized(size, i, 150));
            }
        }
        pieces.add(panel(9, 30).toBuilder().name("loop").build());
        return garment().withPieces(pieces);
    }

    private static void assertSame(GarmentMeasures found, GarmentMeasures expected) {
        assertThat(found.girths()).isEqualTo(expected.girths());
        assertThat(found.mates()).isEqualTo(expected.mates());
        assertThat(found.findings()).isEqualTo(expected.findings());
        assertThat(found.pieces())
                .extracting(PieceMeasures::pieceId, PieceMeasures::edges, PieceMeasures::levels)
                .isEqualTo(expected.pieces().stream()
                        .map(p -> Assertions.tuple(p.pieceId(), p.edges(), p.levels()))
                        .toList());
    }

    @Test
    void ofANestOnlyTheChangedSizeIsMeasuredAgain() {
        Pattern before = nest();
        GarmentMeasures measured = Measures.of(before);
        assertThat(measured.girths()).hasSize(3);
        assertThat(measured.mates()).hasSize(12);
        Pattern after = before.withPiece(sized("12", 1, 160));
        // What is known of the other sizes is known still where one size is looked at.
        for (GarmentMeasures known : List.of(measured, measured.inSize("12"))) {
            GarmentMeasures again = Measures.again(after, before, known);
            assertSame(again, Measures.of(after));
            for (int i : new int[] {0, 2}) {
                assertThat(again.girths().get(i)).isSameAs(measured.girths().get(i));
            }
            assertThat(again.girths().get(1)).isNotSameAs(measured.girths().get(1));
            for (int i = 0; i < 12; i++) {
                boolean same = i < 4 || i > 7;
                if (same) {
                    assertThat(again.mates().get(i)).isSameAs(measured.mates().get(i));
                }
            }
            assertThat(again.mates().get(4)).isNotSameAs(measured.mates().get(4));
        }
    }

    /** Whatever is changed, and however often: what is taken over is what measuring everything finds. */
    @Test
    void measuringAgainFindsWhatMeasuringEverythingFinds() {
        Random random = new Random(53);
        Pattern now = nest();
        GarmentMeasures measured = Measures.of(now);
        for (int i = 0; i < 400; i++) {
            Pattern next = changed(now, random);
            GarmentMeasures again = Measures.again(next, now, random.nextBoolean() ? measured : measured.inSize("12"));
            assertSame(again, Measures.of(next));
            now = random.nextInt(8) == 0 ? nest() : next;
            measured = random.nextBoolean() || now != next ? Measures.of(now) : again;
        }
    }

    private static Pattern changed(Pattern pattern, Random random) {
        int at = random.nextInt(pattern.pieces().size());
        Piece piece = pattern.pieces().get(at);
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        switch (random.nextInt(9)) {
            case 0 -> pieces.set(at, piece.withName("called " + random.nextInt(3) + piece.id()));
            case 1 -> pieces.set(at, piece.withLevels(List.of()));
            case 2 -> pieces.remove(at);
            case 3 -> pieces.set(at, piece.toBuilder().size(Optional.of("16")).build());
            case 4 -> pieces.set(at, piece.toBuilder().size(Optional.empty()).build());
            case 5 -> Collections.swap(pieces, at, random.nextInt(pieces.size()));
            case 6 -> {
                return pattern.withMates(pattern.mates()
                        .subList(
                                Math.min(random.nextInt(2), pattern.mates().size()),
                                pattern.mates().size()));
            }
            case 7 -> {
                return pattern.withLevels(List.of(new Level("hip", LevelKind.HIP, random.nextBoolean())));
            }
            default ->
                pieces.set(
                        at,
                        piece.withOutline(piece.outline()
                                .transformed(Affine.rotation(0.01 * random.nextInt(9), new Point(0, 0)))));
        }
        return pattern.withPieces(pieces);
    }

    /** The window measures a drawing that was just read while it measures another in the background. */
    @Test
    void severalNestsAreMeasuredAtOnce() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            List<Future<Boolean>> all = new ArrayList<>();
            for (int i = 0; i < 2000; i++) {
                Pattern nest =
                        garment().withPieces(List.of(sized("s" + 2 * i, 0, 150), sized("s" + (2 * i + 1), 1, 160)));
                all.add(hands.submit(() -> Measures.of(nest).mates().isEmpty()));
            }
            for (Future<Boolean> each : all) {
                assertThat(each.get()).isTrue();
            }
        } finally {
            hands.shutdownNow();
        }
    }
}
