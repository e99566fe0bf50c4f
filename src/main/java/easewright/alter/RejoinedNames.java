package easewright.alter;

import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What pieces and seams are called that a change for one side parted, and that somebody called otherwise since: where the
 * change is taken back, what is one again keeps the name that it was given.
 */
final class RejoinedNames {
    private RejoinedNames() {}

    /** A name without the word for a side at its end. */
    static String withoutSide(String name, Side side) {
        String word = " " + Settings.name(side);
        return name.endsWith(word) && name.length() > word.length()
                ? name.substring(0, name.length() - word.length())
                : name;
    }

    private static String withoutSide(String name) {
        String plain = withoutSide(name, Side.LEFT);
        return plain.equals(name) ? withoutSide(name, Side.RIGHT) : plain;
    }

    /** What the seams of both sides are called as one: by the one that still has the name that it was parted under. */
    static String ofSeam(Mate one, Mate other) {
        boolean given = withoutSide(one.name()).equals(one.name());
        return withoutSide(given ? other.name() : one.name());
    }

    /** A state with the pieces of what is now, with the names that are there now. */
    static Pattern asNow(Pattern made, Pattern now) {
        Pattern called = NamesNow.of(made, now);
        return called.withPieces(called.pieces().stream()
                .map(p -> withId(now, p.id())
                        .filter(n -> n.side() == p.side())
                        .map(n -> p.withName(n.name()))
                        .orElse(p))
                .toList());
    }

    /** Whether two patterns sew the same seams, whatever these are called. */
    static boolean sewnAlike(Pattern one, Pattern other) {
        boolean alike = one.mates().size() == other.mates().size();
        for (int i = 0; alike && i < one.mates().size(); i++) {
            Mate mate = one.mates().get(i);
            Mate otherMate = other.mates().get(i);
            alike = mate.declaredEase() == otherMate.declaredEase()
                    && NamesNow.sewsTheSame(one, mate, other, otherMate);
        }
        return alike;
    }

    /**
     * A state before pieces were parted, with the names that these were given since.
     *
     * @param made what making the changes again comes to, with the names that they give
     * @param now  the same as it is called now
     */
    static Pattern before(Pattern then, Pattern made, Pattern now) {
        return then.withPieces(then.pieces().stream()
                .map(p -> p.withName(pieceName(p, made, now)))
                .toList());
    }

    /**
     * The names that seams were given since, by those that making the changes gives them.
     *
     * @param made what making the changes again comes to; it sews the same seams as what is now
     */
    static Map<String, String> given(Pattern made, Pattern now) {
        Map<String, String> given = new LinkedHashMap<>();
        for (int i = 0; i < made.mates().size(); i++) {
            String was = made.mates().get(i).name();
            if (!was.equals(now.mates().get(i).name())) {
                given.put(was, now.mates().get(i).name());
            }
        }
        return given;
    }

    /**
     * The seams of both sides called as they were.
     *
     * @param whole whether a seam that is one again gets the name that was given to that of one side: not before the last
     *              change is made, which may part it
     */
    static Pattern called(Pattern made, Map<String, String> given, boolean whole) {
        Set<String> names = new HashSet<>();
        made.mates().forEach(m -> names.add(m.name()));
        List<Mate> seams = new ArrayList<>();
        for (Mate mate : made.mates()) {
            String wanted = whole ? name(mate.name(), given) : given.getOrDefault(mate.name(), mate.name());
            String name = wanted.equals(mate.name()) || names.add(wanted) ? wanted : mate.name();
            seams.add(new Mate(name, mate.first(), mate.second(), mate.declaredEase()));
        }
        return made.withMates(seams);
    }

    private static String name(String made, Map<String, String> given) {
        if (given.containsKey(made)) {
            return given.get(made);
        }
        return Stream.of(Side.LEFT, Side.RIGHT)
                .map(side -> given.get(made + " " + Settings.name(side)))
                .filter(Objects::nonNull)
                .map(RejoinedNames::withoutSide)
                .findFirst()
                .orElse(made);
    }

    private static String pieceName(Piece piece, Pattern made, Pattern now) {
        Optional<Piece> was = withId(made, piece.id());
        Optional<Piece> is = withId(now, piece.id());
        if (was.isEmpty() || is.isEmpty() || was.get().name().equals(is.get().name())) {
            return piece.name();
        }
        boolean parted = is.get().side() != piece.side();
        return parted ? withoutSide(is.get().name(), is.get().side()) : is.get().name();
    }

    private static Optional<Piece> withId(Pattern pattern, String id) {
        return pattern.pieces().stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
