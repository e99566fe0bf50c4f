package easewright.alter;

import easewright.geom.Point;
import easewright.measure.StitchLines;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One seam change being made on one pattern: chooses the edges, gives each its share, solves and proves the result. */
final class SeamWork {
    private final Pattern pattern;
    private final SeamChange change;
    private final Level level;
    private final StitchLines lines;
    private final List<Part> parts;

    /** An edge that takes part. */
    private record Part(Piece piece, Edge edge, double weight, int count) {}

    private final Map<String, SewnPiece> sewn = new HashMap<>();

    private SewnPiece sewn(Piece piece) {
        return sewn.computeIfAbsent(piece.id(), id -> new SewnPiece(lines.of(piece), pattern.levels()));
    }

    SeamWork(Pattern pattern, SeamChange change, StitchLines lines) throws Refusal {
        this.pattern = pattern;
        this.change = change;
        this.lines = lines;
        this.level = Known.level(pattern, change.level());
        this.parts = change.shares().isEmpty() ? allSeams() : named();
        if (change.oneSide()) {
            requireOneSided();
        }
        requireKnownStops();
    }

    /** The edges that take the change, each with its weight. */
    List<Share> shares() {
        return parts.stream()
                .map(p -> new Share(EdgeRef.of(p.piece().id(), p.edge().name()), p.weight()))
                .toList();
    }

    Altered done() throws Refusal {
        try {
            return tried();
        } catch (Refusal why) {
            if (DEPENDS_ON_AMOUNT.contains(why.code())) {
                throw Bisect.largest(why, change.amount(), this::with);
            }
            throw why;
        }
    }

    /** The same for one of many tries: where it is refused, nobody asks how much would work. */
    Altered tried() throws Refusal {
        Altered done = with(change.amount());
        requireWayBack(done);
        return done;
    }

    private static final List<String> DEPENDS_ON_AMOUNT =
            List.of("outline-crosses-itself", "dart-point-left-out", "girth-not-met", "level-lost");

    /**
     * A straight taper that goes on to the hem, on a piece drawn by its cutting line: where a curve is tighter than the
     * allowance, the stitching line of the changed piece can break at another place, and the same change back then
     * begins there. It is too rare to be worth trying on every change (3 of 7,000 random pieces, all of this kind).
     */
    private void requireWayBack(Altered done) throws Refusal {
        boolean rare = change.carryToHem() && change.taper() == Taper.STRAIGHT;
        for (Moved moved : rare ? done.moved() : List.<Moved>of()) {
            Piece was = pattern.piece(moved.pieceId()).orElseThrow();
            if (was.drawn() == LineKind.CUTTING && !comesBack(done, was)) {
                throw Refusal.of("way-back-lost").with("piece", was.name());
            }
        }
    }

    private boolean comesBack(Altered done, Piece was) {
        try {
            SeamChange opposite = change.withAmount(-change.amount());
            Pattern back = new SeamWork(done.pattern(), opposite, lines)
                    .with(opposite.amount())
                    .pattern();
            return Likeness.sameLine(
                    was.outline(), back.piece(was.id()).orElseThrow().outline(), 1e-6);
        } catch (Refusal none) {
            return false;
        }
    }

    private Altered with(double amount) throws Refusal {
        double whole = 0;
        for (Part part : parts) {
            whole += part.weight() * part.count();
        }
        Map<String, Piece> now = new LinkedHashMap<>();
        Map<String, Double> wanted = new LinkedHashMap<>();
        List<Moved> moved = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Part> ordered = new ArrayList<>(parts);
        if (amount < 0) {
            // Last in, first out: along a slanted hem what one seam does hangs on what the other has done.
            Collections.reverse(ordered);
        }
        for (Part part : ordered) {
            Piece piece = now.getOrDefault(part.piece().id(), part.piece());
            double own = amount * part.weight() / whole;
            SewnPiece seen = piece == part.piece() ? sewn(piece) : new SewnPiece(lines.of(piece), pattern.levels());
            double before = wanted.containsKey(piece.id()) ? wanted.get(piece.id()) : Exact.net(seen, level);
            Stops stops = Stops.around(named(seen), level, own);
            EdgeShift work = shift(seen, part.edge().name(), stops);
            Shift shift = seen.stitch().again(part.edge().name(), Shift.class, work.build(), Shift::isAlike);
            Exact.Met met = Exact.width(a -> Carry.along(piece, shift, a), level, before, own, lines);
            Simple.require(shift.base(), lines.of(met.piece()));
            now.put(piece.id(), met.piece());
            wanted.put(piece.id(), before + own);
            moved.addAll(shift.moved(piece.id(), met.piece().outline()));
            findings.addAll(Practice.edge(
                    piece, part.edge(), work.tapersOn(), met.amount(), work.shortestTaper(), change.carryToHem()));
            for (String passed : stops.passed()) {
                findings.add(Practice.passed(piece, part.edge(), passed, own));
            }
        }
        Pattern changed = pattern.withPieces(
                pattern.pieces().stream().map(p -> now.getOrDefault(p.id(), p)).toList());
        return new Altered(changed.withChange(change.note()), moved, findings);
    }

