package easewright.suggest;

import easewright.geom.Point;
import easewright.measure.Measures;
import easewright.measure.StitchOutline;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Counts how much of the truth suggestions found, and how much they found that is not true. */
final class HitRates {
    /** Places nearer than this are the same, mm. */
    private static final double SAME = 3;

    /** Hits, misses and false finds of one kind. */
    static final class Tally {
        int hits;
        int misses;
        int wrong;

        void count(boolean hit) {
            if (hit) {
                hits++;
            } else {
                misses++;
            }
        }

        double rate() {
            return hits + misses == 0 ? 1 : (double) hits / (hits + misses);
        }

        @Override
        public String toString() {
            return hits + "/" + (hits + misses) + (wrong > 0 ? " (" + wrong + " wrong)" : "");
        }
    }

    private final Map<String, Tally> tallies = new TreeMap<>();
    private final StringBuilder missed = new StringBuilder();

    Tally of(String kind) {
        return tallies.computeIfAbsent(kind, k -> new Tally());
    }

    String missed() {
        return missed.toString();
    }

    @Override
    public String toString() {
        return tallies.toString();
    }

    private void count(String kind, boolean hit, String what) {
        of(kind).count(hit);
        if (!hit) {
            missed.append(kind).append(": ").append(what).append('\n');
        }
    }

    private void wrong(String kind, String what) {
        of(kind).wrong++;
        missed.append(kind).append(" wrong: ").append(what).append('\n');
    }

    void compare(String sheet, Pattern truth, Pattern found) {
        Map<String, String> edges = new HashMap<>();
        Set<String> used = new HashSet<>();
        for (Piece piece : truth.pieces()) {
            Optional<Piece> twin = found.pieces().stream()
                    .min(Comparator.comparingDouble(p -> p.outline()
                            .box()
                            .centre()
                            .distance(piece.outline().box().centre())));
            String at = sheet + "/" + piece.name();
            boolean there = twin.isPresent()
                    && twin.get()
                                    .outline()
                                    .box()
                                    .centre()
                                    .distance(piece.outline().box().centre())
                            < 60;
            count("piece", there, at);
            if (there) {
                used.add(twin.get().id());
                piece(at, piece, twin.get(), truth, found, edges);
            }
        }
        found.pieces().stream()
                .filter(p -> !used.contains(p.id()))
                .forEach(p -> wrong("piece", sheet + "/" + p.name()));
        mates(sheet, truth, found, edges);
    }

    private void piece(String at, Piece piece, Piece twin, Pattern truth, Pattern found, Map<String, String> edges) {
        StitchOutline a = StitchOutline.of(piece);
        StitchOutline b = StitchOutline.of(twin);
        boolean sewn = Math.abs(a.outline().length() / b.outline().length() - 1) < 0.01
                && a.outline().box().centre().distance(b.outline().box().centre()) < 2.5;
        count("stitching line", sewn, at);
        count("name", piece.name().equals(twin.name()), at + " is called " + twin.name());
        String cut = at + " is cut " + twin.times() + (twin.onFold() ? " on the fold" : "");
        count("cut", piece.times() == twin.times() && piece.onFold() == twin.onFold(), cut);
        // Whether on the fold or as a pair: it goes round as often as it should.
        count("goes round", shapes(piece) == shapes(twin), cut);
        boolean grain = twin.grain().isPresent() && Turns.between(piece.grainDirection(), twin.grainDirection()) < 0.5;
        count("grain", grain, at);
        Set<String> known = new HashSet<>();
        for (Edge edge : piece.edges()) {
            Optional<Edge> same = twin.edges().stream()
                    .filter(e -> !known.contains(e.name()))
                    .filter(e -> same(a, edge, b, e))
                    .findFirst();
            count("edge ends", same.isPresent(), at + "/" + edge.name());
            if (same.isPresent()) {
                known.add(same.get().name());
                edges.put(
                        piece.id() + "/" + edge.name(),
                        twin.id() + "/" + same.get().name());
                count(
                        "edge role",
                        same.get().role() == edge.role(),
                        at + "/" + edge.name() + " is " + same.get().role());
                count(
                        "edge name",
                        same.get().name().equals(edge.name()),
                        at + "/" + edge.name() + " is called " + same.get().name());
            }
        }
        twin.edges().stream()
                .filter(e -> !known.contains(e.name()))
                .forEach(e -> wrong("edge ends", at + "/" + e.name()));
        darts(at, piece, twin);
        notches(at, a, b);
        levels(at, piece, twin, truth, found);
    }

