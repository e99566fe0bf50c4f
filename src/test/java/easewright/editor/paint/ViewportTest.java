package easewright.editor.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import easewright.geom.Box;
import easewright.geom.Point;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ViewportTest {
    @Test
    void zoomingKeepsThePlaceUnderThePointer() {
        Random random = new Random(3);
        Viewport view = new Viewport(1.3, 40, -12);
        for (int i = 0; i < 500; i++) {
            double x = random.nextDouble() * 1000;
            double y = random.nextDouble() * 800;
            Point before = view.toTable(x, y);
            view = view.zoomedAt(0.5 + random.nextDouble() * 1.5, x, y);
            assertThat(view.toTable(x, y).distance(before)).isLessThan(1e-6);
            assertThat(view.scale()).isBetween(Viewport.SMALLEST, Viewport.LARGEST);
        }
    }

    @Test
    void fittingShowsTheWholeBoxCentred() {
        Box box = new Box(-100, 50, 900, 450);
        Viewport view = Viewport.fitting(box, 800, 600, 50);
        assertThat(view.screenX(-100)).isCloseTo(50, within(1e-9));
        assertThat(view.screenX(900)).isCloseTo(750, within(1e-9));
        assertThat(view.screenY(250)).isCloseTo(300, within(1e-9));
    }

    @Test
    void screenAndTableAreInverse() {
        Viewport view = new Viewport(0.37, 120, 33);
        Point p = new Point(431.7, -88.2);
        Point screen = view.toScreen(p);
        assertThat(view.toTable(screen.x(), screen.y()).distance(p)).isLessThan(1e-9);
    }

    @Test
    void refusesAScaleOfNothing() {
        assertThatThrownBy(() -> new Viewport(0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