    private EdgeShift shift(SewnPiece seen, String edgeName, Stops stops) throws Refusal {
        Edge edge = seen.piece().edge(edgeName).orElseThrow();
        LevelReach reach = LevelReach.of(seen, edge, level)
                .orElseThrow(() -> Refusal.of("edge-not-at-level")
                        .with("piece", seen.piece().name())
                        .with("edge", edgeName)
                        .with("level", level.name()));
        EdgeShift work = new EdgeShift(seen, edge, reach.outward(), stops, change.acceptProtected());
        return change.carryToHem() ? work.carried(reach, change.taper()) : work.most(reach, change.taper());
    }

    /** Every seam edge at the level; where two meet there at a corner, the first stands for both. */
    private List<Part> allSeams() throws Refusal {
        List<Part> found = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (!piece.countsAt(level.name())) {
                continue;
            }
            List<Point> taken = new ArrayList<>();
            for (Edge edge : piece.edges()) {
                Optional<LevelReach> reach =
                        edge.role() == EdgeRole.SEAM ? LevelReach.of(sewn(piece), edge, level) : Optional.empty();
                if (reach.isPresent() && !taken.contains(reach.get().hold().sewn())) {
                    taken.add(reach.get().hold().sewn());
                    found.add(new Part(piece, edge, 1, piece.count(level)));
                }
            }
        }
        if (found.isEmpty()) {
            throw Refusal.of("no-seam-at-level").with("level", level.name());
        }
        return found;
    }

    private List<Part> named() throws Refusal {
        List<Part> found = new ArrayList<>();
        for (Share share : change.shares()) {
            Piece piece = Known.piece(pattern, share.edge().piece());
            Edge edge = Known.edge(piece, share.edge().edge());
            Known.requireCounted(piece, level.name());
            found.add(new Part(piece, edge, share.weight(), piece.count(level)));
        }
        return found;
    }

    private void requireOneSided() throws Refusal {
        for (Part part : parts) {
            if (part.count() > 1) {
                String why = part.piece().onFold() ? "one-side-on-fold" : "one-side-of-pair";
                throw Refusal.of(why).with("piece", part.piece().name());
            }
        }
    }

    private void requireKnownStops() throws Refusal {
        for (String name : change.keep()) {
            boolean known = false;
            for (Part part : parts) {
                known |= !named(sewn(part.piece()), name).isEmpty();
            }
            if (!known) {
                throw Refusal.of("keep-unknown").with("name", name);
            }
        }
        for (Point place : change.fixed()) {
            boolean onOne = parts.stream()
                    .anyMatch(p -> p.piece().outline().nearest(place).distance() <= Shift.ON_OUTLINE);
            if (!onOne) {
                throw Refusal.of("fixed-point-off-outline")
                        .with("x.number", place.x())
                        .with("y.number", place.y());
            }
        }
    }

    /** The places that the user named, by name or by place. */
    private List<SewnPiece.Mark> named(SewnPiece seen) {
        List<SewnPiece.Mark> stops = new ArrayList<>();
        for (Point place : change.fixed()) {
            stops.add(seen.mark(place));
        }
        for (String name : change.keep()) {
            stops.addAll(named(seen, name));
        }
        return stops;
    }

    /** All places of a piece that a name may mean: a notch, both ends of an edge, or a level on any of its edges. */
    private List<SewnPiece.Mark> named(SewnPiece seen, String name) {
        List<SewnPiece.Mark> places = new ArrayList<>();
        for (Notch notch : seen.piece().notches()) {
            if (notch.name().equals(name)) {
                places.add(seen.mark(notch.at()));
            }
        }
        seen.piece().edge(name).ifPresent(edge -> {
            places.add(new SewnPiece.Mark(edge.from(), seen.corner(edge, false)));
            places.add(new SewnPiece.Mark(edge.to(), seen.corner(edge, true)));
        });
        pattern.level(name).ifPresent(other -> {
            for (Edge edge : seen.piece().edges()) {
                LevelReach.of(seen, edge, other).ifPresent(reach -> places.add(SewnPiece.Mark.of(reach.hold())));
            }
        });
        return places;
    }
}
