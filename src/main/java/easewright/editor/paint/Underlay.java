package easewright.editor.paint;

import easewright.geom.Affine;
import easewright.geom.Box;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;

/**
 * The drawing itself, faintly on the paper of the pieces: what it was drawn with, and photographs or scans in it.
 *
 * @param drawn    lines and words, if they are ready
 * @param pictures the first undermost
 */
public record Underlay(Optional<Drawn> drawn, List<Placed> pictures) {
    public static final Underlay NONE = new Underlay(Optional.empty(), List.of());

    private static final double FAINT = 0.6;

    public Underlay {
        pictures = List.copyOf(pictures);
    }

    /**
     * A part of the drawing as a picture.
     *
     * @param part of the table, mm
     */
    public record Drawn(Image image, Box part) {}

    /**
     * A photograph or scan in the drawing.
     *
     * @param toTable from the image's pixels to mm
     */
    public record Placed(Image image, Affine toTable) {}

    public boolean isEmpty() {
        return drawn.isEmpty() && pictures.isEmpty();
    }

    void paint(GraphicsContext gc, Viewport view) {
        gc.save();
        gc.setGlobalAlpha(FAINT);
        for (Placed picture : pictures) {
            Affine map = picture.toTable();
            gc.save();
            gc.transform(view.scale(), 0, 0, view.scale(), view.x(), view.y());
            gc.transform(map.a(), map.b(), map.c(), map.d(), map.e(), map.f());
            gc.drawImage(picture.image(), 0, 0);
            gc.restore();
        }
        drawn.ifPresent(d -> gc.drawImage(
                d.image(),
                view.screenX(d.part().minX()),
                view.screenY(d.part().minY()),
                d.part().width() * view.scale(),
                d.part().height() * view.scale()));
        gc.restore();
    }
}
