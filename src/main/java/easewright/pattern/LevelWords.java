package easewright.pattern;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Words by which levels are written on drawings. */
public final class LevelWords {
    /** What of a body or a garment there is one of on each arm or leg. */
    private static final Pattern LIMB =
            Pattern.compile("\\b(upper arm|fore ?arm|arm ?hole|biceps?|elbow|wrist|cuff|sleeve"
                    + "|thigh|knee|calf|calves|shin|ankle|leg|trouser hem|pants? hem)s?\\b");

    /** A hem by itself, or of a garment or a part of one; not what else has to do with it, such as its allowance or facing. */
    private static final Pattern HEM = Pattern.compile(
            "((the|front|back|side|bottom|lower|finished|skirt|dress|trousers?"
                    + "|pants?|shorts|leg|sleeve|bodice|blouse|shirt|top|jacket|coat|tunic) )*"
                    + "hems?( ?line| edge| level| width| girth| sweep| circumference| opening)?"
                    + "( of (the )?(skirt|dress|trousers|pants|shorts|leg|sleeve|bodice|blouse|shirt|top|jacket|coat|tunic))?");

    private LevelWords() {}

    /**
     * A level of a name that somebody gave it: of the kind that the name says, if any, and round one arm or leg where
     * there is one on each ("mid thigh", "cuff opening").
     */
    public static Level called(String name) {
        LevelKind kind = of(name).map(Level::kind).orElse(LevelKind.OTHER);
        return new Level(name, kind, kind.limb() || LIMB.matcher(plain(name)).find());
    }

    /** In small letters, and nothing else. */
    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ");
    }

    /** Whether a name is that of the hem, which lies where the garment ends and at no place of the body. */
    public static boolean isHem(String name) {
        return HEM.matcher(plain(name).strip()).matches();
    }

    /** The level that the words name, if they are nothing else. */
    public static Optional<Level> of(String words) {
        String plain = plain(words).replaceAll("\\b(line|level|girth)\\b", " ").strip();
        return Optional.ofNullable(
                switch (plain) {
                    case "neck" -> Level.of("neck", LevelKind.NECK);
                    case "bust", "chest", "bustline" -> Level.of("bust", LevelKind.BUST);
                    case "underbust", "under bust" -> Level.of("underbust", LevelKind.UNDERBUST);
                    case "waist", "waistline", "natural waist" -> Level.of("waist", LevelKind.WAIST);
                    case "high hip", "upper hip" -> Level.of("high hip", LevelKind.HIGH_HIP);
                    case "hip", "hips", "hipline", "full hip", "seat" -> Level.of("hip", LevelKind.HIP);
                    case "upper arm", "upper arms", "bicep", "biceps" -> Level.of("upper arm", LevelKind.UPPER_ARM);
                    case "wrist", "wrists" -> Level.of("wrist", LevelKind.WRIST);
                    case "thigh", "thighs" -> Level.of("thigh", LevelKind.THIGH);
                    case "knee", "knees", "kneeline" -> Level.of("knee", LevelKind.KNEE);
                    case "calf", "calves" -> Level.of("calf", LevelKind.CALF);
                    case "ankle", "ankles" -> Level.of("ankle", LevelKind.ANKLE);
                    default -> null;
                });
    }
}
