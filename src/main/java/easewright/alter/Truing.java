package easewright.alter;

import easewright.geom.Point;
import easewright.measure.Cutting;
import easewright.measure.GarmentMeasures;
import easewright.measure.Measures;
import easewright.pattern.Dart;
import easewright.pattern.Edge;
import easewright.pattern.EdgeRef;
import easewright.pattern.Finding;
import easewright.pattern.Mate;
import easewright.pattern.MateSides;
import easewright.pattern.Pattern;
import easewright.pattern.PatternPart;
import easewright.pattern.Piece;
import easewright.pattern.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The one door to truing: what is untrue in a pattern, with a proposal for each (docs/sources.md 4.5). */
public final class Truing {
    /** Angles are true within this, degrees. */
    private static final double TRUE_DEGREES = 1;

    /** The same in radians. */
    static final double TRUE_WITHIN = Math.toRadians(TRUE_DEGREES);

    /** An angle farther off is meant to be so: a V neck, a pointed hem. Common practice. */
    private static final double MEANT = 20;

    private static final double MEANT_JOINED = 30;

    /** A cap this far off shows as a dent or peak in the seam, mm; common practice. */
    private static final double CAP_WITHIN = 0.3;

    /** An allowance is cut as exactly as this, mm; common practice. */
    static final double ALLOWANCE_WITHIN = 0.5;

    /** The legs of a dart are drawn as exactly as this, mm; common practice. */
    private static final double LEGS_WITHIN = 0.5;

    /** Legs that differ by more are meant to: what is sewn there is no plain dart. Common practice. */
    private static final double LEGS_MEANT = 20;

    private static final Set<String> CODES = Set.of(
            "joined-line-bends",
            "corner-not-square",
            "dart-seam-bends",
            "dart-cap-off",
            "dart-legs-differ",
            "corner-within-edge",
            "notches-apart",
            "allowance-uneven");

    /** Values of findings that say by how far, mm, something lies off its place. */
    private static final List<String> DISTANCES = List.of("off", "apart", "difference");

    private Truing() {}

    /** Whether a finding is one of those that proposals are made for. */
    public static boolean tells(Finding finding) {
        return CODES.contains(finding.code());
    }

    /** Whether what a proposal is made for lies so little off its place that for cutting it is the same. */
    public static boolean isLittle(Finding finding) {
        return DISTANCES.stream().anyMatch(key -> finding.values().get(key) instanceof Double mm && Cutting.same(mm));
    }

    /** Everything untrue, seams first. */
    public static List<Proposal> proposals(Pattern pattern) {
        return proposals(pattern, Measures.of(pattern));
    }

    /** The same where the pattern has been measured already. */
    public static List<Proposal> proposals(Pattern pattern, GarmentMeasures measures) {
        return proposals(pattern, measures, pattern.pieces());
    }

    /** What of that concerns any of the pieces. */
    public static List<Proposal> proposals(Pattern pattern, GarmentMeasures measures, List<Piece> pieces) {
        List<Proposal> all = new ArrayList<>();
        PatternPart.bySize(pattern).forEach((size, part) -> {
            List<Piece> some = pieces.stream()
                    .filter(p ->
                            size.isEmpty() || p.size().isEmpty() || p.size().equals(size))
                    .toList();
            GarmentMeasures own = size.map(measures::inSize).orElse(measures);
            for (Proposal one : some.isEmpty() ? List.<Proposal>of() : inOne(part.alone(), own, some)) {
                all.add(new Proposal(one.finding(), size, one.truing(), one.protectedEdges()));
            }
        });
        return List.copyOf(all);
    }

    private static List<Proposal> inOne(Pattern pattern, GarmentMeasures measures, List<Piece> pieces) {
        List<Proposal> all = new ArrayList<>();
        SewnPieces sewn = new SewnPieces(pattern, measures);
        List<Mate> mates = mates(pattern, pieces);
        Pattern stitched = SewnCopy.of(pattern, measures, concerned(pieces, mates));
        List<Piece> lines =
                pieces.stream().map(p -> stitched.piece(p.id()).orElseThrow()).toList();
        SewnPieces stitchedPieces = new SewnPieces(stitched, measures);
        joints(pattern, stitched, measures, mates, stitchedPieces, all);
        corners(pattern, lines, stitchedPieces, all);
        darts(lines, all);
        blends(pieces, all);
        notches(pattern, measures, mates, sewn, all);
        lines(pieces, all);
        return List.copyOf(all);
    }

