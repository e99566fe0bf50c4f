package easewright.draft;

import easewright.pattern.Body;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A garment that can be drafted to measure.
 *
 * @param garment  its name, as its {@link Garment#id()}
 * @param measures needed of the wearer, by their ISO 8559-1 names
 * @param ease     by level, mm of the whole girth, as it is where nothing is wished
 * @param lengths  by name, mm, as they are where nothing is wished
 * @param sample   the invented person for whom the sample is drafted
 */
public record Recipe(
        String garment, List<String> measures, List<Wish> ease, List<Wish> lengths, Body sample, Maker maker) {
    /** What may be wished, by the name of a level or a length, and what it is where it is not, mm. */
    public record Wish(String name, double standard) {}

    /** Makes the draft of a body, ease and lengths by name. */
    interface Maker {
        Draft draft(Body body, ToDoubleFunction<String> ease, ToDoubleFunction<String> lengths);
    }

    private static final Recipe SKIRT = new Recipe(
            "skirt",
            List.of("Waist girth", "Hip girth", "Side waist to hip"),
            List.of(new Wish("waist", 25), new Wish("hip", 50)),
            List.of(new Wish("length", 600)),
            SampleBodies.MAREN,
            (body, ease, lengths) -> new SkirtDraft(
                    body, ease.applyAsDouble("hip"), ease.applyAsDouble("waist"), lengths.applyAsDouble("length")));

    private static final Recipe BODICE = new Recipe(
            "bodice",
            List.of(
                    "Bust girth",
                    "Waist girth",
                    "Neck base girth",
                    "Upper-arm girth",
                    "Wrist girth",
                    "Back neck point to waist",
                    "Scye depth length",
                    "Across back width",
                    "Across front width",
                    "Shoulder length",
                    "Bust point width",
                    "Side neck point to bust point",
                    "Outer arm length"),
            List.of(new Wish("bust", 90), new Wish("waist", 40), new Wish("upper arm", 50)),
            List.of(),
            SampleBodies.MAREN,
            (body, ease, lengths) -> new BodiceDraft(
                    body, ease.applyAsDouble("bust"), ease.applyAsDouble("waist"), ease.applyAsDouble("upper arm")));

    private static final Recipe TROUSERS = new Recipe(
            "trousers",
            List.of("Waist girth", "Hip girth", "Straight body rise", "Side waist to hip", "Outside leg length"),
            List.of(new Wish("waist", 25), new Wish("hip", 50)),
            List.of(new Wish("half hem", 220)),
            SampleBodies.INES,
            (body, ease, lengths) -> new TrouserDraft(
                    body, ease.applyAsDouble("hip"), ease.applyAsDouble("waist"), lengths.applyAsDouble("half hem")));

    private static final Recipe KNIT_TOP = new Recipe(
            "knit-top",
            List.of(
                    "Bust girth",
                    "Waist girth",
                    "Hip girth",
                    "Neck base girth",
                    "Upper-arm girth",
                    "Back neck point to waist",
                    "Side waist to hip",
                    "Scye depth length",
                    "Across back width",
                    "Shoulder length"),
            List.of(new Wish("bust", -30), new Wish("waist", 70), new Wish("hip", -10), new Wish("upper arm", 35)),
            List.of(),
            SampleBodies.TOVE,
            (body, ease, lengths) -> new KnitTopDraft(
                    body,
                    ease.applyAsDouble("bust"),
                    ease.applyAsDouble("waist"),
                    ease.applyAsDouble("hip"),
                    ease.applyAsDouble("upper arm")));

    private static final List<Recipe> ALL = List.of(SKIRT, BODICE, TROUSERS, KNIT_TOP);

    public Recipe {
        measures = List.copyOf(measures);
        ease = List.copyOf(ease);
        lengths = List.copyOf(lengths);
    }

    /** All garments that can be drafted. */
    public static List<Recipe> all() {
        return ALL;
    }

    public static Optional<Recipe> of(String garment) {
        return ALL.stream()
                .filter(r -> r.garment().equalsIgnoreCase(garment.strip()))
                .findFirst();
    }

    /**
     * The draft for a wearer. Wishes for levels or lengths that the garment does not have are passed over: whoever
     * takes them from a person compares them with {@link #ease} and {@link #lengths} first.
     *
     * @param wishedEase    by level, mm
     * @param wishedLengths by name, mm
     * @throws DraftRefused if a measurement is missing
     */
    public Draft draft(Body body, Map<String, Double> wishedEase, Map<String, Double> wishedLengths) {
        List<String> missing = Wearer.missing(body, measures);
        if (!missing.isEmpty()) {
            throw new DraftRefused(
                    "draft-measures-missing", Map.of("garment", garment, "missing", missing, "needed", measures));
        }
        return maker.draft(body, or(wishedEase, ease), or(wishedLengths, lengths));
    }

    private static ToDoubleFunction<String> or(Map<String, Double> wished, List<Wish> standard) {
        Map<String, Double> all = new HashMap<>();
        standard.forEach(w -> all.put(w.name(), w.standard()));
        all.putAll(wished);
        return all::get;
    }
}
