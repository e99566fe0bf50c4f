package easewright.measure;

import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import easewright.topology.Slice;
import easewright.topology.Slices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Measures one piece and notes what cannot be measured. */
final class PieceTape {
    /** A notch marked this near the tip of a drawn one is that one, mm. */
    private static final double NOTCH_MARKED = 10;

    private final Piece piece;
    private final StitchOutline stitch;
    private final List<Finding> findings = new ArrayList<>();

    PieceTape(Piece piece) {
        this(StitchOutline.of(piece));
    }

    PieceTape(StitchOutline stitch) {
        this.piece = stitch.piece();
        this.stitch = stitch;
    }

    PieceMeasures all(List<Level> levels) {
        if (stitch.allowanceTooWide()) {
            Finding tooWide = Finding.of("allowance-too-wide", Severity.FAULT, piece.name());
            return new PieceMeasures(piece.id(), List.of(), List.of(), List.of(tooWide), stitch);
        }
        List<EdgeLength> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            edges.add(edge(edge));
        }
        List<LevelWidth> widths = new ArrayList<>();
        for (LevelMark mark : piece.levels()) {
            Optional<Level> level = named(levels, mark.level());
            if (level.isEmpty()) {
                note("level-unknown", Severity.CAUTION, mark);
                continue;
            }
            Optional<LevelWidth> width = width(mark, level.get());
            if (width.isPresent()) {
                widths.add(width.get());
            }
        }
        for (ClosedDart dart : stitch.darts()) {
            if (dart.offEdge() > ClosedDart.ON_LINE) {
                findings.add(Finding.of("dart-off-edge", Severity.CAUTION, piece.name())
                        .with("dart", dart.dart().name())
                        .with("distance", dart.offEdge()));
            }
        }
        for (Point tip : stitch.notchTips()) {
            if (piece.notches().stream().noneMatch(n -> n.at().distance(tip) <= NOTCH_MARKED)) {
                findings.add(Finding.of("notch-in-cutting-line", Severity.NOTE, piece.name())
                        .with("x", tip.x())
                        .with("y", tip.y()));
            }
        }
        return new PieceMeasures(piece.id(), edges, widths, findings, stitch);
    }

    private static Optional<Level> named(List<Level> levels, String name) {
        for (Level level : levels) {
            if (level.name().equals(name)) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }

    EdgeLength edge(Edge edge) {
        double drawn = stitch.length(edge);
        double mouths = 0;
        for (ClosedDart dart : stitch.dartsOn(edge)) {
            mouths += dart.mouth().orElseThrow().length();
        }
        return new EdgeLength(piece.id(), edge.name(), edge.role(), drawn - mouths, mouths);
    }

    /** Once for each stitching line, whoever asks: a change asks for what is measured of its outcome, and so do its checks. */
    Optional<LevelWidth> width(LevelMark mark, Level level) {
        Laid laid = stitch.laid(mark, level, () -> lay(mark, level));
        findings.addAll(laid.findings());
        return laid.width();
    }

    /**
     * A level laid across a piece.
     *
     * @param width    empty where it does not reach the piece
     * @param findings why not, or what is doubtful
     */
    record Laid(Level level, Optional<LevelWidth> width, List<Finding> findings) {
        Laid {
            findings = List.copyOf(findings);
        }
    }

    private Laid lay(LevelMark mark, Level level) {
        if (stitch.allowanceTooWide()) {
            return new Laid(level, Optional.empty(), List.of());
        }
        PieceTape own = new PieceTape(stitch);
        Optional<LevelWidth> width = mark.through().isPresent() ? own.straight(mark, level) : own.along(mark, level);
        return new Laid(level, width, own.findings);
    }

    private Optional<LevelWidth> along(LevelMark mark, Level level) {
        Optional<Edge> edge = piece.edge(mark.along().orElseThrow());
        if (edge.isEmpty()) {
            findings.add(Finding.of("level-edge-missing", Severity.FAULT, piece.name())
                    .with("level", mark.level())
                    .with("edge", mark.along().get()));
            return Optional.empty();
        }
        EdgeLength length = edge(edge.get());
        Curve run = stitch.edge(edge.get());
        return Optional.of(new LevelWidth(
                piece.id(),
                mark.level(),
                length.mm() + length.dartMm(),
                length.dartMm(),
                mark.overlap(),
                length.mm() - mark.overlap(),
                count(mark, level),
                List.of(new Span(run.start(), run.end())),
                piece.side()));
    }

    private Optional<LevelWidth> straight(LevelMark mark, Level level) {
        Point through = mark.through().orElseThrow();
        Point direction = direction(mark);
        List<Slice> all = Slices.across(stitch.outline(), through, direction);
        if (all.isEmpty()) {
            note("level-not-reached", mark.counts() ? Severity.FAULT : Severity.CAUTION, mark);
            return Optional.empty();
        }
        List<Slice> taken = mark.span() == LevelMark.Span.ALL ? all : List.of(nearest(all));
        if (mark.span() == LevelMark.Span.NEAREST
                && all.size() > 1
                && taken.get(0).distance(0) > ClosedDart.ON_LINE) {
            note("level-place-outside", Severity.CAUTION, mark);
        }
        double width = Slices.total(taken);
        double intake = intake(taken, through, direction);
        return Optional.of(new LevelWidth(
                piece.id(),
                mark.level(),
                width,
                intake,
                mark.overlap(),
                width - intake - mark.overlap(),
                count(mark, level),
                spans(taken, through, direction),
                piece.side()));
    }

    private static List<Span> spans(List<Slice> taken, Point through, Point direction) {
        List<Span> spans = new ArrayList<>();
        for (Slice slice : taken) {
            spans.add(new Span(through.plus(direction.times(slice.from())), through.plus(direction.times(slice.to()))));
        }
        return spans;
    }

    /** Levels lie square to the grain (common practice), turned clockwise where the mark says so. */
    private Point direction(LevelMark mark) {
        Point grain = piece.grainDirection();
        Point square = new Point(grain.y(), -grain.x());
        return mark.turn() == 0 ? square : square.turned(Math.toRadians(mark.turn()));
    }

    /** The stretch that holds the marked place, or else lies nearest to it; the marked place is at 0. */
    private static Slice nearest(List<Slice> slices) {
        Slice nearest = slices.get(0);
        for (Slice slice : slices) {
            if (slice.distance(0) < nearest.distance(0)) {
                nearest = slice;
            }
        }
        return nearest;
    }

    private double intake(List<Slice> taken, Point through, Point direction) {
        double sum = 0;
        for (ClosedDart dart : stitch.darts()) {
            for (Slice folded : Slices.across(dart.cloth(), through, direction)) {
                for (Slice cloth : taken) {
                    sum += folded.shared(cloth);
                }
            }
        }
        return sum;
    }

    private int count(LevelMark mark, Level level) {
        return mark.counts() ? piece.count(level) : 0;
    }

    private void note(String code, Severity severity, LevelMark mark) {
        findings.add(Finding.of(code, severity, piece.name()).with("level", mark.level()));
    }
}
