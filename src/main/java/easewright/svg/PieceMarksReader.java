package easewright.svg;

import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Nearest;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Grain;
import easewright.pattern.LevelMark;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import easewright.pattern.Severity;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads the marks of one piece and finds their places on its outline. */
final class PieceMarksReader implements MarksNotes.Reading {
    /** Two boxes this much alike in width and height are of the same shape, mm. */
    private static final double SAME_SIZE = 0.05;

    private final MarkNode node;
    private final MarksNotes notes;
    private final MarksReader.Geometry drawn;
    private final Outline outline;
    private final String id;
    private final String name;
    private final Set<String> seen = new HashSet<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<LevelMark> levels = new ArrayList<>();
    private final List<Dart> darts = new ArrayList<>();
    private final List<Notch> notches = new ArrayList<>();
    private final List<Rider> riders = new ArrayList<>();
    private Optional<Grain> grain = Optional.empty();
    private Optional<Outline> original = Optional.empty();
    private MarkPlaces places;
    private Affine moved;

    private PieceMarksReader(
            MarkNode node, String id, String name, Outline outline, MarksReader.Geometry drawn, MarksNotes notes) {
        this.node = node;
        this.id = id;
        this.name = name;
        this.outline = outline;
        this.drawn = drawn;
        this.moved = drawn.rescaled();
        this.notes = notes;
    }

    /**
     * @param outline the piece's outline as drawn now
     */
    static Piece read(
            MarkNode node, MarkValues values, String id, Outline outline, MarksReader.Geometry drawn, MarksNotes notes)
            throws MarkValues.Damage {
        String name = values.text("name").orElse(id);
        return new PieceMarksReader(node, id, name, outline, drawn, notes).piece(values);
    }

    private Piece piece(MarkValues values) throws MarkValues.Damage {
        LineKind line = values.word("line", LineKind.class, LineKind.STITCHING);
        double allowance = values.length("allowance").orElse(0.0);
        int times = values.count("cut", 1);
        int layers = values.count("layers", 1);
        boolean onFold = values.yesNo("fold", false);
        Optional<String> box = values.text("box");
        // Made once without its marks, so that a piece that cannot be is refused before its marks are looked at.
        Piece bare = Piece.bare(id, outline).toBuilder()
                .name(name)
                .drawn(line, allowance)
                .cut(times, onFold)
                .layers(layers)
                .size(values.text("size"))
                .side(values.word("side", Side.class, Side.BOTH))
                .build();
        if (box.isPresent()) {
            follow(box.get());
        }
        places = new MarkPlaces(outline, moved);
        for (MarkNode child : node.children()) {
            if (!child.namespace().equals(MarkNode.NAMESPACE)) {
                notes.unknown(child, Optional.of(id), name);
                continue;
            }
            mark(child);
        }
        return bare.toBuilder()
                .edges(edges)
                .levels(levels)
                .darts(darts)
                .notches(notches)
                .grain(grain)
                .riders(riders)
                .original(original)
                .build();
    }

    /** Sees whether the piece lies elsewhere than when the marks were written. */
    private void follow(String text) throws MarkValues.Damage {
        double[] sides = MarkWords.sides(text)
                .orElseThrow(() -> new MarkValues.Damage("mark-value-bad", Map.of("attribute", "box", "text", text)));
        Box now = outline.box();
        Point least = moved.apply(new Point(sides[0], sides[1]));
        Point most = moved.apply(new Point(sides[2], sides[3]));
        Point shift = new Point(now.minX(), now.minY()).minus(least);
        boolean sameSize = Math.abs(now.width() - (most.x() - least.x())) <= SAME_SIZE
                && Math.abs(now.height() - (most.y() - least.y())) <= SAME_SIZE;
        if (sameSize && shift.norm() <= MarkPlaces.TOLERANCE) {
            return;
        }
        if (sameSize) {
            moved = Affine.translation(shift).after(moved);
            notes.add(Finding.of("marks-moved-along", Severity.NOTE, name).with("distance", shift.norm()));
        } else {
            notes.add(Finding.of("piece-shape-differs", Severity.CAUTION, name));
        }
    }

    private void mark(MarkNode child) {
        String nameKey = switch (child.name()) {
            case "edge", "dart", "notch", "grain", "original" -> "name";
            case "at" -> "level";
            case "rider" -> "ref";
            default -> "";
        };
        if (nameKey.isEmpty()) {
            notes.unknown(child, Optional.of(id), name);
        } else {
            notes.attempt(child, Optional.of(id), name, nameKey, this);
        }
    }

