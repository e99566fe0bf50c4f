package easewright.command;

import easewright.alter.Scope;
import easewright.alter.Setting;
import easewright.alter.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A setting of a change by a short name: as an option of {@code change}, and as a key of a list of changes. Settings
 * that have none are given by {@code --set KEY=VALUE}.
 *
 * @param option the option, with its dashes
 * @param json   the key in a list
 * @param label  what stands for its value in the help; empty: yes where it is given
 * @param many   whether it may be given more than once
 * @param key    of the setting; empty where that depends on the way or on the value
 */
record Shorthand(String option, String json, String label, boolean many, String key) {
    static final String AMOUNT = "--by";
    static final String KEEP = "--keep";

    static final List<Shorthand> ALL = List.of(
            new Shorthand("--at", "at", "LEVEL", false, "level"),
            new Shorthand(AMOUNT, "by", "AMOUNT", false, ""),
            new Shorthand("--edge", "edges", "PIECE/EDGE[=SHARE]", true, "edge"),
            new Shorthand("--piece", "pieces", "PIECE", true, "piece"),
            new Shorthand("--dart", "darts", "PIECE/DART[=SHARE]", true, "dart"),
            new Shorthand("--slash", "slashes", "PLACE>PLACE[=SHARE]", true, "slash"),
            new Shorthand(KEEP, "keep", "PLACE", true, ""),
            new Shorthand("--taper", "taper", "TAPER", false, "taper"),
            new Shorthand("--carry", "carry", "", false, "carry-to-hem"),
            new Shorthand("--sizes", "sizes", "SIZES", true, Scope.SIZE),
            new Shorthand("--side", "side", "SIDE", false, Scope.SIDE),
            new Shorthand("--one-side", "one_side", "", false, "one-side"),
            new Shorthand("--accept", "accept", "", false, "accept-protected"));

    boolean flag() {
        return label.isEmpty();
    }

    /** The same change with the values given for this. */
    Asked put(Asked asked, List<String> values) {
        if (option.equals(AMOUNT)) {
            return asked.with(asked.way().amount(), values);
        }
        if (!option.equals(KEEP)) {
            return asked.with(key, values);
        }
        List<String> names = new ArrayList<>();
        List<String> places = new ArrayList<>();
        for (String value : values) {
            (value.indexOf('/') < 0 ? names : places).add(value);
        }
        return asked.with("keep", names).with("fixed", places);
    }

    /** The name of a setting wherever a person reads or writes it: that of its option, or else its key. */
    static String name(Way way, Setting setting) {
        return of(way, setting).map(each -> each.option().substring(2)).orElse(setting.key());
    }

    /** The shorthand of a setting by the name of its option without the dashes. */
    static Optional<Shorthand> named(String name) {
        return ALL.stream()
                .filter(each ->
                        each.option().substring(2).equals(name) || each.json().equals(name))
                .findFirst();
    }

    /** The short name of a setting, if it has one. */
    static Optional<Shorthand> of(Way way, Setting setting) {
        for (Shorthand each : ALL) {
            boolean amount = each.option.equals(AMOUNT) && setting.key().equals(way.amount());
            boolean keep = each.option.equals(KEEP) && List.of("keep", "fixed").contains(setting.key());
            if (amount || keep || each.key.equals(setting.key())) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
