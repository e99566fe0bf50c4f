package easewright.alter;

import easewright.pattern.ChangeNote;
import easewright.pattern.Level;
import easewright.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Slashes one or more pieces and opens or closes the slashes together until the finished girth at a level has changed
 * by exactly the amount (docs/sources.md 4.1, W6 and W7).
 *
 * @param level           name of the level whose finished girth changes
 * @param amount          change of the finished girth, mm; above 0 opens, below 0 closes
 * @param slashes         where; each takes its share
 * @param open            whether they hold together at their far ends
 * @param acceptProtected protected edges may open
 * @param back            the places are those before the opposite change, which this one takes back
 */
public record SpreadSlashes(
        String level, double amount, List<Slash> slashes, Opening open, boolean acceptProtected, boolean back)
        implements Alteration {
    static final String METHOD = "slash";

    /** How a slash opens. */
    public enum Opening {
        /** Like a wedge; it holds together at its far end. */
        HINGED,
        /** Alike all along. */
        PARALLEL
    }

    static final Way WAY = new Way(
            METHOD,
            Way.Family.SLASHES,
            Way.Aim.GIRTH,
            "amount",
            List.of(
                    Setting.needed("level", Setting.Kind.LEVEL),
                    Setting.needed("amount", Setting.Kind.SIGNED_LENGTH),
                    Setting.needed("slash", Setting.Kind.SLASHES),
                    Setting.choice("open", Opening.HINGED),
                    Setting.flag(Way.ACCEPT)),
            SpreadSlashes::from);

    private static final String BACK = "back";

    /**
     * @throws IllegalArgumentException if the amount is no number or there is no slash
     */
    public SpreadSlashes {
        Amounts.require(amount);
        slashes = List.copyOf(slashes);
        if (slashes.isEmpty()) {
            throw new IllegalArgumentException("There is no slash");
        }
    }

    public static SpreadSlashes hinged(String level, double amount, Slash... slashes) {
        return new SpreadSlashes(level, amount, List.of(slashes), Opening.HINGED, false, false);
    }

    public static SpreadSlashes parallel(String level, double amount, Slash... slashes) {
        return new SpreadSlashes(level, amount, List.of(slashes), Opening.PARALLEL, false, false);
    }

    @Override
    public SpreadSlashes withAmount(double mm) {
        return new SpreadSlashes(level, mm, slashes, open, acceptProtected, back);
    }

    @Override
    public Optional<Alteration> opposite() {
        return Optional.of(new SpreadSlashes(level, -amount, slashes, open, acceptProtected, !back));
    }

    public SpreadSlashes acceptingProtected() {
        return new SpreadSlashes(level, amount, slashes, open, true, back);
    }

    @Override
    public ChangeNote note() {
        Settings settings = new Settings().text("level", level).number("amount", amount);
        for (int i = 0; i < slashes.size(); i++) {
            slashes.get(i).write(settings, "slash." + (i + 1));
        }
        return settings.text("open", Settings.name(open))
                .flag(Way.ACCEPT, acceptProtected)
                .flag(BACK, back)
                .note(METHOD);
    }

    static SpreadSlashes from(ChangeNote note) throws Refusal {
        Settings s = new Settings(note);
        List<Slash> slashes = new ArrayList<>();
        for (int i = 1; s.has("slash." + i + ".piece"); i++) {
            slashes.add(Slash.read(s, "slash." + i));
        }
        if (slashes.isEmpty()) {
            throw Refusal.of("note-setting-missing").with("setting", "slash");
        }
        return new SpreadSlashes(
                s.text("level"),
                s.number("amount"),
                slashes,
                s.choice("open", Opening.class),
                s.flag(Way.ACCEPT),
                s.flag(BACK));
    }

    @Override
    public Altered make(Pattern pattern) throws Refusal {
        Level at = Known.level(pattern, level);
        SlashWork work = new SlashWork(pattern, at, this);
        return amount == 0 ? Altered.nothing(pattern) : work.done();
    }
}
