package easewright.suggest;

import easewright.pattern.EdgeRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Says what each run of a piece is for, by the words written and by its form. */
final class Roles {
    /** The edge of a facing that is sewn to nothing. */
    static final String FREE_EDGE = "free edge";

    /** The edge that a facing finishes is shorter than its free one by more than this part, where it is told by that. */
    private static final double SHORTER = 0.005;

    /** A half circle is 1.57 times as long as it is wide: what is longer goes down at the sides. */
    private static final double AROUND = 1.6;

    private final Form form;
    private final String name;
    private final String garment;
    private final Worn worn;
    private final Map<Integer, Form.Label> labels = new TreeMap<>();
    private double confidence;

    private Roles(Form form, String name, String garment, List<String> others) {
        this.form = form;
        this.name = name;
        this.garment = garment;
        worn = Worn.said(name, garment, others);
    }

    /**
     * @param labels one for each run, in order; names are unique
     */
    record Named(List<Form.Label> labels, double confidence) {
        Named {
            labels = List.copyOf(labels);
        }
    }

    /**
     * @param name    what the piece is called
     * @param garment words on the sheet that belong to no piece, such as the garment's name
     * @param others  what the other pieces are called
     */
    static Named of(Form form, String name, String garment, List<String> others) {
        Roles roles = new Roles(form, name, garment, others);
        roles.decide();
        return roles.named();
    }

    private void put(int run, EdgeRole role, String label) {
        labels.putIfAbsent(Math.floorMod(run, form.size()), new Form.Label(role, label));
    }

    private boolean says(String... words) {
        return Vocabulary.has(name, words);
    }

    private boolean garmentSays(String... words) {
        return says(words) || Vocabulary.has(garment, words);
    }

    private void decide() {
        form.fold().ifPresent(i -> put(i, EdgeRole.FOLD, "fold"));
        boolean band = says("waistband", "band", "belt", "cuff", "strap", "tie");
        boolean small = says("pocket", "facing", "lining", "flap", "collar", "yoke", "gusset", "hood", "interfacing");
        if (band && !form.strip().isEmpty()) {
            strip(0.8);
        } else if (says("yoke") && YokeForms.yoke(form).isPresent()) {
            YokeForms.yoke(form).get().forEach((i, label) -> put(i, label.role(), label.name()));
            centre();
            confidence = 0.85;
        } else if (isBelowYoke() && YokeForms.belowYoke(form).isPresent()) {
            belowYoke(YokeForms.belowYoke(form).get());
        } else if (!small && form.cap().isPresent() && !says("front", "back", "skirt")) {
            sleeve(form.cap().getAsInt(), says("sleeve") ? 0.9 : 0.7);
        } else if (!small && form.shoulder().isPresent()) {
            bodice(form.shoulder().getAsInt());
        } else if (!small && worn != Worn.ABOVE_WAIST && form.crotch().isPresent()) {
            trousers(
                    form.crotch().getAsInt(), garmentSays("trouser", "pants", "shorts", "leggings", "leg") ? 0.9 : 0.7);
        } else if (!small && says("front", "back", "skirt", "panel", "side") && form.size() <= 5) {
            skirt(garmentSays("skirt") ? 0.85 : 0.65);
        } else if (!form.strip().isEmpty()) {
            strip(0.5);
        } else if (!small && SkirtHalf.of(form).isPresent()) {
            skirt(0.4);
        } else {
            confidence = form.fold().isPresent() ? 0.5 : 0.4;
            if (!says("facing")) {
                asItLies();
            }
        }
    }

    /** What nothing else tells is called by where it lies on the piece. */
    private void asItLies() {
        if (unsaid().size() < 2) {
            return;
        }
        form.highest().ifPresent(i -> put(i, EdgeRole.SEAM, "top"));
        form.lowest().stream().filter(i -> !goesAround(i)).forEach(i -> put(i, EdgeRole.SEAM, "bottom"));
        double middle = (form.left(Double.POSITIVE_INFINITY) + form.right(Double.POSITIVE_INFINITY)) / 2;
        for (int i : unsaid()) {
            // No bare "side": seams of that name are taken for the two of a garment.
            String side = form.run(i).middle().x() < middle ? "left side" : "right side";
            put(i, EdgeRole.SEAM, goesAround(i) ? "sides and bottom" : side);
        }
    }

