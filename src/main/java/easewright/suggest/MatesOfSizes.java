package easewright.suggest;

import easewright.geom.Segment;
import easewright.pattern.EdgeRef;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pieces of different sizes are never sewn together. A seam that every size has is one for all of them: it calls its
 * pieces as they are called without their size.
 */
final class MatesOfSizes {
    private record Found(MateSuggestion suggestion, String size) {}

    private MatesOfSizes() {}

    static List<Suggestion> find(Sheet sheet) {
        List<Pattern> garments = PatternPart.garments(sheet.pattern());
        if (garments.size() == 1) {
            return Mates.find(sheet.with(garments.get(0)));
        }
        Map<List<Object>, List<Found>> seams = new LinkedHashMap<>();
        for (Pattern garment : garments) {
            for (Suggestion each : Mates.find(sheet.with(garment))) {
                MateSuggestion found = (MateSuggestion) each;
                seams.computeIfAbsent(
                                List.of(
                                        plain(found.mate().first(), garment),
                                        plain(found.mate().second(), garment)),
                                key -> new ArrayList<>())
                        .add(new Found(found, size(found.mate(), garment)));
            }
        }
        List<Suggestion> mates = new ArrayList<>();
        seams.forEach((plain, found) -> {
            if (found.size() == garments.size()) {
                mates.add(forAll(found, garments.get(0)));
            } else {
                found.forEach(one -> mates.add(named(one)));
            }
        });
        return mates;
    }

    private static List<EdgeRef> plain(List<EdgeRef> edges, Pattern garment) {
        return edges.stream()
                .map(e -> new EdgeRef(
                        garment.piece(e.piece()).map(Piece::plainName).orElse(e.piece()), e.edge(), e.times()))
                .toList();
    }

    private static String size(Mate mate, Pattern garment) {
        return mate.first().stream()
                .flatMap(e -> garment.piece(e.piece()).flatMap(Piece::size).stream())
                .findFirst()
                .orElse("");
    }

    /** Lengths and ease are those of the first size. */
    private static MateSuggestion forAll(List<Found> found, Pattern garment) {
        MateSuggestion first = found.get(0).suggestion();
        Mate mate = first.mate();
        List<Segment> shown = new ArrayList<>();
        Map<String, String> meeting = new HashMap<>();
        found.forEach(one -> {
            shown.addAll(one.suggestion().shown());
            meeting.putAll(one.suggestion().meeting());
        });
        return new MateSuggestion(
                new Mate(mate.name(), plain(mate.first(), garment), plain(mate.second(), garment), mate.declaredEase()),
                shown,
                meeting,
                first.first(),
                first.second(),
                first.reason());
    }

    /** A seam that only some sizes have, or have otherwise. */
    private static MateSuggestion named(Found found) {
        MateSuggestion one = found.suggestion();
        Mate mate = one.mate();
        String name = found.size().isEmpty() ? mate.name() : mate.name() + " " + found.size();
        return new MateSuggestion(
                new Mate(name, mate.first(), mate.second(), mate.declaredEase()),
                one.shown(),
                one.meeting(),
                one.first(),
                one.second(),
                one.reason());
    }
}
