package easewright.text;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The name that was probably meant by one that is not known. */
public final class Nearest {
    private Nearest() {}

    /**
     * The known name that is fewest slips away: a letter too many, too few, another, or two in the wrong order. A name
     * more than a third of whose letters would be slips is no likeness, unless the word is its beginning.
     */
    public static Optional<String> to(String word, Collection<String> known) {
        String typed = word.strip().toLowerCase(Locale.ROOT);
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String name : known) {
            String lower = name.toLowerCase(Locale.ROOT);
            int slips = typed.length() > 2 && lower.startsWith(typed) ? 1 : slips(typed, lower);
            if (slips < least && slips <= Math.max(1, lower.length() / 3)) {
                least = slips;
                best = name;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Edit distance with neighbouring letters exchanged as one slip. */
    private static int slips(String one, String other) {
        int[][] cost = new int[one.length() + 1][other.length() + 1];
        Arrays.setAll(cost[0], j -> j);
        for (int i = 1; i <= one.length(); i++) {
            cost[i][0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                int least = Math.min(cost[i - 1][j - 1] + same, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
                boolean exchanged = i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1);
                cost[i][j] = exchanged ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
            }
        }
        return cost[one.length()][other.length()];
    }
}
