package easewright.editor.panel;

import easewright.editor.model.Desk;
import easewright.editor.paint.Ink;
import easewright.editor.paint.LabelRoom;
import easewright.editor.paint.MarkPainter;
import easewright.editor.paint.MarkScene;
import easewright.editor.paint.OverlayPainter;
import easewright.editor.paint.PointPainter;
import easewright.editor.paint.TablePainter;
import easewright.editor.paint.TableScene;
import easewright.editor.paint.Underlay;
import easewright.editor.paint.Viewport;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;

/** Two canvases the size of the view: one for what lies on the table, one for what comes and goes with the pointer. */
final class TableCanvases {
    private final Canvas ground = new Canvas();
    private final Canvas overlay = new Canvas();

    TableCanvases() {
        for (Canvas canvas : both()) {
            canvas.setManaged(false);
            canvas.setMouseTransparent(true);
        }
    }

    /** From the lower to the upper. */
    List<Canvas> both() {
        return List.of(ground, overlay);
    }

    void resize(double width, double height) {
        for (Canvas canvas : both()) {
            canvas.setWidth(width);
            canvas.setHeight(height);
        }
    }

    void paint(
            Desk desk,
            Viewport view,
            TableScene scene,
            Underlay underlay,
            List<OverlayPainter.Grip> grips,
            PlaceHand places,
            Optional<MarkHand> hand) {
        Ink ink = desk.dark() ? Ink.DARK : Ink.LIGHT;
        double width = ground.getWidth();
        double height = ground.getHeight();
        if (!desk.isOpen()) {
            // Nothing was ever drawn above it: what lies on a table once gives way only to something else.
            TablePainter.ground(ground.getGraphicsContext2D(), width, height, view, ink, scene.inches());
            return;
        }
        LabelRoom room = TablePainter.paint(
                ground.getGraphicsContext2D(), width, height, view, ink, scene, underlay, places.cuts());
        GraphicsContext above = overlay.getGraphicsContext2D();
        OverlayPainter.paint(above, width, height, view, ink, grips, amountWords(desk));
        desk.pointed().ifPresent(p -> p.at().ifPresent(at -> PointPainter.paint(above, view, ink, at, p.lines())));
        places.paint(above, view, ink, room);
        hand.ifPresent(h -> {
            MarkScene marks = underlay.drawn().isPresent() ? h.scene().withoutCaptions() : h.scene();
            MarkPainter.paint(above, view, ink, marks, room);
        });
    }

    private static String amountWords(Desk desk) {
        return desk.wanted()
                .filter(w -> w.amount() != 0)
                .map(w ->
                        desk.words().of("editor.table.amount", Map.of("level", w.level(), "amount.signed", w.amount())))
                .orElse("");
    }
}
