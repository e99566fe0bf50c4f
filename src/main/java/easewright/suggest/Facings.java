package easewright.suggest;

import easewright.measure.LayerCounted;
import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Facings, and bands and yokes in parts: pieces that are drawn from the edge that they finish, with its darts closed, and
 * so are as long as it (common practice). What a piece is must be written on it; which edge it goes on is told by its
 * length, and by the words front, back, waist, neck and armhole as far as they are written.
 */
final class Facings {
    /** Edges that finish one another differ by no more than a careful maker leaves, mm: 1/16 in (Threads 200). */
    private static final double ALIKE = 1.5;

    /** The same of a facing that goes all round, to which every piece adds its own, mm. */
    private static final double ALIKE_ROUND = 3;

    private static final double SURE = 0.7;

    private static final Set<EdgeRole> FACED = EnumSet.of(EdgeRole.WAIST, EdgeRole.NECK, EdgeRole.ARMHOLE);

    /** Parts of a garment that have facings of their own, of which nothing is known here. */
    private static final String[] ELSEWHERE = {
        "pocket", "fly", "vent", "cuff", "collar", "placket", "sleeve", "pleat", "hem", "strap", "flap", "hood"
    };

    private final UnsewnEdges unsewn;

    private Facings(UnsewnEdges unsewn) {
        this.unsewn = unsewn;
    }

    /** Two edges that finish one another. */
    private record Pair(SeamSide edge, SeamSide cut) {
        double apart() {
            return edge.apart(cut);
        }
    }

    /** Waistbands and yokes of a skirt or trousers in a front and a back, below them the waists that they are sewn to. */
    static void bandsInParts(UnsewnEdges unsewn) {
        Facings facings = new Facings(unsewn);
        List<Piece> bands = facings.pieces(Facings::isBand);
        List<SeamSide> waists = unsewn.of(EdgeRole.WAIST).stream()
                .filter(s -> !bands.contains(s.piece()) && !isFacing(s.piece()))
                .filter(s -> s.pieceHas(EdgeRole.HEM) && !s.onBodice())
                .toList();
        List<Pair> pairs = new ArrayList<>();
        for (Piece band : bands) {
            facings.best(waists, facings.edges(band)).ifPresent(pairs::add);
        }
        long sewnTo = pairs.stream().map(p -> p.edge().ref()).distinct().count();
        // A part alone would be as long as some waist by chance.
        if (bands.size() > 1 && sewnTo == bands.size() && waists.size() == bands.size()) {
            pairs.forEach(pair -> facings.sew(pair, "waistband"));
        }
    }

    /** Facings on the edges that they face, be it a waist, a neck or an armhole, or the free edge of a band. */
    static void facings(UnsewnEdges unsewn) {
        Facings facings = new Facings(unsewn);
        List<Pair> found = new ArrayList<>();
        List<Pair> unsaid = new ArrayList<>();
        for (Piece facing : facings.pieces(Facings::isFacing)) {
            List<SeamSide> faced = facings.faced(facing);
            List<SeamSide> own = facings.edges(facing);
            Optional<Pair> pair = facings.best(faced, own);
            boolean told = roleSaid(facing).isPresent() || isStrip(facing);
            pair.ifPresent(found::add);
            if (pair.isPresent() && told) {
                facings.sew(pair.get(), name(pair.get()));
            } else if (pair.isPresent()) {
                unsaid.add(pair.get());
            } else if (roleSaid(facing).isPresent()) {
                facings.round(faced, own);
            }
        }
        // Of a piece of any form some edge is as long as some other by chance; hardly so of a front and a back.
        unsaid.stream()
                .filter(pair -> found.stream()
                        .anyMatch(p -> !p.edge().ref().equals(pair.edge().ref())
                                && p.edge().edge().role() == pair.edge().edge().role()))
                .forEach(pair -> facings.sew(pair, name(pair)));
    }

    private List<Piece> pieces(Predicate<Piece> wanted) {
        return unsewn.pieces().stream().filter(wanted).toList();
    }

    private static boolean isFacing(Piece piece) {
        return LayerCounted.isLayer(piece)
                && Vocabulary.has(piece.name(), "facing")
                && !Vocabulary.has(piece.name(), ELSEWHERE);
    }

    private static boolean isBand(Piece piece) {
        return Vocabulary.has(piece.name(), "waistband", "waist band", "yoke")
                && Vocabulary.has(piece.name(), "front", "back")
                && !Vocabulary.has(piece.name(), "facing", "lining", "interfacing")
                && piece.edges().stream().noneMatch(e -> e.role() == EdgeRole.SHOULDER || e.role() == EdgeRole.ARMHOLE);
    }

