package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.paint.DrawnLines;
import easewright.editor.paint.Ink;
import easewright.editor.paint.LabelRoom;
import easewright.editor.paint.MarkPainter;
import easewright.editor.paint.MarkScene;
import easewright.editor.paint.NamePlate;
import easewright.editor.paint.OverlayPainter;
import easewright.editor.paint.PointPainter;
import easewright.editor.paint.TableLayers;
import easewright.editor.paint.TablePainter;
import easewright.editor.paint.TableScene;
import easewright.editor.paint.Underlay;
import easewright.editor.paint.Viewport;
import easewright.geom.Point;
import easewright.geom.Segment;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/**
 * Canvases the size of the view: one for what lies on the table, one for what of it is pulled while the rest lies still,
 * one for what comes and goes with the pointer. Over them, as they are opaque, a frame that shows that the keys are here.
 */
final class TableCanvases {
    private final Canvas ground = new Canvas();
    private final Canvas pulled = new Canvas();
    private final Canvas overlay = new Canvas();
    private final Region frame = new Region();
    private final TableLayers layers = new TableLayers(ground, pulled);
    private final DrawnLines lines = new DrawnLines();
    private Optional<LabelRoom> written = Optional.empty();

    TableCanvases() {
        frame.getStyleClass().add("focus-frame");
        for (Node layer : layers()) {
            layer.setManaged(false);
            layer.setMouseTransparent(true);
        }
    }

    /** From the lowest to the uppermost. */
    List<Node> layers() {
        return List.of(ground, pulled, overlay, frame);
    }

    /** Of the screen to one of the view. */
    double pixels() {
        Scene scene = ground.getScene();
        return scene == null || scene.getWindow() == null
                ? 1
                : scene.getWindow().getRenderScaleX();
    }

    void resize(double width, double height) {
        for (Canvas canvas : List.of(ground, pulled, overlay)) {
            canvas.setWidth(width);
            canvas.setHeight(height);
        }
        frame.resize(width, height);
    }

    /** The level whose name was painted there, pixels. */
    Optional<String> levelNamedAt(double x, double y) {
        return written.flatMap(room -> room.told().levelAt(new Point(x, y)));
    }

    void paint(
            Desk desk,
            Viewport view,
            TableScene scene,
            Underlay underlay,
            List<OverlayPainter.Grip> grips,
            Optional<String> lit,
            NameUnder name,
            PlaceHand places,
            Optional<MarkHand> hand) {
        Ink ink = desk.dark() ? Ink.DARK : Ink.LIGHT;
        double width = ground.getWidth();
        double height = ground.getHeight();
        if (!desk.isOpen()) {
            written = Optional.empty();
            layers.forget();
            // Nothing was ever drawn above it: what lies on a table once gives way only to something else.
            TablePainter.ground(ground.getGraphicsContext2D(), width, height, view, ink, scene.inches());
            return;
        }
        List<Point> beside = grips.stream()
                .filter(OverlayPainter.Grip::isBeside)
                .map(OverlayPainter.Grip::at)
                .toList();
        LabelRoom room = TablePainter.paint(
                layers, width, height, pixels(), view, ink, scene, underlay, places.cuts(), beside, lines);
        written = Optional.of(room);
        name.painted(room.told().lacking());
        GraphicsContext above = overlay.getGraphicsContext2D();
        List<Segment> glowing = scene.pieces().stream()
                .flatMap(p -> p.levels().stream())
                .filter(l -> lit.filter(l.level()::equals).isPresent() && !l.chosen())
                .flatMap(TableScene.LevelSight::lines)
                .toList();
        OverlayPainter.paint(above, width, height, view, ink, grips, glowing, CuttingTableWords.amount(desk));
        desk.pointed()
                .filter(p -> p.at().isPresent())
                .ifPresent(p -> PointPainter.paint(above, view, ink, p.places(), p.lines()));
        places.paint(above, view, ink, room);
        hand.ifPresent(h -> {
            MarkScene marks = underlay.drawn().isPresent() ? h.scene().withoutCaptions() : h.scene();
            MarkPainter.paint(above, view, ink, marks, room);
        });
        name.shown()
                .ifPresent(sight -> NamePlate.paint(
                        above,
                        ink,
                        sight.piece().name(),
                        sight.subtitle(),
                        name.at().x(),
                        name.at().y(),
                        width,
                        height));
    }
}
