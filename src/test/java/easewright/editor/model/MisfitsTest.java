package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.paint.TableScene;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a seam does not fit is seen on the table, as long as it does not. */
class MisfitsTest {
    private final Session session = new Session(LengthUnit.CM, false);

    private TableScene scene() {
        return new TableScenes().of(session.desk());
    }

    private List<Legend.Sign> legend() {
        return Legend.of(scene(), session.desk().pointed()).signs();
    }

    private void widen(String level, double mm) {
        session.chooseLevel(level);
        session.want(session.desk().wanted().orElseThrow().withAmount(mm));
    }

    @Test
    void aWaistbandThatIsTooShortIsMarkedUntilItFits() throws Exception {
        session.open(OpenedSample.skirt());
        widen("waist", 20);
        assertThat(scene().misfits()).as("a trial has its own sign").isEmpty();
        assertThat(legend()).contains(Legend.Sign.DRIFTED).doesNotContain(Legend.Sign.UNFIT);
        session.keep();
        assertThat(scene().misfits())
                .as("on both sides of the seam, with the words at the one that gives way")
                .extracting(TableScene.Misfit::words)
                .containsExactly("2\u00a0cm\u00a0too\u00a0short", "", "");
        assertThat(legend()).contains(Legend.Sign.UNFIT).doesNotContain(Legend.Sign.DRIFTED);
        widen("hip", 10);
        assertThat(legend()).as("whatever else is tried").contains(Legend.Sign.UNFIT);
        session.leave();
        session.edit(FollowUp.of(session.desk()).get(0).presses().get(0).result());
        assertThat(scene().misfits()).isEmpty();
        assertThat(legend()).doesNotContain(Legend.Sign.UNFIT);
    }

    /** What many sewers accept is told on the page True, and is not marked. */
    @Test
    void whatIsOffByALittleIsNotMarked() throws Exception {
        session.open(OpenedSample.skirt());
        widen("waist", 2.5);
        session.keep();
        assertThat(scene().misfits()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"skirt", "trousers", "bodice", "knit-top"})
    void ofASampleAllFits(String sample) throws Exception {
        session.open(OpenedSample.of(sample));
        assertThat(scene().misfits()).isEmpty();
    }

    /** While marks are made seams are still being said. */
    @Test
    void whileMarksAreMadeNothingIsMarkedAsUnfit() throws Exception {
        session.open(OpenedSample.skirt());
        widen("waist", 20);
        session.keep();
        TableScenes scenes = new TableScenes();
        scenes.forMarks(true, Optional.empty());
        assertThat(scenes.of(session.desk()).misfits()).isEmpty();
    }
}
