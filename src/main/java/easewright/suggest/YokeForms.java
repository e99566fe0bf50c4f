package easewright.suggest;

import easewright.pattern.EdgeRole;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * What the edges of a yoke are for, and those of a back that is sewn below one. A yoke has shoulders beside its neck and
 * a seam below; a back below it has that seam above, and an armhole between it and its side.
 */
final class YokeForms {
    static final String SEAM = "yoke seam";

    /** A yoke seam is straight or bowed by at most so much of its length. */
    private static final double BOWED = 0.06;

    /** Both sides of a whole back are as long as each other within this part. */
    private static final double ALIKE = 0.1;

    private YokeForms() {}

    /** Roles by the numbers of the runs, those that can be told. */
    static Optional<Map<Integer, Form.Label>> yoke(Form form) {
        OptionalInt low = form.lowest();
        if (low.isEmpty()) {
            return Optional.empty();
        }
        Map<Integer, Form.Label> labels = new TreeMap<>();
        Edges edges = new Edges(form, labels);
        int shoulders = 0;
        for (int i = 0; i < form.size(); i++) {
            for (int side : new int[] {1, -1}) {
                if (isShoulder(form, i, side, low.getAsInt())) {
                    shoulders++;
                    edges.put(i, EdgeRole.SHOULDER, "shoulder");
                    edges.put(i + side, EdgeRole.ARMHOLE, "armhole");
                    edges.put(i - side, EdgeRole.NECK, "neck");
                }
            }
        }
        if (shoulders == 0) {
            return Optional.empty();
        }
        edges.put(low.getAsInt(), EdgeRole.SEAM, SEAM);
        return Optional.of(labels);
    }

    /** A slanting edge, the neck on one side of it, and on the other an armhole that runs down to the seam below. */
    private static boolean isShoulder(Form form, int i, int side, int low) {
        int neck = Math.floorMod(i - side, form.size());
        int armhole = Math.floorMod(i + side, form.size());
        boolean four = i != low && neck != low && armhole != low && Math.floorMod(i + 2 * side, form.size()) == low;
        return four
                && form.isHollow(neck)
                && form.run(i).isStraight()
                && form.run(i).lean() > 35
                && form.run(armhole).lean() < 50
                && form.fold().orElse(-1) != armhole
                && form.run(i).middle().y() < form.run(armhole).middle().y();
    }

    /** The same of a back below a yoke, or of a front; a whole one has two armholes. */
    static Optional<Map<Integer, Form.Label>> belowYoke(Form form) {
        OptionalInt high = form.highest();
        OptionalInt low = form.lowest();
        if (high.isEmpty() || low.isEmpty() || high.getAsInt() == low.getAsInt()) {
            return Optional.empty();
        }
        int seam = high.getAsInt();
        boolean one = isArmhole(form, seam, 1, low.getAsInt());
        boolean two = isArmhole(form, seam, -1, low.getAsInt());
        boolean whole = one
                && two
                && form.fold().isEmpty()
                && alike(form, seam + 1, seam - 1)
                && alike(form, seam + 2, seam - 2)
                && form.run(seam).lean() > 87;
        boolean half = one != two && isCentre(form, one ? seam - 1 : seam + 1);
        if (Math.abs(form.run(seam).bulge()) > BOWED || !whole && !half) {
            return Optional.empty();
        }
        Map<Integer, Form.Label> labels = new TreeMap<>();
        Edges edges = new Edges(form, labels);
        edges.put(seam, EdgeRole.SEAM, SEAM);
        for (int side : new int[] {1, -1}) {
            if (side > 0 ? one : two) {
                edges.put(seam + side, EdgeRole.ARMHOLE, "armhole");
                edges.sides(seam + 2 * side, side, low.getAsInt());
            }
        }
        return Optional.of(labels);
    }

    private static boolean isArmhole(Form form, int seam, int side, int low) {
        int hollow = Math.floorMod(seam + side, form.size());
        int flank = Math.floorMod(seam + 2 * side, form.size());
        return form.isHollow(hollow)
                && hollow != low
                && flank != low
                && form.fold().orElse(-1) != hollow
                && form.fold().orElse(-1) != flank
                && form.run(flank).lean() < 35
                && form.run(hollow).middle().y() < form.run(flank).middle().y();
    }

    private static boolean isCentre(Form form, int i) {
        int run = Math.floorMod(i, form.size());
        return form.fold().isPresent()
                ? form.fold().getAsInt() == run
                : form.upright().contains(run);
    }

    private static boolean alike(Form form, int i, int j) {
        double one = form.run(i).length();
        double two = form.run(j).length();
        return Math.abs(one - two) < ALIKE * Math.max(one, two);
    }

    private record Edges(Form form, Map<Integer, Form.Label> labels) {
        void put(int run, EdgeRole role, String name) {
            labels.putIfAbsent(Math.floorMod(run, form.size()), new Form.Label(role, name));
        }

        /** Down to the hem, though a corner at the waist may part it. */
        void sides(int from, int step, int low) {
            for (int i = from;
                    Math.floorMod(i, form.size()) != low && form.run(i).lean() < 50;
                    i += step) {
                put(i, EdgeRole.SEAM, "side");
            }
        }
    }
}
