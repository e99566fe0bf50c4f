package easewright.editor.panel;

import easewright.backdrop.Backdrop;
import easewright.editor.model.Desk;
import easewright.editor.model.DrawnBefore;
import easewright.editor.model.Session;
import easewright.editor.paint.Underlay;
import easewright.editor.paint.Viewport;
import easewright.geom.Affine;
import easewright.geom.Box;
import easewright.geom.Point;
import easewright.geom.Segment;
import easewright.pattern.Caption;
import easewright.pattern.Pattern;
import easewright.svg.Drawing;
import easewright.svg.Picture;
import easewright.svg.SvgFile;
import easewright.svg.SvgProblem;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.util.Duration;

/**
 * Keeps the picture of the drawing that lies under the pieces while marks are made. It is painted away from the window,
 * once for each step of nearness, and stretched until the next is ready. For the window's thread only.
 */
final class DrawingBelow {
    /** So long the view rests before a sharper picture is painted. */
    private static final Duration REST = Duration.millis(200);

    /** Pictures are kept no wider or higher than this, pixels. */
    private static final double MOST_ACROSS = 2000;

    /** A picture reaches this part of the view beyond it where the whole drawing is too large. */
    private static final double BEYOND = 0.4;

    /** Pens and letters reach somewhat beyond the lines they follow, mm. */
    private static final double BESIDE = 10;

    private static final double STEP = Math.sqrt(2);

