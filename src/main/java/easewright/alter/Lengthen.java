package easewright.alter;

import easewright.geom.Crossing;
import easewright.geom.Point;
import easewright.measure.LevelWidth;
import easewright.measure.Measures;
import easewright.measure.Span;
import easewright.pattern.ChangeNote;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * Lengthens or shortens pieces by a parallel slash across the grain: everything below the line shifts along the
 * grain, levels, darts and notches with it (worked example W17).
 *
 * @param level           level from which the line is counted
 * @param below           how far below it the line lies along the grain, mm; below 0 above it
 * @param amount          mm; below 0 shortens
 * @param pieces          ids or names of the pieces; empty: all on which the level is marked
 * @param acceptProtected protected edges may be cut
 */
public record Lengthen(String level, double below, double amount, List<String> pieces, boolean acceptProtected)
        implements ByAmount {
    static final String METHOD = "lengthen";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.LENGTHS,
            Way.Aim.LENGTH,
            "amount",
            List.of(
                    Setting.needed("level", Setting.Kind.LEVEL),
                    Setting.length("below", 0),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.free("piece", Setting.Kind.PIECES),
                    Setting.flag(Way.ACCEPT)),
            Lengthen::from);

    /**
     * @throws IllegalArgumentException if a length is no number
     */
    public Lengthen {
        Amounts.require(below);
        Amounts.require(amount);
        pieces = List.copyOf(pieces);
    }

    public static Lengthen below(String level, double below, double amount) {
        return new Lengthen(level, below, amount, List.of(), false);
    }

    @Override
    public Lengthen withAmount(double mm) {
        return new Lengthen(level, below, mm, pieces, acceptProtected);
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("level", level)
                .number("below", below)
                .number("amount", amount)
                .texts("piece", pieces)
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static Lengthen from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        return new Lengthen(
                s.text("level"), s.number("below"), s.number("amount"), s.texts("piece"), s.flag(Way.ACCEPT));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Level at = Known.level(pattern, level);
        List<Piece> chosen = chosen(pattern);
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        try {
            return with(pattern, chosen, at, amount);
        } catch (Refusal why) {
            if (List.of("outline-crosses-itself", "tuck-too-wide").contains(why.code())) {
                throw Bisect.largest(why, amount, some -> with(pattern, chosen, at, some));
            }
            throw why;
        }
    }

    private List<Piece> chosen(Pattern pattern) throws Refusal {
        List<Piece> chosen = new ArrayList<>();
        for (String name : pieces) {
            Piece piece = Known.piece(pattern, name);
            if (piece.level(level).isEmpty()) {
                throw Refusal.of("piece-not-counted")
                        .with("piece", piece.name())
                        .with("level", level);
            }
            chosen.add(piece);
        }
        if (pieces.isEmpty()) {
            chosen.addAll(pattern.pieces().stream()
                    .filter(p -> p.level(level).isPresent())
                    .toList());
        }
        if (chosen.isEmpty()) {
            throw Refusal.of("level-without-piece").with("level", level);
        }
        return chosen;
    }

    private Altered with(Pattern pattern, List<Piece> chosen, Level at, double some) throws Refusal {
        Pattern changed = pattern;
        List<Finding> findings = new ArrayList<>();
        for (Piece piece : chosen) {
            Slashed slashed = slashed(piece, at, some);
            changed = changed.withPiece(slashed.piece());
            findings.addAll(slashed.findings());
        }
        if (pattern.changes().stream().anyMatch(Lengthen::isWidth)) {
            findings.add(Finding.of("length-after-width", Severity.NOTE, ""));
        }
        return new Altered(changed.withChange(note()), findings);
    }

    /** A change of width, before which length is settled (E-372, docs/sources.md 4.4). */
    private static boolean isWidth(ChangeNote change) {
        return Ways.of(change.method())
                .filter(way -> way.aim() == Way.Aim.GIRTH || way.aim() == Way.Aim.GAP)
                .isPresent();
    }

    private Slashed slashed(Piece piece, Level at, double some) throws Refusal {
        LevelWidth width = Measures.width(piece, at)
                .orElseThrow(() ->
                        Refusal.of("level-lost").with("piece", piece.name()).with("level", level));
        Span span = width.spans().get(0);
        Point down = piece.downGrain();
        Point middle = span.from().towards(span.to(), 0.5).plus(down.times(below));
        Point across = down.quarterTurned();
        // The two meetings on either side of the middle of the level's stretch.
        Crossing left = null;
        Crossing right = null;
        for (Crossing c : piece.outline().crossings(middle, across)) {
            if (c.along() < 0) {
                left = c;
            } else if (right == null) {
                right = c;
            }
        }
        if (left == null || right == null) {
            throw Refusal.of("slash-off-outline").with("piece", piece.name());
        }
        return Slashed.of(piece, left.point(), right.point(), down, some, acceptProtected);
    }
}
