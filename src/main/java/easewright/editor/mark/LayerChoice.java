package easewright.editor.mark;

import easewright.editor.model.Desk;
import easewright.geom.Affine;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Scale;
import easewright.suggest.KnownLength;
import easewright.suggest.Sheet;
import easewright.svg.BarePattern;
import easewright.svg.Drawing;
import easewright.svg.DrawnShape;
import easewright.svg.Layer;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which layers of a drawing hold the pieces, where there are several, such as the sizes of a nest.
 *
 * @param locked why they cannot be chosen now; empty if they can
 */
public record LayerChoice(List<Row> rows, String locked) {
    public LayerChoice {
        rows = List.copyOf(rows);
    }

    /**
     * One layer.
     *
     * @param what what is in it, in words
     * @param read whether its outlines are on the table
     * @param gauge whether it holds no piece but a square to check the scale, which belongs to every size
     */
    public record Row(String key, String name, String what, boolean read, boolean gauge) {}

    /**
     * What the drawing was read as, and the pattern with the pieces in its layers.
     *
     * @param gone names of pieces that went with their marks
     * @param bare names of pieces that come without the marks that they once had
     */
    public record Outcome(SvgFile svg, Pattern pattern, List<String> gone, List<String> bare) {
        public Outcome {
            gone = List.copyOf(gone);
            bare = List.copyOf(bare);
        }
    }

    /**
     * @param sheet what lies on the table, with the words around it
     */
    public static LayerChoice of(Desk desk, Sheet sheet) {
        Drawing drawing = desk.file().map(f -> f.svg().drawing()).orElse(null);
        if (drawing == null) {
            return new LayerChoice(List.of(), "");
        }
        Words words = desk.words();
        Map<String, Set<String>> layersOf = layersOf(drawing);
        Set<String> holding = new HashSet<>();
        desk.pattern().pieces().forEach(p -> holding.addAll(layers(p, layersOf)));
        Map<String, Integer> gauges = gauges(sheet, layersOf);
        List<Row> rows = Layer.choice(drawing.layers()).stream()
                .map(l -> {
                    boolean gauge = gauges.getOrDefault(l.key(), 0) == l.outlines();
                    String what = gauge
                            ? words.of("editor.layers.gauge")
                            : l.outlines() == 1
                                    ? words.of("editor.layers.holds.one")
                                    : words.of("editor.layers.holds", Map.of("count", l.outlines()));
                    return new Row(l.key(), l.name(), what, holding.contains(l.key()), gauge);
                })
                .toList();
        boolean changed = !desk.pattern().changes().isEmpty();
        return new LayerChoice(rows, changed ? words.of("editor.layers.locked") : "");
    }

    /** Keys of the layers that are read. */
    public Set<String> read() {
        return rows.stream().filter(Row::read).map(Row::key).collect(Collectors.toSet());
    }

    /** One layer alone, and with it those that are read for the scale. */
    public Set<String> only(String key) {
        Set<String> keys =
                rows.stream().filter(r -> r.gauge() && r.read()).map(Row::key).collect(Collectors.toSet());
        keys.add(key);
        return keys;
    }

    /** How many squares with their size beside them lie in each layer, by its key. */
    private static Map<String, Integer> gauges(Sheet sheet, Map<String, Set<String>> layersOf) {
        Map<String, Integer> gauges = new HashMap<>();
        for (KnownLength known : KnownLength.on(sheet)) {
            if (known.piece().isPresent() && known.stated().isPresent()) {
                layers(known.piece().get(), layersOf).forEach(key -> gauges.merge(key, 1, Integer::sum));
            }
        }
        return gauges;
    }

    /** The lines drawn in a layer, at the scale of the table. */
    public static List<Segment> lines(Desk desk, String key) {
        List<Segment> lines = new ArrayList<>();
        desk.file().ifPresent(f -> {
            Drawing drawing = f.svg().drawing();
            Affine map = scaling(drawing.scale(), desk.pattern().scale());
            for (DrawnShape shape : drawing.all()) {
                if (shape.groups().stream().anyMatch(g -> g.key().equals(key))) {
                    shape.subPaths().forEach(s -> s.segments().forEach(line -> lines.add(line.transformed(map))));
                }
            }
        });
        return lines;
    }

