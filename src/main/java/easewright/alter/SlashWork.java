package easewright.alter;

import easewright.geom.Place;
import easewright.geom.Point;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Slashes being opened together on one pattern. A slash that lies in the part another one moves is opened first, so
 * that all places are still where they were named; taking back goes the other way round.
 */
final class SlashWork {
    /** Girths are met within this, mm; the promise to the user is 0.01 mm. */
    private static final double CLOSE = 1e-9;

    private static final double PROMISED = 1e-6;

    /** A slash that changes the width by less than this share of its gap does not lie at the level. */
    private static final double HARDLY = 1e-3;

    private static final List<String> DEPENDS_ON_AMOUNT = List.of(
            "outline-crosses-itself",
            "tuck-too-wide",
            "tuck-takes-mark",
            "gap-too-wide",
            "girth-not-met",
            "level-lost");

    private final Pattern pattern;
    private final Level level;
    private final SpreadSlashes change;
    private final List<Cut> cuts;

    /** A slash on its piece. */
    private record Cut(Slash slash, Piece piece, Parting parting) {
        /** Whether another slash of the piece lies in the part that this one moves. */
        boolean moves(Slash other) {
            return parting.nearerToMoving(other.from()) && parting.nearerToMoving(other.to());
        }
    }

    SlashWork(Pattern pattern, Level level, SpreadSlashes change) throws Refusal {
        this.pattern = pattern;
        this.level = level;
        this.change = change;
        List<Cut> found = new ArrayList<>();
        for (Slash slash : change.slashes()) {
            Piece piece = Known.piece(pattern, slash.piece());
            Known.requireCounted(piece, level.name());
            // After the change that is taken back, the slash still lies there, but not where it was named.
            found.add(new Cut(slash, piece, change.back() ? near(piece, slash) : parting(piece, slash)));
        }
        cuts = inOrder(found);
    }

    private static Parting parting(Piece piece, Slash slash) throws Refusal {
        Place from = SlashPlaces.onOutline(piece, slash.from());
        Place to = SlashPlaces.onOutline(piece, slash.to());
        if (piece.outline().point(from).distance(piece.outline().point(to)) < 1) {
            throw Refusal.of("slash-without-length").with("piece", piece.name());
        }
        return parting(piece, slash, from, to);
    }

    private static Parting near(Piece piece, Slash slash) {
        return parting(piece, slash, SlashPlaces.near(piece, slash.from()), SlashPlaces.near(piece, slash.to()));
    }

    private static Parting parting(Piece piece, Slash slash, Place from, Place to) {
        Parting one = Parting.of(piece.outline(), from, to);
        boolean moves = slash.moving().map(one::nearerToMoving).orElseGet(() -> Centre.stays(piece, one));
        return moves ? one : Parting.of(piece.outline(), to, from);
    }

    /** The slash that is moved by most others first. */
    private List<Cut> inOrder(List<Cut> found) throws Refusal {
        List<Cut> left = new ArrayList<>(found);
        List<Cut> ordered = new ArrayList<>();
        while (!left.isEmpty()) {
            Cut next = null;
            for (Cut cut : left) {
                boolean free =
                        left.stream().noneMatch(o -> o != cut && o.piece() == cut.piece() && cut.moves(o.slash()));
                next = next == null && free ? cut : next;
            }
            if (next == null) {
                throw Refusal.of("slashes-entangled")
                        .with("piece", left.get(0).piece().name());
            }
            left.remove(next);
            ordered.add(next);
        }
        if (change.back()) {
            java.util.Collections.reverse(ordered);
        }
        return ordered;
    }

    Altered done() throws Refusal {
        try {
            return with(change.amount());
        } catch (Refusal why) {
            if (DEPENDS_ON_AMOUNT.contains(why.code())) {
                throw Bisect.largest(why, change.amount(), this::with);
            }
            throw why;
        }
    }

    private Altered with(double amount) throws Refusal {
        double whole = 0;
        for (Cut cut : cuts) {
            whole += cut.slash().weight() * cut.piece().count(level);
        }
        Map<String, Piece> now = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Cut cut : cuts) {
            Piece piece = now.getOrDefault(cut.piece().id(), cut.piece());
            Opened opened = opened(piece, cut.slash(), amount * cut.slash().weight() / whole);
            now.put(piece.id(), opened.piece());
            findings.addAll(opened.findings());
        }
        Pattern changed = pattern;
        for (Piece piece : now.values()) {
            changed = changed.withPiece(piece);
        }
        return new Altered(changed.withChange(change.note()), findings);
    }

    private record Opened(Piece piece, List<Finding> findings) {}

    private Opened opened(Piece piece, Slash slash, double own) throws Refusal {
        double base = Exact.net(piece, level);
        Opened last = by(piece, slash, own);
        double got = Exact.net(last.piece(), level) - base;
        if (Math.abs(got) < HARDLY * Math.abs(own)) {
            throw Refusal.of("slash-not-at-level").with("piece", piece.name()).with("level", level.name());
        }
        // The gap is wider or narrower than the width it gives, by how far the level lies from the hinge.
        double gap = Root.of(
                g -> Exact.net(by(piece, slash, g).piece(), level) - base - own,
                -own,
                own * own / got,
                CLOSE,
                PROMISED,
                Refusal.of("girth-not-met").with("piece", piece.name()).with("level", level.name()));
        return by(piece, slash, gap);
    }

    private Opened by(Piece piece, Slash slash, double gap) throws Refusal {
        boolean accept = change.acceptProtected();
        if (change.open() == SpreadSlashes.Opening.HINGED) {
            Turned turned = Turned.of(piece, slash.to(), slash.from(), gap, slash.moving(), accept);
            return new Opened(turned.piece(), turned.findings());
        }
        Parting parting = parting(piece, slash);
        Point inside = parting.moves().get(parting.moves().size() / 2).at(0.5);
        Point away = Slashed.away(piece, slash.from(), slash.to(), inside);
        Slashed slashed = Slashed.of(piece, slash.from(), slash.to(), away, gap, accept);
        return new Opened(slashed.piece(), slashed.findings());
    }
}
