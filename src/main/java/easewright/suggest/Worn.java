package easewright.suggest;

import java.util.List;

/** Which part of the body words speak of. */
enum Worn {
    ABOVE_WAIST,
    BELOW_WAIST,
    UNSAID;

    private static final String[] ABOVE = {
        "blouse",
        "shirt",
        "t-?shirt",
        "tee\\b",
        "top\\b",
        "bodice",
        "dress",
        "jacket",
        "coat",
        "vest",
        "waistcoat",
        "tunic",
        "cardigan",
        "jumper",
        "nightdress",
        "nightshirt"
    };

    private static final String[] LEGS = {
        "trouser",
        "pants?\\b",
        "shorts",
        "leggings?\\b",
        "legs?\\b",
        "jeans",
        "slacks",
        "breeches",
        "briefs",
        "knickers"
    };

    private static final String[] BESIDE_ARMHOLES = {"sleeve", "collar", "bodice", "blouse", "shirt"};

    /**
     * By the name of a piece, else by what is written beside the pieces, else by what the others are called.
     *
     * @param others names of the other pieces on the sheet
     */
    static Worn said(String name, String garment, List<String> others) {
        Worn byName = in(name);
        if (byName != UNSAID) {
            return byName;
        }
        Worn byGarment = in(garment);
        if (byGarment != UNSAID) {
            return byGarment;
        }
        boolean legs = others.stream().anyMatch(o -> Vocabulary.has(o, LEGS));
        boolean arms = others.stream().anyMatch(o -> Vocabulary.has(o, BESIDE_ARMHOLES));
        return arms && !legs && !Vocabulary.has(garment, LEGS) ? ABOVE_WAIST : UNSAID;
    }

    /** What speaks of both, as the title of a shirt with shorts, says nothing. */
    private static Worn in(String words) {
        boolean above = Vocabulary.has(words, ABOVE);
        boolean legs = Vocabulary.has(words, LEGS);
        return above == legs ? UNSAID : above ? ABOVE_WAIST : BELOW_WAIST;
    }
}
