package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.editor.paint.TableScene;
import easewright.editor.paint.Viewport;
import easewright.geom.Point;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NameUnderTest {
    private static final Viewport VIEW = new Viewport(1, 0, 0);

    /** On the sample skirt: within the back, on bare table, and just below the waistband, mm. */
    private static final Point BACK = new Point(200, 500);

    private static final Point TABLE = new Point(360, 780);
    private static final Point BELOW_BAND = new Point(400, 898);

    private final NameUnder name = new NameUnder();

    private static List<TableScene.PieceSight> skirt() throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.skirt());
        return new TableScenes().of(session.desk()).pieces();
    }

    @Test
    void aNameThatIsNotWrittenIsShownUnderThePointer() throws Exception {
        List<TableScene.PieceSight> pieces = skirt();
        name.painted(Set.of("skirt-band"));
        assertThat(name.moved(BACK, VIEW, pieces)).as("is written").isFalse();
        assertThat(name.shown()).isEmpty();
        assertThat(name.moved(BELOW_BAND, VIEW, pieces)).isTrue();
        assertThat(name.shown().map(sight -> sight.piece().name())).contains("Waistband");
        assertThat(name.at()).isEqualTo(BELOW_BAND);
        assertThat(name.moved(BELOW_BAND.plus(new Point(9, 0)), VIEW, pieces)).isFalse();
        assertThat(name.at()).as("stays where it was").isEqualTo(BELOW_BAND);
        assertThat(name.moved(TABLE, VIEW, pieces)).isTrue();
        assertThat(name.shown()).isEmpty();
    }

    @Test
    void itGoesWithThePointer() throws Exception {
        name.painted(Set.of("skirt-band"));
        assertThat(name.gone()).isFalse();
        name.moved(BELOW_BAND, VIEW, skirt());
        assertThat(name.gone()).isTrue();
        assertThat(name.shown()).isEmpty();
    }
}