    private final Session session;
    private final Runnable changed;
    private final BooleanProperty on = new SimpleBooleanProperty(true);
    private final PauseTransition rest = new PauseTransition(REST);
    private final ExecutorService painter = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "drawing-below");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });
    private SvgFile svg;
    private Pattern pattern;
    /** Lines that changes have moved are painted with the pieces, as they are and as they were. */
    private final DrawnBefore before = new DrawnBefore();

    /** Drawn copies that the pattern has no more, and lines that it has elsewhere. */
    private Set<String> spare = Set.of();

    private Optional<Box> all = Optional.empty();
    /** The drawing cannot be painted, which was said. */
    private boolean givenUp;

    private Wish shown;
    private Optional<Image> image = Optional.empty();
    private List<Underlay.Placed> pictures = List.of();

    /** What is being painted or was painted last; the painter leaves out what it has been overtaken by. */
    private volatile Wish wish;

    /** This and the next only the painter's. */
    private SvgFile readyFor;

    private List<Underlay.Placed> readyPictures = List.of();

    private Set<String> readyWithout = Set.of();

    private Backdrop ready;

    /**
     * A picture that is wanted, or there.
     *
     * @param without what of the drawing is not wanted
     * @param part    of the drawing, mm at its own scale
     * @param scale   pixels to the mm of the drawing
     */
    private record Wish(SvgFile svg, Set<String> without, Box part, double scale, boolean dark) {
        /** Whether this picture will do for that wish. */
        boolean serves(Wish other) {
            return svg == other.svg
                    && without.equals(other.without)
                    && dark == other.dark
                    && part.contains(other.part)
                    && Math.abs(scale / other.scale - 1) < 1e-9;
        }
    }

    /**
     * @param changed something else is to be seen
     */
    DrawingBelow(Session session, Runnable changed) {
        this.session = session;
        this.changed = changed;
        rest.setOnFinished(e -> begin());
        on.addListener(o -> changed.run());
    }

    /** Whether it is to be shown. */
    BooleanProperty onProperty() {
        return on;
    }

    /**
     * What is to be painted now. What is not sharp enough is painted anew in the background.
     *
     * @param pixels of the screen to one of the view
     */
    Underlay seen(Viewport view, double width, double height, double pixels) {
        Desk desk = session.desk();
        if (!on.get() || desk.file().isEmpty()) {
            return Underlay.NONE;
        }
        if (desk.file().get().svg() != svg) {
            svg = desk.file().get().svg();
            all = extent(svg.drawing());
            givenUp = false;
            wish = null;
            shown = null;
            image = Optional.empty();
            pictures = List.of();
            pattern = null;
        }
        if (desk.pattern() != pattern) {
            pattern = desk.pattern();
            spare = new HashSet<>(svg.spare(pattern));
            spare.addAll(before.moved(svg, pattern));
        }
        Drawing drawing = svg.drawing();
        double grown = desk.pattern().scale().mmPerUnitX() / drawing.scale().mmPerUnitX();
        wish(view, width, height, grown, pixels, desk.dark()).ifPresent(this::want);
        Affine map = Affine.scaling(grown, grown);
        return new Underlay(
                image.map(i -> new Underlay.Drawn(i, scaled(shown.part(), grown))),
                pictures.stream()
                        .map(p -> new Underlay.Placed(p.image(), map.after(p.toTable())))
                        .toList());
    }

    private static Optional<Box> extent(Drawing drawing) {
        return Stream.concat(
                        drawing.page().stream(),
                        drawing.shapes().stream()
                                .flatMap(s -> s.subPaths().stream())
                                .flatMap(s -> s.segments().stream())
                                .map(Segment::box))
                .reduce(Box::union)
                .map(box -> drawing.captions().stream()
                        .map(DrawingBelow::around)
                        .reduce(box, Box::union)
                        .grown(BESIDE));
    }

    private static Box around(Caption words) {
        double half = words.lines().stream().mapToInt(String::length).max().orElse(0) * words.height() / 2;
        Point middle = words.middle();
        return new Box(middle.x() - half, middle.y(), middle.x() + half, middle.y()).grown(words.height());
    }

    private static Box scaled(Box box, double by) {
        return new Box(box.minX() * by, box.minY() * by, box.maxX() * by, box.maxY() * by);
    }

    private Optional<Wish> wish(Viewport view, double width, double height, double grown, double pixels, boolean dark) {
        if (all.isEmpty() || !(width > 0) || !(height > 0)) {
            return Optional.empty();
        }
        double scale = Math.pow(STEP, Math.ceil(Math.log(view.scale() * grown * pixels) / Math.log(STEP)));
        Box part = all.get();
        if (isLarge(part, scale)) {
            Point from = view.toTable(0, 0).times(1 / grown);
            Point to = view.toTable(width, height).times(1 / grown);
            Optional<Box> seen = part.shared(new Box(from.x(), from.y(), to.x(), to.y()));
            if (seen.isEmpty()) {
                return Optional.empty();
            }
            part = seen.get();
        }
        while (isLarge(part, scale) && scale > 1e-6) {
            scale /= STEP;
        }
        return part.width() > 0 && part.height() > 0
                ? Optional.of(new Wish(svg, spare, part, scale, dark))
                : Optional.empty();
    }

    private static boolean isLarge(Box part, double scale) {
        return (part.width() * scale + 1) * (part.height() * scale + 1) > Backdrop.MOST_PIXELS / 4.0;
    }

    private void want(Wish wanted) {
        boolean there = shown != null && shown.serves(wanted);
        boolean coming = wish != null && wish.serves(wanted);
        if (!there && !coming && !givenUp) {
            // Somewhat more than is seen now, so that a small push needs no other picture.
            wish = new Wish(wanted.svg(), wanted.without(), reaching(wanted), wanted.scale(), wanted.dark());
            rest.playFromStart();
        }
    }

    private Box reaching(Wish wanted) {
        Box part = wanted.part();
        if (all.equals(Optional.of(part))) {
            return part;
        }
        double x = part.width() * BEYOND;
        double y = part.height() * BEYOND;
        return new Box(part.minX() - x, part.minY() - y, part.maxX() + x, part.maxY() + y);
    }

    private void begin() {
        Wish now = wish;
        if (now != null) {
            painter.execute(() -> paint(now));
        }
    }

    /** The painter's work. */
    private void paint(Wish now) {
        if (now != wish) {
            return;
        }
        try {
            if (readyFor != now.svg()) {
                ready = null;
                readyFor = now.svg();
                readyPictures = pictures(now.svg().drawing());
            }
            // Each time: another file may have lain there in between, and these were forgotten.
            List<Underlay.Placed> found = readyPictures;
            Platform.runLater(() -> come(now.svg(), found));
            if (ready == null || !readyWithout.equals(now.without())) {
                readyWithout = now.without();
                ready = Backdrop.under(now.svg(), readyWithout);
            }
            int wide = Math.max(1, (int) Math.round(now.part().width() * now.scale()));
            int high = Math.max(1, (int) Math.round(now.part().height() * now.scale()));
            int[] painted = ready.paint(now.part(), wide, high, now.dark());
            WritableImage made = new WritableImage(wide, high);
            made.getPixelWriter().setPixels(0, 0, wide, high, PixelFormat.getIntArgbPreInstance(), painted, 0, wide);
            Platform.runLater(() -> come(now, made));
        } catch (SvgProblem e) {
            Platform.runLater(() -> refused(now, e));
        } catch (CancellationException e) {
            // Nobody waits for it.
        }
    }

    private static List<Underlay.Placed> pictures(Drawing drawing) {
        List<Underlay.Placed> placed = new ArrayList<>();
        for (Picture picture : drawing.pictures()) {
            double wide = Math.min(picture.pixelsAcross(), MOST_ACROSS);
            double high = Math.min(picture.pixelsDown(), MOST_ACROSS);
            Image image = new Image(new ByteArrayInputStream(picture.bytes()), wide, high, false, true);
            if (!image.isError()) {
                Affine whole = Affine.scaling(
                        picture.pixelsAcross() / image.getWidth(), picture.pixelsDown() / image.getHeight());
                placed.add(new Underlay.Placed(image, picture.toMm().after(whole)));
            }
        }
        return placed;
    }

    private void come(SvgFile of, List<Underlay.Placed> found) {
        if (of == svg && !found.equals(pictures)) {
            pictures = found;
            changed.run();
        }
    }

    private void come(Wish painted, Image made) {
        if (painted.svg() == svg) {
            shown = painted;
            image = Optional.of(made);
            changed.run();
        }
    }

    private void refused(Wish now, SvgProblem problem) {
        if (now.svg() == svg) {
            givenUp = true;
            session.say(false, "problem." + problem.code(), problem.values());
        }
    }
}
