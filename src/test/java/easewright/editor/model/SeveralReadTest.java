package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is read in several sizes at once is read once for a pull, and is what reading it anew would be. */
class SeveralReadTest {
    private final Session session = new Session(LengthUnit.CM, false);

    @BeforeEach
    void openTheNest() throws Exception {
        Path nest = Path.of("sample-pieces/skirt-sizes.svg");
        session.open(Opened.of(new OpenFile(SvgFile.read(nest), Optional.of(nest), "skirt-sizes.svg")));
        session.chooseLevel("hip");
    }

    private SeveralRead pulled(double mm, String... also) {
        session.want(
                session.desk().wanted().orElseThrow().withAlsoIn(Set.of(also)).withAmount(mm));
        return session.desk().shownTrial().orElseThrow().several();
    }

    private void assertAsReadAnew(SeveralRead several) {
        Trial.Shown trial = session.desk().shownTrial().orElseThrow();
        Reading before = session.desk().reading().inSizes(session.desk().pattern(), several.sizes());
        Reading after = trial.reading().inSizes(trial.altered().pattern(), several.sizes());
        assertThat(several.before().sheet().lines()).isEqualTo(before.sheet().lines());
        assertThat(several.after().sheet().lines()).isEqualTo(after.sheet().lines());
    }

    @Test
    void whatWasBeforeIsReadOnceForAWholePull() {
        SeveralRead first = pulled(10, "12", "14");
        assertAsReadAnew(first);
        SeveralRead next = pulled(17, "12", "14");
        assertThat(next.before()).isSameAs(first.before());
        assertAsReadAnew(next);
        SeveralRead fewer = pulled(17, "14");
        assertThat(fewer.sizes()).isEqualTo(List.of("10", "14"));
        assertAsReadAnew(fewer);
        session.keep();
        SeveralRead kept = pulled(5, "14");
        assertThat(kept.before()).isNotSameAs(fewer.before());
        assertAsReadAnew(kept);
    }
}
