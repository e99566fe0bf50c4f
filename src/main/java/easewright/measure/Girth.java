package easewright.measure;

import easewright.pattern.Level;
import java.util.List;

/**
 * The finished girth of the garment at a level: the sum of what each counted piece adds, mm.
 *
 * @param parts the pieces that count; empty where none reaches the level
 */
public record Girth(Level level, double finished, List<LevelWidth> parts) {
    public Girth {
        parts = List.copyOf(parts);
    }
}
