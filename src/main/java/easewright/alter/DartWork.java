package easewright.alter;

import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Darts being taken in or let out together on one pattern. */
final class DartWork {
    /** Girths are met within this, mm; the promise to the user is 0.01 mm. */
    private static final double CLOSE = 1e-9;

    private static final double PROMISED = 1e-6;

    /** The way by which it is tried whether a dart changes the width at the level, mm. */
    private static final double TRIED = 0.01;

    private static final List<String> DEPENDS_ON_AMOUNT =
            List.of("outline-crosses-itself", "dart-used-up", "dart-legs-lost", "girth-not-met", "level-lost");

    private final Pattern pattern;
    private final Level level;
    private final List<Part> parts = new ArrayList<>();

    /** A dart that takes part. */
    record Part(Piece piece, Dart dart, double weight) {}

    DartWork(Pattern pattern, Level level, List<DartShare> darts, boolean acceptProtected) throws Refusal {
        this.pattern = pattern;
        this.level = level;
        for (DartShare share : darts) {
            parts.add(part(share));
        }
        if (darts.isEmpty()) {
            addAll();
        }
        for (Part part : parts) {
            String edge = part.dart().edge().orElse("");
            if (!acceptProtected
                    && part.piece().edge(edge).map(Edge::isProtected).orElse(false)) {
                throw Refusal.of("edge-protected")
                        .with("piece", part.piece().name())
                        .with("edge", edge);
            }
        }
    }

    List<Part> parts() {
        return parts;
    }

    private Part part(DartShare share) throws Refusal {
        Piece piece = Known.piece(pattern, share.piece());
        Dart dart = piece.darts().stream()
                .filter(d -> d.name().equals(share.dart()))
                .findFirst()
                .orElseThrow(() ->
                        Refusal.of("dart-unknown").with("piece", piece.name()).with("dart", share.dart()));
        if (!counts(piece)) {
            throw Refusal.of("piece-not-counted").with("piece", piece.name()).with("level", level.name());
        }
        if (slope(piece, dart) == 0) {
            throw Refusal.of("dart-not-at-level")
                    .with("piece", piece.name())
                    .with("dart", dart.name())
                    .with("level", level.name());
        }
        return new Part(piece, dart, share.weight());
    }

    private void addAll() throws Refusal {
        for (Piece piece : pattern.pieces()) {
            for (Dart dart : piece.darts()) {
                if (counts(piece) && slope(piece, dart) != 0) {
                    parts.add(new Part(piece, dart, 1));
                }
            }
        }
        if (parts.isEmpty()) {
            throw Refusal.of("no-dart-at-level").with("level", level.name());
        }
    }

    private boolean counts(Piece piece) {
        return piece.countsAt(level.name()) && Measures.width(piece, level).isPresent();
    }

    /** By how much the width grows for each millimetre by which the places of the mouth move in; 0 if hardly. */
    private double slope(Piece piece, Dart dart) throws Refusal {
        double small = Math.min(TRIED, dart.intake() / 4);
        if (small == 0) {
            return 0;
        }
        double got = (Exact.net(new IntakeChange(piece, dart).by(small), level) - Exact.net(piece, level)) / small;
        return Math.abs(got) < 0.05 ? 0 : got;
    }

    /** The changed pattern, not yet recorded. */
    Altered done(double amount) throws Refusal {
        try {
            return with(amount);
        } catch (Refusal why) {
            if (DEPENDS_ON_AMOUNT.contains(why.code())) {
                throw Bisect.largest(why, amount, this::with);
            }
            throw why;
        }
    }

    private Altered with(double amount) throws Refusal {
        double whole = 0;
        for (Part part : parts) {
            whole += part.weight() * part.piece().count(level);
        }
        Map<String, Piece> now = new LinkedHashMap<>();
        List<Part> ordered = new ArrayList<>(parts);
        if (amount < 0) {
            // Last in, first out, so that the opposite amount takes back exactly what neighbouring darts did.
            Collections.reverse(ordered);
        }
        for (Part part : ordered) {
            Piece piece = now.getOrDefault(part.piece().id(), part.piece());
            Dart dart = piece.darts().get(part.piece().darts().indexOf(part.dart()));
            double own = amount * part.weight() / whole;
            double base = Exact.net(piece, level);
            IntakeChange change = new IntakeChange(piece, dart);
            double way = Root.of(
                    w -> Exact.net(change.by(w), level) - base - own,
                    -own,
                    own / slope(piece, dart),
                    CLOSE,
                    PROMISED,
                    Refusal.of("girth-not-met").with("piece", piece.name()).with("level", level.name()));
            Piece done = change.by(way);
            Simple.require(piece.outline(), done);
            now.put(piece.id(), done);
        }
        Pattern changed = pattern;
        for (Piece piece : now.values()) {
            changed = changed.withPiece(piece);
        }
        return new Altered(changed, List.of());
    }
}
