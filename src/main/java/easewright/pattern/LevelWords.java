package easewright.pattern;

import java.util.Locale;
import java.util.Optional;

/** Words by which levels are written on drawings. */
public final class LevelWords {
    private LevelWords() {}

    /** The level that the words name, if they are nothing else. */
    public static Optional<Level> of(String words) {
        String plain = words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}]+", " ")
                .replaceAll("\\b(line|level|girth)\\b", " ")
                .strip();
        return Optional.ofNullable(
                switch (plain) {
                    case "neck" -> Level.of("neck", LevelKind.NECK);
                    case "bust", "chest", "bustline" -> Level.of("bust", LevelKind.BUST);
                    case "underbust", "under bust" -> Level.of("underbust", LevelKind.UNDERBUST);
                    case "waist", "waistline", "natural waist" -> Level.of("waist", LevelKind.WAIST);
                    case "high hip", "upper hip" -> Level.of("high hip", LevelKind.HIGH_HIP);
                    case "hip", "hips", "hipline", "full hip", "seat" -> Level.of("hip", LevelKind.HIP);
                    case "upper arm", "bicep", "biceps" -> Level.of("upper arm", LevelKind.UPPER_ARM);
                    case "wrist" -> Level.of("wrist", LevelKind.WRIST);
                    case "thigh" -> Level.of("thigh", LevelKind.THIGH);
                    case "knee", "kneeline" -> Level.of("knee", LevelKind.KNEE);
                    case "calf" -> Level.of("calf", LevelKind.CALF);
                    default -> null;
                });
    }
}
