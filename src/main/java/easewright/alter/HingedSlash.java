package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.List;
import java.util.Optional;

/**
 * Slashes a piece to, but not through, its far edge and turns one part about the hinge left there, so that the slash
 * opens (or closes) by a wedge (docs/sources.md 4.1, W6). The far edge keeps its length and gains a corner.
 *
 * @param piece           id or name of the piece
 * @param hinge           place on the outline that holds together
 * @param opening         place on the outline at which the slash opens
 * @param gap             straight distance between the two cut corners, mm; below 0 folds a wedge of that width out of the
 *                        turning part
 * @param turning         a place on the outline of the part that turns
 * @param acceptProtected the edge at the opening may be protected
 */
public record HingedSlash(String piece, Point hinge, Point opening, double gap, Point turning, boolean acceptProtected)
        implements Alteration {
    static final String METHOD = "hinged-slash";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.SLASHES,
            Way.Aim.GAP,
            "gap",
            List.of(
                    Setting.needed("piece", Setting.Kind.PIECE),
                    Setting.needed("hinge", Setting.Kind.PLACE),
                    Setting.needed("opening", Setting.Kind.PLACE),
                    Setting.needed("gap", Setting.Kind.SIGNED_LENGTH),
                    Setting.needed("turning", Setting.Kind.PLACE),
                    Setting.flag(Way.ACCEPT)),
            HingedSlash::from);

    private static final List<String> DEPENDS_ON_GAP =
            List.of("outline-crosses-itself", "gap-too-wide", "tuck-too-wide");

    /**
     * @throws IllegalArgumentException if the gap is no number
     */
    public HingedSlash {
        Amounts.require(gap);
    }

    @Override
    public HingedSlash withAmount(double mm) {
        return new HingedSlash(piece, hinge, opening, mm, turning, acceptProtected);
    }

    @Override
    public Optional<Alteration> opposite() {
        return Optional.of(withAmount(-gap));
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("piece", piece)
                .point("hinge", hinge)
                .point("opening", opening)
                .number("gap", gap)
                .point("turning", turning)
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static HingedSlash from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        return new HingedSlash(
                s.text("piece"),
                s.point("hinge"),
                s.point("opening"),
                s.number("gap"),
                s.point("turning"),
                s.flag(Way.ACCEPT));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Piece cloth = Known.piece(pattern, piece);
        if (gap == 0) {
            return Altered.nothing(pattern);
        }
        try {
            return turned(pattern, cloth, gap);
        } catch (Refusal why) {
            if (DEPENDS_ON_GAP.contains(why.code())) {
                throw Bisect.largest(why, gap, some -> turned(pattern, cloth, some));
            }
            throw why;
        }
    }

    private Altered turned(Pattern pattern, Piece cloth, double some) throws Refusal {
        Turned turned = Turned.of(cloth, hinge, opening, some, Optional.of(turning), acceptProtected);
        return new Altered(pattern.withPiece(turned.piece()).withChange(note()), turned.findings());
    }
}
