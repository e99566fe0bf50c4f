package easewright.svg;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The cascade: style sheets, then style attributes, then what is important in either. */
final class Styles {
    private final List<StyleSheet.Rule> rules;
    private final boolean doubtful;
    private final boolean outside;
    private final Selector.Effort effort = new Selector.Effort();

    Styles(Tree tree) {
        StyleSheet sheet = new StyleSheet();
        for (Element style : tree.styleSheets()) {
            String type = style.get("type");
            if (style.text != null
                    && (type == null || type.isBlank() || type.strip().equalsIgnoreCase("text/css"))) {
                sheet.add(style.text.toString());
            }
        }
        rules = sheet.rules();
        doubtful = sheet.doubtful();
        outside = sheet.outside();
    }

    /** Whether some rule that could move or hide an outline was not understood. */
    boolean doubtful() {
        return doubtful;
    }

    /** Whether some part of the style stands in another file, which is never opened. */
    boolean outside() {
        return outside;
    }

    /** What style says of an element's place and visibility; attributes of the same names are not in it. */
    Map<String, String> of(Element element) {
        String own = element.get("style");
        if (own == null && rules.isEmpty()) {
            return Map.of();
        }
        Map<String, Winner> winners = new HashMap<>();
        for (StyleSheet.Rule rule : rules) {
            if (rule.selector().matches(element, effort)) {
                long weight = (long) rule.selector().specificity() * (1 << 20) + rule.order();
                rule.declarations().forEach((name, value) -> offer(winners, name, value, weight));
            }
        }
        if (own != null) {
            Declarations.parse(own).forEach((name, value) -> offer(winners, name, value, Long.MAX_VALUE / 4));
        }
        Map<String, String> style = new HashMap<>();
        winners.forEach((name, winner) -> style.put(name, winner.text()));
        return style;
    }

    private record Winner(String text, long weight) {}

    private static void offer(Map<String, Winner> winners, String name, Declarations.Value value, long plainWeight) {
        long weight = value.important() ? plainWeight + Long.MAX_VALUE / 2 : plainWeight;
        Winner before = winners.get(name);
        if (before == null || weight >= before.weight()) {
            winners.put(name, new Winner(value.text(), weight));
        }
    }
}
