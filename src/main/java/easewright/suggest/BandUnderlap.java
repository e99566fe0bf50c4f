package easewright.suggest;

import easewright.geom.Box;
import easewright.geom.Curve;
import easewright.geom.Point;
import easewright.measure.EdgeLength;
import easewright.measure.MateWalk;
import easewright.measure.Measures;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A waistband that is longer than the waist by what an underlap is wide: that much of its seam is sewn to nothing. It is
 * only asked about; at which end it lies, if it is one, the user says.
 *
 * @param mate the seam
 * @param band the seam edge of the band
 * @param mm   by how much the band is longer than the waist takes
 */
public record BandUnderlap(Mate mate, EdgeRef band, double mm) {
    /** The drawn place is found so that the sewn seam fits within this, mm. */
    private static final double FITS = 1e-4;

    private static final int STEPS = 8;

    /** A band is so many times as long as it is wide, at least; a shaped one curves. */
    private static final double NARROW = 3;

    /** Where on the sheet an end of the band lies. */
    public enum End {
        LEFT,
        RIGHT,
        UPPER,
        LOWER
    }

    /** What is longer so at a seam; empty where nothing is, or the band cannot be parted. */
    public static Optional<BandUnderlap> of(Pattern pattern, MateWalk walk) {
        Mate mate = walk.mate();
        boolean first = isBand(pattern, mate.first(), mate.second());
        boolean second = isBand(pattern, mate.second(), mate.first());
        if (first == second || walk.size().isPresent()) {
            return Optional.empty();
        }
        EdgeRef band = (first ? mate.first() : mate.second()).get(0);
        double longer = first ? walk.first() - walk.second() : walk.second() - walk.first();
        double mm = longer + eased(mate, first);
        BandUnderlap found = new BandUnderlap(mate, band, mm);
        boolean like = mm >= Underlap.NARROWEST
                && mm <= Underlap.WIDEST
                && found.mayBeParted(pattern)
                && !found.ends(pattern).isEmpty();
        return like ? Optional.of(found) : Optional.empty();
    }

    /** By how much the waist is meant to be longer than its part of the band; a band is not eased to a waist. */
    private static double eased(Mate mate, boolean bandFirst) {
        return Math.max(0, bandFirst ? -mate.declaredEase() : mate.declaredEase());
    }

    /** One edge, once, of a long narrow piece without a hem, on waists. */
    private static boolean isBand(Pattern pattern, List<EdgeRef> side, List<EdgeRef> other) {
        return side.size() == 1
                && side.get(0).times() == 1
                && pattern.piece(side.get(0).piece())
                        .filter(p -> !p.onFold() && p.edges().stream().noneMatch(e -> e.role() == EdgeRole.HEM))
                        .filter(BandUnderlap::isNarrow)
                        .isPresent()
                && other.stream().allMatch(e -> isWaist(pattern, e));
    }

    private static boolean isNarrow(Piece piece) {
        Box box = piece.outline().box();
        return Math.max(box.width(), box.height()) > NARROW * Math.min(box.width(), box.height());
    }

    private static boolean isWaist(Pattern pattern, EdgeRef ref) {
        boolean hem = pattern.piece(ref.piece())
                .map(p -> p.edges().stream().anyMatch(e -> e.role() == EdgeRole.HEM))
                .orElse(false);
        return hem && pattern.edge(ref).filter(e -> e.role() == EdgeRole.WAIST).isPresent();
    }

    private Piece piece(Pattern pattern) {
        return pattern.piece(band.piece()).orElseThrow();
    }

    private Edge edge(Pattern pattern) {
        return pattern.edge(band).orElseThrow();
    }