    /** The pieces, and those that they are sewn to, by what mates call them. */
    private static Set<String> concerned(List<Piece> pieces, List<Mate> mates) {
        Set<String> names = new HashSet<>();
        pieces.forEach(piece -> names.add(piece.id()));
        mates.forEach(
                m -> Stream.concat(m.first().stream(), m.second().stream()).forEach(ref -> names.add(ref.piece())));
        return names;
    }

    /** The mates in which one of the pieces is sewn. */
    private static List<Mate> mates(Pattern pattern, List<Piece> pieces) {
        if (pieces.size() == pattern.pieces().size()) {
            return pattern.mates();
        }
        Set<String> names = new HashSet<>();
        for (Piece piece : pieces) {
            names.add(piece.id());
            names.add(piece.name());
            names.add(piece.plainName());
        }
        return pattern.mates().stream()
                .filter(m -> Stream.concat(m.first().stream(), m.second().stream())
                        .anyMatch(ref -> names.contains(ref.piece())))
                .toList();
    }

    /**
     * Whether an angle is off by more than what is true and not meant to be: a corner that was drawn as one that is made
     * true is not meant to be what a change has made of it.
     *
     * @param off   by how much, degrees, and as drawn
     * @param meant from where on it is meant, degrees
     */
    private static boolean isUntrue(double off, double drawn, double meant) {
        boolean grown = Math.abs(drawn) <= meant && Math.abs(off) > Math.abs(drawn);
        return Math.abs(off) > TRUE_DEGREES && (Math.abs(off) <= meant || grown);
    }

    /** By how much a corner is wider than it was drawn, degrees. */
    private static double grown(Pattern pattern, SewnCorner corner) {
        return Math.toDegrees(CornerGrown.by(
                pattern.piece(corner.piece().id()).orElseThrow(), corner.hold().sewn()));
    }

    private static void joints(
            Pattern drawn,
            Pattern pattern,
            GarmentMeasures measures,
            List<Mate> mates,
            SewnPieces sewn,
            List<Proposal> all) {
        for (JoinTruer.Joint joint : JoinTruer.joints(pattern, measures, mates, sewn)) {
            double missing = Math.toDegrees(joint.missing());
            SewnCorner first = joint.first();
            SewnCorner second = joint.second();
            if (isUntrue(missing, missing + grown(drawn, first) + grown(drawn, second), MEANT_JOINED)) {
                MateSides sides = MateSides.of(pattern, joint.mate());
                Finding finding = Finding.of(
                                "joined-line-bends",
                                Severity.NOTE,
                                first.piece().name())
                        .with("mate", joint.mate().name())
                        .with("edge", first.edge().name())
                        .with("one", sides.first())
                        .with("other", sides.second())
                        .with("degrees.degrees", Math.abs(missing))
                        .with("x", first.hold().sewn().x())
                        .with("y", first.hold().sewn().y());
                List<String> kept = new ArrayList<>();
                kept(first.piece(), first.edge(), kept);
                kept(second.piece(), second.edge(), kept);
                add(all, finding, Trued.join(joint.mate().name(), joint.atEnd()), kept);
            }
        }
    }

    private static void corners(Pattern drawn, List<Piece> pieces, SewnPieces sewn, List<Proposal> all) {
        for (SewnCorner corner : SquareTruer.corners(pieces, sewn)) {
            double off = Math.toDegrees(corner.angle()) - 90;
            if (isUntrue(off, off - grown(drawn, corner), MEANT)) {
                Finding finding = Finding.of(
                                "corner-not-square",
                                Severity.NOTE,
                                corner.piece().name())
                        .with("edge", corner.edge().name())
                        .with("guide", corner.guide().name())
                        .with("degrees.degrees", Math.abs(off))
                        .with("x", corner.hold().sewn().x())
                        .with("y", corner.hold().sewn().y());
                List<String> kept = new ArrayList<>();
                kept(corner.piece(), corner.edge(), kept);
                if (SquareTruer.movesGuide(corner)) {
                    kept(corner.piece(), corner.guide(), kept);
                }
                EdgeRef edge = EdgeRef.of(corner.piece().id(), corner.edge().name());
                add(all, finding, Trued.square(edge, !corner.guideAtEnd()), kept);
            }
        }
    }

