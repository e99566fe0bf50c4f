package easewright.suggest;

import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Rider;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        // With those that were found already, so that numbers go on from piece to piece.
        Pattern pattern = sheet.pattern();
        for (Piece piece : sheet.pattern().pieces()) {
            if (piece.notches().isEmpty()) {
                Optional<PieceNotches> own = of(piece, sheet, new HashSet<>(pattern.notchNames(piece.size())));
                if (own.isPresent()) {
                    found.add(own.get());
                    pattern = pattern.withPiece(
                            piece.toBuilder().notches(own.get().notches()).build());
                }
            }
        }
        return found;
    }

    private static Optional<PieceNotches> of(Piece piece, Sheet sheet, Set<String> taken) {
        List<Ticks.Tick> ticks = Ticks.on(piece, sheet);
        List<Point> places = new ArrayList<>();
        ticks.forEach(t -> places.add(t.at()));
        places.addAll(Corners.of(piece.outline(), piece.darts()).nicks());
        if (places.isEmpty()) {
            return Optional.empty();
        }
        List<Notch> notches = new ArrayList<>();
        for (Point place : places) {
            // Counted through the whole pattern, so that only notches that are known to meet share a name.
            String name = Notch.unused(taken);
            taken.add(name);
            notches.add(new Notch(name, place));
        }
        List<Rider> lines = ticks.stream().map(Ticks.Tick::line).distinct().toList();
        return Optional.of(new PieceNotches(piece.id(), notches, lines));
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
            riders.add(attach ? rider.as(Rider.Kind.ATTACHED) : rider);
        }
        lines.stream()
                .filter(line -> ids.contains(line.id()))
                .forEach(line -> riders.add(new Rider(line.id(), Rider.Kind.ATTACHED, line.segments())));
        return riders;
    }
}
