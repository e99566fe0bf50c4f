package easewright.editor.model;

import easewright.ease.EaseLine;
import easewright.ease.EaseSheet;
import easewright.ease.StretchSaid;
import easewright.pattern.Finding;
import easewright.print.EaseText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The ease sheet as it is shown.
 *
 * @param rows one for each level
 * @param foot where the words and figures in the rows come from
 * @param nearlyMet whether a printed figure was taken as met although the ease falls a little short of it
 */
public record EasePage(List<EaseRow> rows, EaseFoot foot, boolean nearlyMet) {
    public EasePage {
        rows = List.copyOf(rows);
    }

    public static EasePage of(Desk desk) {
        Reading reading = desk.shownReading();
        EaseSheet sheet = reading.sheet();
        boolean certain = sheet.garment().words().size() == 1;
        Optional<StretchSaid> stretch = sheet.stretch();
        EaseFoot foot = new EaseFoot();
        List<EaseRow> rows = new ArrayList<>();
        List<String> sizes = desk.sizesTaking();
        List<String> others =
                sizes.stream().filter(s -> !desk.size().equals(Optional.of(s))).toList();
        Reading all = others.isEmpty()
                ? reading
                : desk.shownTrial().map(t -> t.several().after()).orElseGet(() -> reading.inSizes(desk.shown(), sizes));
        for (EaseLine line : sheet.lines()) {
            EaseRow row = EaseWords.row(line, desk.words(), certain, stretch, foot, standing(desk, line))
                    .withSizes(
                            reading.wishes()
                                    .said(line.level().name(), desk.words())
                                    .map(said -> said.beside(desk.size())),
                            OtherSizes.of(line, all, others, desk.words()));
            rows.add(doubted(row, line, desk));
        }
        double below = rows.stream().mapToDouble(r -> r.scale().below()).max().orElse(0);
        return new EasePage(
                rows.stream().map(r -> r.aligned(below, desk.unit())).toList(), foot, EaseText.nearlyMet(sheet));
    }

    /** Whether all of a girth was counted, and once, comes before what its ease is. */
    private static EaseRow doubted(EaseRow row, EaseLine line, Desk desk) {
        List<String> without = leftOut(line, desk);
        if (!without.isEmpty()) {
            return row.without(without, desk.words());
        }
        if (isHalf(line, desk.shownReading())) {
            return row.asHalf(desk.words());
        }
        List<String> over = layers(line, desk, Set.of("layer-counted", "layer-above-counted"));
        if (!over.isEmpty()) {
            return row.withLayers("editor.ease.layers", over, desk.words());
        }
        List<String> lined = layers(line, desk, Set.of("layer-on-itself"));
        return lined.isEmpty() ? row : row.withLayers("editor.ease.lined", lined, desk.words());
    }

    /** The ease at a level while nothing is tried. */
    private static OptionalDouble standing(Desk desk, EaseLine line) {
        return desk.reading().sheet().lines().stream()
                .filter(line::sameAs)
                .map(EaseLine::ease)
                .findFirst()
                .orElse(line.ease());
    }

    private static boolean isHalf(EaseLine line, Reading reading) {
        return reading.findings().stream()
                .anyMatch(f -> f.code().equals("halves-counted-once")
                        && line.girth().title().equals(f.values().get("level")));
    }

    /** The pieces that may lie over others of the same girth, or over themselves, by name. */
    private static List<String> layers(EaseLine line, Desk desk, Set<String> codes) {
        return desk.reading().findings().stream()
                .filter(f -> codes.contains(f.code())
                        && f.values().get("levels") instanceof List<?> levels
                        && levels.contains(line.level().name()))
                .map(Finding::piece)
                .toList();
    }

    /** The pieces that a girth leaves out, by name; where a level lies is the same before a trial and in it. */
    private static List<String> leftOut(EaseLine line, Desk desk) {
        return desk.reading().findings().stream()
                .filter(f -> f.code().startsWith("level-left-out")
                        && line.girth().title().equals(f.values().get("level")))
                .map(Finding::piece)
                .toList();
    }
}
