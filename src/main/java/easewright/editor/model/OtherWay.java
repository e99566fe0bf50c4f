package easewright.editor.model;

import easewright.alter.Alteration;
import easewright.alter.OtherSize;
import easewright.alter.Refusal;
import easewright.alter.Setting;
import easewright.alter.SettingText;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Piece;
import easewright.text.LengthUnit;
import easewright.text.Lengths;
import easewright.text.Unreadable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A change that is wanted in a way described by {@link Ways}, with its settings as they stand in the form. Level and
 * amount stand in {@link Wanted}.
 *
 * @param texts by key of the setting, as {@link SettingText} reads them; several for a list
 */
public record OtherWay(String method, Map<String, List<String>> texts) {
    private static final Set<Setting.Kind> PLACED =
            EnumSet.of(Setting.Kind.PLACE, Setting.Kind.PLACES, Setting.Kind.SLASHES);

    public OtherWay {
        texts = copied(texts);
    }

    static Map<String, List<String>> copied(Map<String, List<String>> texts) {
        Map<String, List<String>> copied = new LinkedHashMap<>();
        texts.forEach((key, values) -> copied.put(key, List.copyOf(values)));
        return Map.copyOf(copied);
    }

    /** Nothing chosen yet. */
    public static OtherWay of(Way way) {
        return new OtherWay(way.method(), Map.of());
    }

    public Way way() {
        return Ways.of(method).orElseThrow();
    }

    public List<String> texts(String key) {
        return texts.getOrDefault(key, List.of());
    }

    /** With the texts of one setting replaced. */
    public OtherWay with(String key, List<String> values) {
        Map<String, List<String>> changed = new LinkedHashMap<>(texts);
        changed.put(key, values);
        return new OtherWay(method, changed);
    }

    /** Without the places, and the piece on which they lie: they belong to one change only. */
    OtherWay withoutPlaces() {
        Map<String, List<String>> kept = new LinkedHashMap<>(texts);
        for (Setting setting : way().settings()) {
            if (PLACED.contains(setting.kind()) || isByPlaces(setting)) {
                kept.remove(setting.key());
            }
        }
        return new OtherWay(method, kept);
    }

    /** The same in another size. */
    OtherWay in(OtherSize size) throws Refusal {
        return new OtherWay(method, size.texts(way(), texts));
    }

    /** What has still to be chosen before there is a change, in the order of the form. */
    public List<Setting> missing() {
        List<Setting> missing = new ArrayList<>();
        for (Setting setting : way().settings()) {
            boolean elsewhere = setting.key().equals(way().amount()) || isLevel(setting) || isByPlaces(setting);
            if (setting.required() && !elsewhere && texts(setting.key()).isEmpty()) {
                missing.add(setting);
            }
        }
        return missing;
    }

    /** Whether the setting is the level at work, which stands above the form. */
    boolean isLevel(Setting setting) {
        return setting.kind() == Setting.Kind.LEVEL
                && way().settings().stream()
                        .filter(s -> s.kind() == Setting.Kind.LEVEL)
                        .findFirst()
                        .equals(Optional.of(setting));
    }

    /** Whether the setting is the piece on which the places lie that are asked for as well. */
    private boolean isByPlaces(Setting setting) {
        return setting.kind() == Setting.Kind.PIECE
                && way().settings().stream().anyMatch(s -> s.kind() == Setting.Kind.PLACE);
    }

    /** The texts of a setting, or the piece that the places show; empty where nothing can be read of it. */
    List<String> shown(Setting setting, Pattern pattern) {
        List<String> said = texts(setting.key());
        if (!said.isEmpty() || !isByPlaces(setting)) {
            return said;
        }
        try {
            return SettingText.pieceOf(way(), texts, pattern, text -> Lengths.parse(text, LengthUnit.MM)).stream()
                    .map(Piece::id)
                    .toList();
        } catch (Refusal | Unreadable unreadable) {
            // The trial says what is wrong with the place.
            return List.of();
        }
    }

    /**
     * The change that is meant.
     *
     * @param amount mm
     * @throws Refusal if a setting is missing or not understood
     */
    Alteration change(Pattern pattern, String level, double amount) throws Refusal {
        Map<String, List<String>> all = new LinkedHashMap<>(texts);
        for (Setting setting : way().settings()) {
            if (isLevel(setting)) {
                all.put(setting.key(), List.of(level));
            }
        }
        all.put(way().amount(), List.of("1 mm"));
        ChangeNote note;
        try {
            note = SettingText.read(way(), all, pattern, text -> Lengths.parse(text, LengthUnit.MM));
        } catch (Unreadable unreadable) {
            // The form takes no length that cannot be read.
            throw new IllegalStateException(unreadable);
        }
        return way().from(way().withAmount(note, amount));
    }
}
