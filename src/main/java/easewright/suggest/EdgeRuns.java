package easewright.suggest;

import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.measure.StitchOutline;
import easewright.pattern.Caption;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.LineKind;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Divides outlines at their corners and says what the runs between them are for. */
final class EdgeRuns {
    /** More corners than this are no garment piece's, but some picture's. */
    private static final int MOST_CORNERS = 24;

    /** An allowance that differs from the piece's own by less than this is no other one, mm. */
    private static final double SAME_ALLOWANCE = 0.3;

    private final Sheet sheet;
    private final PieceWords words;
    private final String garment;

    private EdgeRuns(Sheet sheet) {
        this.sheet = sheet;
        words = PieceWords.of(sheet);
        garment =
                String.join(" ", words.elsewhere().stream().map(Caption::words).toList());
    }

    static List<Suggestion> find(Sheet sheet) {
        EdgeRuns runs = new EdgeRuns(sheet);
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.edges().isEmpty()) {
                runs.of(piece).ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<PieceEdges> of(Piece piece) {
        List<Dart> darts = DartShapes.on(piece);
        List<Corners.Corner> corners = Corners.of(piece.outline(), darts).corners();
        if (corners.size() < 2 || corners.size() > MOST_CORNERS) {
            return Optional.empty();
        }
        Ring ring = new Ring(piece.outline());
        List<Point> ticks = Ticks.on(piece, sheet).stream().map(Ticks.Tick::at).toList();
        if (Vocabulary.has(piece.name(), "waistband", "waist band")) {
            corners = Underlap.parted(corners, ticks, ring);
        }
        // A dart cut out of the outline says nothing of the form of the edge it lies on.
        Piece folded =
                piece.toBuilder().drawn(LineKind.STITCHING, 0).darts(darts).build();
        Ring sewn = new Ring(StitchOutline.of(folded).outline());
        Run.Frame frame = Run.Frame.along(piece.grainDirection());
        boolean clockwise = piece.outline().signedArea() > 0;
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Curve curve = sewn.run(
                    sewn.along(corners.get(i).at()),
                    sewn.along(corners.get((i + 1) % corners.size()).at()));
            runs.add(Run.of(curve, frame, clockwise));
        }
        List<Point> mouths = darts.stream()
                .filter(d -> d.otherPoint().isEmpty())
                .map(d -> d.mouth1().towards(d.mouth2(), 0.5))
                .toList();
        Form form = new Form(runs, counts(mouths, runs), parts(ticks, runs), fold(piece, runs));
        Roles.Named named = Roles.of(form, piece.name(), garment);
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Form.Label label = named.labels().get(i);
            Edge plain = Edge.of(
                    label.name(),
                    label.role(),
                    corners.get(i).at(),
                    corners.get((i + 1) % corners.size()).at());
            edges.add(new Edge(
                    plain.name(),
                    plain.role(),
                    plain.from(),
                    plain.to(),
                    plain.isProtected(),
                    allowance(piece, runs.get(i).curve())));
        }
        return Optional.of(new PieceEdges(piece.id(), edges, named.confidence()));
    }

    /** How many of the places lie on each run. */
    private static List<Integer> counts(List<Point> places, List<Run> runs) {
        int[] counts = new int[runs.size()];
        for (Point place : places) {
            counts[nearest(place, runs)]++;
        }
        return Arrays.stream(counts).boxed().toList();
    }

    /** Where on each run the places lie, as parts of its length, rising. */
    private static List<List<Double>> parts(List<Point> places, List<Run> runs) {
        List<List<Double>> parts = new ArrayList<>();
        runs.forEach(r -> parts.add(new ArrayList<>()));
        for (Point place : places) {
            int run = nearest(place, runs);
            parts.get(run).add(runs.get(run).part(place));
        }
        parts.forEach(p -> p.sort(Comparator.naturalOrder()));
        return parts;
    }

    private static int nearest(Point place, List<Run> runs) {
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

    /** The run on the fold: where the sign is, or the word, else the longest that stands along the grain. */
    private OptionalInt fold(Piece piece, List<Run> runs) {
        if (!piece.onFold()) {
            return OptionalInt.empty();
        }
        Optional<FoldBracket> bracket = FoldBracket.on(piece);
        if (bracket.isPresent()) {
            return OptionalInt.of(
                    nearest(bracket.get().end1().towards(bracket.get().end2(), 0.5), runs));
        }
        List<Integer> straight = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            if (runs.get(i).isStraight()) {
                straight.add(i);
            }
        }
        Optional<Caption> word = words.on(piece).stream()
                .filter(c -> Vocabulary.has(c.words(), "fold") && !Vocabulary.has(c.words(), "cut"))
                .findFirst();
        Comparator<Integer> order = word.isPresent()
                ? Comparator.comparingDouble(
                        i -> runs.get(i).curve().nearest(word.get().middle()).distance())
                : Comparator.comparing((Integer i) -> runs.get(i).lean() > 3)
                        .thenComparingDouble(i -> -runs.get(i).length());
        return straight.stream().min(order).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /** The distance to a cutting line drawn around, where it differs from the piece's own allowance. */
    private static OptionalDouble allowance(Piece piece, Curve run) {
        Optional<Outline> cutting = Pen.cuttingLine(piece);
        if (cutting.isEmpty()) {
            return OptionalDouble.empty();
        }
        double length = run.length();
        double[] away = new double[5];
        for (int i = 0; i < away.length; i++) {
            Point p = run.pointAtLength(length * (i + 1.5) / (away.length + 2));
            away[i] = cutting.get().nearest(p).distance();
        }
        Arrays.sort(away);
        double usual = Rounding.meant(away[away.length / 2]);
        return Math.abs(usual - piece.allowance()) > SAME_ALLOWANCE ? OptionalDouble.of(usual) : OptionalDouble.empty();
    }
}
