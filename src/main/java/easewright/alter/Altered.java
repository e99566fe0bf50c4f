package easewright.alter;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.List;

/**
 * What came of a change.
 *
 * @param pattern  the changed pattern; the very one given where nothing had to change
 * @param moved    the runs that moved, for drawing
 * @param findings what the change brings with it
 */
public record Altered(Pattern pattern, List<Moved> moved, List<Finding> findings) {
    public Altered {
        moved = List.copyOf(moved);
        findings = List.copyOf(findings);
    }

    static Altered nothing(Pattern pattern) {
        return new Altered(pattern, List.of(), List.of());
    }
}
