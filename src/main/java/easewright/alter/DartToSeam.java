package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Moves shaping from darts into the seams of the same pieces, or back: the darts take in so much less, the seams so much
 * more, and the finished girth at the level and the width of each piece there stay.
 *
 * @param level           name of the level whose girth stays
 * @param amount          by how much the darts take in less, over the whole girth, mm; below 0 from the seams into darts
 * @param darts           which, each with its share; empty: every dart that takes cloth in at the level, all alike
 * @param seams           edges that take up what the darts give; empty: every seam edge of those pieces at the level
 * @param taper           how the change of the seams dies away
 * @param acceptProtected protected edges may change
 */
public record DartToSeam(
        String level, double amount, List<DartShare> darts, List<Share> seams, Taper taper, boolean acceptProtected)
        implements ByAmount {
    static final String METHOD = "dart-to-seam";

    static final Way WAY = new Way(
            METHOD,
            Way.Family.DARTS,
            Way.Aim.MOVED,
            "amount",
            List.of(
                    Setting.needed("level", Setting.Kind.LEVEL),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.free("dart", Setting.Kind.DARTS),
                    Setting.free("edge", Setting.Kind.SHARES),
                    Setting.choice("taper", Taper.SMOOTH),
                    Setting.flag(Way.ACCEPT)),
            DartToSeam::from);

    /**
     * @throws IllegalArgumentException if the amount is no number
     */
    public DartToSeam {
        Amounts.require(amount);
        darts = List.copyOf(darts);
        seams = List.copyOf(seams);
    }

    public static DartToSeam at(String level, double amount, DartShare... darts) {
        return new DartToSeam(level, amount, List.of(darts), List.of(), Taper.SMOOTH, false);
    }

    @Override
    public DartToSeam withAmount(double mm) {
        return new DartToSeam(level, mm, darts, seams, taper, acceptProtected);
    }

    @Override
    public ChangeNote note() {
        return new Settings()
                .text("level", level)
                .number("amount", amount)
                .darts("dart", darts)
                .shares("edge", seams)
                .text("taper", Settings.name(taper))
                .flag(Way.ACCEPT, acceptProtected)
                .note(METHOD);
    }

    static DartToSeam from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        return new DartToSeam(
                s.text("level"),
                s.number("amount"),
                s.darts("dart"),
                s.shares("edge"),
                s.choice("taper", Taper.class),
                s.flag(Way.ACCEPT));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Level at = Known.level(pattern, level);
        List<DartWork.Part> parts = new DartWork(pattern, at, darts, acceptProtected).parts();
        List<Share> taking = seams.isEmpty() ? seams(at, parts) : seams;
        if (amount == 0) {
            return Altered.nothing(pattern);
        }
        try {
            return with(pattern, at, taking, amount);
        } catch (Refusal why) {
            if (why.largest().isPresent()) {
                throw Bisect.largest(why, amount, some -> with(pattern, at, taking, some));
            }
            throw why;
        }
    }

    private Altered with(Pattern pattern, Level at, List<Share> taking, double some) throws Refusal {
        SeamChange seam =
                new SeamChange(level, -some, taking, taper, false, List.of(), List.of(), false, acceptProtected);
        // In the opposite order for the opposite amount, which so takes back exactly.
        boolean back = some < 0;
        Altered first = back ? seam.apply(pattern) : inDarts(pattern, at, some);
        Altered second = back ? inDarts(first.pattern(), at, some) : seam.apply(first.pattern());
        List<Finding> findings = new ArrayList<>(first.findings());
        findings.addAll(second.findings());
        return new Altered(second.pattern().withChanges(pattern.changes()).withChange(note()), findings);
    }

    private Altered inDarts(Pattern pattern, Level at, double some) throws Refusal {
        return new DartWork(pattern, at, darts, acceptProtected).done(some);
    }

    /** The seams of each piece at the level, sharing what its darts give. */
    private List<Share> seams(Level at, List<DartWork.Part> parts) throws Refusal {
        Map<Piece, Double> weights = new LinkedHashMap<>();
        parts.forEach(p -> weights.merge(p.piece(), p.weight(), Double::sum));
        List<Share> shares = new ArrayList<>();
        for (Map.Entry<Piece, Double> entry : weights.entrySet()) {
            Piece piece = entry.getKey();
            List<Edge> edges = new ArrayList<>();
            for (Edge edge : piece.edges()) {
                if (edge.role() == EdgeRole.SEAM
                        && LevelReach.of(piece, edge, at).isPresent()) {
                    edges.add(edge);
                }
            }
            if (edges.isEmpty()) {
                throw Refusal.of("no-seam-beside-dart")
                        .with("piece", piece.name())
                        .with("level", level);
            }
            edges.forEach(
                    e -> shares.add(new Share(EdgeRef.of(piece.id(), e.name()), entry.getValue() / edges.size())));
        }
        return shares;
    }
}
