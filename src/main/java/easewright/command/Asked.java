package easewright.command;

import easewright.alter.Share;
import easewright.alter.Taper;
import easewright.geom.Point;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One change as it was asked for, in words: from the options of {@code change} or from one entry of a list of changes.
 *
 * @param by     amount by which the finished girth at the level changes
 * @param edges  {@code piece/edge} or {@code piece/edge=share}; empty: every seam that crosses the level
 * @param method seam or centre
 * @param taper  straight or smooth
 * @param carry  carried parallel down to the hem
 * @param oneSide only one side of the garment
 * @param keep   where the change must have died away: names of notches, levels or edges, or places written
 *               {@code piece/notch}, {@code piece/edge/start} or {@code piece/edge/end}
 * @param accept whether protected edges may move
 */
record Asked(
        String level,
        String by,
        List<String> edges,
        String method,
        String taper,
        boolean carry,
        boolean oneSide,
        List<String> keep,
        boolean accept) {
    Asked {
        edges = List.copyOf(edges);
        keep = List.copyOf(keep);
    }

    /** The level by the pattern's own name, whatever the capitals. */
    Level level(Pattern pattern) throws Trouble {
        Optional<Level> found = pattern.levels().stream()
                .filter(l -> l.name().equalsIgnoreCase(level.strip()))
                .findFirst();
        if (found.isPresent()) {
            return found.get();
        }
        List<String> known = pattern.levels().stream().map(Level::name).toList();
        throw known.isEmpty()
                ? new Trouble("no-level-marked", Map.of("level", level))
                : new Trouble("level-not-known", Map.of("level", level, "known", known));
    }

    double amount(LengthUnit unit) throws Trouble {
        try {
            return Lengths.parse(by, unit);
        } catch (Unreadable e) {
            throw Said.of(e);
        }
    }

    Taper taperKind() throws Trouble {
        return switch (taper.strip().toLowerCase(Locale.ROOT)) {
            case "straight" -> Taper.STRAIGHT;
            case "smooth" -> Taper.SMOOTH;
            default -> throw new Trouble("taper-not-known", Map.of("text", taper));
        };
    }

    List<Share> shares(Pattern pattern) throws Trouble {
        List<Share> shares = new ArrayList<>();
        for (String text : edges) {
            int equals = text.lastIndexOf('=');
            String edge = equals < 0 ? text : text.substring(0, equals);
            shares.add(new Share(ref(pattern, edge), equals < 0 ? 1 : weight(text, text.substring(equals + 1))));
        }
        return shares;
    }

    /** A share as a number, a percentage or a fraction; only its proportion to the others counts. */
    private static double weight(String whole, String text) throws Trouble {
        String number = text.strip().replace("%", "").replace(',', '.');
        int slash = number.indexOf('/');
        try {
            double weight = slash < 0
                    ? Double.parseDouble(number)
                    : Double.parseDouble(number.substring(0, slash)) / Double.parseDouble(number.substring(slash + 1));
            if (weight > 0 && weight < 1e6) {
                return weight;
            }
        } catch (NumberFormatException e) {
            // Falls through: said below, as for a number out of range.
        }
        throw new Trouble("share-not-a-number", Map.of("text", whole));
    }

    /** The edge meant by {@code piece/edge}, checked against the pattern. */
    static EdgeRef ref(Pattern pattern, String text) throws Trouble {
        int slash = text.lastIndexOf('/');
        if (slash <= 0) {
            throw new Trouble("edge-form", Map.of("text", text));
        }
        Piece piece = piece(pattern, text.substring(0, slash).strip());
        String name = text.substring(slash + 1).strip();
        Optional<Edge> edge = piece.edges().stream()
                .filter(e -> e.name().equalsIgnoreCase(name))
                .findFirst();
        if (edge.isEmpty()) {
            List<String> known = piece.edges().stream().map(Edge::name).toList();
            throw new Trouble("edge-not-known", Map.of("edge", name, "piece", piece.name(), "known", known));
        }
        return EdgeRef.of(piece.id(), edge.get().name());
    }

    private static Piece piece(Pattern pattern, String name) throws Trouble {
        Optional<Piece> exact = pattern.piece(name);
        if (exact.isPresent()) {
            return exact.get();
        }
        List<Piece> alike = pattern.pieces().stream()
                .filter(p -> p.id().equalsIgnoreCase(name) || p.name().equalsIgnoreCase(name))
                .toList();
        if (alike.size() == 1) {
            return alike.get(0);
        }
        List<String> known = pattern.pieces().stream().map(Piece::name).toList();
        throw new Trouble("piece-not-known", Map.of("piece", name, "known", known));
    }

    /** The place meant by {@code piece/notch}, {@code piece/edge/start} or {@code piece/edge/end}. */
    static Point place(Pattern pattern, String text) throws Trouble {
        String lower = text.toLowerCase(Locale.ROOT);
        for (String end : List.of("/start", "/end")) {
            if (lower.endsWith(end)) {
                Edge edge = pattern.edge(ref(pattern, text.substring(0, text.length() - end.length())))
                        .orElseThrow();
                return end.equals("/start") ? edge.from() : edge.to();
            }
        }
        int slash = text.lastIndexOf('/');
        if (slash <= 0) {
            throw new Trouble("place-form", Map.of("text", text));
        }
        Piece piece = piece(pattern, text.substring(0, slash).strip());
        String name = text.substring(slash + 1).strip();
        Optional<Notch> notch = piece.notches().stream()
                .filter(n -> n.name().equalsIgnoreCase(name))
                .findFirst();
        if (notch.isEmpty()) {
            List<String> known = piece.notches().stream().map(Notch::name).toList();
            throw new Trouble("notch-not-known", Map.of("notch", name, "piece", piece.name(), "known", known));
        }
        return notch.get().at();
    }
}
