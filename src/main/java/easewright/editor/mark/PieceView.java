package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.measure.PastCentre;
import easewright.measure.PieceMeasures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is marked on one piece, in words.
 *
 * @param pieces    all pieces to choose from
 * @param id        of the piece shown; empty if there is none
 * @param size      of the piece; empty where it belongs to all
 * @param lined     whether it is lined with itself; empty where it is cut once only
 * @param cutting   whether the drawn line is the cutting line
 * @param allowance of the piece
 */
public record PieceView(
        List<Choice> pieces,
        String id,
        String name,
        String times,
        String size,
        boolean onFold,
        Optional<Boolean> lined,
        boolean cutting,
        String allowance,
        List<EdgeRow> edges,
        List<MarkRow> darts,
        List<MarkRow> notches,
        String grain) {
    public static final String NOTCH_PLACE = "editor.notches.place";
    public static final String DART_WIDTH = "editor.darts.width";
    public static final String DART_LENGTH = "editor.darts.length";
    public static final String DART_FIRST = "editor.darts.first";
    public static final String DART_OTHER = "editor.darts.other";

    public PieceView {
        pieces = List.copyOf(pieces);
        edges = List.copyOf(edges);
        darts = List.copyOf(darts);
        notches = List.copyOf(notches);
    }

    /** A piece to choose. */
    public record Choice(String id, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    /**
     * One edge.
     *
     * @param allowance empty where it is the piece's own
     * @param toCentre  its length without what lies on a button stand, where some does
     * @param kept      whether it is protected
     * @param run       to be shown on the table
     */
    public record EdgeRow(
            String name,
            EdgeRole role,
            String allowance,
            String length,
            Optional<String> toCentre,
            boolean kept,
            List<Segment> run) {
        public EdgeRow {
            run = List.copyOf(run);
        }
    }

    /** A dart or a notch. */
    public record MarkRow(String name, List<Measure> measures, List<Segment> shown) {
        public MarkRow {
            measures = List.copyOf(measures);
            shown = List.copyOf(shown);
        }
    }

    /**
     * A length of a mark that can be typed.
     *
     * @param key    of its words in the bundle
     * @param before what stands before the length
     * @param after  what stands after it
     */
    public record Measure(String key, String before, String length, String after) {}

    /** The piece chosen, or else the first. */
    public static PieceView of(Desk desk, MarkState state) {
        Words words = desk.words();
        List<Piece> all = desk.pattern().pieces();
        List<Choice> choices =
                all.stream().map(p -> new Choice(p.id(), p.name())).toList();
        Optional<Piece> chosen = chosen(desk, state);
        if (chosen.isEmpty()) {
            return new PieceView(
                    choices, "", "", "", "", false, Optional.empty(), false, "", List.of(), List.of(), List.of(), "");
        }
        Piece piece = chosen.get();
        return new PieceView(
                choices,
                piece.id(),
                piece.name(),
                String.valueOf(piece.times()),
                piece.size().orElse(""),
                piece.onFold(),
                piece.times() > 1 ? Optional.of(piece.layers() > 1) : Optional.empty(),
                piece.drawn() == LineKind.CUTTING,
                words.entered(piece.allowance()),
                edges(desk, piece),
                darts(piece, words),
                notches(piece, words),
                words.of(piece.grain().isPresent() ? "editor.piece.grain" : "editor.piece.no-grain"));
    }

    static Optional<Piece> chosen(Desk desk, MarkState state) {
        List<Piece> all = desk.pattern().pieces();
        return all.stream()
                .filter(p -> state.piece().equals(Optional.of(p.id())))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    private static List<EdgeRow> edges(Desk desk, Piece piece) {
        Words words = desk.words();
        Optional<PieceMeasures> measures = desk.reading().measures().piece(piece.id());
        List<EdgeRow> rows = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            double mm = measures.flatMap(m -> m.edge(edge.name()))
                    .map(e -> e.mm())
                    .orElseGet(() -> edge.on(piece.outline()).length());
            double past = measures.map(m -> PastCentre.mm(m, edge.name())).orElse(0.0);
            rows.add(new EdgeRow(
                    edge.name(),
                    edge.role(),
                    edge.allowance().isPresent()
                            ? words.entered(edge.allowance().getAsDouble())
                            : "",
                    words.length(mm),
                    past > 0 ? Optional.of(words.length(mm - past)) : Optional.empty(),
                    edge.isProtected(),
                    edge.on(piece.outline()).segments()));
        }
        return rows;
    }

    private static List<MarkRow> darts(Piece piece, Words words) {
        List<MarkRow> rows = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            List<Segment> legs = new ArrayList<>(
                    List.of(new Line(dart.mouth1(), dart.point()), new Line(dart.point(), dart.mouth2())));
            dart.otherPoint().ifPresent(other -> {
                legs.add(new Line(dart.mouth2(), other));
                legs.add(new Line(other, dart.mouth1()));
            });
            rows.add(new MarkRow(dart.name(), measures(dart, words), legs));
        }
        return rows;
    }

    /** Width and length; of a dart that is closed at both ends the length to each of them. */
    private static List<Measure> measures(Dart dart, Words words) {
        List<Measure> measures = new ArrayList<>();
        measures.add(new Measure(DART_WIDTH, words.of("editor.darts.wide"), words.length(dart.intake()), ""));
        if (dart.otherPoint().isEmpty()) {
            measures.add(length(DART_LENGTH, "long", dart, dart.point(), words));
            return measures;
        }
        Point other = dart.otherPoint().get();
        Point way = dart.point().minus(other);
        boolean upright = Math.abs(way.y()) >= Math.abs(way.x());
        boolean before = upright ? way.y() < 0 : way.x() < 0;
        String up = upright ? "up" : "left";
        String down = upright ? "down" : "right";
        Measure first = length(DART_FIRST, before ? up : down, dart, dart.point(), words);
        Measure second = length(DART_OTHER, before ? down : up, dart, other, words);
        measures.addAll(before ? List.of(first, second) : List.of(second, first));
        return measures;
    }

    private static Measure length(String key, String way, Dart dart, Point point, Words words) {
        double mm = dart.mouth1().towards(dart.mouth2(), 0.5).distance(point);
        return new Measure(key, words.of("editor.darts." + way), words.length(mm), "");
    }

    private static List<MarkRow> notches(Piece piece, Words words) {
        List<MarkRow> rows = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            Point at = notch.at();
            Point arm = new Point(5, 5);
            List<Segment> cross = List.of(
                    new Line(at.minus(arm), at.plus(arm)),
                    new Line(at.plus(new Point(-5, 5)), at.plus(new Point(5, -5))));
            Optional<Edge> edge =
                    EdgeEdits.at(piece, piece.outline().nearest(at).point());
            List<Measure> measures =
                    edge.map(e -> List.of(place(piece, e, at, words))).orElse(List.of());
            rows.add(new MarkRow(notch.name(), measures, cross));
        }
        return rows;
    }

    /** Where a notch lies on its edge. */
    private static Measure place(Piece piece, Edge edge, Point at, Words words) {
        return new Measure(
                NOTCH_PLACE,
                words.of("editor.notches.on", Map.of("edge", edge.name())),
                words.length(AlongEdge.mm(piece, edge, at)),
                AlongEdge.from(piece, edge, words));
    }
}
