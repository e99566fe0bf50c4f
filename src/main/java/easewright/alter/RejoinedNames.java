package easewright.alter;

import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    /** What the seams of both sides are called as one: by the name of the one that was called otherwise, if one was. */
    static String ofSeam(Mate one, Mate other) {
        boolean given = withoutSide(one.name()).equals(one.name());
        boolean otherGiven = withoutSide(other.name()).equals(other.name());
        return otherGiven && !given ? other.name() : withoutSide(one.name());
    }

    /** A state with the pieces of what is now, with the names that are there now. */
    static Pattern asNow(Pattern made, Pattern now) {
        Pattern called = Renaming.asNow(made, now);
        return called.withPieces(called.pieces().stream()
                .map(p -> withId(now, p.id()).map(n -> p.withName(n.name())).orElse(p))
                .toList());
    }

    /** Whether two patterns sew the same seams, whatever these are called. */
    static boolean sewnAlike(Pattern one, Pattern other) {
        boolean alike = one.mates().size() == other.mates().size();
        for (int i = 0; alike && i < one.mates().size(); i++) {
            Mate mate = one.mates().get(i);
            Mate otherMate = other.mates().get(i);
            alike = mate.declaredEase() == otherMate.declaredEase()
                    && Renaming.sewsTheSame(one, mate, other, otherMate);
        }
        return alike;
    }

    /**
     * A state before pieces were parted, with the names that were given since.
     *
     * @param made what making the changes again comes to, with the names that they give
     * @param now  the same as it is called now
     */
    static Pattern before(Pattern then, Pattern made, Pattern now) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : then.pieces()) {
            pieces.add(piece.withName(pieceName(piece, made, now)));
        }
        List<Mate> seams = new ArrayList<>();
        for (Mate mate : then.mates()) {
            seams.add(new Mate(seamName(mate, made, now), mate.first(), mate.second(), mate.declaredEase()));
        }
        return then.withPieces(pieces).withMates(seams);
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

    private static String seamName(Mate mate, Pattern made, Pattern now) {
        for (int i = 0; i < made.mates().size(); i++) {
            String was = made.mates().get(i).name();
            String is = now.mates().get(i).name();
            boolean same = was.equals(mate.name()) || withoutSide(was).equals(mate.name());
            if (same && !was.equals(is)) {
                return was.equals(mate.name()) ? is : withoutSide(is);
            }
        }
        return mate.name();
    }

    private static Optional<Piece> withId(Pattern pattern, String id) {
        return pattern.pieces().stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
