package easewright.measure;

import easewright.pattern.Finding;
import easewright.pattern.Level;
import easewright.pattern.Side;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The finished girth of the garment at a level: the sum of what each counted piece adds, mm.
 *
 * @param size  the size whose girth it is, where the pattern comes in several; pieces of different sizes are never
 *              added together
 * @param side  the limb whose girth it is, where left and right have pieces of their own there
 * @param parts the pieces that count; empty where none reaches the level
 */
public record Girth(Level level, Optional<String> size, Side side, double finished, List<LevelWidth> parts) {
    public Girth {
        parts = List.copyOf(parts);
    }

    /** The level's name, with the side where left and right have each their own: "upper arm left". */
    public String name() {
        return side == Side.BOTH
                ? level.name()
                : level.name() + " " + side.name().toLowerCase(Locale.ROOT);
    }

    /** Whether the other one is the girth at the same place, before or after left and right became different. */
    public boolean sameAs(Girth other) {
        return level.name().equals(other.level.name()) && size.equals(other.size) && side.belongsTo(other.side);
    }

    /** A finding about this girth: with the level's name, and with the size where there are several. */
    public Finding named(Finding finding) {
        return finding.with("level", title());
    }

    /** The name, with the size in brackets where there are several. */
    public String title() {
        return size.map(s -> name() + " (" + s + ")").orElseGet(this::name);
    }

    /** Whether some piece at the level is cut for one side only. */
    public boolean sided() {
        return parts.stream().anyMatch(p -> p.side() != Side.BOTH);
    }

    /** What of the girth lies on one side of the body: pieces cut alike for both count with half, mm. */
    public double on(Side one) {
        double sum = 0;
        for (LevelWidth part : parts) {
            double share = part.side() == Side.BOTH ? 0.5 : part.side() == one ? 1 : 0;
            sum += share * part.counted();
        }
        return sum;
    }
}
