package easewright.alter;

import easewright.pattern.Finding;
import easewright.pattern.Pattern;
import java.util.List;

/**
 * What came of a change.
 *
 * @param pattern  the changed pattern; the very one given where nothing had to change
 * @param moved    the runs that a seam change or a truing moved; what other ways do is seen from the pattern alone
 * @param findings what the change brings with it
 */
public record Altered(Pattern pattern, List<Moved> moved, List<Finding> findings) {
    public Altered {
        moved = List.copyOf(moved);
        findings = List.copyOf(findings);
    }

    Altered(Pattern pattern, List<Finding> findings) {
        this(pattern, List.of(), findings);
    }

    static Altered nothing(Pattern pattern) {
        return new Altered(pattern, List.of());
    }
}
