package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.EdgeRef;
import easewright.pattern.Level;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where in a pattern a change is made, as it is kept among the settings of its record.
 *
 * @param size the size, where the pattern comes in several
 * @param side the side of the garment; both where it is made alike on either
 * @param asIn the first of the sizes in which the same change was made in one go, where this is another one of them
 */
public record Scope(Optional<String> size, Side side, Optional<String> asIn) {
    /** Key of the size in a record. */
    public static final String SIZE = "in-size";

    /** Key of the side in a record. */
    public static final String SIDE = "on-side";

    /** Key in a record of the size with which its own was changed alike. */
    public static final String AS_IN = "as-in-size";

    /** Of a change that was made for itself. */
    public Scope(Optional<String> size, Side side) {
        this(size, side, Optional.empty());
    }

    /**
     * The scopes of one change in several sizes.
     *
     * @param sizes in the order in which they are changed; none where the pattern comes in one
     */
    public static List<Scope> each(List<String> sizes, Side side) {
        List<Scope> scopes = new ArrayList<>();
        for (String size : sizes) {
            Optional<String> first = Optional.of(sizes.get(0)).filter(f -> !f.equals(size));
            scopes.add(new Scope(Optional.of(size), side, first));
        }
        return scopes.isEmpty() ? List.of(new Scope(Optional.empty(), side)) : List.copyOf(scopes);
    }

    /** What a record says; a side that is none of ours is taken for both. */
    public static Scope of(ChangeNote note) {
        String side = note.settings().getOrDefault(SIDE, "");
        return new Scope(
                Optional.ofNullable(note.settings().get(SIZE)),
                side(side).orElse(Side.BOTH),
                Optional.ofNullable(note.settings().get(AS_IN)));
    }

    /** The side that a word means, whatever the capitals. */
    public static Optional<Side> side(String word) {
        for (Side side : Side.values()) {
            if (Settings.name(side).equalsIgnoreCase(word.strip())) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }

    /** The side on which a seam is sewn that joins pieces of one side, alone or to such as are cut alike for both. */
    static Optional<Side> sideOf(Pattern garment, Mate mate) {
        Set<Side> sides = EnumSet.noneOf(Side.class);
        for (List<EdgeRef> refs : List.of(mate.first(), mate.second())) {
            for (EdgeRef ref : refs) {
                garment.piece(ref.piece()).map(Piece::side).ifPresent(sides::add);
            }
        }
        sides.remove(Side.BOTH);
        return sides.size() == 1 ? sides.stream().findFirst() : Optional.empty();
    }

    /**
     * Where a piece is changed for the sake of a seam: on the side of the seam alone, where the piece is cut alike for
     * both.
     */
    static Scope forSeam(Pattern garment, Optional<String> size, Mate mate, Piece piece) {
        Side side = LeftRight.symmetric(piece) ? sideOf(garment, mate).orElse(Side.BOTH) : Side.BOTH;
        return new Scope(size, side);
    }

    boolean isWholeGarment() {
        return size.isEmpty() && side == Side.BOTH;
    }

    /** Refuses a girth of a limb of which left and right have pieces of their own, where no side is named. */
    static void requireOneLimb(ChangeNote note, Pattern pattern) throws Refusal {
        Scope scope = of(note);
        boolean girth = Ways.of(note.method())
                .filter(w -> w.aim() == Way.Aim.GIRTH || w.aim() == Way.Aim.MOVED)
                .isPresent();
        Optional<Level> level =
                Optional.ofNullable(note.settings().get("level")).flatMap(pattern::level);
        if (!girth || scope.side() != Side.BOTH || !level.map(Level::limb).orElse(false)) {
            return;
        }
        for (Piece piece : pattern.pieces()) {
            boolean own = scope.size().isEmpty()
                    || piece.size().isEmpty()
                    || piece.size().equals(scope.size());
            boolean counts = piece.countsAt(level.get().name());
            if (own && counts && piece.side() != Side.BOTH) {
                throw Refusal.of("side-needed").with("level", level.get().name());
            }
        }
    }

    /** The record without its scope. */
    static ChangeNote without(ChangeNote note) {
        Map<String, String> settings = new LinkedHashMap<>(note.settings());
        settings.remove(SIZE);
        settings.remove(SIDE);
        settings.remove(AS_IN);
        return new ChangeNote(note.method(), settings);
    }

    /** The record with this scope. */
    ChangeNote write(ChangeNote note) {
        Map<String, String> settings = new LinkedHashMap<>(note.settings());
        size.ifPresent(s -> settings.put(SIZE, s));
        asIn.ifPresent(s -> settings.put(AS_IN, s));
        if (side != Side.BOTH) {
            settings.put(SIDE, Settings.name(side));
        }
        return new ChangeNote(note.method(), settings);
    }

    /**
     * The garment that is meant, on both its sides.
     *
     * @throws Refusal if there is no such size
     */
    PatternPart garment(Pattern pattern) throws Refusal {
        if (size.isPresent() && !PatternPart.sizes(pattern).contains(size.get())) {
            throw Refusal.of("size-not-known").with("size", size.get()).with("known", PatternPart.sizes(pattern));
        }
        return size.map(s -> PatternPart.ofSize(pattern, s)).orElseGet(() -> PatternPart.whole(pattern));
    }

    /**
     * The pieces among which a change finds what it names: those of the size and of the side.
     *
     * @throws Refusal if there is no such size
     */
    public PatternPart part(Pattern pattern) throws Refusal {
        return PatternPart.ofSide(garment(pattern).alone(), side);
    }
}