    private static int shapes(Piece piece) {
        return piece.times() * (piece.onFold() ? 2 : 1);
    }

    private static boolean same(StitchOutline a, Edge one, StitchOutline b, Edge two) {
        Point from = a.point(one.from());
        Point to = a.point(one.to());
        Point otherFrom = b.point(two.from());
        Point otherTo = b.point(two.to());
        boolean ends = from.distance(otherFrom) < SAME && to.distance(otherTo) < SAME
                || from.distance(otherTo) < SAME && to.distance(otherFrom) < SAME;
        double length = sewn(a.piece(), one);
        return ends && Math.abs(length - sewn(b.piece(), two)) < 0.02 * length + SAME;
    }

    private static double sewn(Piece piece, Edge edge) {
        return Measures.of(piece, List.of()).edge(edge.name()).orElseThrow().mm();
    }

    private void darts(String at, Piece piece, Piece twin) {
        Set<Dart> known = new HashSet<>();
        for (Dart dart : piece.darts()) {
            Optional<Dart> same = twin.darts().stream()
                    .filter(d -> d.point().distance(dart.point()) < SAME)
                    .filter(d -> Math.abs(d.intake() - dart.intake()) < SAME)
                    .findFirst();
            count("dart", same.isPresent(), at + "/" + dart.name());
            same.ifPresent(known::add);
        }
        twin.darts().stream().filter(d -> !known.contains(d)).forEach(d -> wrong("dart", at + "/" + d));
    }

    private void notches(String at, StitchOutline a, StitchOutline b) {
        Set<Notch> known = new HashSet<>();
        for (Notch notch : a.piece().notches()) {
            Optional<Notch> same = b.piece().notches().stream()
                    .filter(n -> !known.contains(n))
                    .filter(n -> b.point(n.at()).distance(a.point(notch.at())) < SAME)
                    .findFirst();
            count("notch", same.isPresent(), at + "/" + notch.name());
            same.ifPresent(known::add);
        }
        b.piece().notches().stream().filter(n -> !known.contains(n)).forEach(n -> wrong("notch", at + "/" + n));
    }

    private void levels(String at, Piece piece, Piece twin, Pattern truth, Pattern found) {
        for (LevelMark mark : piece.levels()) {
            if (mark.counts()) {
                Level level = truth.level(mark.level()).orElseThrow();
                double meant = Measures.width(piece, level).orElseThrow().net();
                Optional<Double> width = found.level(mark.level())
                        .flatMap(l -> Measures.width(twin, l))
                        .map(w -> w.net());
                boolean hit = width.isPresent() && Math.abs(width.get() - meant) < 1;
                count("level", hit, at + "/" + mark.level() + " " + meant + " " + width);
            }
        }
        twin.levels().stream()
                .filter(m -> m.counts() && piece.level(m.level()).isEmpty())
                .forEach(m -> wrong("level", at + "/" + m.level()));
    }

    private void mates(String sheet, Pattern truth, Pattern found, Map<String, String> edges) {
        Set<Mate> known = new HashSet<>();
        for (Mate mate : truth.mates()) {
            Set<String> wanted = new HashSet<>();
            refs(mate).forEach(e -> wanted.add(edges.getOrDefault(id(truth, e), "?")));
            Optional<Mate> same = found.mates().stream()
                    .filter(m -> new HashSet<>(refs(m).map(e -> id(found, e)).toList()).equals(wanted))
                    .findFirst();
            count("mate", same.isPresent(), sheet + "/" + mate.name());
            same.ifPresent(m -> {
                known.add(m);
                Set<String> first = new HashSet<>();
                mate.first().forEach(e -> first.add(edges.getOrDefault(id(truth, e), "?")));
                boolean turned = !first.contains(id(found, m.first().get(0)));
                double ease = turned ? -m.declaredEase() : m.declaredEase();
                count(
                        "mate ease",
                        Math.abs(ease - mate.declaredEase()) < 2.6,
                        sheet + "/" + mate.name() + " " + ease + " for " + mate.declaredEase());
            });
        }
        found.mates().stream().filter(m -> !known.contains(m)).forEach(m -> wrong("mate", sheet + "/" + m));
    }

    private static Stream<EdgeRef> refs(Mate mate) {
        return Stream.of(mate.first(), mate.second()).flatMap(List::stream);
    }

    private static String id(Pattern pattern, EdgeRef ref) {
        return pattern.piece(ref.piece()).orElseThrow().id() + "/" + ref.edge();
    }
}
