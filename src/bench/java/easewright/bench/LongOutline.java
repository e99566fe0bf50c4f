package easewright.bench;

import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Sketch;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Measures one piece with a long outline at two levels, drawn by its stitching or its cutting line. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LongOutline {
    private static final List<Level> LEVELS =
            List.of(Level.of("hip", LevelKind.HIP), Level.of("waist", LevelKind.WAIST));

    @Param({"500", "5000"})
    public int segments;

    @Param({"STITCHING", "CUTTING"})
    public LineKind drawn;

    private Outline blob;

    @Setup
    public void lay() {
        blob = Sketch.randomBlob(new Random(8), segments, 400);
    }

    /** On a fresh outline, so that nothing is known of it. */
    @Benchmark
    public Object measure() {
        Outline outline = new Outline(blob.segments());
        Point a = outline.segments().get(0).start();
        Point b = outline.segments().get(segments / 3).start();
        Piece piece = Piece.bare("p", outline).toBuilder()
                .drawn(drawn, 15)
                .edges(List.of(Edge.of("a", EdgeRole.SEAM, a, b), Edge.of("b", EdgeRole.SEAM, b, a)))
                .levels(List.of(
                        LevelMark.through("hip", new Point(3, 40)), LevelMark.through("waist", new Point(3, -90))))
                .build();
        return Measures.of(piece, LEVELS);
    }
}
