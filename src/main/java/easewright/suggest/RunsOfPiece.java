package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

/**
 * The outline of a piece, or the stitching line drawn inside it, parted at its corners, the darts cut out of it closed.
 *
 * @param corners in order along the outline
 * @param runs    each from the corner of its number to the next
 * @param darts   as they are drawn on the piece
 */
record RunsOfPiece(List<Corners.Corner> corners, List<Run> runs, List<Dart> darts) {
    /** More corners than this are no garment piece's, but some picture's. */
    private static final int MOST_CORNERS = 24;

    RunsOfPiece {
        corners = List.copyOf(corners);
        runs = List.copyOf(runs);
        darts = List.copyOf(darts);
    }

    static Optional<RunsOfPiece> of(Piece piece) {
        return of(piece, UnaryOperator.identity());
    }

    /**
     * @param parted may put in further corners
     */
    static Optional<RunsOfPiece> of(Piece piece, UnaryOperator<List<Corners.Corner>> parted) {
        List<Dart> darts = DartShapes.on(piece);
        Outline drawn = SewnInside.known(piece).orElse(piece.outline());
        List<Corners.Corner> sharp = Corners.of(drawn, darts).corners();
        if (sharp.size() < 2 || sharp.size() > MOST_CORNERS) {
            return Optional.empty();
        }
        List<Corners.Corner> corners = parted.apply(sharp);
        // A dart cut out of the outline says nothing of the form of the edge it lies on.
        Piece folded = piece.toBuilder()
                .outline(drawn)
                .drawn(LineKind.STITCHING, 0)
                .darts(darts)
                .build();
        Ring sewn = new Ring(StitchOutline.of(folded).outline());
        Run.Frame frame = Run.Frame.along(piece.grainDirection());
        boolean clockwise = drawn.signedArea() > 0;
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Curve curve = sewn.run(
                    sewn.along(corners.get(i).at()),
                    sewn.along(corners.get((i + 1) % corners.size()).at()));
            runs.add(Run.of(curve, frame, clockwise));
        }
        return Optional.of(new RunsOfPiece(corners, runs, darts));
    }

    /** What can be told of the piece by form alone, nothing being known of its notches and of a fold. */
    Form form() {
        List<List<Double>> noTicks = runs.stream().map(r -> List.<Double>of()).toList();
        return new Form(runs, dartCounts(), noTicks, OptionalInt.empty());
    }

    /** How many dart mouths lie on each run. */
    List<Integer> dartCounts() {
        int[] counts = new int[runs.size()];
        for (Dart dart : darts) {
            if (dart.otherPoint().isEmpty()) {
                counts[nearest(dart.mouth1().towards(dart.mouth2(), 0.5), runs)]++;
            }
        }
        return Arrays.stream(counts).boxed().toList();
    }

    static int nearest(Point place, List<Run> runs) {
        int best = 0;
        double distance = Double.POSITIVE_INFINITY;
        for (int i = 0; i < runs.size(); i++) {
            double away = runs.get(i).curve().nearest(place).distance();
            if (away < distance) {
                distance = away;
                best = i;
            }
        }
        return best;
    }

    /** The cutting line of a piece of which what is sewn is drawn as well. */
    static Optional<Outline> otherLine(Piece piece) {
        return Pen.cuttingLine(piece).or(() -> SewnInside.known(piece).map(sewn -> piece.outline()));
    }

    /** How far the cutting line lies from a run that is sewn, mm; empty where only one of both lines is drawn. */
    static OptionalDouble allowance(Piece piece, Curve run) {
        Optional<Outline> other = otherLine(piece);
        if (other.isEmpty()) {
            return OptionalDouble.empty();
        }
        double length = run.length();
        double[] away = new double[5];
        for (int i = 0; i < away.length; i++) {
            Point p = run.pointAtLength(length * (i + 1.5) / (away.length + 2));
            away[i] = other.get().nearest(p).distance();
        }
        Arrays.sort(away);
        return OptionalDouble.of(Rounding.meant(away[away.length / 2]));
    }
}