    private static Affine scaling(Scale from, Scale to) {
        return Affine.scaling(to.mmPerUnitX() / from.mmPerUnitX(), to.mmPerUnitY() / from.mmPerUnitY());
    }

    /**
     * Reads other layers. Pieces in layers that are not asked for go, with their marks, and so do lines of such layers that
     * ride on others; outlines in layers that held nothing come, as they were marked when they were last there. What
     * lies elsewhere, such as words in a layer of their own, stays.
     *
     * @param states patterns of the file, oldest first; the last is the present one
     * @param keys   of the layers to read, out of those to choose from
     * @throws MarkRefused {@code piece-in-changes}
     */
    public static Outcome reading(SvgFile svg, List<Pattern> states, Set<String> keys) throws SvgProblem, MarkRefused {
        Pattern present = states.get(states.size() - 1);
        Map<String, Piece> before = bare(svg, present.scale());
        EarlierMarks earlier = EarlierMarks.of(svg, states, before);
        SvgFile unasked = svg.reread(svg.options().withShown(Set.of(), Set.of()));
        Set<String> offered = new HashSet<>();
        Set<String> shown = new HashSet<>();
        for (Layer layer : Layer.choice(unasked.drawing().layers())) {
            offered.add(layer.key());
            if (layer.shown()) {
                shown.add(layer.key());
            }
        }
        SvgFile now = svg.reread(svg.options().withShown(minus(keys, shown), minus(shown, keys)));
        Map<String, Set<String>> layersOf = layersOf(now.drawing());
        Set<String> unwanted = minus(offered, keys);
        Map<String, Piece> found = bare(now, present.scale());
        Pattern pattern = present;
        Set<String> held = new HashSet<>();
        List<String> gone = new ArrayList<>();
        for (Piece piece : present.pieces()) {
            held.addAll(layers(piece, layersOf));
            boolean untouched = piece.equals(before.get(piece.id()));
            boolean rides = untouched
                    && !found.containsKey(piece.id())
                    && riders(found.values()).contains(piece.id());
            if (rides || lies(layers(piece.id(), layersOf), unwanted, keys)) {
                pattern = PieceEdits.leaveOut(pattern, piece.id());
                if (earlier.isSaid(piece)) {
                    gone.add(piece.name());
                }
            } else {
                Piece again = untouched ? found.getOrDefault(piece.id(), piece) : piece;
                List<Rider> riders = again.riders().stream()
                        .filter(r -> !lies(layers(r.id(), layersOf), unwanted, keys))
                        .toList();
                pattern = pattern.withPiece(again.toBuilder().riders(riders).build());
            }
        }
        List<Piece> pieces = new ArrayList<>(pattern.pieces());
        Set<String> stay = pattern.pieces().stream().map(Piece::id).collect(Collectors.toSet());
        Set<String> rode = minus(riders(present.pieces()), riders(pieces));
        List<Piece> coming = new ArrayList<>();
        for (Piece piece : found.values()) {
            boolean there = stay.contains(piece.id()) || present.noPieces().contains(piece.id());
            Set<String> in = layers(piece.id(), layersOf);
            in.retainAll(offered);
            boolean here = in.stream().anyMatch(keys::contains);
            boolean known = present.piece(piece.id()).isPresent()
                    || in.stream().anyMatch(held::contains)
                    || earlier.wasNoPiece(
                            piece, p -> layers(p.id(), layersOf).stream().anyMatch(in::contains));
            // An outline that rode on a larger one is a piece now that this one is gone.
            if (!there && here && (!known || rode.contains(piece.id()))) {
                coming.add(piece);
            }
        }
        Map<String, Integer> order = order(found.values());
        Map<Piece, Piece> marks = new LinkedHashMap<>();
        coming.forEach(piece -> marks.put(piece, earlier.piece(piece).orElse(piece)));
        Set<String> back = marks.values().stream().map(Piece::id).collect(Collectors.toSet());
        List<String> bare = new ArrayList<>();
        for (Piece piece : coming) {
            Piece marked = marks.get(piece);
            if (earlier.lost(piece)) {
                bare.add(piece.name());
            }
            List<Rider> riders = (marked.riders().isEmpty() ? piece : marked)
                    .riders().stream()
                            .filter(r -> !stay.contains(r.id()) && !back.contains(r.id()))
                            .filter(r -> !lies(layers(r.id(), layersOf), unwanted, keys))
                            .toList();
            EarlierMarks.insert(pieces, marked.toBuilder().riders(riders).build(), p -> order.getOrDefault(p.id(), 0));
        }
        Pattern read = earlier.levelsAndMates(pattern.withPieces(pieces), back);
        Pattern resting = earlier.resting(read, p -> lies(layers(p.id(), layersOf), unwanted, keys));
        return new Outcome(now.withResting(resting), read, gone, bare);
    }

