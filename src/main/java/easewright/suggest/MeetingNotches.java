package easewright.suggest;

import easewright.geom.Curve;
import easewright.pattern.Edge;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Notches that meet when two edges are laid together, from one end or from the other. */
final class MeetingNotches {
    /** Notches that lie this near to each other then are meant to meet, mm. */
    private static final double MEET = 4;

    private static final double ON_EDGE = 1;

    private final Pattern pattern;
    private final Mate mate;

    MeetingNotches(Pattern pattern, Mate mate) {
        this.pattern = pattern;
        this.mate = mate;
    }

    private record At(Notch notch, double fromStart, double fromEnd) {}

    /** New names by present names, for single edges on two pieces. */
    Map<String, String> names() {
        Map<String, String> names = new HashMap<>();
        if (mate.first().size() != 1 || mate.second().size() != 1) {
            return names;
        }
        List<At> first = along(mate.first().get(0).piece(), mate.first().get(0).edge());
        List<At> second =
                along(mate.second().get(0).piece(), mate.second().get(0).edge());
        if (first.isEmpty() || first.size() != second.size()) {
            return names;
        }
        for (boolean turned : new boolean[] {true, false}) {
            Map<String, String> met = met(first, second, turned);
            if (met.size() == 2 * first.size()) {
                return met;
            }
        }
        return names;
    }

    private Map<String, String> met(List<At> first, List<At> second, boolean turned) {
        Map<String, String> met = new HashMap<>();
        for (At one : first) {
            for (At two : second) {
                double there = turned ? two.fromEnd() : two.fromStart();
                if (Math.abs(one.fromStart() - there) <= MEET
                        && !met.containsKey(two.notch().name())) {
                    String name = first.size() == 1 ? mate.name() : mate.name() + " " + (met.size() / 2 + 1);
                    met.put(one.notch().name(), name);
                    met.put(two.notch().name(), name);
                    break;
                }
            }
        }
        return met;
    }

    private List<At> along(String pieceId, String edgeName) {
        List<At> found = new ArrayList<>();
        Optional<Piece> piece = pattern.piece(pieceId);
        Optional<Edge> edge = piece.flatMap(p -> p.edge(edgeName));
        if (edge.isEmpty()) {
            return found;
        }
        Curve run = edge.get().on(piece.get().outline());
        double length = run.length();
        for (Notch notch : piece.get().notches()) {
            var nearest = run.nearest(notch.at());
            if (nearest.distance() <= ON_EDGE) {
                double along = 0;
                for (int i = 0; i < nearest.place().segment(); i++) {
                    along += run.segments().get(i).length();
                }
                along += run.segments()
                        .get(nearest.place().segment())
                        .lengthTo(nearest.place().t());
                found.add(new At(notch, along, length - along));
            }
        }
        return found;
    }
}
