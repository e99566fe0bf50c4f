package easewright.alter;

import easewright.geom.Point;
import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Moves the centre line of a piece (docs/sources.md 4.1, W5).
 *
 * @param level           name of the level whose finished girth changes
 * @param amount          change of the finished girth, mm
 * @param edge            the centre or fold edge
 * @param wedge           swing the edge about its fixed end instead of moving it parallel
 * @param keep            for a wedge: name of the edge that meets the centre line at the fixed end; empty: the neck
 *                        edge there is, or else the upper end
 * @param acceptProtected protected edges beside it, such as the neck, may change
 */
public record CentreChange(
        String level, double amount, EdgeRef edge, boolean wedge, String keep, boolean acceptProtected)
        implements ByAmount {
    static final String METHOD = "centre";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.SEAMS,
            Way.Aim.GIRTH,
            "amount",
            List.of(
                    Setting.needed("level", Setting.Kind.LEVEL),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.needed("edge", Setting.Kind.EDGE),
                    Setting.flag("wedge"),
                    Setting.free("keep", Setting.Kind.NAME),
                    Setting.flag(Way.ACCEPT)),
            CentreChange::from);

    /**
     * @throws IllegalArgumentException if the amount is no number
     */
    public CentreChange {
        Amounts.require(amount);
    }

    public static CentreChange parallel(String level, double amount, EdgeRef edge) {
        return new CentreChange(level, amount, edge, false, "", false);
    }

    public static CentreChange wedge(String level, double amount, EdgeRef edge) {
        return new CentreChange(level, amount, edge, true, "", false);
    }

    @Override
    public CentreChange withAmount(double mm) {
        return new CentreChange(level, mm, edge, wedge, keep, acceptProtected);
    }

    public CentreChange keeping(String edgeName) {
        return new CentreChange(level, amount, edge, wedge, edgeName, acceptProtected);
    }

    public CentreChange acceptingProtected() {
        return new CentreChange(level, amount, edge, wedge, keep, true);
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("level", level)
                .number("amount", amount)
                .text("edge", edge.toString())
                .flag("wedge", wedge)
                .some("keep", keep)
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static CentreChange from(ChangeNote note) throws Refusal {
        Settings settings = new Settings(note);
        return new CentreChange(
                settings.text("level"),
                settings.number("amount"),
                settings.edge("edge"),
                settings.flag("wedge"),
                settings.some("keep"),
                settings.flag(Way.ACCEPT));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Level at = Known.level(pattern, level);
        Piece piece = Known.piece(pattern, edge.piece());
        Edge centre = Known.edge(piece, edge.edge());
        Known.requireCounted(piece, level);
        SewnPiece sewn = new SewnPiece(piece, pattern.levels());
        LevelReach reach = LevelReach.of(sewn, centre, at)
                .orElseThrow(() -> Refusal.of("edge-not-at-level")
                        .with("piece", piece.name())
                        .with("edge", centre.name())
                        .with("level", level));
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        EdgeShift work = new EdgeShift(sewn, centre, reach.outward(), Stops.marksOnly(), acceptProtected);
        Shift shift = (wedge ? work.wedge(fixedAtStart(piece, centre)) : work.parallel()).build();
        try {
            return with(amount, pattern, piece, centre, at, shift);
        } catch (Refusal why) {
            throw Bisect.largest(why, amount, some -> with(some, pattern, piece, centre, at, shift));
        }
    }

    private Altered with(double some, Pattern pattern, Piece piece, Edge centre, Level at, Shift shift) throws Refusal {
        double own = some / piece.count(at);
        Exact.Met met = Exact.width(a -> Carry.along(piece, shift, a), at, Exact.net(piece, at), own);
        Simple.require(shift.base(), met.piece());
        List<Finding> findings = new ArrayList<>();
        if (wedge) {
            double slant = slant(centre, met.piece().edge(centre.name()).orElseThrow());
            String code = piece.onFold() || centre.role() == EdgeRole.FOLD ? "centre-off-fold" : "centre-off-grain";
            findings.add(Finding.of(code, Severity.CAUTION, piece.name())
                    .with("edge", centre.name())
                    .with("slant.degrees", slant));
        }
        return new Altered(pattern.withPiece(met.piece()).withChange(note()), findings);
    }

    /** By how much the line from end to end turned, degrees, without a sign. */
    private static double slant(Edge before, Edge after) {
        Point was = before.to().minus(before.from());
        Point is = after.to().minus(after.from());
        return Math.toDegrees(Math.abs(Math.atan2(was.cross(is), was.dot(is))));
    }

    private boolean fixedAtStart(Piece piece, Edge centre) throws Refusal {
        EdgeRun run = new EdgeRun(piece, centre);
        if (!keep.isEmpty()) {
            Optional<Boolean> start = meets(piece, run, keep);
            return start.orElseThrow(() -> Refusal.of("keep-unknown").with("name", keep));
        }
        for (Edge beside : piece.edges()) {
            if (beside.role() == EdgeRole.NECK) {
                Optional<Boolean> start = meets(piece, run, beside.name());
                if (start.isPresent()) {
                    return start.get();
                }
            }
        }
        Point down = piece.downGrain();
        return down.dot(run.start()) < down.dot(run.end());
    }

    /** Whether the named edge meets the run at its start (true) or its end (false); empty if at neither. */
    private static Optional<Boolean> meets(Piece piece, EdgeRun run, String name) {
        Optional<Edge> beside = piece.edge(name);
        if (beside.isEmpty()) {
            return Optional.empty();
        }
        EdgeRun other = new EdgeRun(piece, beside.get());
        if (other.end().equals(run.start())) {
            return Optional.of(true);
        }
        return other.start().equals(run.end()) ? Optional.of(false) : Optional.empty();
    }
}
