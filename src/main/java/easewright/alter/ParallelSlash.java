package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;

/**
 * Slashes a piece from edge to edge and shifts everything beyond square to the grain, so that every width across the
 * slash changes alike (docs/sources.md 4.1, W7).
 *
 * @param piece           id or name of the piece
 * @param one             where the slash meets the outline
 * @param other           where it leaves it
 * @param amount          shift, mm; below 0 folds a strip away
 * @param beyond          a place on the side of the line that shifts
 * @param acceptProtected protected edges may be cut
 */
public record ParallelSlash(String piece, Point one, Point other, double amount, Point beyond, boolean acceptProtected)
        implements ByAmount {
    static final String METHOD = "parallel-slash";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.SLASHES,
            Way.Aim.GAP,
            "amount",
            List.of(
                    Setting.needed("piece", Setting.Kind.PIECE),
                    Setting.needed("one", Setting.Kind.PLACE),
                    Setting.needed("other", Setting.Kind.PLACE),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.needed("beyond", Setting.Kind.PLACE),
                    Setting.flag(Way.ACCEPT)),
            ParallelSlash::from);

    /**
     * @throws IllegalArgumentException if the amount is no number
     */
    public ParallelSlash {
        Amounts.require(amount);
    }

    @Override
    public ParallelSlash withAmount(double mm) {
        return new ParallelSlash(piece, one, other, mm, beyond, acceptProtected);
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("piece", piece)
                .point("one", one)
                .point("other", other)
                .number("amount", amount)
                .point("beyond", beyond)
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static ParallelSlash from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        return new ParallelSlash(
                s.text("piece"),
                s.point("one"),
                s.point("other"),
                s.number("amount"),
                s.point("beyond"),
                s.flag(Way.ACCEPT));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Piece cloth = Known.piece(pattern, piece);
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        Point away = Slashed.away(cloth, one, other, beyond);
        try {
            return with(pattern, cloth, away, amount);
        } catch (Refusal why) {
            if (List.of("outline-crosses-itself", "tuck-too-wide").contains(why.code())) {
                throw Bisect.largest(why, amount, some -> with(pattern, cloth, away, some));
            }
            throw why;
        }
    }

    private Altered with(Pattern pattern, Piece cloth, Point away, double some) throws Refusal {
        Slashed slashed = Slashed.of(cloth, one, other, away, some, acceptProtected);
        return new Altered(pattern.withPiece(slashed.piece()).withChange(note()), slashed.findings());
    }
}
