package easewright.svg;

import easewright.geom.Box;
import easewright.geom.Spacing;
import easewright.pattern.Caption;
import easewright.pattern.SizeNames;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The smaller sizes of a nest without layers lie inside the largest, as its stitching line would. Two outlines, one in the
 * other, are a cutting and a stitching line; three or more in the same place are sizes, and so are just as many as the
 * words on them name, and two of which each lies in a group called "size" so and so. Where each size has both lines, the one that runs evenly inside another is that one's stitching line.
 * Lines that all run evenly inside each other are the cutting, stitching and topstitching lines of one piece, unless words
 * or their groups name as many sizes or they reach further in than such lines do.
 */
final class SizesInside {
    /** The smallest of some sizes has at least this part of the area of the largest. */
    private static final double LEAST_OF_AREA = 0.4;

    /** What two sizes have in common is at least this part of what they cover together. */
    private static final double SAME_PLACE = 0.5;

    private static final int LEAST_SIZES = 3;

    /** The boxes of one line drawn twice differ by less than this, mm. */
    private static final double SAME_LINE = 1;

    /** A stitching line runs at one distance for at least this part of its length. */
    private static final double EVEN = 0.85;

    /** The lines of one piece lie within so far of its outline, mm: a seam and what is stitched beside it (common practice). */
    private static final double DEEPEST_LINE = 30;

    private final Drawing drawing;
    private final List<PieceOutline> outer;

    /**
     * @param outer the outlines that lie in no other
     */
    SizesInside(Drawing drawing, List<PieceOutline> outer) {
        this.drawing = drawing;
        this.outer = outer;
    }

    /**
     * @param inside outlines that lie in some other, the largest first
     * @return those of them that are sizes of their own
     */
    Set<PieceOutline> among(List<PieceOutline> inside) {
        Set<PieceOutline> sizes = Collections.newSetFromMap(new IdentityHashMap<>());
        for (PieceOutline largest : outer) {
            List<PieceOutline> nest = new ArrayList<>();
            nest.add(largest);
            for (PieceOutline one : inside) {
                boolean held = maySizes(largest, one) && largest.holds(one);
                if (held && nest.stream().noneMatch(other -> isOneLine(one, other))) {
                    nest.add(one);
                }
            }
            if (nest.size() > 1) {
                long beside = outer.stream()
                        .filter(other -> other != largest && maySizes(largest, other))
                        .count();
                List<PieceOutline> cut =
                        withoutStitching(nest, named(largest) == nest.size() + beside || groupsName(nest));
                if (groupsSaySizes(nest)) {
                    sizes.addAll(nest.subList(1, nest.size()));
                } else if (cut.size() + beside >= LEAST_SIZES || named(largest) == cut.size() + beside) {
                    sizes.addAll(cut.subList(1, cut.size()));
                }
            }
        }
        return sizes;
    }

    /**
     * An outline evenly inside the next larger one goes with it. Where all of them lie so, all are sizes or none.
     *
     * @param allNamed whether words or groups name each of them as a size
     */
    private static List<PieceOutline> withoutStitching(List<PieceOutline> nest, boolean allNamed) {
        List<Boolean> even = new ArrayList<>();
        for (int i = 1; i < nest.size(); i++) {
            Spacing spacing = spacing(nest.get(i), nest.get(i - 1));
            even.add(spacing.isApart() && spacing.evenness() >= EVEN);
        }
        if (nest.size() >= LEAST_SIZES && !even.contains(false)) {
            double whole = spacing(nest.get(nest.size() - 1), nest.get(0)).usual();
            return allNamed || whole > DEEPEST_LINE ? nest : nest.subList(0, 1);
        }
        List<PieceOutline> cut = new ArrayList<>();
        boolean lastCut = false;
        for (int i = 0; i < nest.size(); i++) {
            lastCut = !(lastCut && even.get(i - 1));
            if (lastCut) {
                cut.add(nest.get(i));
            }
        }
        return cut;
    }

    private static boolean isOneLine(PieceOutline one, PieceOutline other) {
        boolean mayBe = one.area().box().grown(SAME_LINE).contains(other.area().box())
                && other.area().box().grown(SAME_LINE).contains(one.area().box());
        return mayBe && spacing(one, other).isOneLine();
    }

    private static Spacing spacing(PieceOutline inner, PieceOutline outer) {
        return Spacing.of(inner.area().outline(), outer.area().outline());
    }

    private static boolean maySizes(PieceOutline one, PieceOutline other) {
        double least = Math.min(one.area().area(), other.area().area());
        double most = Math.max(one.area().area(), other.area().area());
        Box a = one.area().box();
        Box b = other.area().box();
        Box both = a.union(b);
        Optional<Box> shared = a.shared(b);
        return least >= LEAST_OF_AREA * most
                && shared.isPresent()
                && shared.get().width() * shared.get().height() >= SAME_PLACE * both.width() * both.height();
    }

    /** Whether each of some outlines is drawn in a group of its own that is called by a size. */
    private boolean groupsName(List<PieceOutline> nest) {
        return Set.copyOf(SizeNames.ofLayers(innermost(nest)).values()).size() == nest.size();
    }

    /** The same where all of the groups are called so in words: then even two are sizes. */
    private boolean groupsSaySizes(List<PieceOutline> nest) {
        return groupsName(nest) && innermost(nest).stream().allMatch(SizeNames::saysSize);
    }

    private List<String> innermost(List<PieceOutline> nest) {
        return nest.stream()
                .map(one -> drawing.all().get(one.order()).layers())
                .map(groups -> groups.isEmpty() ? "" : groups.get(groups.size() - 1))
                .toList();
    }

    /** How many sizes the words on an outline name; 0 if they name none. */
    private int named(PieceOutline on) {
        return drawing.captions().stream()
                .filter(caption -> on.area().contains(caption.middle()))
                .map(Caption::lines)
                .flatMap(List::stream)
                .mapToInt(line -> SizeNames.run(line).size())
                .filter(many -> many > 1)
                .findFirst()
                .orElse(0);
    }
}
