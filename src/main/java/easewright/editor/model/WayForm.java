package easewright.editor.model;

import easewright.alter.Setting;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.text.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The form in which the settings of a way are asked for, made from the way's description.
 *
 * @param what   what the way does
 * @param hint   when to use it
 * @param fields level and amount left out, which stand above every form
 */
public record WayForm(String what, String hint, List<Field> fields) {
    /**
     * One setting.
     *
     * @param options what may be chosen; empty for what is written, shown on the table, or yes or no
     * @param texts   what stands there now
     * @param usual   what takes part where nothing stands there
     * @param required whether something has to be chosen here
     * @param missing there is no change before something is chosen here
     */
    public record Field(
            String key,
            Setting.Kind kind,
            String label,
            String hint,
            List<Option> options,
            List<String> texts,
            List<String> usual,
            boolean required,
            boolean missing) {
        public Field {
            options = List.copyOf(options);
            texts = List.copyOf(texts);
            usual = List.copyOf(usual);
        }

        /** What takes part. */
        public List<String> chosen() {
            return texts.isEmpty() ? usual : texts;
        }

        /** With one thing taken in or left out; nothing stands there where that is as usual. One always takes part. */
        public List<String> toggled(String text) {
            List<String> now = new ArrayList<>(chosen());
            if (!now.remove(text)) {
                now.add(text);
            } else if (now.isEmpty() && !usual.isEmpty()) {
                return texts;
            }
            return Set.copyOf(now).equals(Set.copyOf(usual)) ? List.of() : List.copyOf(now);
        }
    }

    /**
     * One thing that may be chosen.
     *
     * @param text  as the setting is written
     * @param label as it is shown
     */
    public record Option(String text, String label) {}

    public WayForm {
        fields = List.copyOf(fields);
    }

    /**
     * The ways by their method and their name, family by family, the most usual first: those that the garment has pieces
     * for, and the one that is chosen.
     */
    public static List<Option> ways(Desk desk, Wanted wanted) {
        String chosen = wanted.other().map(OtherWay::method).orElse("");
        return Ways.all().stream()
                .filter(w -> w.method().equals(chosen) || WayOptions.allows(desk.garment(), w))
                .sorted(Comparator.comparing(Way::family))
                .map(w -> new Option(w.method(), desk.words().of("way." + w.method() + ".name")))
                .toList();
    }

    public static WayForm of(OtherWay other, Desk desk) {
        Words words = desk.words();
        Way way = other.way();
        String stem = "way." + way.method();
        List<Field> fields = new ArrayList<>();
        for (Setting setting : way.settings()) {
            if (!setting.key().equals(way.amount()) && !other.isLevel(setting)) {
                String key = stem + ".setting." + setting.key();
                fields.add(new Field(
                        setting.key(),
                        setting.kind(),
                        words.of(key),
                        words.of(key + ".hint"),
                        WayOptions.of(setting, key, other, desk),
                        texts(setting, other, desk),
                        WayOptions.usual(setting, other, desk),
                        setting.required(),
                        other.missing().contains(setting)));
            }
        }
        return new WayForm(words.of(stem + ".what"), words.of(stem + ".hint"), fields);
    }

    /** What was chosen, or what holds where nothing was. */
    private static List<String> texts(Setting setting, OtherWay other, Desk desk) {
        List<String> chosen = other.shown(setting, desk.pattern());
        return chosen.isEmpty() && !setting.standard().isEmpty() ? List.of(setting.standard()) : chosen;
    }

    /** What is to be chosen next, in words; empty where nothing has to be any more. */
    public static String nextToChoose(OtherWay other, Words words) {
        return other.missing().stream()
                .findFirst()
                .map(setting -> words.of("editor.here.next." + other.method() + "." + setting.key()))
                .orElse("");
    }
}
