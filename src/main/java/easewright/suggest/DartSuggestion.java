package easewright.suggest;

import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.Cutting;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A dart by its form. */
public record DartSuggestion(String piece, Dart dart, Reason reason) implements Suggestion.OnPiece {
    /** A mouth belongs to the edge that is this near, mm. */
    private static final double AT_EDGE = 25;

    static List<Suggestion> find(Sheet sheet) {
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.darts().isEmpty()) {
                of(piece, found);
            }
        }
        return found;
    }

    private static void of(Piece piece, List<Suggestion> found) {
        List<Dart> darts = new ArrayList<>();
        for (Dart dart : DartShapes.on(piece)) {
            Optional<String> edge = dart.otherPoint().isPresent() ? Optional.empty() : edge(piece, dart);
            darts.add(new Dart("dart", dart.mouth1(), dart.mouth2(), dart.point(), dart.otherPoint(), edge));
        }
        darts.sort(Comparator.comparingDouble((Dart d) -> d.point().x()));
        Map<String, Integer> used = new HashMap<>();
        for (Dart dart : darts) {
            String wanted = dart.edge().map(e -> e + " dart").orElse("dart");
            long same = darts.stream().filter(d -> d.edge().equals(dart.edge())).count();
            int number = used.merge(wanted, 1, Integer::sum);
            String name = same > 1 ? wanted + " " + number : wanted;
            Dart named = new Dart(name, dart.mouth1(), dart.mouth2(), dart.point(), dart.otherPoint(), dart.edge());
            found.add(new DartSuggestion(piece.id(), named, reason(named)));
        }
    }

    private static Reason reason(Dart dart) {
        double first = dart.mouth1().distance(dart.point());
        double second = dart.mouth2().distance(dart.point());
        double apart = Math.abs(first - second);
        String code =
                dart.otherPoint().isPresent() ? "dart-diamond" : Cutting.same(apart) ? "dart-legs" : "dart-legs-apart";
        return new Reason(code, Map.of("first", first, "second", second, "apart", apart), 0.85);
    }

    /** The edge on which the middle of the mouth lies. */
    private static Optional<String> edge(Piece piece, Dart dart) {
        Point middle = dart.mouth1().towards(dart.mouth2(), 0.5);
        return piece.edges().stream()
                .filter(e -> distance(piece, e, middle) <= AT_EDGE)
                .min(Comparator.comparingDouble(e -> distance(piece, e, middle)))
                .map(Edge::name);
    }

    private static double distance(Piece piece, Edge edge, Point at) {
        return edge.on(piece.outline()).nearest(at).distance();
    }

    @Override
    public Kind kind() {
        return Kind.DART;
    }

    @Override
    public String key() {
        return "dart " + piece + " " + Math.round(dart.point().x()) + " "
                + Math.round(dart.point().y());
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("name", dart.name(), "intake", dart.intake());
    }

    @Override
    public List<Segment> shown() {
        List<Segment> legs = new ArrayList<>();
        legs.add(new Line(dart.mouth1(), dart.point()));
        legs.add(new Line(dart.point(), dart.mouth2()));
        dart.otherPoint().ifPresent(other -> {
            legs.add(new Line(dart.mouth2(), other));
            legs.add(new Line(other, dart.mouth1()));
        });
        return legs;
    }

    @Override
    public Piece marked(Piece old) {
        List<Dart> darts = new ArrayList<>(old.darts());
        darts.add(dart);
        return old.toBuilder().darts(darts).build();
    }
}
