package easewright.editor.model;

import easewright.ease.EaseLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ease sheet as it is shown.
 *
 * @param rows    one for each level
 * @param foot    where the words and figures in the rows come from
 * @param garment the one it is judged as
 */
public record EasePage(List<EaseRow> rows, EaseFoot foot, Optional<String> garment) {
    public EasePage {
        rows = List.copyOf(rows);
    }

    /**
     * @param garments among which the user may choose; the tables of all others are left out
     * @param chosen   the garment that the user chose; without one it is the likeliest, and an empty word means none
     */
    public static EasePage of(Desk desk, Garments garments, Optional<String> chosen) {
        Optional<String> garment = garments.judged(chosen);
        EaseFoot foot = new EaseFoot();
        List<EaseRow> rows = new ArrayList<>();
        for (EaseLine line : desk.shownReading().sheet().lines()) {
            rows.add(EaseRow.of(line, desk.words(), garment, foot));
        }
        return new EasePage(rows, foot, garment);
    }
}
