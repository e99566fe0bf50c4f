package easewright.suggest;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Notch;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The notches of a piece.
 *
 * @param lines the drawn ticks, which are to go with the outline from now on
 */
public record PieceNotches(String piece, List<Notch> notches, List<Rider> lines) implements Suggestion.OnPiece {
    public PieceNotches {
        notches = List.copyOf(notches);
        lines = List.copyOf(lines);
    }

    static List<Suggestion> find(Sheet sheet) {
        List<Suggestion> found = new ArrayList<>();
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.notches().isEmpty()) {
                of(piece, sheet, found);
            }
        }
        return found;
    }

    private static void of(Piece piece, Sheet sheet, List<Suggestion> found) {
        List<Ticks.Tick> ticks = Ticks.on(piece, sheet);
        List<Point> places = new ArrayList<>();
        ticks.forEach(t -> places.add(t.at()));
        places.addAll(Corners.of(piece.outline(), piece.darts()).nicks());
        if (places.isEmpty()) {
            return;
        }
        List<Notch> notches = new ArrayList<>();
        for (Point place : places) {
            // Named after the piece, so that only notches that are known to meet share a name.
            notches.add(new Notch(piece.name() + " " + (notches.size() + 1), place));
        }
        List<Rider> lines = ticks.stream().map(Ticks.Tick::line).distinct().toList();
        found.add(new PieceNotches(piece.id(), notches, lines));
    }

    @Override
    public Kind kind() {
        return Kind.NOTCHES;
    }

    @Override
    public String key() {
        return "notches " + piece;
    }

    @Override
    public Reason reason() {
        return lines.isEmpty() ? Reason.of("nicks", 0.8) : Reason.of("ticks", 0.85);
    }

    @Override
    public Map<String, Object> values() {
        return Map.of("count", notches.size());
    }

    @Override
    public List<Segment> shown() {
        return lines.stream().flatMap(r -> r.segments().stream()).toList();
    }

    @Override
    public Piece marked(Piece old) {
        return old.toBuilder().notches(notches).riders(attached(old, lines)).build();
    }

    /** The riders of a piece with those lines attached to the outline, taken in where they belonged to no piece. */
    static List<Rider> attached(Piece piece, List<Rider> lines) {
        Set<String> ids = lines.stream().map(Rider::id).collect(Collectors.toSet());
        List<Rider> riders = new ArrayList<>();
        for (Rider rider : piece.riders()) {
            boolean attach = ids.remove(rider.id());
            riders.add(attach ? new Rider(rider.id(), Rider.Kind.ATTACHED, rider.segments()) : rider);
        }
        lines.stream()
                .filter(line -> ids.contains(line.id()))
                .forEach(line -> riders.add(new Rider(line.id(), Rider.Kind.ATTACHED, line.segments())));
        return riders;
    }
}
