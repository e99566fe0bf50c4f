package easewright.editor.model;

import easewright.ease.EaseLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ease sheet as it is shown.
 *
 * @param rows     one for each level
 * @param sources  where the words and figures in the rows come from, by the raised numbers there
 * @param garments among which the user may choose; the tables of all others are left out
 * @param garment  the one it is judged as
 */
public record EasePage(List<EaseRow> rows, List<String> sources, List<String> garments, Optional<String> garment) {
    public EasePage {
        rows = List.copyOf(rows);
        sources = List.copyOf(sources);
        garments = List.copyOf(garments);
    }

    /**
     * @param chosen the garment that the user chose; without one it is the likeliest, and an empty word means none
     */
    public static EasePage of(Desk desk, Optional<String> chosen) {
        List<String> garments = Garments.of(desk.pattern());
        Optional<String> garment = chosen.filter(c -> c.isEmpty() || garments.contains(c))
                .or(() -> Garments.likely(desk.pattern()))
                .filter(c -> !c.isEmpty());
        EaseFoot foot = new EaseFoot();
        List<EaseRow> rows = new ArrayList<>();
        for (EaseLine line : desk.shownReading().sheet().lines()) {
            rows.add(EaseRow.of(line, desk.words(), garment, foot));
        }
        return new EasePage(rows, foot.lines(), garments, garment);
    }
}
