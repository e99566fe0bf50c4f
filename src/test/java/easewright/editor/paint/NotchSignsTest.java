package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.model.TableScenes;
import easewright.geom.Outline;
import easewright.geom.Point;
import easewright.pattern.LineKind;
import easewright.pattern.Notch;
import easewright.text.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NotchSignsTest {
    private static final Viewport VIEW = new Viewport(2, 0, 0);

    /** As on paper a notch stands at the cutting line, whichever of the two lines a piece is drawn by. */
    @ParameterizedTest
    @ValueSource(strings = {"skirt", "trousers", "bodice", "knit-top"})
    void aNotchStandsAtTheCuttingLine(String sample) throws Exception {
        Session session = new Session(LengthUnit.CM, false);
        session.open(OpenedSample.of(sample));
        int seen = 0;
        for (TableScene.PieceSight sight : new TableScenes().of(session.desk()).pieces()) {
            boolean cut = sight.piece().drawn() == LineKind.CUTTING;
            Optional<Outline> line = cut ? Optional.of(sight.piece().outline()) : sight.cuttingLine();
            EdgeSigns signs = new EdgeSigns(new Pen(null, VIEW), Ink.LIGHT, sight);
            for (Notch notch : sight.piece().notches()) {
                List<Point> sign = signs.notchSign(notch);
                Point foot = sign.get(0).towards(sign.get(1), 0.5);
                Point at = VIEW.toTable(foot.x(), foot.y());
                assertThat(line.orElseThrow().nearest(at).distance())
                        .as("%s, %s", sight.piece().name(), notch.name())
                        .isLessThan(0.01);
                Point tip = VIEW.toTable(sign.get(2).x(), sign.get(2).y());
                assertThat(line.orElseThrow().contains(tip))
                        .as("it points into the piece")
                        .isTrue();
                assertThat(signs.isClearOfNotches(VIEW.toScreen(notch.at())))
                        .as("no pin of a protected edge stands on it")
                        .isFalse();
                seen++;
            }
        }
        assertThat(seen).isPositive();
    }
}
