package easewright.measure;

import easewright.geom.Place;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Mate;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Walks mated seams. Comparing the lengths of both stitching lines is an accepted equal of walking them
 * (fashion-incubator.com, "How to walk a pattern"); dart mouths are folded out first (thedailysew.com, "How to true a
 * pattern").
 */
final class MateTape {
    /** How near the drawn or the stitching line a notch must lie to belong to an edge, mm. */
    private static final double NOTCH_ON_LINE = 1;

    private final Pattern pattern;
    private final Optional<String> size;
    private final Map<String, PieceMeasures> measured;
    private final List<Finding> findings = new ArrayList<>();

    /**
     * @param size of the garment, where the pattern is one of several sizes
     */
    MateTape(Pattern pattern, Optional<String> size, Map<String, PieceMeasures> measured) {
        this.pattern = pattern;
        this.size = size;
        this.measured = measured;
    }

    List<Finding> findings() {
        return findings;
    }

    Optional<MateWalk> walk(Mate mate) {
        Optional<Side> first = side(mate, mate.first());
        Optional<Side> second = side(mate, mate.second());
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        double one = first.get().length();
        double two = second.get().length();
        return Optional.of(new MateWalk(
                mate,
                size,
                one,
                two,
                one - two - mate.declaredEase(),
                meetings(first.get().notches(), second.get().notches(), two)));
    }

    /** One seam line: its sewn length and its notches by distance from its start. */
    private record Side(double length, Map<String, Double> notches) {}

    private Optional<Side> side(Mate mate, List<EdgeRef> refs) {
        double length = 0;
        Map<String, Double> notches = new LinkedHashMap<>();
        for (EdgeRef ref : refs) {
            Optional<Piece> piece = pattern.piece(ref.piece());
            Optional<Edge> edge = pattern.edge(ref);
            PieceMeasures measures =
                    piece.isEmpty() ? null : measured.get(piece.get().id());
            Optional<EdgeLength> sewn = measures == null ? Optional.empty() : measures.edge(ref.edge());
            if (edge.isEmpty() || sewn.isEmpty()) {
                findings.add(Finding.of("mate-edge-missing", Severity.FAULT, ref.piece())
                        .with("mate", mate.name())
                        .with("edge", ref.edge()));
                return Optional.empty();
            }
            for (Notch notch : piece.get().notches()) {
                OptionalDouble along = alongEdge(measures.stitch(), edge.get(), notch);
                if (along.isPresent()) {
                    notches.putIfAbsent(notch.name(), length + along.getAsDouble());
                }
            }
            length += ref.times() * sewn.get().mm();
        }
        return Optional.of(new Side(length, notches));
    }

    /** Sewn distance of a notch from the start of the edge, if it lies on the edge. */
    private static OptionalDouble alongEdge(StitchOutline stitch, Edge edge, Notch notch) {
        Place from = stitch.place(edge.from());
        Place at = stitch.place(notch.at());
        if (!Places.between(from, at, stitch.place(edge.to()))) {
            return OptionalDouble.empty();
        }
        double offDrawn = stitch.piece().outline().nearest(notch.at()).distance();
        if (offDrawn > NOTCH_ON_LINE && stitch.point(notch.at()).distance(notch.at()) > NOTCH_ON_LINE) {
            return OptionalDouble.empty();
        }
        double mm = from.equals(at) ? 0 : stitch.outline().length(from, at);
        for (ClosedDart dart : stitch.dartsOn(edge)) {
            ClosedDart.Mouth mouth = dart.mouth().orElseThrow();
            if (Places.between(from, mouth.to(), at)) {
                mm -= mouth.length();
            }
        }
        return OptionalDouble.of(mm);
    }

    /** Pairs the notches; the second seam is walked from the end that makes them meet best. */
    private static List<NotchMeeting> meetings(
            Map<String, Double> first, Map<String, Double> second, double secondLength) {
        List<NotchMeeting> forth = new ArrayList<>();
        List<NotchMeeting> back = new ArrayList<>();
        double missForth = 0;
        double missBack = 0;
        for (Map.Entry<String, Double> notch : first.entrySet()) {
            Double other = second.get(notch.getKey());
            if (other != null) {
                forth.add(new NotchMeeting(notch.getKey(), notch.getValue(), other));
                back.add(new NotchMeeting(notch.getKey(), notch.getValue(), secondLength - other));
                missForth += Math.abs(notch.getValue() - other);
                missBack += Math.abs(notch.getValue() - (secondLength - other));
            }
        }
        return missForth <= missBack ? forth : back;
    }
}
