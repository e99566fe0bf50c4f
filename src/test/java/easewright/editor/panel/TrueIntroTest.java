package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TrueWork;
import easewright.text.LengthUnit;
import easewright.text.Words;
import org.junit.jupiter.api.Test;

class TrueIntroTest {
    /** While a change is tried the rows are about what was before it, and so is the page's word that there are none. */
    @Test
    void whileAChangeIsTriedThePageSaysThatItShowsWhatWasBefore() throws Exception {
        Words words = Words.english(LengthUnit.CM);
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        TrueWork none = TrueWork.none(session.desk().pattern());
        assertThat(TrueIntro.of(none, true, words)).startsWith("Before what is tried below, there was nothing");
        assertThat(TrueIntro.of(none, false, words)).contains("nothing to true");
        session.chooseLevel("waist");
        session.want(session.desk().wanted().orElseThrow().withAmount(10));
        session.keep();
        TrueWork work = TrueWork.of(session.desk());
        assertThat(work.offers()).isNotEmpty();
        assertThat(TrueIntro.of(work, true, words))
                .startsWith("Seams and lines as they were before what is tried below. Keep that or take it back first");
        assertThat(TrueIntro.of(work, false, words)).doesNotContain("tried below");
    }
}