    private List<Integer> unsaid() {
        return IntStream.range(0, form.size())
                .filter(i -> !labels.containsKey(i))
                .boxed()
                .toList();
    }

    /** Whether it is the one edge beside that at the top, and no mere bow below it. */
    private boolean goesAround(int i) {
        return form.size() == 2 && form.run(i).length() > AROUND * form.run(i).span();
    }

    /** Legs have no fold at the side, so a back on the fold is none, whatever it is worn with. */
    private boolean isBelowYoke() {
        boolean bare = says("skirt", "apron", "bib", "camisole", "strap", "pocket", "facing", "sleeve");
        boolean backOnFold = worn == Worn.UNSAID && says("back") && form.fold().isPresent();
        return !bare && (worn == Worn.ABOVE_WAIST || backOnFold);
    }

    private void belowYoke(Map<Integer, Form.Label> edges) {
        confidence = 0.8;
        edges.forEach((i, label) -> put(i, label.role(), label.name()));
        bodiceHem();
        centre();
    }

    private void sleeve(int cap, double sure) {
        confidence = sure;
        put(cap, EdgeRole.CAP, "cap");
        hem();
        int one = Math.floorMod(cap - 1, form.size());
        int two = Math.floorMod(cap + 1, form.size());
        // Common practice: one notch marks the front of a cap, two the back.
        boolean turned = form.ticksInHalf(cap, false) == 2 && form.ticksInHalf(cap, true) == 1;
        if (turned || form.ticksInHalf(cap, false) == 1 && form.ticksInHalf(cap, true) == 2) {
            put(one, EdgeRole.SEAM, turned ? "back underarm" : "front underarm");
            put(two, EdgeRole.SEAM, turned ? "front underarm" : "back underarm");
            return;
        }
        boolean oneLeft = form.run(one).middle().x() < form.run(two).middle().x();
        put(one, EdgeRole.SEAM, oneLeft ? "left underarm" : "right underarm");
        put(two, EdgeRole.SEAM, oneLeft ? "right underarm" : "left underarm");
    }

    private void hem() {
        form.lowest().ifPresent(i -> put(i, EdgeRole.HEM, "hem"));
    }

    private void bodice(int shoulder) {
        confidence = 0.85;
        int armhole = form.armhole(shoulder);
        put(shoulder, EdgeRole.SHOULDER, "shoulder");
        put(armhole, EdgeRole.ARMHOLE, "armhole");
        int before = Math.floorMod(shoulder - 1, form.size());
        put(armhole == before ? shoulder + 1 : shoulder - 1, EdgeRole.NECK, "neck");
        int beyond = armhole == before ? armhole - 1 : armhole + 1;
        bodiceHem();
        if (!labels.containsKey(Math.floorMod(beyond, form.size()))) {
            put(beyond, EdgeRole.SEAM, "side");
        }
        centre();
    }

    private void bodiceHem() {
        form.lowest().ifPresent(low -> {
            boolean atWaist = form.dartsOn(low) > 0 || garmentSays("bodice") && !garmentSays("top", "shirt");
            put(low, atWaist ? EdgeRole.WAIST : EdgeRole.HEM, atWaist ? "waist" : "hem");
        });
    }

    private void trousers(int crotch, double sure) {
        confidence = sure;
        int waist = form.highest().orElseThrow();
        put(waist, EdgeRole.WAIST, "waist");
        put(crotch, EdgeRole.CROTCH, "crotch");
        hem();
        for (int i = 0; i < form.size(); i++) {
            if (!labels.containsKey(i) && form.run(i).lean() < 45) {
                boolean inner = form.areNeighbours(i, crotch);
                put(i, EdgeRole.SEAM, inner ? "inseam" : "outseam");
            }
        }
    }

