package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.pattern.EdgeRef;
import easewright.text.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A skirt whose front was drawn shorter at the side than its back, and a change that leaves it by as much shorter. */
class SeamsTriedTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private Effect.Line seamsTold(int shorter) throws Exception {
        String skirt = Files.readString(Path.of("sample-pieces/skirt.svg"));
        String hem = String.valueOf(730 - shorter);
        String drawn = skirt.replace("L400,730 L655,730", "L400," + hem + " L655,730")
                .replace("\"400 730\"", "\"400 " + hem + "\"")
                .replace("via=\"527.5 730\"", "via=\"527.5 " + (730 - shorter / 2.0) + "\"");
        assertThat(drawn.contains("\"527.5 " + (730 - shorter / 2.0) + "\""))
                .as("the side is drawn where it is looked for")
                .isTrue();
        session.open(OpenedSample.drawn(drawn, "skirt.svg"));
        session.chooseLevel("hip");
        double before = Offered.sideSeamOff(session.desk());
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        assertThat(Math.abs(Offered.sideSeamOff(session.desk()) - before))
                .as("the change is the same on both sides of the seam")
                .isLessThan(0.5);
        List<Effect.Line> told = Effect.of(session.desk()).lines().stream()
                .filter(l -> l.kind() == Effect.Kind.FITS || l.kind() == Effect.Kind.DRIFTED)
                .toList();
        assertThat(told).hasSize(1);
        return told.get(0);
    }

    /** Nobody cuts to a millimetre. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void seamsThatWereTheSameForCuttingFitAsBefore(int shorter) throws Exception {
        Effect.Line told = seamsTold(shorter);
        assertThat(told.kind()).isEqualTo(Effect.Kind.FITS);
        assertThat(told.words()).isEqualTo(session.desk().words().of("editor.effect.fits"));
    }

    /** That a change did nothing to a seam is no good news where the seam was off. */
    @ParameterizedTest
    @ValueSource(ints = {2, 8, 30})
    void aSeamThatIsOffByAsMuchAsBeforeIsNamed(int shorter) throws Exception {
        Effect.Line told = seamsTold(shorter);
        assertThat(told.kind()).isEqualTo(Effect.Kind.DRIFTED);
        assertThat(told.words())
                .isEqualTo("Off as before: side seam by "
                        + session.desk().words().length(Math.abs(Offered.sideSeamOff(session.desk()))) + ".");
    }

    /** Whatever else drifts by the change, the seam that was off stays named, with how much. */
    @Test
    void aSeamThatWasOffIsNamedBesideOneThatDrifts() throws Exception {
        seamsTold(8);
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        assertThat(Effect.of(session.desk()).lines())
                .filteredOn(l -> l.kind() == Effect.Kind.DRIFTED)
                .extracting(Effect.Line::words)
                .anyMatch(w -> w.contains("waistband"))
                .anyMatch(w -> w.startsWith("Off as before: side seam by 0.8"));
    }

    /** What is off by a little more or less than before is told with both figures. */
    @Test
    void aSeamWhoseFigureChangesALittleIsToldWithBoth() throws Exception {
        seamsTold(8);
        double before = Offered.sideSeamOff(session.desk());
        session.want(session.desk()
                .wanted()
                .orElseThrow()
                .withLeftOut(Set.of(EdgeRef.of("skirt-back", "side")))
                .withAmount(5));
        double now = Offered.sideSeamOff(session.desk());
        assertThat(Math.abs(now - before)).isBetween(0.05, 0.5);
        session.setUnit(LengthUnit.MM);
        String was = session.desk().words().length(Math.abs(before));
        String is = session.desk().words().length(Math.abs(now));
        assertThat(was).isNotEqualTo(is);
        assertThat(Effect.of(session.desk()).lines())
                .extracting(Effect.Line::words)
                .contains("Off as before: side seam by " + was + " before, now " + is + ".");
    }
}
