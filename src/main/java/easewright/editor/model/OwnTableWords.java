package easewright.editor.model;

import easewright.ease.EaseTable;
import easewright.ease.EaseTableProblem;
import easewright.ease.EaseTables;
import easewright.ease.Garment;
import easewright.ease.Minimum;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a table file of the user's own holds, in a sentence, or why it cannot be used. */
public final class OwnTableWords {
    private OwnTableWords() {}

    public static String of(OwnTables.Entry entry, Desk desk) {
        Words words = desk.words();
        if (entry.isUnread()) {
            return words.of("editor.tables.reading");
        }
        if (entry.tables().isEmpty()) {
            EaseTableProblem problem = entry.problem().orElseThrow();
            return words.problem(problem.code(), problem.values());
        }
        EaseTables tables = entry.tables().get();
        List<String> holds = new ArrayList<>();
        for (EaseTable table : tables.tables()) {
            String level = words.name("level", table.level());
            holds.add(words.of("editor.tables.bands", Map.of("level", level, "garment", table.garment())));
        }
        Set<String> regions = new LinkedHashSet<>();
        tables.minimums().stream().map(Minimum::region).forEach(regions::add);
        if (!regions.isEmpty()) {
            holds.add(words.of("editor.tables.minimums", Map.of("regions", List.copyOf(regions))));
        }
        if (!tables.knitClasses().isEmpty()) {
            holds.add(words.of("editor.tables.knits"));
        }
        if (tables.margin().isPresent()) {
            holds.add(words.of("editor.tables.margin"));
        }
        String said = words.of("editor.tables.holds", Map.of("holds", String.join("; ", holds)));
        return elsewhere(tables, desk) ? said + " " + words.of("editor.tables.elsewhere") : said;
    }

    /** Whether nothing of it is for the garment and the cloth on the table. */
    private static boolean elsewhere(EaseTables tables, Desk desk) {
        Garment garment = desk.reading().sheet().garment();
        boolean knit = desk.pattern().cloth().knit();
        return desk.isOpen()
                && tables.knitClasses().isEmpty()
                && tables.margin().isEmpty()
                && tables.tables().stream().noneMatch(t -> t.knit() == knit && garment.fits(t.garment()))
                && (knit || tables.minimums().stream().noneMatch(m -> garment.fits(m.garment())));
    }
}