    private void skirt(double sure) {
        OptionalInt high = form.highest();
        OptionalInt low = form.lowest();
        if (high.isEmpty() || low.isEmpty() || high.getAsInt() == low.getAsInt()) {
            confidence = 0.35;
            return;
        }
        confidence = sure;
        put(high.getAsInt(), EdgeRole.WAIST, "waist");
        put(low.getAsInt(), EdgeRole.HEM, "hem");
        Optional<SkirtHalf> half = SkirtHalf.of(form);
        if (half.isPresent()) {
            // Also where a vent has a second straight edge beside the centre.
            put(half.get().centre().run(), EdgeRole.CENTRE, centreName());
            half.get().sides().forEach(i -> put(i, EdgeRole.SEAM, "side"));
            return;
        }
        centre();
        for (int i = 0; i < form.size(); i++) {
            if (!labels.containsKey(i) && form.run(i).lean() < 50) {
                put(i, EdgeRole.SEAM, "side");
            }
        }
    }

    /** The one edge that stands straight along the grain is the centre, unless the fold is. */
    private void centre() {
        List<Integer> upright =
                form.upright().stream().filter(i -> !labels.containsKey(i)).toList();
        if (form.fold().isPresent() || upright.size() != 1) {
            return;
        }
        put(upright.get(0), EdgeRole.CENTRE, centreName());
    }

    private String centreName() {
        return says("back") ? "centre back" : says("front") ? "centre front" : "centre";
    }

    private void strip(double sure) {
        confidence = sure;
        List<Integer> sides = form.strip();
        int one = sides.get(0);
        int two = sides.get(1);
        boolean firstSewn = form.ticksOn(one) != form.ticksOn(two)
                ? form.ticksOn(one) > form.ticksOn(two)
                : says("facing") ? isFaced(one, two) : liesBelow(one, two);
        int sewn = firstSewn ? one : two;
        int other = firstSewn ? two : one;
        put(sewn, says("waist") ? EdgeRole.WAIST : EdgeRole.SEAM, "seam");
        if (says("facing")) {
            put(other, EdgeRole.OTHER, FREE_EDGE);
        } else {
            put(other, EdgeRole.SEAM, "inner seam");
        }
        for (int beside : new int[] {sewn - 1, sewn + 1}) {
            if (form.continues(sewn, beside)) {
                put(beside, EdgeRole.OPENING, "underlap");
                put(2 * beside - sewn, EdgeRole.OPENING, "underlap end");
            }
        }
        for (int i = 0; i < form.size(); i++) {
            put(i, EdgeRole.OPENING, "end");
        }
    }

    private boolean liesBelow(int one, int two) {
        return form.run(one).curve().start().y()
                >= form.run(two).curve().start().y();
    }

    /**
     * Waists, necks and armholes are hollow or narrow, so that what lies inside of them is longer (common practice); of a
     * straight facing the upper edge is sewn.
     */
    private boolean isFaced(int one, int two) {
        double first = form.run(one).length();
        double second = form.run(two).length();
        return Math.abs(first - second) > SHORTER * Math.max(first, second) ? first < second : !liesBelow(one, two);
    }

    private Named named() {
        Set<String> used = new HashSet<>();
        List<Form.Label> all = new ArrayList<>();
        for (int i = 0; i < form.size(); i++) {
            Form.Label label = labels.getOrDefault(i, new Form.Label(EdgeRole.SEAM, "seam"));
            boolean several = labels.containsKey(i)
                    ? labels.values().stream()
                                    .filter(l -> l.name().equals(label.name()))
                                    .count()
                            > 1
                    : form.size() - labels.size() > 1;
            String wanted = label.name();
            String unique = several ? wanted + " 1" : wanted;
            for (int k = 2; !used.add(unique); k++) {
                unique = wanted + " " + k;
            }
            all.add(new Form.Label(label.role(), unique));
        }
        return new Named(all, confidence);
    }
}
