package easewright.suggest;

import easewright.geom.Point;
import easewright.pattern.Caption;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Divides outlines at their corners and says what the runs between them are for. */
final class EdgeRuns {
    /** An allowance that differs from the piece's own by less than this is no other one, mm. */
    private static final double SAME_ALLOWANCE = 0.3;

    private final Sheet sheet;
    private final PieceWords words;
    private final String garment;

    private EdgeRuns(Sheet sheet) {
        this.sheet = sheet;
        words = PieceWords.of(sheet);
        garment = words.beside();
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
        Ring ring = new Ring(SewnInside.known(piece).orElse(piece.outline()));
        List<Point> ticks = Ticks.on(piece, sheet).stream().map(Ticks.Tick::at).toList();
        boolean band = Vocabulary.has(piece.name(), "waistband", "waist band");
        Optional<RunsOfPiece> cut = RunsOfPiece.of(piece, c -> band ? Underlap.parted(c, ticks, ring) : c);
        if (cut.isEmpty()) {
            return Optional.empty();
        }
        List<Point> corners = EdgeCorners.on(piece, cut.get());
        List<Run> runs = cut.get().runs();
        Form form = new Form(runs, cut.get().dartCounts(), parts(ticks, runs), fold(piece, runs));
        Roles.Named named = Roles.of(form, piece.name(), garment, namesBeside(piece));
        List<Edge> edges = new ArrayList<>();
        List<AllowanceSpread> spreads = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Form.Label label = overlapping(piece, runs.get(i), named.labels().get(i));
            Edge plain = Edge.of(label.name(), label.role(), corners.get(i), corners.get((i + 1) % corners.size()));
            OptionalDouble usual = RunsOfPiece.allowance(piece, runs.get(i).curve());
            if (usual.isPresent()) {
                AllowanceSpread.along(
                                plain.name(),
                                piece,
                                runs.get(i).curve(),
                                usual.getAsDouble(),
                                cut.get().darts())
                        .ifPresent(spreads::add);
            }
            edges.add(new Edge(
                    plain.name(), plain.role(), plain.from(), plain.to(), plain.isProtected(), own(piece, usual)));
        }
        return Optional.of(new PieceEdges(piece.id(), edges, named.confidence(), spreads));
    }

    private List<String> namesBeside(Piece piece) {
        return sheet.pattern().pieces().stream()
                .filter(p -> p != piece)
                .map(Piece::name)
                .toList();
    }

    /** A straight edge beyond the centre line of a pair is sewn to nothing: there the one lies over the other. */
    private Form.Label overlapping(Piece piece, Run run, Form.Label label) {
        boolean pair = piece.times() > 1 && !piece.onFold();
        return pair
                        && label.role() == EdgeRole.CENTRE
                        && CentreLine.beside(piece, run.curve(), words.on(piece))
                                .isPresent()
                ? new Form.Label(
                        EdgeRole.OPENING, (label.name().replace("centre", "").strip() + " edge").strip())
                : label;
    }

    /** Where on each run the places lie, as parts of its length, rising. */
    private static List<List<Double>> parts(List<Point> places, List<Run> runs) {
        List<List<Double>> parts = new ArrayList<>();
        runs.forEach(r -> parts.add(new ArrayList<>()));
        for (Point place : places) {
            int run = RunsOfPiece.nearest(place, runs);
            parts.get(run).add(runs.get(run).part(place));
        }
        parts.forEach(p -> p.sort(Comparator.naturalOrder()));
        return parts;
    }

    /** The run on the fold: where the sign is, or the word, else the longest that stands along the grain. */
    private OptionalInt fold(Piece piece, List<Run> runs) {
        if (!piece.onFold()) {
            return OptionalInt.empty();
        }
        Optional<FoldBracket> bracket = FoldBracket.on(piece);
        if (bracket.isPresent()) {
            return OptionalInt.of(RunsOfPiece.nearest(
                    bracket.get().end1().towards(bracket.get().end2(), 0.5), runs));
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
    private static OptionalDouble own(Piece piece, OptionalDouble usual) {
        boolean other = usual.isPresent() && Math.abs(usual.getAsDouble() - piece.allowance()) > SAME_ALLOWANCE;
        return other ? usual : OptionalDouble.empty();
    }
}
