package easewright.bench;

import easewright.geom.Line;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.LineKind;
import easewright.topology.Slices;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
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

/** A level across one outline: ours on true curves and on straight lines, and a bare intersection in JTS on the lines. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LevelAcross {
    @Param({"160", "5000"})
    public int segments;

    private Outline curves;
    private Outline lines;
    private Polygon polygon;
    private LineString level;
    private final Point through = new Point(0, 203.3);
    private final Point direction = new Point(1, 0);

    @Setup
    public void lay() {
        curves = Gores.skirt(1, segments, LineKind.STITCHING).pieces().get(0).outline();
        List<Segment> straight = new ArrayList<>();
        List<Coordinate> corners = new ArrayList<>();
        for (Segment segment : curves.segments()) {
            straight.add(new Line(segment.start(), segment.end()));
            corners.add(new Coordinate(segment.start().x(), segment.start().y()));
        }
        corners.add(corners.get(0).copy());
        lines = new Outline(straight);
        GeometryFactory factory = new GeometryFactory();
        polygon = factory.createPolygon(corners.toArray(Coordinate[]::new));
        level = factory.createLineString(
                new Coordinate[] {new Coordinate(-2000, through.y()), new Coordinate(2000, through.y())});
    }

    @Benchmark
    public Object oursOnCurves() {
        return Slices.across(curves, through, direction);
    }

    @Benchmark
    public Object oursOnLines() {
        return Slices.across(lines, through, direction);
    }

    @Benchmark
    public Object jtsOnLines() {
        return polygon.intersection(level);
    }
}