    /** What the facing is for, where that is written on it. */
    private static Optional<EdgeRole> roleSaid(Piece facing) {
        String name = facing.name();
        return Vocabulary.has(name, "waist")
                ? Optional.of(EdgeRole.WAIST)
                : Vocabulary.has(name, "neck")
                        ? Optional.of(EdgeRole.NECK)
                        : Vocabulary.has(name, "armhole", "arm hole", "armscye")
                                ? Optional.of(EdgeRole.ARMHOLE)
                                : Optional.empty();
    }

    /** Whether it is told which of its edges is sewn on and which is free. */
    private static boolean isStrip(Piece facing) {
        return facing.edge(Roles.FREE_EDGE).isPresent();
    }

    /** The edges of a piece by which it may be sewn on. */
    private List<SeamSide> edges(Piece piece) {
        return unsewn.of(EdgeRole.SEAM, EdgeRole.WAIST, EdgeRole.NECK, EdgeRole.ARMHOLE).stream()
                .filter(s -> s.piece() == piece)
                .toList();
    }

    /** The edges that a facing may face. */
    private List<SeamSide> faced(Piece facing) {
        Optional<EdgeRole> role = roleSaid(facing);
        boolean ofBand = Vocabulary.has(facing.name(), "yoke", "waistband", "waist band");
        Stream<SeamSide> ofBands = pieces(Facings::isBand).stream().flatMap(band -> edges(band).stream());
        Stream<SeamSide> others = unsewn.of(FACED.toArray(new EdgeRole[0])).stream()
                .filter(s -> !isFacing(s.piece()) && !isBand(s.piece()))
                .filter(s -> role.isEmpty() || role.get() == s.edge().role());
        return Stream.concat(
                        role.filter(r -> r != EdgeRole.WAIST).isPresent() ? Stream.empty() : ofBands,
                        ofBand ? Stream.empty() : others)
                .toList();
    }

    /** The pair that is most alike; none where it might as well be another one. */
    private Optional<Pair> best(List<SeamSide> faced, List<SeamSide> own) {
        List<Pair> alike = new ArrayList<>();
        for (SeamSide cut : own) {
            for (SeamSide edge : faced) {
                if (agree(edge.piece(), cut.piece()) && edge.apart(cut) <= ALIKE) {
                    alike.add(new Pair(edge, cut));
                }
            }
        }
        Optional<Pair> best = alike.stream().min(Comparator.comparingDouble(Pair::apart));
        boolean one = alike.stream().map(Pair::edge).distinct().count() == 1;
        // Both long edges of a straight band fit; the one that is named for it is taken.
        Optional<Pair> named =
                alike.stream().filter(p -> p.cut().edge().name().equals("seam")).findFirst();
        return one ? named.or(() -> best) : Optional.empty();
    }

    /** What is written on one as front or back is not written otherwise on the other. */
    private static boolean agree(Piece one, Piece other) {
        return agree(one, other, "front", "back") && agree(one, other, "back", "front");
    }

    private static boolean agree(Piece one, Piece other, String word, String opposite) {
        boolean says = Vocabulary.has(one.name(), word) && !Vocabulary.has(one.name(), opposite);
        boolean against = Vocabulary.has(other.name(), opposite) && !Vocabulary.has(other.name(), word);
        return !(says && against);
    }

    /** A facing in one piece for all edges of its kind. */
    private void round(List<SeamSide> faced, List<SeamSide> own) {
        double whole = SeamSide.wholeLength(faced);
        own.stream()
                .filter(s -> !faced.isEmpty() && Math.abs(s.wholeLength() - whole) <= ALIKE_ROUND)
                .findFirst()
                .ifPresent(cut -> unsewn.sewRound(name(faced.get(0)), faced, cut, SURE));
    }

    /** Sews a pair, unless what was sewn since it was found has taken one of its edges. */
    private void sew(Pair pair, String name) {
        if (!unsewn.isFree(pair.edge()) || !unsewn.isFree(pair.cut())) {
            return;
        }
        boolean darts = pair.edge().piece().darts().stream()
                .anyMatch(d -> d.edge().equals(Optional.of(pair.edge().edge().name())));
        unsewn.sewCutToEdge(name, pair.edge(), pair.cut(), darts ? "cut-to-edge-folded" : "cut-to-edge", SURE);
    }

    private static String name(Pair pair) {
        return name(pair.edge());
    }

    private static String name(SeamSide edge) {
        return switch (edge.edge().role()) {
            case NECK -> "neck facing";
            case ARMHOLE -> "armhole facing";
            default -> "waist facing";
        };
    }
}
