package easewright.backdrop;

import easewright.geom.Box;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Map;
import java.util.Set;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.InterruptedBridgeException;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Document;

/** A drawing ready to be painted in any part and at any size. For one thread at a time, and not for that of a window. */
public final class Backdrop {
    /** Most pixels of one picture. */
    public static final int MOST_PIXELS = 8_000_000;

    private static final long PATIENCE_MS = 8_000;

    private final GraphicsNode scene;

    private Backdrop(GraphicsNode scene) {
        this.scene = scene;
    }

    /**
     * Makes a drawing ready.
     *
     * @throws SvgProblem {@code scenery-large}, or {@code scenery-slow} if it takes too long
     * @throws CancellationException if the thread is interrupted
     */
    public static Backdrop of(SvgFile svg) throws SvgProblem {
        return of(svg, Set.of(), scene -> {});
    }

    /**
     * The same to lie under other lines and words: large dark areas are drawn as their outlines.
     *
     * @param without ids of drawn lines that are left out
     * @throws SvgProblem {@code scenery-large}, or {@code scenery-slow} if it takes too long
     * @throws CancellationException if the thread is interrupted
     */
    public static Backdrop under(SvgFile svg, Set<String> without) throws SvgProblem {
        return of(svg, without, LightFills::lighten);
    }

    private static Backdrop of(SvgFile svg, Set<String> without, Consumer<GraphicsNode> finish) throws SvgProblem {
        Document document = SceneryDocument.of(svg, without);
        return within(() -> {
            LenientBuilder builder = new LenientBuilder();
            GraphicsNode scene = builder.build(new Still(builder), document);
            CalmPens.calm(scene);
            finish.accept(scene);
            return new Backdrop(scene);
        });
    }

    /**
     * Paints a part of the drawing.
     *
     * @param part   of the drawing, mm
     * @param width  of the picture, pixels
     * @param height of the picture, pixels
     * @param dark   for dark paper: what is dark becomes light, whatever its colour
     * @return what is to be laid over the paper, row by row from the upper left: opacity, then red, green and blue
     *     multiplied by it; white in the drawing is clear
     * @throws SvgProblem {@code scenery-slow} if it takes too long
     * @throws CancellationException if the thread is interrupted
     */
    public int[] paint(Box part, int width, int height, boolean dark) throws SvgProblem {
        if ((long) width * height > MOST_PIXELS) {
            throw new IllegalArgumentException("Too many pixels: " + width + " x " + height);
        }
        return within(() -> {
            BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
            Graphics2D pen = picture.createGraphics();
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            pen.scale(width / part.width(), height / part.height());
            pen.translate(-part.minX(), -part.minY());
            pen.clip(new java.awt.geom.Rectangle2D.Double(part.minX(), part.minY(), part.width(), part.height()));
            scene.paint(pen);
            pen.dispose();
            int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
            for (int i = 0; i < pixels.length; i++) {
                int ink = withoutWhite(pixels[i]);
                pixels[i] = dark ? turned(ink) : ink;
            }
            return pixels;
        });
    }

    /** What a pixel adds to white paper, so that a white page in the drawing is seen through. */
    private static int withoutWhite(int pixel) {
        int red = pixel >> 16 & 255;
        int green = pixel >> 8 & 255;
        int blue = pixel & 255;
        int white = Math.min(red, Math.min(green, blue));
        return (pixel >>> 24) - white << 24 | red - white << 16 | green - white << 8 | blue - white;
    }

    /** Light for dark with the hue kept. All parts are multiplied by the opacity, which stands for white. */
    private static int turned(int pixel) {
        int white = pixel >>> 24;
        int red = pixel >> 16 & 255;
        int green = pixel >> 8 & 255;
        int blue = pixel & 255;
        int by = white - Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue));
        return white << 24 | red + by << 16 | green + by << 8 | blue + by;
    }

    /** Work that is stopped when it takes too long. */
    private static <T> T within(Work<T> work) throws SvgProblem {
        Thread worker = Thread.currentThread();
        boolean[] late = new boolean[1];
        Timer watch = new Timer("backdrop-watch", true);
        watch.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        synchronized (late) {
                            late[0] = true;
                            worker.interrupt();
                        }
                    }
                },
                PATIENCE_MS);
        try {
            T made = work.make();
            requireTime(late);
            return made;
        } catch (InterruptedBridgeException e) {
            requireTime(late);
            throw new SvgProblem("scenery-large", Map.of("most", LenientBuilder.MOST), e);
        } catch (BridgeException | StackOverflowError e) {
            throw new SvgProblem("scenery-large", Map.of("most", LenientBuilder.MOST), e);
        } finally {
            watch.cancel();
        }
    }

    private static void requireTime(boolean[] late) throws SvgProblem {
        boolean interrupted = Thread.interrupted();
        synchronized (late) {
            if (late[0]) {
                throw new SvgProblem("scenery-slow", Map.of("seconds", PATIENCE_MS / 1000), null);
            }
        }
        if (interrupted) {
            throw new CancellationException("Nobody waits for this picture any more");
        }
    }

    /** What the library keeps for a document that never changes. */
    private static final class Still extends BridgeContext {
        Still(LenientBuilder builder) {
            super(new Nobody());
            setDynamic(false);
            setGVTBuilder(builder);
        }
    }

    /** Something that is made. */
    private interface Work<T> {
        T make();
    }
}
