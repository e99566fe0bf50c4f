package easewright.suggest;

import easewright.pattern.EdgeRole;
import easewright.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Seams of two edges. How much longer one side may be is common practice: a back shoulder is eased in by up to 15 mm, a
 * back inseam stretched by up to 12 mm, and a bust dart takes up as much as 90 mm of a side.
 */
final class EdgeToEdge {
    /** A back shoulder is longer than that of its front by up to this, mm. */
    private static final double SHOULDER_EASE = 15;

    /** A bust dart in the side takes up no more than this, mm. */
    private static final double BUST_DART = 90;

    private EdgeToEdge() {}

    /** Two shoulders on two pieces. */
    static void shoulders(UnsewnEdges unsewn) {
        List<SeamSide> sides = unsewn.of(EdgeRole.SHOULDER);
        while (sides.size() >= 2) {
            SeamSide one = sides.remove(0);
            nearest(sides, one, SHOULDER_EASE).ifPresent(two -> {
                sides.remove(two);
                unsewn.sew("shoulder", one, two, 0.9);
            });
        }
    }

    /** Of those on another piece whose length is not farther off, the one that is most alike. */
    private static Optional<SeamSide> nearest(List<SeamSide> sides, SeamSide one, double most) {
        return sides.stream()
                .filter(s -> s.piece() != one.piece() && s.apart(one) <= most)
                .min(Comparator.comparingDouble(s -> s.apart(one)));
    }

    /** Seams of the same name on a front and a back, or on any two pieces. */
    static void sameNames(UnsewnEdges unsewn) {
        List<SeamSide> sides = unsewn.of(EdgeRole.SEAM);
        while (!sides.isEmpty()) {
            SeamSide one = sides.remove(0);
            if (one.edge().name().matches("(side|inseam|outseam)( \\d)?")) {
                List<SeamSide> namesakes =
                        sides.stream().filter(s -> word(s).equals(word(one))).toList();
                nearest(namesakes, one, Math.max(12, 0.03 * one.mm())).ifPresent(two -> {
                    sides.remove(two);
                    String name = one.edge().name().replaceAll(" \\d$", "");
                    unsewn.sewAlike(name.equals("side") ? "side seam" : name, one, two, 0.9);
                });
            }
        }
    }

    /**
     * The side seams of a front and a back that have an armhole, and are too far apart to say why: a bust dart that is not
     * marked, or length to ease in. The only ones of a garment belong together all the same.
     */
    static void sidesApart(UnsewnEdges unsewn) {
        List<SeamSide> sides = unsewn.of(EdgeRole.SEAM).stream()
                .filter(s -> word(s).equals("side") && s.pieceHas(EdgeRole.ARMHOLE))
                .toList();
        List<Piece> pieces = sides.stream().map(SeamSide::piece).distinct().toList();
        if (pieces.size() != 2) {
            return;
        }
        List<SeamSide> some = on(sides, pieces.get(0));
        List<SeamSide> others = on(sides, pieces.get(1));
        boolean alike = names(some).equals(names(others))
                && some.get(0).times() == others.get(0).times()
                && (some.get(0).onBack() != others.get(0).onBack()
                        || !some.get(0).onFront() && !some.get(0).onBack());
        for (int i = 0; alike && i < some.size(); i++) {
            if (some.get(i).apart(others.get(i)) <= BUST_DART) {
                unsewn.sewApart("side seam", some.get(i), List.of(others.get(i)), "sides-apart");
            }
        }
    }

    private static List<SeamSide> on(List<SeamSide> sides, Piece piece) {
        return sides.stream().filter(s -> s.piece() == piece).toList();
    }

    private static List<String> names(List<SeamSide> sides) {
        return sides.stream().map(s -> s.edge().name()).toList();
    }

    private static String word(SeamSide side) {
        return side.edge().name().split(" ")[0];
    }

    /** The two long seams of one sleeve. */
    static void underarms(UnsewnEdges unsewn) {
        List<SeamSide> sides = unsewn.of(EdgeRole.SEAM);
        for (int i = 0; i < sides.size(); i++) {
            for (int j = i + 1; j < sides.size(); j++) {
                SeamSide one = sides.get(i);
                SeamSide two = sides.get(j);
                boolean sleeve = one.piece() == two.piece()
                        && one.edge().name().endsWith("underarm")
                        && two.edge().name().endsWith("underarm");
                if (sleeve && one.apart(two) < 0.05 * one.mm()) {
                    unsewn.sew("sleeve seam", one, two, 0.9);
                }
            }
        }
    }

    /** Seams left over that have just one other of their length; not those of facings, which are drawn to some edge. */
    static void leftOver(UnsewnEdges unsewn) {
        List<SeamSide> sides = new ArrayList<>(unsewn.of(EdgeRole.SEAM));
        sides.removeIf(s -> Vocabulary.has(s.piece().name(), "facing"));
        for (SeamSide one : List.copyOf(sides)) {
            List<SeamSide> alike = alike(sides, one);
            if (sides.contains(one) && alike.size() == 1) {
                SeamSide two = alike.get(0);
                if (alike(sides, two).size() == 1) {
                    sides.remove(one);
                    sides.remove(two);
                    unsewn.sew(SeamNames.stem(one.ref(), two.ref()), one, two, 0.45);
                }
            }
        }
    }

    private static List<SeamSide> alike(List<SeamSide> sides, SeamSide one) {
        return sides.stream()
                .filter(s -> s.piece() != one.piece() && s.apart(one) <= 0.01 * one.mm() + 1)
                .toList();
    }
}
