package easewright.editor.panel;

import static org.assertj.core.api.Assertions.assertThat;

import easewright.editor.model.Opened;
import easewright.editor.model.OpenedSample;
import easewright.editor.model.Session;
import easewright.editor.paint.Underlay;
import easewright.editor.paint.Viewport;
import easewright.text.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.Base64;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class DrawingBelowTest {
    private final Session session = new Session(LengthUnit.CM, false);
    private DrawingBelow below;

    private static String sheet(String inIt) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='90mm' height='90mm' viewBox='0 0 90 90'>"
                + "<path d='M5 5H80V80H5z'/>" + inIt + "</svg>";
    }

    private static String photograph() throws Exception {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png", png);
        return "<image x='10' y='10' width='50' height='50' href='data:image/png;base64,"
                + Base64.getEncoder().encodeToString(png.toByteArray()) + "'/>";
    }

    private Underlay seen() {
        return WaitForAsyncUtils.waitForAsyncFx(20_000, () -> below.seen(new Viewport(2, 0, 0), 400, 400, 1));
    }

    private void untilPhotographSeen() throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !seen().pictures().isEmpty());
    }

    /** Layers that are read and taken back at once leave a photograph in the drawing where it was. */
    @Test
    void aPhotographComesAgainWithItsFile(FxRobot robot) throws Exception {
        Opened one = OpenedSample.drawn(sheet(photograph()), "photo.svg");
        Opened other = OpenedSample.drawn(sheet(""), "other.svg");
        robot.interact(() -> {
            below = new DrawingBelow(session, () -> {});
            session.open(one);
        });
        untilPhotographSeen();
        robot.interact(() -> {
            session.open(other);
            assertThat(below.seen(new Viewport(2, 0, 0), 400, 400, 1).pictures())
                    .isEmpty();
            session.open(one);
        });
        untilPhotographSeen();
    }
}