    /** Where pieces stand, by their ids and those of their other lines: the cutting line, where the stitching line is marked. */
    private static Map<String, Integer> order(Collection<Piece> found) {
        Map<String, Integer> order = new HashMap<>();
        found.forEach(p -> order.put(p.id(), order.size()));
        found.forEach(p -> p.riders().forEach(r -> order.putIfAbsent(r.id(), order.get(p.id()))));
        return order;
    }

    private static Set<String> riders(Collection<Piece> pieces) {
        return pieces.stream().flatMap(p -> p.riders().stream()).map(Rider::id).collect(Collectors.toSet());
    }

    private static Set<String> minus(Set<String> all, Set<String> some) {
        Set<String> rest = new HashSet<>(all);
        rest.removeAll(some);
        return rest;
    }

    /** Whether something lies in a layer that is not wanted, and in none that is. */
    private static boolean lies(Set<String> in, Set<String> unwanted, Set<String> keys) {
        return in.stream().anyMatch(unwanted::contains) && in.stream().noneMatch(keys::contains);
    }

    /** The pieces without any marks that a drawing holds, at a scale. */
    private static Map<String, Piece> bare(SvgFile svg, Scale scale) throws SvgProblem {
        Pattern bare = BarePattern.of(svg.drawing()).pattern();
        if (!bare.scale().isAs(scale)) {
            bare = svg.atScale(bare, scale.mmPerUnitX(), false);
        }
        Map<String, Piece> pieces = new LinkedHashMap<>();
        bare.pieces().forEach(p -> pieces.put(p.id(), p));
        return pieces;
    }

    /** Keys of the groups around each shape. */
    private static Map<String, Set<String>> layersOf(Drawing drawing) {
        return drawing.all().stream()
                .collect(Collectors.toMap(
                        DrawnShape::id,
                        s -> s.groups().stream().map(DrawnShape.Group::key).collect(Collectors.toSet())));
    }

    /** Keys of the groups around a piece and the lines that ride on it. */
    private static Set<String> layers(Piece piece, Map<String, Set<String>> layersOf) {
        Set<String> layers = layers(piece.id(), layersOf);
        piece.riders().forEach(r -> layers.addAll(layers(r.id(), layersOf)));
        return layers;
    }

    /** Keys of the groups around a line, or around several loose lines that are one outline. */
    private static Set<String> layers(String ids, Map<String, Set<String>> layersOf) {
        Set<String> layers = new HashSet<>();
        for (String id : ids.split(" ")) {
            int hash = id.lastIndexOf('#');
            layers.addAll(layersOf.getOrDefault(id, Set.of()));
            layers.addAll(hash < 0 ? Set.of() : layersOf.getOrDefault(id.substring(0, hash), Set.of()));
        }
        return layers;
    }
}
