package easewright.alter;

import easewright.geom.Affine;
import easewright.geom.Curve;
import easewright.geom.Outline;
import easewright.geom.Place;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;

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

    /** Above 5–6° a wedge is split among several slashes (docs/sources.md 4.3, common practice). */
    private static final double WIDE_WEDGE = 6;

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
    public ChangeNote note() {
        return new Settings()
                .text("piece", piece)
                .point("hinge", hinge)
                .point("opening", opening)
                .number("gap", gap)
                .point("turning", turning)
                .flag("accept-protected", acceptProtected)
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
                s.flag("accept-protected"));
    }

    @Override
    public Altered apply(Pattern pattern) throws Refusal {
        Piece cloth = pattern.piece(piece)
                .orElseThrow(() -> Refusal.of("piece-unknown").with("piece", piece));
        Place hingePlace = SlashPlaces.onOutline(cloth, hinge);
        Place openingPlace = SlashPlaces.onOutline(cloth, opening);
        Point about = cloth.outline().point(hingePlace);
        Point open = cloth.outline().point(openingPlace);
        if (about.distance(open) < 1) {
            throw Refusal.of("slash-without-length").with("piece", cloth.name());
        }
        Point aside = open.minus(about).unit().quarterTurned();
        SlashPlaces.requireMayOpen(cloth, openingPlace, aside, acceptProtected);
        if (gap == 0) {
            return Altered.nothing(pattern);
        }
        try {
            return turned(pattern, cloth, hingePlace, openingPlace, gap);
        } catch (Refusal why) {
            if (List.of("slash-crosses-dart", "tuck-takes-mark").contains(why.code())) {
                throw why;
            }
            throw Bisect.largest(why, gap, some -> turned(pattern, cloth, hingePlace, openingPlace, some));
        }
    }

    private Altered turned(Pattern pattern, Piece cloth, Place hingePlace, Place openingPlace, double some)
            throws Refusal {
        Outline outline = cloth.outline();
        Point about = outline.point(hingePlace);
        Point open = outline.point(openingPlace);
        double half = some / (2 * about.distance(open));
        if (Math.abs(half) >= 1) {
            throw Refusal.of("gap-too-wide").with("piece", cloth.name());
        }
        double angle = 2 * Math.asin(half);
        Parting afterOpening = Parting.of(outline, openingPlace, hingePlace);
        boolean after = afterOpening.nearerToMoving(turning);
        Parting parting = after ? afterOpening : Parting.of(outline, hingePlace, openingPlace);
        // Seen from the hinge, the part after the opening lies clockwise of the slash on an outline drawn clockwise.
        boolean clockwise = after == (outline.signedArea() > 0);
        Affine map = Affine.rotation(clockwise ? angle : -angle, about);
        Parting cut = some > 0
                ? parting
                : folded(cloth, parting, after, about, map.inverse().apply(open));
        PartMove move = new PartMove(cloth, parting, map);
        Outline joined = cut.joined(map, outline.segments().get(0));
        if (!Simple.stays(outline, joined)) {
            throw Refusal.of("outline-crosses-itself").with("piece", cloth.name());
        }
        Piece done = move.done(joined);
        List<Finding> findings = new ArrayList<>(move.findings());
        findings.addAll(remarks(cloth, hingePlace, Math.toDegrees(Math.abs(angle))));
        Curve before = new Curve(parting.moves());
        Moved moved = new Moved(cloth.id(), before, before.transformed(map));
        return new Altered(pattern.withPiece(done).withChange(note()), List.of(moved), findings);
    }

    /** The turning run loses the wedge beside the slash, so that closing takes back exactly what opening gave. */
    private static Parting folded(Piece cloth, Parting parting, boolean after, Point about, Point corner)
            throws Refusal {
        Point ray = corner.minus(about);
        List<Segment> run = parting.moves();
        // The hinge itself lies on the ray: search from the opening's end only.
        SlashPlaces.Trimmed trimmed =
                after ? SlashPlaces.trimStart(run, about, ray) : SlashPlaces.trimEnd(run, about, ray);
        PartMove.requireNothingTaken(cloth, trimmed.taken());
        return new Parting(parting.stays(), trimmed.left());
    }

    private List<Finding> remarks(Piece cloth, Place hingePlace, double degrees) {
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.of("grain-turned", Severity.NOTE, cloth.name()).with("turn.degrees", degrees));
        for (Edge edge : cloth.edges()) {
            Point p = cloth.outline().point(hingePlace);
            boolean inside = new EdgeRun(cloth, edge).holds(hingePlace)
                    && p.distance(edge.from()) > 1e-6
                    && p.distance(edge.to()) > 1e-6;
            if (inside) {
                findings.add(
                        Finding.of("hinge-corner", edge.isProtected() ? Severity.CAUTION : Severity.NOTE, cloth.name())
                                .with("edge", edge.name())
                                .with("turn.degrees", degrees));
            }
        }
        if (degrees > WIDE_WEDGE) {
            findings.add(Finding.of("wedge-wide", Severity.CAUTION, cloth.name())
                    .with("turn.degrees", degrees)
                    .with("limit.degrees", WIDE_WEDGE));
        }
        return findings;
    }
}