    /** An edge that changes are recorded at stays whole; a level along it is measured along what is sewn to the waist. */
    private boolean mayBeParted(Pattern pattern) {
        Piece piece = piece(pattern);
        List<String> starts = List.of(piece.id() + "/" + band.edge(), piece.name() + "/" + band.edge());
        boolean changed = pattern.changes().stream()
                .flatMap(note -> note.settings().values().stream())
                .anyMatch(v -> starts.stream().anyMatch(v::startsWith));
        return !changed && edge(pattern).on(piece.outline()).length() > 4 * Underlap.WIDEST;
    }

    /**
     * Where the ends of the seam at which it may lie are on the sheet, each with whether it is where the seam ends rather
     * than starts.
     *
     * @param pattern in which it was found
     */
    public Map<End, Boolean> ends(Pattern pattern) {
        Point way = edge(pattern).to().minus(edge(pattern).from());
        boolean across = Math.abs(way.x()) >= Math.abs(way.y());
        boolean onward = across ? way.x() > 0 : way.y() > 0;
        Map<End, Boolean> ends = new EnumMap<>(End.class);
        ends.put(across ? End.LEFT : End.UPPER, !onward);
        ends.put(across ? End.RIGHT : End.LOWER, onward);
        ends.values().removeIf(atEnd -> fitted(pattern, atEnd).isEmpty());
        return ends;
    }

    /**
     * With the underlap as an edge of its own, sewn to nothing.
     *
     * @param pattern in which it was found
     * @param atEnd   at the end of the seam, else at its start: one of {@link #ends}
     * @throws IllegalArgumentException if the band cannot be parted there so that the rest fits
     */
    public Pattern parted(Pattern pattern, boolean atEnd) {
        Piece parted = fitted(pattern, atEnd)
                .orElseThrow(() -> new IllegalArgumentException("No place parts " + band + " so that its seam fits"));
        boolean first = mate.first().contains(band);
        double ease = eased(mate, first) * (first ? -1 : 1);
        Mate fitted = new Mate(mate.name(), mate.first(), mate.second(), ease == 0 ? 0 : ease);
        return pattern.withPiece(parted)
                .withMates(pattern.mates().stream()
                        .map(m -> m.equals(mate) ? fitted : m)
                        .toList());
    }

    /** The band parted so that the rest fits; empty where no such place is found, as on a rounded end. */
    private Optional<Piece> fitted(Pattern pattern, boolean atEnd) {
        double wanted = sewn(piece(pattern), band.edge()) - mm;
        double drawn = mm;
        Piece parted = parted(pattern, drawn, atEnd);
        for (int i = 0; i < STEPS; i++) {
            double more = sewn(parted, band.edge()) - wanted;
            if (Math.abs(more) <= FITS) {
                return Optional.of(parted);
            }
            drawn += more;
            parted = parted(pattern, drawn, atEnd);
        }
        return Optional.empty();
    }

    private Piece parted(Pattern pattern, double drawn, boolean atEnd) {
        Piece piece = piece(pattern);
        Edge edge = edge(pattern);
        Curve line = edge.on(piece.outline());
        Point at = line.pointAtLength(atEnd ? line.length() - drawn : drawn);
        Point from = atEnd ? at : edge.from();
        Point to = atEnd ? edge.to() : at;
        Edge underlap = new Edge(name(piece), EdgeRole.OPENING, from, to, edge.isProtected(), edge.allowance());
        Edge rest = atEnd ? edge.withEnds(edge.from(), at) : edge.withEnds(at, edge.to());
        List<Edge> edges = new ArrayList<>(piece.edges());
        int place = edges.indexOf(edge);
        edges.set(place, rest);
        edges.add(atEnd ? place + 1 : place, underlap);
        return piece.withEdges(edges);
    }

    private static String name(Piece piece) {
        String name = "underlap";
        for (int i = 2; piece.edge(name).isPresent(); i++) {
            name = "underlap " + i;
        }
        return name;
    }

    private static double sewn(Piece piece, String edge) {
        return Measures.of(piece, List.of()).edge(edge).map(EdgeLength::mm).orElse(0.0);
    }
}
