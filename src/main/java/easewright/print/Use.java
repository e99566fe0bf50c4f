package easewright.print;

import java.util.Locale;
import java.util.Optional;

/** What the maker says the garment is or has, where rules of safety ask for it. */
public enum Use {
    CHILD,
    NIGHTWEAR,
    CORDS,
    COMPRESSION,
    PROTECTIVE;

    public static Optional<Use> named(String word) {
        String wanted = word.strip().toUpperCase(Locale.ROOT);
        for (Use use : values()) {
            if (use.name().equals(wanted)) {
                return Optional.of(use);
            }
        }
        return Optional.empty();
    }
}
