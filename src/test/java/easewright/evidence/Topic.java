package easewright.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Checks of one kind against the outside: a test of its own, and a section of {@code docs/evidence.md}. */
abstract class Topic {
    abstract String title();

    /** What is held against what, in a sentence or two for the page. */
    abstract String words();

    abstract List<Check> checks() throws Exception;

    @Test
    void everyCheckHolds() throws Exception {
        List<Check> checks = checks();
        assertThat(checks).isNotEmpty();
        assertThat(checks.stream().filter(check -> !check.holds())).isEmpty();
    }
}