    @Override
    public void read(MarkNode child, MarkValues v) throws MarkValues.Damage {
        // Notches of one name may be several: a pair of them marks the back.
        if (!child.name().equals("notch") && !seen.add(child.name() + " " + v.called())) {
            throw new MarkValues.Damage("mark-twice", Map.of());
        }
        v.requireEmpty();
        switch (child.name()) {
            case "edge" -> edge(v);
            case "at" -> level(v);
            case "dart" -> dart(v);
            case "notch" ->
                notches.add(new Notch(
                        v.needed("name"), onOutline("at", v.neededPlace("at")).point()));
            case "grain" ->
                grain = Optional.of(new Grain(places.free(v.neededPlace("from")), places.free(v.neededPlace("to"))));
            case "rider" -> rider(v);
            default -> original(v);
        }
    }

    private MarkPlaces.Landed onOutline(String attribute, Point written) throws MarkValues.Damage {
        try {
            return places.onOutline(written);
        } catch (MarkPlaces.Off off) {
            throw new MarkValues.Damage("mark-off-outline", Map.of("place", attribute, "distance", off.distance()));
        }
    }

    private void edge(MarkValues v) throws MarkValues.Damage {
        String edge = v.needed("name");
        EdgeRole role = v.neededWord("role", EdgeRole.class);
        MarkPlaces.Landed landedFrom = onOutline("from", v.neededPlace("from"));
        MarkPlaces.Landed landedTo = onOutline("to", v.neededPlace("to"));
        Point from = landedFrom.point();
        Point to = landedTo.point();
        Optional<Point> via = v.place("via");
        boolean keep = v.yesNo("protected", role.protectedByDefault());
        Optional<Double> own = v.length("allowance");
        OptionalDouble allowance = own.isPresent() ? OptionalDouble.of(own.get()) : OptionalDouble.empty();
        Optional<Nearest> passed = via.isPresent() ? Optional.of(places.nearest(via.get())) : Optional.empty();
        boolean backwards = passed.isPresent()
                && !from.equals(to)
                && !MarkPlaces.passes(
                        landedFrom.place(), landedTo.place(), passed.get().place());
        edges.add(new Edge(edge, role, backwards ? to : from, backwards ? from : to, keep, allowance));
        if (passed.isPresent() && passed.get().distance() > MarkPlaces.TOLERANCE) {
            notes.add(Finding.of("edge-shape-differs", Severity.CAUTION, name)
                    .with("edge", edge)
                    .with("distance", passed.get().distance()));
        }
    }

    private void level(MarkValues v) throws MarkValues.Damage {
        Optional<String> along = v.text("along");
        Optional<Point> through = free(v.place("through"));
        if (through.isPresent() == along.isPresent()) {
            throw new MarkValues.Damage("mark-level-where", Map.of());
        }
        levels.add(new LevelMark(
                v.needed("level"),
                through,
                along,
                v.number("turn").orElse(0.0),
                v.yesNo("counts", true),
                v.length("overlap").map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                v.word("span", LevelMark.Span.class, LevelMark.Span.NEAREST),
                free(v.place("reference"))));
    }

    private void dart(MarkValues v) throws MarkValues.Damage {
        darts.add(new Dart(
                v.needed("name"),
                mouth(v.neededPlace("mouth")),
                mouth(v.neededPlace("mouth2")),
                places.free(v.neededPlace("point")),
                free(v.place("point2")),
                v.text("edge")));
    }

    private Optional<Point> free(Optional<Point> written) {
        return written.isPresent() ? Optional.of(places.free(written.get())) : written;
    }

    /** A dart's mouth: on the outline if it is very near, else where it is (inside, or on an undrawn line). */
    private Point mouth(Point written) {
        try {
            return places.onOutline(written).point();
        } catch (MarkPlaces.Off inside) {
            return places.free(written);
        }
    }

    private void rider(MarkValues v) throws MarkValues.Damage {
        String ref = v.needed("ref");
        Rider.Kind kind = v.word("kind", Rider.Kind.class, Rider.Kind.INNER);
        Optional<List<Segment>> segments = drawn.segments(ref);
        if (segments.isEmpty()) {
            throw new MarkValues.Damage("mark-not-drawn", Map.of("ref", ref));
        }
        Optional<String> data = v.text("original");
        Optional<List<Segment>> was = data.flatMap(MarkWords::lines);
        if (data.isPresent() && was.isEmpty()) {
            throw new MarkValues.Damage("mark-original-bad", Map.of());
        }
        riders.add(new Rider(
                ref,
                kind,
                segments.get(),
                was.map(lines -> lines.stream()
                        .map(s -> moved.equals(Affine.IDENTITY) ? s : s.transformed(moved))
                        .toList())));
    }

    private void original(MarkValues v) throws MarkValues.Damage {
        String data = v.needed("d");
        Optional<Outline> read = MarkWords.outline(data);
        if (read.isEmpty()) {
            throw new MarkValues.Damage("mark-original-bad", Map.of());
        }
        original = moved.equals(Affine.IDENTITY) ? read : Optional.of(read.get().transformed(moved));
    }
}
