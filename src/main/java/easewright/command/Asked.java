package easewright.command;

import easewright.alter.AllSizes;
import easewright.alter.Alteration;
import easewright.alter.Refusal;
import easewright.alter.Scope;
import easewright.alter.Setting;
import easewright.alter.SettingText;
import easewright.alter.Way;
import easewright.alter.Ways;
import easewright.alter.Within;
import easewright.pattern.ChangeNote;
import easewright.pattern.Pattern;
import easewright.pattern.Side;
import easewright.text.Unreadable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One change as it was asked for, by options or by an entry of a list.
 *
 * @param way   how it is done
 * @param texts the settings by their keys, each as a person writes it
 * @param size  the size in which it is made, where the pattern comes in several
 * @param asIn  the first of the sizes for which it was asked in one go, where this is another one of them
 * @param called what the size is called, also where none is marked and a star in the names stands for it
 */
record Asked(
        Way way,
        Map<String, List<String>> texts,
        Optional<String> size,
        Optional<String> asIn,
        Optional<String> called) {
    /** A centre change that swings, by a name of its own because that is how people ask for it. */
    private static final String WEDGE = "wedge";

    Asked {
        texts = Map.copyOf(texts);
    }

    /** A change of this method about which nothing more is known. */
    static Asked by(String method) throws Trouble {
        String name = method.strip().toLowerCase(Locale.ROOT);
        if (name.equals(WEDGE)) {
            return by("centre").with(WEDGE, List.of("yes"));
        }
        Optional<Way> way = Ways.of(name.equals("center") ? "centre" : name);
        if (way.isEmpty()) {
            List<String> known = new ArrayList<>();
            for (Way each : Ways.all()) {
                known.add(each.method());
            }
            throw new Trouble("method-not-known", Map.of("text", method, "known", known));
        }
        return new Asked(way.get(), Map.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** More values of a setting. */
    Asked with(String key, List<String> values) {
        if (values.isEmpty()) {
            return this;
        }
        Map<String, List<String>> more = new LinkedHashMap<>(texts);
        List<String> all = new ArrayList<>(texts.getOrDefault(key, List.of()));
        all.addAll(values);
        more.put(key, List.copyOf(all));
        return new Asked(way, more, size, asIn, called);
    }

    /** More values of a setting by the name that people know it by, which is that of its option if it has one. */
    Asked withNamed(String name, List<String> values) {
        boolean ownKey = way.settings().stream().anyMatch(s -> s.key().equals(name));
        Optional<Shorthand> shorthand = Shorthand.named(name);
        return shorthand.isPresent() && !ownKey || name.equals("keep")
                ? shorthand.orElseThrow().put(this, values)
                : with(name, values);
    }

    /** The first setting without which there is no change and of which nothing was said. */
    Optional<Setting> missing() {
        for (Setting setting : way.settings()) {
            if (setting.required() && !texts.containsKey(setting.key())) {
                return Optional.of(setting);
            }
        }
        return Optional.empty();
    }

    /** What a setting is for, in words. */
    String hint(Setting setting) {
        return Commands.english().of("way." + way.method() + ".setting." + setting.key() + ".hint");
    }

    /** The same trouble with settings called as people know them. */
    private Trouble named(Refusal refusal) {
        Map<String, Object> values = new LinkedHashMap<>(refusal.values());
        if (values.get("setting") instanceof String key) {
            values.put(
                    "setting", way.setting(key).map(s -> Shorthand.name(way, s)).orElse(key));
        }
        if (refusal.code().equals("setting-unknown")) {
            values.put(
                    "known",
                    way.settings().stream()
                            .map(s -> Shorthand.name(way, s))
                            .distinct()
                            .toList());
        }
        return new Trouble(refusal.code(), values);
    }

    /** The same change for each of the sizes asked for, by number or by a * in a name; else only itself. */
    List<Asked> eachSize(Pattern pattern) throws Trouble {
        try {
            List<Asked> all = new ArrayList<>();
            Optional<String> first = Optional.empty();
            Set<String> stars = texts.containsKey(Scope.SIZE) ? Set.of() : AllSizes.starred(texts, pattern);
            Iterator<String> starred = stars.iterator();
            for (Map<String, List<String>> each : AllSizes.of(texts, pattern)) {
                Map<String, List<String>> settings = new LinkedHashMap<>(each);
                List<String> sizes = settings.remove(Scope.SIZE);
                Optional<String> own = sizes == null ? size : Optional.of(sizes.get(0));
                // Each star has its own, also where the size is marked and has its name from there.
                Optional<String> star = starred.hasNext() ? Optional.of(starred.next()) : Optional.empty();
                Optional<String> named = own.or(() -> star);
                all.add(new Asked(way, settings, own, first, named));
                first = first.or(() -> own);
            }
            return all;
        } catch (Refusal e) {
            throw Said.of(e);
        }
    }

    private Side side() throws Trouble {
        List<String> named = texts.getOrDefault(Scope.SIDE, List.of());
        String word = named.isEmpty() ? "both" : named.get(0);
        return Scope.side(word).orElseThrow(() -> new Trouble("side-not-known", Map.of("text", word)));
    }

    /** The settings of the way itself. */
    private Map<String, List<String>> settings() {
        Map<String, List<String>> own = new LinkedHashMap<>(texts);
        own.remove(Scope.SIDE);
        return own;
    }

    /** The alteration of this pattern that was meant. */
    Alteration alteration(Pattern pattern, Typed typed) throws Trouble {
        try {
            Scope scope = new Scope(size, side(), asIn);
            ChangeNote note =
                    SettingText.read(way, settings(), scope.part(pattern).alone(), typed::mm);
            return Within.of(scope, way.from(note));
        } catch (Refusal e) {
            throw named(e);
        } catch (Unreadable e) {
            throw Said.of(e);
        }
    }
}
