package easewright.editor.paint;

import java.util.ArrayList;
import java.util.List;

/** Parts a name into rows, between words where that can be, and shortens it where there is no room for all of it. */
final class NameRows {
    private static final String DOTS = "\u2026";

    private NameRows() {}

    /** All of a name in so many rows that are as even as its words allow, or in fewer if it has fewer words. */
    static List<String> even(String name, int many) {
        int longest = Math.max(1, (name.length() + many - 1) / many);
        List<String> rows = filled(name, longest);
        while (rows.size() > many) {
            longest++;
            rows = filled(name, longest);
        }
        return rows;
    }

    /** Row after row filled with words of together no more letters than that; a longer word is not parted. */
    private static List<String> filled(String name, int letters) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String word : name.strip().split("\\s+")) {
            if (row.length() > 0 && row.length() + 1 + word.length() > letters) {
                rows.add(row.toString());
                row.setLength(0);
            }
            row.append(row.length() == 0 ? "" : " ").append(word);
        }
        rows.add(row.toString());
        return rows;
    }

    /**
     * As much of a name as has room.
     *
     * @param many    how many rows there may be
     * @param letters how many letters there may be in each
     */
    static List<String> cut(String name, int many, int letters) {
        List<String> rows = filled(name, letters);
        List<String> kept = new ArrayList<>(rows.subList(0, Math.min(many, rows.size())));
        for (int i = 0; i < kept.size(); i++) {
            boolean last = i == many - 1 && rows.size() > many;
            if (kept.get(i).length() > letters || last) {
                String rest = String.join(" ", rows.subList(i, rows.size()));
                kept.set(i, shortened(rest, letters));
                return kept.subList(0, i + 1);
            }
        }
        return kept;
    }

    /** Its beginning and dots, if it is longer than that, in letters. */
    static String shortened(String name, int letters) {
        if (name.length() <= letters) {
            return name;
        }
        int end = letters - 1;
        // Not through the middle of a letter that takes two places.
        end -= Character.isHighSurrogate(name.charAt(end - 1)) ? 1 : 0;
        return name.substring(0, end).stripTrailing() + DOTS;
    }

    static boolean isWhole(List<String> rows) {
        return rows.stream().noneMatch(row -> row.endsWith(DOTS));
    }
}
