package easewright.print.sheet;

import easewright.pattern.Piece;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sizes of a pattern that is drawn in several. They are read off the ends of the pieces' names ("Front 38",
 * "Front 40", "Sleeve size M") and believed only where some piece comes in two sizes or more, so that "Pocket 2" beside
 * "Front" is no size.
 */
final class Sizes {
    private static final Pattern ENDING = Pattern.compile(
            "(?<stem>.*?\\S)[\\s,:–-]+(?:size\\s*)?(?<size>(?:(?:EU|UK|US|DE|FR|IT)\\s?)?\\d{1,3}|[2-6]?X{0,3}[SL]|M)",
            Pattern.CASE_INSENSITIVE);

    private final Map<String, String> byPiece = new LinkedHashMap<>();

    private Sizes() {}

    static Sizes of(List<Piece> pieces) {
        Map<String, Set<String>> found = new LinkedHashMap<>();
        Sizes sizes = new Sizes();
        for (Piece piece : pieces) {
            Matcher name = ENDING.matcher(piece.name().strip());
            if (name.matches()) {
                sizes.byPiece.put(piece.id(), name.group("size"));
                found.computeIfAbsent(name.group("stem"), s -> new LinkedHashSet<>())
                        .add(name.group("size"));
            }
        }
        if (found.values().stream().noneMatch(s -> s.size() > 1)) {
            sizes.byPiece.clear();
        }
        return sizes;
    }

    /** The piece's size; empty where the pattern comes in one. */
    String of(Piece piece) {
        return byPiece.getOrDefault(piece.id(), "");
    }

    Set<String> all() {
        return new LinkedHashSet<>(byPiece.values());
    }
}
