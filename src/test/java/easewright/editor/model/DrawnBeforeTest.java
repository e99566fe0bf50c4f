package easewright.editor.model;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.paint.TableScene;
import easewright.geom.Segment;
import easewright.pattern.Pattern;
import easewright.pattern.Rider;
import easewright.svg.SvgFile;
import easewright.text.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Beside a cutting line that a change has moved, the drawn one is not taken for it. */
class DrawnBeforeTest {
    private static final String DRAWN = """
            <svg xmlns='http://www.w3.org/2000/svg' width='500mm' height='800mm' viewBox='0 0 500 800'>
            <path id='cut' d='M50,85 H265 V715 H50 Z' fill='none' stroke='black'/>
            <path id='front' d='M50,100 H250 V700 H50 Z' fill='none' stroke='grey'/>
            <path id='note' d='M300,100 H400 V200 H300 Z' fill='none' stroke='grey'/>
            <metadata><marks xmlns='urn:easewright:marks:1'>
            <scale across='1' down='1' proof='physical-size'/>
            <level name='hip' kind='hip'/>
            <piece ref='front' name='Front' line='stitching' allowance='15' cut='1' fold='yes'>
              <edge name='waist' role='waist' from='50 100' via='150 100' to='250 100'/>
              <edge name='side' role='seam' from='250 100' via='250 300' to='250 700'/>
              <edge name='hem' role='hem' from='250 700' via='150 700' to='50 700'/>
              <edge name='fold' role='fold' from='50 700' via='50 400' to='50 100' allowance='0'/>
              <at level='hip' through='150 300'/>
              <rider ref='cut' kind='parallel'/>
            </piece>
            </marks></metadata></svg>
            """;

    private final Session session = new Session(LengthUnit.CM, false);
    private final TableScenes scenes = new TableScenes();

    private TableScene.PieceSight front() {
        return scenes.of(session.desk()).pieces().stream()
                .filter(p -> p.piece().id().equals("front"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theDrawnLineIsShownAsItWasAndTheOneThatIsAsItIs() throws Exception {
        SvgFile svg = SvgFile.read(DRAWN.getBytes(StandardCharsets.UTF_8), "front.svg");
        session.open(Opened.of(new OpenFile(svg, Optional.empty(), "front.svg")));
        List<Segment> drawn = front().piece().riders().get(0).segments();
        DrawnBefore before = new DrawnBefore();
        assertThat(before.moved(svg, session.desk().pattern())).isEmpty();
        assertThat(front().former()).isEmpty();
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(20));
        assertThat(front().former())
                .as("while it is tried")
                .extracting(Rider::segments)
                .containsExactly(drawn);
        session.keep();
        Pattern kept = session.desk().pattern();
        assertThat(front().former()).extracting(Rider::segments).containsExactly(drawn);
        assertThat(front().riders()).extracting(Rider::segments).doesNotContain(drawn);
        assertThat(before.moved(svg, kept)).containsExactlyInAnyOrder("front", "cut");
        assertThat(Legend.of(scenes.of(session.desk()), Optional.empty()).signs())
                .contains(Legend.Sign.BEFORE);
        session.undo();
        assertThat(front().former()).isEmpty();
        assertThat(before.moved(svg, session.desk().pattern())).isEmpty();
        // What was saved is drawn as it is, and the line as it was is that of the outline as it was, now and after
        // more.
        SvgFile saved = SvgFile.read(svg.write(kept), "front.svg");
        session.open(Opened.of(new OpenFile(saved, Optional.empty(), "front.svg")));
        assertThat(before.moved(saved, session.desk().pattern())).isEmpty();
        assertThat(front().former()).extracting(Rider::segments).containsExactly(drawn);
        session.chooseLevel("hip");
        session.want(session.desk().wanted().orElseThrow().withAmount(12));
        session.keep();
        assertThat(front().former()).extracting(Rider::segments).containsExactly(drawn);
    }
}
