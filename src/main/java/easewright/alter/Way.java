package easewright.alter;

import easewright.pattern.ChangeNote;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One way of changing a pattern, described once for the form, the command line and the record alike. Its words are in
 * the bundle under {@code way.<method>}: {@code .name}, {@code .what} it does, {@code .hint} when to use it,
 * and for each setting {@code .setting.<key>} and {@code .setting.<key>.hint}.
 *
 * @param method   name in a {@link ChangeNote}
 * @param family   what it does to a pattern, roughly: ways of one family are offered together
 * @param aim      what the amount measures
 * @param amount   key of the setting that says by how much
 * @param settings all settings, in the order in which a person is asked for them
 */
public record Way(String method, Family family, Aim aim, String amount, List<Setting> settings, Maker maker) {
    /** What a way does, in the order in which a person would think of it. */
    public enum Family {
        /** Takes in or lets out at an edge. */
        SEAMS,
        /** Takes in more or less in darts. */
        DARTS,
        /** Slashes the piece and moves its parts. */
        SLASHES,
        /** Makes a piece or an edge longer or shorter. */
        LENGTHS
    }

    /** What the amount of a way measures. */
    public enum Aim {
        /** By how much the finished girth at the chosen level changes. */
        GIRTH,
        /** By how much the piece grows along its grain. */
        LENGTH,
        /** How much is moved from one place to another while the girth stays. */
        MOVED,
        /** By how much an edge becomes longer. */
        EDGE,
        /** How far a slash opens. */
        GAP
    }

    /** Makes an alteration of its record. */
    interface Maker {
        Alteration from(ChangeNote note) throws Refusal;
    }

    public static final String ACCEPT = "accept-protected";

    /**
     * @throws IllegalArgumentException if the amount is none of the settings
     */
    public Way {
        settings = List.copyOf(settings);
        if (settings.stream().noneMatch(s -> s.key().equals(amount))) {
            throw new IllegalArgumentException("The way " + method + " has no setting " + amount);
        }
    }

    /**
     * The alteration whose {@link Alteration#note()} equals the given one.
     *
     * @throws Refusal if a setting is missing or unreadable
     */
    public Alteration from(ChangeNote note) throws Refusal {
        return Within.of(Scope.of(note), maker.from(Scope.without(note)));
    }

    public Optional<Setting> setting(String key) {
        return settings.stream().filter(s -> s.key().equals(key)).findFirst();
    }

    /** The amount of a record of this way, mm; empty where it cannot be read. */
    public Optional<Double> amountOf(ChangeNote note) {
        try {
            return Optional.of(new Settings(note).number(amount));
        } catch (Refusal unreadable) {
            return Optional.empty();
        }
    }

    /** The same record with another amount, mm. */
    public ChangeNote withAmount(ChangeNote note, double mm) {
        Map<String, String> settings = new LinkedHashMap<>(note.settings());
        settings.put(amount, Settings.plain(mm));
        return new ChangeNote(note.method(), settings);
    }
}
