package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.Grain;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds grainlines: straight lines with arrow heads, or named so, or standing upright by themselves. */
final class GrainLines {
    private static final double SHORTEST = 30;

    /** A line that comes nearer to the outline than this with an end is something else, mm. */
    private static final double CLEAR = 4;

    /** Arrow heads reach this near to the end of their line, mm. */
    private static final double AT_END = 2.5;

    private static final double LONGEST_HEAD = 25;

    /** A line by itself leans less than this, degrees, or so much if it takes that part of the piece's height. */
    private static final double UPRIGHT = 0.5;

    private static final double ASKEW = 4;
    private static final double LONG = 0.35;

    private GrainLines() {}

    private record Candidate(Line line, Reason reason) {}

    static List<Suggestion> find(Sheet sheet) {
        List<Suggestion> found = new ArrayList<>();
        PieceWords words = PieceWords.of(sheet);
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.grain().isEmpty()) {
                best(piece, piece.riders(), words.on(piece))
                        .or(() -> best(piece, sheet.linesOfOtherSizes(piece), words.on(piece)))
                        .ifPresent(c -> found.add(new GrainLine(piece.id(), down(c.line()), c.reason())));
            }
        }
        return found;
    }

    /** From above to below, or from left to right where it lies level. */
    private static Grain down(Line line) {
        Point run = line.end().minus(line.start());
        boolean forward = Math.abs(run.y()) > 1e-9 * line.length() ? run.y() > 0 : run.x() > 0;
        return forward ? new Grain(line.start(), line.end()) : new Grain(line.end(), line.start());
    }

    private static Optional<Candidate> best(Piece piece, List<Rider> lines, List<Caption> captions) {
        List<Pen> pens = lines.stream()
                .filter(r -> r.kind() == Rider.Kind.INNER)
                .flatMap(r -> Pen.of(r).stream())
                .toList();
        List<Candidate> candidates = new ArrayList<>();
        for (Pen pen : pens) {
            for (var run : pen.closed() ? List.<easewright.geom.Curve>of() : pen.runs()) {
                Line line = Pen.chord(run);
                if (Pen.isStraight(run) && line.length() >= SHORTEST && clear(line, piece)) {
                    candidate(line, pen, pens, captions, piece.outline().box().height())
                            .ifPresent(candidates::add);
                }
            }
        }
        return candidates.stream()
                .max(Comparator.comparingDouble((Candidate c) -> c.reason().confidence())
                        .thenComparing(c -> c.line().length()));
    }

    private static boolean clear(Line line, Piece piece) {
        return piece.outline().contains(line.at(0.5))
                && piece.outline().nearest(line.start()).distance() > CLEAR
                && piece.outline().nearest(line.end()).distance() > CLEAR;
    }

    private static Optional<Candidate> candidate(
            Line line, Pen own, List<Pen> pens, List<Caption> captions, double height) {
        boolean named = captions.stream()
                .anyMatch(c -> Vocabulary.has(c.words(), "grain")
                        && line.at(line.nearest(c.middle())).distance(c.middle()) < 4 * c.height() + 10);
        if (named) {
            return Optional.of(new Candidate(line, Reason.of("grain-written", 0.9)));
        }
        int heads = (head(line.start(), line, own, pens) ? 1 : 0) + (head(line.end(), line, own, pens) ? 1 : 0);
        if (heads > 0) {
            return Optional.of(new Candidate(line, Reason.of("arrow", heads == 2 ? 0.9 : 0.8)));
        }
        double lean = Turns.between(line.tangent(0), new Point(0, 1));
        // A sheet that was scanned lies a little askew.
        boolean alone = own.isLine() && (lean < UPRIGHT || lean < ASKEW && line.length() >= LONG * height);
        return alone ? Optional.of(new Candidate(line, Reason.of("upright-line", 0.55))) : Optional.empty();
    }

    /** Whether an arrow head lies at the end of a line: a small filled corner, or two short lines. */
    private static boolean head(Point end, Line line, Pen own, List<Pen> pens) {
        double most = Math.min(LONGEST_HEAD, line.length() / 3);
        int barbs = 0;
        for (Pen pen : pens) {
            double size = pen.runs().stream().mapToDouble(r -> r.length()).max().orElse(0);
            boolean near = pen.runs().stream()
                    .anyMatch(r -> r.start().distance(end) <= AT_END || r.end().distance(end) <= AT_END);
            if (!near || size > most && pen != own) {
                continue;
            }
            if (pen.closed() && pen.runs().size() >= 3) {
                return true;
            }
            for (var run : pen.runs()) {
                Line barb = Pen.chord(run);
                boolean touches =
                        barb.start().distance(end) <= AT_END || barb.end().distance(end) <= AT_END;
                double turn = barb.length() == 0 ? 0 : Turns.between(barb.tangent(0), line.tangent(0));
                if (touches && barb.length() <= most && turn > 8 && turn < 70) {
                    barbs++;
                }
            }
        }
        return barbs >= 1;
    }
}
