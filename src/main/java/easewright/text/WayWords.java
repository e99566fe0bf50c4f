package easewright.text;

import easewright.alter.Setting;
import easewright.alter.Way;

/** The words of the ways of changing a pattern. */
public final class WayWords {
    private final Words words;

    public WayWords(Words words) {
        this.words = words;
    }

    public String name(Way way) {
        return words.of(key(way) + "name");
    }

    /** One sentence: what it does. */
    public String what(Way way) {
        return words.of(key(way) + "what");
    }

    /** One sentence: when to use it. */
    public String hint(Way way) {
        return words.of(key(way) + "hint");
    }

    public String label(Way way, Setting setting) {
        return words.of(key(way, setting));
    }

    /** One sentence: what the setting is for. */
    public String hint(Way way, Setting setting) {
        return words.of(key(way, setting) + ".hint");
    }

    /** The label of one of the choices of a setting. */
    public String choice(Way way, Setting setting, String choice) {
        return words.of(key(way, setting) + "." + choice);
    }

    private static String key(Way way) {
        return "way." + way.method() + ".";
    }

    private static String key(Way way, Setting setting) {
        return key(way) + "setting." + setting.key();
    }
}