    private static void darts(List<Piece> pieces, List<Proposal> all) {
        for (ClosedDart folded : ClosedDart.all(pieces)) {
            double bends = Math.toDegrees(folded.bends());
            double difference = Math.abs(folded.longer());
            boolean unequal = difference > LEGS_WITHIN && difference <= LEGS_MEANT && Math.abs(bends) <= MEANT;
            boolean bent = Math.abs(bends) > TRUE_DEGREES && Math.abs(bends) <= MEANT;
            if (!unequal && !bent && !(folded.off() > CAP_WITHIN && Math.abs(bends) <= MEANT)) {
                continue;
            }
            Piece piece = folded.piece();
            Dart dart = folded.dart();
            Point middle = dart.mouth1().towards(dart.mouth2(), 0.5);
            Finding finding = (unequal
                            ? Finding.of("dart-legs-differ", Severity.NOTE, piece.name())
                                    .with("difference", difference)
                            : Finding.of(bent ? "dart-seam-bends" : "dart-cap-off", Severity.NOTE, piece.name())
                                    .with("degrees.degrees", Math.abs(bends))
                                    .with("off", folded.off()))
                    .with("dart", dart.name())
                    .with("x", middle.x())
                    .with("y", middle.y());
            // Legs that are made equal have the seam over them redrawn at the same time.
            Trued truing = unequal ? Trued.legs(piece.id(), dart.name()) : Trued.cap(piece.id(), dart.name());
            List<String> kept = new ArrayList<>();
            dart.edge().flatMap(piece::edge).ifPresent(e -> kept(piece, e, kept));
            add(all, finding, truing, kept);
        }
    }

    private static void blends(List<Piece> pieces, List<Proposal> all) {
        for (BlendTruer.Corner corner : BlendTruer.corners(pieces)) {
            Finding finding = Finding.of(
                            "corner-within-edge", Severity.NOTE, corner.piece().name())
                    .with("edge", corner.edge().name())
                    .with("degrees.degrees", Math.toDegrees(Math.abs(corner.turn())))
                    .with("x", corner.at().x())
                    .with("y", corner.at().y());
            List<String> kept = new ArrayList<>();
            kept(corner.piece(), corner.edge(), kept);
            EdgeRef edge = EdgeRef.of(corner.piece().id(), corner.edge().name());
            add(all, finding, Trued.blend(edge, corner.at()), kept);
        }
    }

    private static void notches(
            Pattern pattern, GarmentMeasures measures, List<Mate> mates, SewnPieces sewn, List<Proposal> all) {
        for (NotchTruer.Apart apart : NotchTruer.apart(pattern, measures, mates, sewn)) {
            if (!Cutting.same(apart.apart())) {
                Finding finding = Finding.of(
                                "notches-apart", Severity.NOTE, apart.moves().name())
                        .with("mate", apart.mate().name())
                        .with("notch", apart.notch())
                        .with("other", apart.other().name())
                        .with("apart", apart.apart())
                        .with("x", apart.from().x())
                        .with("y", apart.from().y());
                add(
                        all,
                        finding,
                        Trued.notch(
                                apart.mate().name(),
                                apart.notch(),
                                apart.moves().id()),
                        List.of());
            }
        }
    }

    private static void lines(List<Piece> pieces, List<Proposal> all) {
        for (CutTruer.Beside beside : CutTruer.strayed(pieces)) {
            if (beside.off() > ALLOWANCE_WITHIN + beside.drawn()) {
                Finding finding = Finding.of(
                                "allowance-uneven",
                                Severity.NOTE,
                                beside.piece().name())
                        .with("edge", beside.edge().name())
                        .with("off", beside.off())
                        .with("x", beside.at().x())
                        .with("y", beside.at().y());
                add(all, finding, Trued.cut(beside.piece().id()), List.of());
            }
        }
    }

    private static void kept(Piece piece, Edge edge, List<String> kept) {
        String name = piece.name() + "/" + edge.name();
        if (edge.isProtected() && !kept.contains(name)) {
            kept.add(name);
        }
    }

    private static void add(List<Proposal> all, Finding finding, Trued truing, List<String> kept) {
        all.add(new Proposal(finding, kept.isEmpty() ? truing : truing.acceptingProtected(), kept));
    }
}
